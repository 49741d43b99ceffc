import type { Comparison, Remedy } from '../harmony/model.ts';
import { boardOf } from './compose.ts';
import type { Board, BoardKind, BoardOptions } from './model.ts';
import { aboutPair } from './words/board-words.ts';

/** A kind of board: what it is called, what it is for, and how it is drawn. */
export interface BoardKindDeclared {
  readonly label: string;
  /** One line, for whoever chooses. */
  readonly about: string;
  /** The board of a comparison, with or without its remedies. */
  readonly draw: (
    comparison: Comparison & { readonly remedies?: readonly Remedy[] },
    options?: BoardOptions,
  ) => Board;
}

/** Every kind of board, in the order in which they are offered. A kind that is missing here does not compile. */
export const boardKinds: { readonly [Kind in BoardKind]: BoardKindDeclared } = {
  pair: {
    label: 'Pair',
    about: aboutPair,
    draw: boardOf,
  },
};
