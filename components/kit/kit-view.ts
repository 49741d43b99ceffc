import type { Kit } from '../../src/harmony/model.ts';
import type { KitMat } from '../../src/notebook/model.ts';
import type { SizeMm } from '../../src/sheet/model.ts';
import type { DrawerPaper } from '../drawer/drawer-view.ts';

/** A kit as its leaf shows it. */
export interface KitView {
  /** In the order of the kit's members. */
  readonly pieces: readonly PieceView[];
  readonly kit: Kit | null;
  readonly cuts: CutView | null;
  /** What mats can be cut from. */
  readonly mats: readonly { readonly id: string; readonly name: string }[];
}

export interface PieceView {
  /** Among the leaf's pieces. */
  readonly index: number;
  readonly paper: DrawerPaper;
  readonly isPhoto: boolean;
  /** True where it can be a photograph: plains can't. */
  readonly canBePhoto: boolean;
  readonly sizeMm: SizeMm | null;
  readonly count: number;
  readonly mat: KitMat | null;
}

/** What to cut; the part of harmony's cut list that is drawn. */
export interface CutView {
  readonly sheets: readonly CutSheetView[];
  readonly says: readonly string[];
}

export interface CutSheetView {
  readonly stock: { readonly name: string; readonly sizeMm: SizeMm };
  readonly number: number;
  readonly layout: {
    readonly style: 'edge to edge' | 'stopped';
    readonly placed: readonly CutRect[];
    readonly left: readonly CutRect[];
  };
  readonly names: readonly string[];
}

export interface CutRect {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** What can change of a piece. Null takes a size or a mat away. */
export interface PieceChange {
  readonly sizeMm?: SizeMm | null;
  readonly count?: number;
  readonly mat?: KitMat | null;
  readonly isPhoto?: boolean;
}
