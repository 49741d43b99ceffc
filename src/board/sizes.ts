import type { BoardSize } from './model.ts';

/** A page in the pixels it is exported with, and the measures that its layout starts from. */
export interface Page {
  readonly width: number;
  readonly height: number;
  /** Free edge around everything. */
  readonly edge: number;
  /** Width of the column for numbers and sources, left of the text. */
  readonly margin: number;
  /** What type sizes and gaps are multiplied with; 1 is the square page's. */
  readonly k: number;
  /** Edge of a paper as fractions of the mat's width: roomy, usual, and least. */
  readonly papers: readonly [roomy: number, usual: number, least: number];
}

/** Pages at 300 pixels to the inch: 12 × 12 in, A4 (210 × 297 mm), Letter (8½ × 11 in). */
export function pageOf(size: BoardSize): Page {
  return pages[size];
}

const pages: Record<BoardSize, Page> = {
  square: { width: 3600, height: 3600, edge: 170, margin: 640, k: 1, papers: [0.268, 0.245, 0.225] },
  a4: { width: 2480, height: 3508, edge: 130, margin: 480, k: 0.78, papers: [0.3, 0.25, 0.195] },
  letter: { width: 2550, height: 3300, edge: 130, margin: 490, k: 0.76, papers: [0.28, 0.24, 0.19] },
};

/** Type sizes of the square page, in its pixels; all pages use these times their `k`. */
export const type = {
  title: 118,
  words: 56,
  verdict: 120,
  text: 56,
  margin: 40,
  remedy: 47,
  caption: 41,
  name: 56,
  small: 36,
} as const;

/** The board's own tones, all without chroma. */
export const boardTones = {
  leaf: '#f6f6f6',
  ink: '#1a1a1a',
  soft: '#565656',
  rule: '#d2d2d2',
} as const;
