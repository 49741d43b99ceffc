import type { Outline } from './raster.ts';
import { smooth, stroke } from './strokes.ts';

/**
 * An upright hand of our own for the demo's printed texts: each letter is one or more pen lines, drawn in units of a
 * quarter x-height from the baseline up; `w` is the advance.
 */
interface Letter {
  readonly w: number;
  readonly lines: readonly (readonly number[])[];
}

/** Outlines of one line of text, its baseline starting at (x, y). `size` is the x-height in millimetres. */
export function writing(
  text: string,
  x: number,
  y: number,
  size: number,
  pen: number,
  slant = 0.22,
): Outline[] {
  const unit = size / 4;
  const outlines: Outline[] = [];
  let at = x;
  for (const sign of text) {
    const letter = hand[sign];
    for (const line of letter?.lines ?? []) {
      const points = smooth(line, 4).map((value, i, all) =>
        i % 2 ? y - value * unit : at + (value + all[i + 1]! * slant) * unit,
      );
      outlines.push(stroke(points, pen));
    }
    at += (letter?.w ?? 2.4) * unit;
  }
  return outlines;
}

/** Width of a line of text in millimetres. */
export function writingWidth(text: string, size: number): number {
  return [...text].reduce((sum, sign) => sum + ((hand[sign]?.w ?? 2.4) * size) / 4, 0);
}

