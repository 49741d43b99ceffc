import type { Preparation } from '../sheet/light/photograph.ts';
import type { Corners, Frame, Places, ReadOptions, Side, SizeMm, Spot } from '../sheet/model.ts';

/** What the page asks of the reading worker. One answer `done` or `failed` comes for each `id`. */
export interface ReadRequest {
  readonly id: string;
  /** The picture file's bytes; handed over, not copied. */
  readonly bytes: ArrayBuffer;
  /** In pixels of the picture as it is decoded at full size. */
  readonly options: ReadOptions;
  /** False where only the reading is wanted. */
  readonly withPicture: boolean;
  /** What is done to the picture before it is read; the picture that comes back has it done. */
  readonly prepare?: Preparation;
  /** Where colours are wanted, on the picture that is read. */
  readonly spots?: readonly Spot[];
  /** Looks for a table round the paper: where the corners are sure, the paper is cut out before it is read. */
  readonly findsPaper?: true;
  /** Looks for something in place of reading. */
  readonly look?: Look;
}

/** What can be looked for on a picture: the sheet's corners against the table, or blocks that can be cut out. */
export type Look = 'corners' | 'blocks';

/** What was found, in fractions of the picture. */
export interface Looked {
  readonly id: string;
  readonly kind: 'looked';
  /** Null where no sheet stands out. */
  readonly corners: Corners | null;
  readonly blocks: readonly Frame[];
  /** Width over height of the picture. */
  readonly ratio: number;
}

export type ReadAnswer = ReadProgress | ReadDone | ReadFailed | Looked;

export interface ReadProgress {
  readonly id: string;
  readonly kind: 'progress';
  readonly stage: 'opening' | 'reading' | 'keeping';
  /** 0–1. */
  readonly fraction: number;
}

export interface ReadDone {
  readonly id: string;
  readonly kind: 'done';
  readonly side: Side;
  readonly places: Places;
  /** Pixels at which it was read. */
  readonly width: number;
  readonly height: number;
  /** Pixels of the picture at full size. */
  readonly fullWidth: number;
  readonly fullHeight: number;
  /** What was done on the way, one plain sentence each; often none. */
  readonly notes: readonly string[];
  /** Colours at the spots that were asked for, `#rrggbb`, in their order. */
  readonly spotColours?: readonly string[];
  readonly picture: EncodedPicture | null;
  readonly thumb: EncodedPicture | null;
  /** Told where the paper was looked for, and lies on something else. */
  readonly paper?: PaperInPicture;
}

/** Where a paper lies on its photograph, in fractions of it. */
export interface PaperInPicture {
  readonly corners: Corners;
  /** The photograph as it was taken, where the paper was cut out of it; null where all of it was read. */
  readonly taken: EncodedPicture | null;
  /** The size that it was cut out to, or would be. */
  readonly sizeMm: SizeMm;
}

export interface ReadFailed {
  readonly id: string;
  readonly kind: 'failed';
  /** One or two clear sentences. */
  readonly says: string;
}

/** Encoded anew from pixels, so nothing but the picture is in it. */
export interface EncodedPicture {
  readonly bytes: ArrayBuffer;
  readonly type: 'image/png' | 'image/jpeg';
  readonly width: number;
  readonly height: number;
}

/** What the page asks of the worker that makes pictures small. */
export interface SmallRequest {
  readonly id: number;
  readonly picture: Blob;
  /** False where only this is wanted: whether it can be decoded. */
  readonly wantsSmall: boolean;
}

export interface SmallAnswer {
  readonly id: number;
  /** Whether it could be decoded. */
  readonly isSound: boolean;
  readonly thumb: Pick<EncodedPicture, 'bytes' | 'type'> | null;
}
