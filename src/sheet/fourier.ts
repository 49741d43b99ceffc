/** A Fourier transform of squares of `side` × `side` complex numbers, side a power of two. Tables are made once. */
export class SquareTransform {
  readonly side: number;
  private readonly cos: Float64Array;
  private readonly sin: Float64Array;
  private readonly swap: Uint16Array;
  private readonly lineRe: Float64Array;
  private readonly lineIm: Float64Array;

  constructor(side: number) {
    this.side = side;
    this.cos = Float64Array.from({ length: side / 2 }, (_, k) => Math.cos((-2 * Math.PI * k) / side));
    this.sin = Float64Array.from({ length: side / 2 }, (_, k) => Math.sin((-2 * Math.PI * k) / side));
    const bits = Math.log2(side);
    this.swap = Uint16Array.from({ length: side }, (_, i) => {
      let r = 0;
      for (let b = 0; b < bits; b++) r |= ((i >> b) & 1) << (bits - 1 - b);
      return r;
    });
    this.lineRe = new Float64Array(side);
    this.lineIm = new Float64Array(side);
  }

  /** Transforms row-major `re`, `im` in place, unscaled. */
  run(re: Float64Array, im: Float64Array): void {
    const n = this.side;
    for (let y = 0; y < n; y++) this.line(re, im, y * n, 1);
    for (let x = 0; x < n; x++) this.line(re, im, x, n);
  }

  private line(re: Float64Array, im: Float64Array, start: number, step: number): void {
    const { side: n, lineRe: lr, lineIm: li, swap, cos, sin } = this;
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
}
