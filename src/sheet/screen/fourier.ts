import { steadyCos, steadySin } from '../../colour/steady.ts';

/** Fourier transforms of lines of `length` complex numbers, a power of two. Tables are made once. */
export class LineTransform {
  readonly length: number;
  private readonly cos: Float64Array;
  private readonly sin: Float64Array;
  private readonly swap: Uint16Array;

  constructor(length: number) {
    this.length = length;
    this.cos = Float64Array.from({ length: length / 2 }, (_, k) => steadyCos((-2 * Math.PI * k) / length));
    this.sin = Float64Array.from({ length: length / 2 }, (_, k) => steadySin((-2 * Math.PI * k) / length));
    const bits = 31 - Math.clz32(length);
    this.swap = Uint16Array.from({ length }, (_, i) => {
      let r = 0;
      for (let b = 0; b < bits; b++) r |= ((i >> b) & 1) << (bits - 1 - b);
      return r;
    });
  }

  /** Transforms, in place and unscaled, `length` numbers that begin at `start`. */
  run(re: Float64Array, im: Float64Array, start = 0): void {
    const { length: n, swap, cos, sin } = this;
    for (let i = 0; i < n; i++) {
      const j = swap[i]!;
      if (j > i) exchange(re, im, start + i, start + j);
    }
    for (let half = 1, stride = n >> 1; half < n; half *= 2, stride >>= 1)
      for (let i = start; i < start + n; i += 2 * half)
        for (let k = 0, w = 0; k < half; k++, w += stride)
          turn(re, im, i + k, i + k + half, cos[w]!, sin[w]!);
  }

  /** Transforms a square of `length` × `length` numbers, row-major, in place. */
  runSquare(re: Float64Array, im: Float64Array): void {
    const { length: n, swap, cos, sin } = this;
    for (let y = 0; y < n; y++) this.run(re, im, y * n);
    // All columns at once, row against row: numbers that lie side by side are quicker.
    for (let y = 0; y < n; y++) {
      const other = swap[y]!;
      if (other > y) for (let x = 0; x < n; x++) exchange(re, im, y * n + x, other * n + x);
    }
    for (let half = 1, stride = n >> 1; half < n; half *= 2, stride >>= 1)
      for (let i = 0; i < n; i += 2 * half)
        for (let k = 0, w = 0; k < half; k++, w += stride) {
          const p = (i + k) * n;
          const q = p + half * n;
          const c = cos[w]!;
          const s = sin[w]!;
          for (let x = 0; x < n; x++) turn(re, im, p + x, q + x, c, s);
        }
  }
}

/** Two numbers become their sum and difference, the second turned first. */
function turn(re: Float64Array, im: Float64Array, p: number, q: number, c: number, s: number): void {
  const xr = re[q]! * c - im[q]! * s;
  const xi = re[q]! * s + im[q]! * c;
  re[q] = re[p]! - xr;
  im[q] = im[p]! - xi;
  re[p]! += xr;
  im[p]! += xi;
}

function exchange(re: Float64Array, im: Float64Array, p: number, q: number): void {
  const r = re[p]!;
  const i = im[p]!;
  re[p] = re[q]!;
  im[p] = im[q]!;
  re[q] = r;
  im[q] = i;
}