const hand: Readonly<Record<string, Letter>> = {
  a: { w: 4.2, lines: [[2.9, 3.2, 1.6, 4, 0.3, 2.8, 0.4, 0.8, 1.6, 0, 2.9, 1.4, 3, 4, 3, 0.8, 3.6, 0.1]] },
  b: { w: 4, lines: [[0.4, 7, 0.4, 0.6, 1.6, 0, 3, 1.2, 3, 2.8, 1.8, 4, 0.5, 2.8]] },
  c: { w: 3.5, lines: [[2.8, 3.3, 1.6, 4, 0.4, 2.8, 0.4, 1.1, 1.6, 0, 3, 0.8]] },
  d: { w: 4.2, lines: [[2.9, 3, 1.6, 4, 0.3, 2.8, 0.4, 0.9, 1.6, 0, 2.9, 1.4, 3, 7, 3, 0.8, 3.6, 0.1]] },
  e: { w: 3.7, lines: [[0.5, 2, 2.9, 2.3, 2.6, 3.6, 1.5, 4, 0.4, 2.7, 0.4, 1, 1.6, 0, 3.1, 0.8]] },
  f: {
    w: 2.9,
    lines: [
      [2.8, 6.5, 2, 7, 1.2, 6, 1.1, 3, 1.1, 0],
      [0.1, 3.8, 2.3, 3.8],
    ],
  },
  g: {
    w: 4.1,
    lines: [[2.9, 3.2, 1.6, 4, 0.3, 2.8, 0.4, 1.2, 1.6, 0.5, 2.9, 1.6, 3, 4, 3, -1.2, 1.8, -2.6, 0.4, -1.8]],
  },
  h: {
    w: 4.1,
    lines: [
      [0.5, 7, 0.5, 3.5, 0.5, 0],
      [0.5, 2.4, 1.7, 4, 2.9, 3, 3, 0.8, 3.5, 0.1],
    ],
  },
  i: {
    w: 1.9,
    lines: [
      [0.6, 4, 0.6, 0.8, 1.2, 0.1],
      [0.6, 5.6, 0.75, 5.8],
    ],
  },
  j: {
    w: 2,
    lines: [
      [0.9, 4, 0.9, -1.4, 0, -2.5, -0.8, -2],
      [0.9, 5.6, 1.05, 5.8],
    ],
  },
  k: {
    w: 3.7,
    lines: [
      [0.5, 7, 0.5, 3.5, 0.5, 0],
      [2.8, 4, 1.6, 2.6, 0.6, 2],
      [1.3, 2.4, 2.2, 0.8, 3.1, 0],
    ],
  },
  l: { w: 2, lines: [[0.6, 7, 0.6, 3, 0.7, 0.8, 1.3, 0.1]] },
  m: {
    w: 6,
    lines: [
      [0.5, 4, 0.5, 2, 0.5, 0],
      [0.5, 2.4, 1.5, 4, 2.5, 3, 2.6, 0],
      [2.6, 2.4, 3.7, 4, 4.7, 3, 4.8, 0.8, 5.4, 0.1],
    ],
  },
  n: {
    w: 4.1,
    lines: [
      [0.5, 4, 0.5, 2, 0.5, 0],
      [0.5, 2.4, 1.7, 4, 2.9, 3, 3, 0.8, 3.5, 0.1],
    ],
  },
  o: { w: 3.9, lines: [[1.8, 4, 0.4, 2.9, 0.4, 1.1, 1.7, 0, 3.1, 1.1, 3.1, 2.9, 1.8, 4]] },
  p: {
    w: 4,
    lines: [
      [0.5, 4, 0.5, 0, 0.5, -2.7],
      [0.5, 2.8, 1.7, 4, 3, 2.9, 3, 1.1, 1.7, 0, 0.5, 1.1],
    ],
  },
  q: {
    w: 4.1,
    lines: [
      [2.9, 3.1, 1.6, 4, 0.3, 2.8, 0.4, 1.1, 1.6, 0.2, 2.9, 1.5],
      [3, 4, 3, 0, 3, -2.2, 3.7, -2.6],
    ],
  },
  r: {
    w: 3,
    lines: [
      [0.5, 4, 0.5, 2, 0.5, 0],
      [0.5, 2.4, 1.4, 3.8, 2.6, 3.7],
    ],
  },
  s: { w: 3.2, lines: [[2.5, 3.4, 1.5, 4, 0.5, 3.2, 1.4, 2.1, 2.5, 1, 1.5, 0, 0.3, 0.6]] },
  t: {
    w: 2.7,
    lines: [
      [1.1, 5.8, 1.1, 2.5, 1.2, 0.7, 2.1, 0.1],
      [0.1, 4, 2.2, 4],
    ],
  },
  u: {
    w: 4.1,
    lines: [
      [0.5, 4, 0.5, 1, 1.6, 0, 2.9, 1.4],
      [3, 4, 3, 0.8, 3.5, 0.1],
    ],
  },
  v: {
    w: 3.6,
    lines: [
      [0.2, 4, 0.9, 2, 1.6, 0],
      [1.6, 0, 2.4, 2, 3, 4],
    ],
  },
  w: {
    w: 5.2,
    lines: [
      [0.2, 4, 0.8, 2, 1.4, 0],
      [1.4, 0, 2, 2, 2.5, 3.8],
      [2.5, 3.8, 3, 2, 3.6, 0],
      [3.6, 0, 4.2, 2, 4.7, 4],
    ],
  },
  x: {
    w: 3.6,
    lines: [
      [0.3, 4, 1.6, 2, 2.9, 0],
      [2.9, 4, 1.6, 2, 0.3, 0],
    ],
  },
  y: {
    w: 4,
    lines: [
      [0.5, 4, 0.6, 1.2, 1.7, 0.1, 2.9, 1.6],
      [3, 4, 3, -1.2, 1.8, -2.6, 0.5, -1.9],
    ],
  },
  z: {
    w: 3.5,
    lines: [
      [0.4, 4, 1.6, 4, 2.7, 4],
      [2.7, 4, 1.5, 2, 0.3, 0],
      [0.3, 0, 1.6, 0, 2.9, 0.2],
    ],
  },
  '.': { w: 2, lines: [[0.6, 0.1, 0.75, 0.2]] },
  ',': { w: 2, lines: [[0.8, 0.3, 0.8, -0.3, 0.4, -1]] },
};
