/** Charts as plain nodes, so that a wheel on screen and a wheel on a board are one drawing. */

/** Paint of a shape. Colours are CSS colour strings; `ink` and `paper` stand for the reader's theme. */
export interface Paint {
  readonly fill?: string;
  readonly stroke?: string;
  readonly strokeWidth?: number;
  readonly dash?: readonly number[];
  readonly lineCap?: 'butt' | 'round';
  readonly opacity?: number;
}

/** What a mark stands for; elements light up all marks with the same reference. */
export interface MarkRef {
  /** Ink ids this mark shows: one for an ink, two for a link. */
  readonly inks: readonly string[];
  /** Read aloud, and shown on pointing. */
  readonly label: string;
  readonly kind: 'ink' | 'link' | 'region' | 'callout';
}

interface NodeBase {
  readonly mark?: MarkRef;
  readonly className?: string;
}

export interface GroupNode extends NodeBase {
  readonly type: 'group';
  readonly x?: number;
  readonly y?: number;
  readonly scale?: number;
  readonly rotate?: number;
  readonly children: readonly SceneNode[];
}
export interface PathNode extends NodeBase, Paint {
  readonly type: 'path';
  readonly d: string;
}
export interface RectNode extends NodeBase, Paint {
  readonly type: 'rect';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly radius?: number;
}
export interface CircleNode extends NodeBase, Paint {
  readonly type: 'circle';
  readonly cx: number;
  readonly cy: number;
  readonly r: number;
}
export interface LineNode extends NodeBase, Paint {
  readonly type: 'line';
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}
export interface TextNode extends NodeBase, Paint {
  readonly type: 'text';
  readonly x: number;
  readonly y: number;
  readonly text: string;
  readonly size: number;
  readonly face: 'serif' | 'sans';
  readonly weight?: number;
  readonly italic?: boolean;
  readonly anchor?: 'start' | 'middle' | 'end';
}
export interface ImageNode extends NodeBase {
  readonly type: 'image';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  /** A data: or blob: address, or an `asset:` name that the renderer resolves. */
  readonly href: string;
}
export type SceneNode = GroupNode | PathNode | RectNode | CircleNode | LineNode | TextNode | ImageNode;

/** Behind every chart stands a table that says the same. */
export interface ChartTable {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** A finished chart: nodes in a box of its own units, with its title, description and table. */
export interface Drawing {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly description: string;
  readonly nodes: readonly SceneNode[];
  readonly table: ChartTable;
}

/** The neutral behind samples: the same three in either theme. */
export type Surround = 'grey' | 'white' | 'dark';

/** A paper that a chart shows: its side and the name to speak of it. */
export interface NamedSide {
  readonly side: import('../sheet/model.ts').Side;
  readonly name: string;
}
