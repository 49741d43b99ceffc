import type { Board } from '../../board/model.ts';

/** What the page asks of the PDF worker: a board, and its picture where the fonts can't set it. */
export interface PdfRequest {
  readonly board: Board;
  readonly png: ArrayBuffer | null;
}

export type PdfAnswer =
  | { readonly kind: 'done'; readonly bytes: Uint8Array<ArrayBuffer> }
  /** A letter is in none of the fonts: the board's picture is wanted. */
  | { readonly kind: 'unset' }
  | { readonly kind: 'failed'; readonly says: string };
