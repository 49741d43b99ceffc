import type { Planes } from '../planes.ts';

/** Which way the edges of a picture run. */
export interface Directions {
  /** Part of the picture that is edge, 0–1. */
  readonly edges: number;
  /** How far all edges run one way, 0–1: stripes. */
  readonly one: number;
  /** How far they run two ways at a right angle, 0–1: grids and checks. */
  readonly two: number;
  /** How far they run one slanting way at each place across or down, changing from place to place, 0–1: chevrons. */
  readonly zigzag: number;
}

/** A change of colour over two pixels counts from here (OKLab, a and b doubled). */
const least = 0.05;

export function directionsOf({ width, height, l, a, b }: Planes): Directions {
  // How far the edges of each column and of each row slant.
  const across = new Float64Array(width);
  const down = new Float64Array(height);
  let [n, all, c2, s2, c4, s4] = [0, 0, 0, 0, 0, 0];
  for (let y = 1; y < height - 1; y++)
    for (let x = 1; x < width - 1; x++) {
      const i = y * width + x;
      // The direction in which all three change most. Source: Di Zenzo, A note on the gradient of a multi-image (1986).
      const lx = slope(l, i, width, 1);
      const ly = slope(l, i, 1, width);
      const ax = slope(a, i, width, 1);
      const ay = slope(a, i, 1, width);
      const bx = slope(b, i, width, 1);
      const by = slope(b, i, 1, width);
      const xx = lx * lx + ax * ax + bx * bx;
      const yy = ly * ly + ay * ay + by * by;
      const xy = lx * ly + ax * ay + bx * by;
      const size = Math.sqrt(xx + yy);
      if (size < least) continue;
      const weight = Math.min(size, 0.4);
      const flat = Math.hypot(xx - yy, 2 * xy) || 1;
      const [c, s] = [(xx - yy) / flat, (2 * xy) / flat];
      n++;
      all += weight;
      c2 += weight * c;
      s2 += weight * s;
      c4 += weight * (c * c - s * s);
      s4 += weight * 2 * c * s;
      across[x]! += weight * s;
      down[y]! += weight * s;
    }
  const total = all || 1;
  return {
    edges: n / (width * height),
    one: Math.hypot(c2, s2) / total,
    two: Math.hypot(c4, s4) / total,
    zigzag: Math.max(slanting(across, total), slanting(down, total)),
  };
}

/** Sobel's slope of a plane, per two pixels. */
function slope(p: Float32Array, i: number, beside: number, along: number): number {
  const before = p[i - beside - along]! + 2 * p[i - along]! + p[i + beside - along]!;
  const after = p[i - beside + along]! + 2 * p[i + along]! + p[i + beside + along]!;
  return (after - before) / 4;
}

/** How far the edges of each line run one slanting way; both slants must be there. */
function slanting(sums: Float64Array, total: number): number {
  let [rising, falling] = [0, 0];
  for (const s of sums) {
    // Twice the angle: its sine is how far an edge slants.
    if (s > 0) rising += s;
    else falling -= s;
  }
  const both = (2 * Math.min(rising, falling)) / (rising + falling || 1);
  return (both > 0.4 ? 1 : both) * ((rising + falling) / total);
}
