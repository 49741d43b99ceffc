/** Fourier transforms of lines of `length` complex numbers, a power of two. Tables are made once. */
export class LineTransform {
  readonly length: number;
  private readonly cos: Float64Array;
  private readonly sin: Float64Array;
  private readonly swap: Uint16Array;
  private readonly re: Float64Array;
  private readonly im: Float64Array;

  constructor(length: number) {
    this.length = length;
    this.cos = Float64Array.from({ length: length / 2 }, (_, k) => Math.cos((-2 * Math.PI * k) / length));
    this.sin = Float64Array.from({ length: length / 2 }, (_, k) => Math.sin((-2 * Math.PI * k) / length));
    const bits = Math.log2(length);
    this.swap = Uint16Array.from({ length }, (_, i) => {
      let r = 0;
      for (let b = 0; b < bits; b++) r |= ((i >> b) & 1) << (bits - 1 - b);
      return r;
    });
    this.re = new Float64Array(length);
    this.im = new Float64Array(length);
  }

  /** Transforms, in place and unscaled, the numbers at start, start + step … */
  run(re: Float64Array, im: Float64Array, start = 0, step = 1): void {
    const { length: n, re: lr, im: li, swap, cos, sin } = this;
    for (let i = 0; i < n; i++) {
      const from = start + swap[i]! * step;
      lr[i] = re[from]!;
      li[i] = im[from]!;
    }
    for (let half = 1, stride = n >> 1; half < n; half *= 2, stride >>= 1)
      for (let i = 0; i < n; i += 2 * half)
        for (let k = 0, w = 0; k < half; k++, w += stride) {
          const p = i + k;
          const q = p + half;
          const c = cos[w]!;
          const s = sin[w]!;
          const xr = lr[q]! * c - li[q]! * s;
          const xi = lr[q]! * s + li[q]! * c;
          lr[q] = lr[p]! - xr;
          li[q] = li[p]! - xi;
          lr[p]! += xr;
          li[p]! += xi;
        }
    for (let i = 0; i < n; i++) {
      re[start + i * step] = lr[i]!;
      im[start + i * step] = li[i]!;
    }
  }

  /** Transforms a square of `length` × `length` numbers, row-major, in place. */
  runSquare(re: Float64Array, im: Float64Array): void {
    const n = this.length;
    for (let y = 0; y < n; y++) this.run(re, im, y * n, 1);
    for (let x = 0; x < n; x++) this.run(re, im, x, n);
  }
}
