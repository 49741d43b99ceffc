import { type Matrix, product } from '../colour/matrix.ts';
import { conesOfRgb, labOfRoots } from '../colour/oklab-digits.ts';
import type { LinearPlanes, Planes } from './planes.ts';

const [lightLong, lightMiddle, lightShort, aLong, aMiddle, aShort, bLong, bMiddle, bShort] = labOfRoots;

/** Turns linear planes to OKLab in place (their arrays are given over), through a matrix of light correction if there is one. */
export function oklabPlanes(from: LinearPlanes, light: Matrix | null): Planes {
  const { r, g, b } = from;
  // OKLab's first matrix, after the correction of light, both linear.
  const m = light ? product(conesOfRgb, light) : conesOfRgb;
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = m;
  // Roots in stretches that stay in the nearest cache, by the bits of the number and one turn of Halley's method: within 3e-5.
  const stretch = 2048;
  const p = new Float32Array(stretch);
  const q = new Float32Array(stretch);
  const t = new Float32Array(stretch);
  for (let start = 0; start < r.length; start += stretch) {
    const n = Math.min(stretch, r.length - start);
    for (let k = 0; k < n; k++) {
      const x = r[start + k]!;
      const y = g[start + k]!;
      const z = b[start + k]!;
      p[k] = m0 * x + m1 * y + m2 * z;
      q[k] = m3 * x + m4 * y + m5 * z;
      t[k] = m6 * x + m7 * y + m8 * z;
    }
    cubeRoots(p, n);
    cubeRoots(q, n);
    cubeRoots(t, n);
    for (let k = 0; k < n; k++) {
      const u = p[k]!;
      const v = q[k]!;
      const w = t[k]!;
      r[start + k] = lightLong * u + lightMiddle * v + lightShort * w;
      g[start + k] = 2 * (aLong * u + aMiddle * v + aShort * w);
      b[start + k] = 2 * (bLong * u + bMiddle * v + bShort * w);
    }
  }
  return {
    width: from.width,
    height: from.height,
    l: r,
    a: g,
    b,
    on: from.on,
    count: from.count,
    block: from.block,
  };
}

/** Cube roots of the first `n` numbers, in place; what is not above nought becomes nought. */
function cubeRoots(values: Float32Array, n: number): void {
  const bits = new Int32Array(values.buffer);
  const guess = new Float32Array(n);
  const guessBits = new Int32Array(guess.buffer);
  for (let i = 0; i < n; i++) guessBits[i] = ((bits[i]! * 0.3333333333) | 0) + 709921077;
  for (let i = 0; i < n; i++) {
    const v = values[i]!;
    const x = guess[i]!;
    const x3 = x * x * x;
    values[i] = v > 1e-9 ? (x * (x3 + 2 * v)) / (2 * x3 + v) : 0;
  }
}
