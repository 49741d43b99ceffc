import type { Places, ReadOptions, Side } from '../sheet/model.ts';

/** What the page asks of the reading worker. One answer `done` or `failed` comes for each `id`. */
export interface ReadRequest {
  readonly id: string;
  /** The picture file's bytes; handed over, not copied. */
  readonly bytes: ArrayBuffer;
  /** In pixels of the picture as it is decoded at full size. */
  readonly options: ReadOptions;
  /** False where only the reading is wanted. */
  readonly withPicture: boolean;
}

export type ReadAnswer = ReadProgress | ReadDone | ReadFailed;

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
  readonly picture: EncodedPicture | null;
  readonly thumb: EncodedPicture | null;
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
