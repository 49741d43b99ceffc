import { nothing } from '../inks/label-counts.ts';
import type { Places } from '../model.ts';
import type { Planes } from '../planes.ts';

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

/** A small map of a sheet in a few colours, without the sums. */
export type Tiles = Omit<Mosaic, 'sums'>;

/** The map of a picture in its own few colours: the most frequent ones that are not alike. */
export function mosaicOf(planes: Planes): Mosaic {
  return summed(tilesOf(planes));
}

/** The same without the sums. */
export function tilesOf({ width, height, l, a, b }: Planes): Tiles {
  const place = new Map<number, number>();
  const sums: { n: number; l: number; a: number; b: number }[] = [];
  const step = (v: number): number => Math.floor(v / cell) + 64;
  for (let i = 0; i < l.length; i++) {
    const key = (step(l[i]!) * 256 + step(a[i]!)) * 256 + step(b[i]!);
    let at = place.get(key);
    if (at === undefined) {
      at = sums.length;
      place.set(key, at);
      sums.push({ n: 0, l: 0, a: 0, b: 0 });
    }
    const sum = sums[at]!;
    sum.n++;
    sum.l += l[i]!;
    sum.a += a[i]!;
    sum.b += b[i]!;
  }
  const colours: { l: number; a: number; b: number }[] = [];
  for (const { n, ...sum } of sums.sort((p, q) => q.n - p.n)) {
    const colour = { l: sum.l / n, a: sum.a / n, b: sum.b / n };
    if (colours.length >= most || n < 0.002 * l.length) break;
    if (colours.every((c) => Math.hypot(c.l - colour.l, c.a - colour.a, c.b - colour.b) > alike))
      colours.push(colour);
  }
  const labels = nearestOf({ l, a, b }, colours);
  return { width, height, colours: Math.max(1, colours.length), labels };
}

function nearestOf(
  { l, a, b }: Pick<Planes, 'l' | 'a' | 'b'>,
  colours: readonly { l: number; a: number; b: number }[],
): Uint8Array {
  const n = colours.length;
  const [cl, ca, cb] = (['l', 'a', 'b'] as const).map((c) => Float64Array.from(colours, (one) => one[c])) as [
    Float64Array,
    Float64Array,
    Float64Array,
  ];
  const labels = new Uint8Array(l.length);
  for (let i = 0; i < l.length; i++) {
    let least = 1e9;
    let best = 0;
    for (let k = 0; k < n; k++) {
      const dl = cl[k]! - l[i]!;
      const da = ca[k]! - a[i]!;
      const db = cb[k]! - b[i]!;
      const far = dl * dl + da * da + db * db;
      if (far < least) {
        least = far;
        best = k;
      }
    }
    labels[i] = best;
  }
  return labels;
}

/** The map of places that were read; what is no ink is a colour of its own. */
export function mosaicOfPlaces({ width, height, labels }: Places): Mosaic {
  const last = labels.reduce((top, k) => (k === nothing ? top : Math.max(top, k)), 0) + 1;
  return summed({ width, height, colours: last + 1, labels: labels.map((k) => (k === nothing ? last : k)) });
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

function summed({ width, height, colours, labels }: Tiles): Mosaic {
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
