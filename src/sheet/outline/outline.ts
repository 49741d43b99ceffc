import type { Spot } from '../model.ts';

/** Corners an outline may have. Ours: more tell nothing that a pair of scissors could follow. */
export const mostCorners = 200;

/** 1 where the middle of a pixel lies within the outline (in fractions of width × height), row by row; by the even-odd rule. */
export function insideOf(outline: readonly Spot[], width: number, height: number): Uint8Array {
  const inside = new Uint8Array(width * height);
  for (let row = 0; row < height; row++) {
    const y = (row + 0.5) / height;
    const crossings: number[] = [];
    outline.forEach((a, i) => {
      const b = outline[(i + 1) % outline.length]!;
      if (a.y <= y !== b.y <= y) crossings.push((a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) * width);
    });
    crossings.sort((p, q) => p - q);
    for (let k = 0; k + 1 < crossings.length; k += 2) {
      const from = Math.max(0, Math.ceil(crossings[k]! - 0.5));
      const to = Math.min(width, Math.ceil(crossings[k + 1]! - 0.5));
      if (to > from) inside.fill(1, row * width + from, row * width + to);
    }
  }
  return inside;
}
