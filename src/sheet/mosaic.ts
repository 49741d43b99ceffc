import type { Places } from './model.ts';
import type { Planes } from './planes.ts';

/** A small map of a sheet in a few colours, with sums that count them in any box. */
export interface Mosaic {
  readonly width: number;
  readonly height: number;
  /** How many colours. */
  readonly colours: number;
  readonly labels: Uint8Array;
  /** For each colour the sums of its pixels up to each place, one row and one column wider than the map. */
  readonly sums: readonly Int32Array[];
}

/** A box of whole pixels; its right and bottom are not counted in. */
export interface Box {
  readonly x0: number;
  readonly y0: number;
  readonly x1: number;
  readonly y1: number;
}

/** Colours are counted in boxes of this side, and two of them nearer than `alike` are one. OKLab, a and b doubled. */
const cell = 0.04;
const alike = 0.055;
const most = 20;

/** The map of a picture in its own few colours: the most frequent ones that are not alike. */
export function mosaicOf({ width, height, l, a, b }: Planes): Mosaic {
  const found = new Map<number, { n: number; l: number; a: number; b: number }>();
  const step = (v: number): number => Math.floor(v / cell) + 64;
  for (let i = 0; i < l.length; i++) {
    const key = (step(l[i]!) * 256 + step(a[i]!)) * 256 + step(b[i]!);
    const at = found.get(key) ?? { n: 0, l: 0, a: 0, b: 0 };
    at.n++;
    at.l += l[i]!;
    at.a += a[i]!;
    at.b += b[i]!;
    found.set(key, at);
  }
  const palette: { l: number; a: number; b: number }[] = [];
  for (const { n, ...sum } of [...found.values()].sort((p, q) => q.n - p.n)) {
    const colour = { l: sum.l / n, a: sum.a / n, b: sum.b / n };
    if (palette.length >= most || n < 0.002 * l.length) break;
    if (palette.every((c) => Math.hypot(c.l - colour.l, c.a - colour.a, c.b - colour.b) > alike))
      palette.push(colour);
  }
  const labels = new Uint8Array(l.length);
  for (let i = 0; i < l.length; i++) {
    let least = Number.POSITIVE_INFINITY;
    for (let k = 0; k < palette.length; k++) {
      const c = palette[k]!;
      const far = (c.l - l[i]!) ** 2 + (c.a - a[i]!) ** 2 + (c.b - b[i]!) ** 2;
      if (far < least) {
        least = far;
        labels[i] = k;
      }
    }
  }
  return summed(width, height, Math.max(1, palette.length), labels);
}

/** The map of places that were read; what is no ink is a colour of its own. */
export function mosaicOfPlaces({ width, height, labels }: Places): Mosaic {
  const last = labels.reduce((top, k) => (k === 255 ? top : Math.max(top, k)), 0) + 1;
  return summed(
    width,
    height,
    last + 1,
    labels.map((k) => (k === 255 ? last : k)),
  );
}

/** Part of a box that each colour covers, 0–1. */
export function partsIn({ width, sums }: Mosaic, { x0, y0, x1, y1 }: Box): Float64Array {
  const area = Math.max(1, (x1 - x0) * (y1 - y0));
  const w = width + 1;
  return Float64Array.from(
    sums,
    (s) => (s[y1 * w + x1]! - s[y0 * w + x1]! - s[y1 * w + x0]! + s[y0 * w + x0]!) / area,
  );
}

/** How much of two boxes is not the same colour, place left out: 0 alike – 1 nothing in common. */
export function unlike(p: Float64Array, q: Float64Array): number {
  return p.reduce((sum, v, k) => sum + Math.abs(v - q[k]!), 0) / 2;
}

function summed(width: number, height: number, colours: number, labels: Uint8Array): Mosaic {
  const w = width + 1;
  const sums = Array.from({ length: colours }, () => new Int32Array(w * (height + 1)));
  for (let y = 0; y < height; y++)
    sums.forEach((sum, k) => {
      let row = 0;
      for (let x = 0; x < width; x++) {
        if (labels[y * width + x] === k) row++;
        sum[(y + 1) * w + x + 1] = sum[y * w + x + 1]! + row;
      }
    });
  return { width, height, colours, labels, sums };
}
