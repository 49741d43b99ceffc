import type { SceneNode, Surround } from '../drawing/model.ts';

/** A board's page: pixels at 300 ppi when exported; the scene is laid out in these units. */
export const boardSizes = ['square', 'a4', 'letter'] as const;
export type BoardSize = (typeof boardSizes)[number];

/** What a board shows; `kinds.ts` says how each is drawn. */
export const boardKindNames = ['pair'] as const;
export type BoardKind = (typeof boardKindNames)[number];

/** One picture: everything on it, in a box of its own units. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly description: string;
  readonly background: string;
  readonly nodes: readonly SceneNode[];
}

/** A comparison board, ready to be drawn. */
export interface Board {
  readonly title: string;
  readonly size: BoardSize;
  readonly scene: Scene;
}

export interface BoardOptions {
  /** Default: "Anchor with candidate", by their names. */
  readonly title?: string;
  /** The user's own words. */
  readonly words?: string;
  readonly size?: BoardSize;
  readonly names?: { readonly anchor?: string; readonly candidate?: string };
  /** Pictures of the papers as data: addresses. Without one, the paper is drawn as bands of its inks by share. */
  readonly pictures?: { readonly anchor?: string; readonly candidate?: string };
  readonly wheel?: import('../colour/model.ts').Wheel;
  /** What surrounds the papers. Default 'grey'. */
  readonly surround?: Surround;
}
