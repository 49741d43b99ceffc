import type { Corners, Spot } from '../model.ts';

/**
 * A projective map of the plane, row-major 3 × 3 with the last number 1: (x, y) goes to
 * ((h₀x + h₁y + h₂) / w, (h₃x + h₄y + h₅) / w), w = h₆x + h₇y + 1.
 */
export type Homography = readonly [number, number, number, number, number, number, number, number, number];

/**
 * The projective map that takes four corners to four others, in whatever units they are given in; null where either
 * four do not make a convex sheet (three on a line, crossed sides, the other way round).
 * Source: the eight linear equations of four point pairs, Hartley and Zisserman, Multiple View Geometry (2004), §4.1.
 */
export function homographyOf(from: Corners, to: Corners): Homography | null {
  if (turnOf(from) === 0 || turnOf(from) !== turnOf(to)) return null;
  const rows: number[][] = [];
  from.forEach(({ x, y }, i) => {
    const { x: u, y: v } = to[i]!;
    rows.push([x, y, 1, 0, 0, 0, -u * x, -u * y, u], [0, 0, 0, x, y, 1, -v * x, -v * y, v]);
  });
  const h = solved(rows);
  return h && ([...h, 1] as unknown as Homography);
}

/** Where a map takes a spot. */
export function movedBy(h: Homography, { x, y }: Spot): Spot {
  const w = h[6] * x + h[7] * y + h[8];
  return { x: (h[0] * x + h[1] * y + h[2]) / w, y: (h[3] * x + h[4] * y + h[5]) / w };
}

/** 1 where the corners of a convex sheet go clockwise (y down), −1 where they go the other way, 0 where they make none. */
export function turnOf(corners: Corners): -1 | 0 | 1 {
  const turns = corners.map((b, i) => {
    const a = corners[(i + 3) % 4]!;
    const c = corners[(i + 1) % 4]!;
    const cross = (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
    const sides = Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - b.x, c.y - b.y);
    // Under a thousandth of a right angle three corners lie on one line.
    return sides > 0 && Math.abs(cross) > 1e-3 * sides ? Math.sign(cross) : 0;
  });
  if (turns.every((turn) => turn === 1)) return 1;
  return turns.every((turn) => turn === -1) ? -1 : 0;
}

/** Gauss with row exchange on eight equations, the right side last in each row; null where they are singular. */
function solved(rows: number[][]): number[] | null {
  const n = rows.length;
  for (let k = 0; k < n; k++) {
    let top = k;
    for (let i = k + 1; i < n; i++) if (Math.abs(rows[i]![k]!) > Math.abs(rows[top]![k]!)) top = i;
    [rows[k], rows[top]] = [rows[top]!, rows[k]!];
    const lead = rows[k]!;
    if (Math.abs(lead[k]!) < 1e-12) return null;
    for (let i = k + 1; i < n; i++) {
      const row = rows[i]!;
      const by = row[k]! / lead[k]!;
      if (by !== 0) for (let j = k; j <= n; j++) row[j] = row[j]! - by * lead[j]!;
    }
  }
  const x = new Array<number>(n).fill(0);
  for (let k = n - 1; k >= 0; k--) {
    const row = rows[k]!;
    let sum = row[n]!;
    for (let j = k + 1; j < n; j++) sum -= row[j]! * x[j]!;
    x[k] = sum / row[k]!;
  }
  return x;
}
