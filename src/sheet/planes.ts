import type { Frame, PixelImage } from './model.ts';
import { UnreadableImage } from './unreadable.ts';

/**
 * The sheet as the reader works on it: block averages in linear light, turned to OKLab.
 * `a` and `b` are doubled, because texture and shading move lightness far more than hue (READING's trial).
 */
export interface Planes {
  readonly width: number;
  readonly height: number;
  readonly l: Float32Array;
  readonly a: Float32Array;
  readonly b: Float32Array;
  /** 1 where the pixel belongs to the sheet. */
  readonly on: Uint8Array;
  /** How many are on. */
  readonly count: number;
  /** Side of a block in pixels of the given image. */
  readonly block: number;
}

/** Linear sRGB planes of block averages, before any correction. */
export interface LinearPlanes {
  readonly width: number;
  readonly height: number;
  readonly r: Float32Array;
  readonly g: Float32Array;
  readonly b: Float32Array;
  readonly on: Uint8Array;
  readonly count: number;
  readonly block: number;
}

/** About how many pixels the reader works on; more are averaged in blocks. A trade of time against thin lines. */
const workingPixels = 1.4e6;

/** Linear light of each 8-bit sRGB value. Source: IEC 61966-2-1. */
export const linearOfByte: Float32Array = Float32Array.from({ length: 256 }, (_, i) => {
  const v = i / 255;
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
});

/** The block side that brings a frame of this many pixels near the working size. */
export function blockFor(pixels: number): number {
  return Math.max(1, Math.round(Math.sqrt(pixels / workingPixels)));
}

/** A frame brought inside the picture, in whole pixels. @throws UnreadableImage where nothing of it lies inside. */
export function clampFrame(frame: Frame | undefined, image: PixelImage): Frame {
  const x = Math.max(0, Math.round(frame?.x ?? 0));
  const y = Math.max(0, Math.round(frame?.y ?? 0));
  const right = Math.min(image.width, Math.round((frame?.x ?? 0) + (frame?.width ?? image.width)));
  const bottom = Math.min(image.height, Math.round((frame?.y ?? 0) + (frame?.height ?? image.height)));
  if (!(right > x && bottom > y)) throw new UnreadableImage('The part to read lies outside the picture.');
  return { x, y, width: right - x, height: bottom - y };
}

/**
 * Block averages of a frame in linear light. Transparent pixels are left out; half-transparent ones count as far as
 * they are opaque, by their own colour. `without` (a card) is left out too.
 */
export function linearPlanes(
  image: PixelImage,
  frame: Frame,
  without: Frame | null,
  block: number,
): LinearPlanes {
  const { data } = image;
  const width = Math.max(1, Math.floor(frame.width / block));
  const height = Math.max(1, Math.floor(frame.height / block));
  const size = width * height;
  const r = new Float32Array(size);
  const g = new Float32Array(size);
  const b = new Float32Array(size);
  const weight = new Float32Array(width);
  const on = new Uint8Array(size);
  const lut = linearOfByte;
  const full = block * block * 255;
  let count = 0;
  for (let y = 0; y < height; y++) {
    const row = y * width;
    weight.fill(0);
    for (let dy = 0; dy < block; dy++) {
      let p = ((frame.y + y * block + dy) * image.width + frame.x) * 4;
      for (let x = 0; x < width; x++) {
        let sr = 0;
        let sg = 0;
        let sb = 0;
        let sw = 0;
        for (let dx = 0; dx < block; dx++, p += 4) {
          const alpha = data[p + 3]!;
          if (alpha === 255) {
            sr += lut[data[p]!]!;
            sg += lut[data[p + 1]!]!;
            sb += lut[data[p + 2]!]!;
            sw += 255;
          } else if (alpha > 0) {
            const k = alpha / 255;
            sr += k * lut[data[p]!]!;
            sg += k * lut[data[p + 1]!]!;
            sb += k * lut[data[p + 2]!]!;
            sw += alpha;
          }
        }
        r[row + x]! += sr;
        g[row + x]! += sg;
        b[row + x]! += sb;
        weight[x]! += sw;
      }
    }
    for (let x = 0; x < width; x++) {
      const w = weight[x]!;
      if (w * 2 < full) continue;
      const k = 255 / w;
      const i = row + x;
      r[i]! *= k;
      g[i]! *= k;
      b[i]! *= k;
      on[i] = 1;
      count++;
    }
  }
  if (without) count -= leaveOut(on, width, height, frame, without, block);
  return { width, height, r, g, b, on, count, block };
}

function leaveOut(
  on: Uint8Array,
  width: number,
  height: number,
  frame: Frame,
  card: Frame,
  block: number,
): number {
  const x0 = Math.max(0, Math.floor((card.x - frame.x) / block));
  const y0 = Math.max(0, Math.floor((card.y - frame.y) / block));
  const x1 = Math.min(width, Math.ceil((card.x + card.width - frame.x) / block));
  const y1 = Math.min(height, Math.ceil((card.y + card.height - frame.y) / block));
  let gone = 0;
  for (let y = y0; y < y1; y++)
    for (let x = x0; x < x1; x++) {
      gone += on[y * width + x]!;
      on[y * width + x] = 0;
    }
  return gone;
}

/** Softens linear planes in place by a binomial kernel (1 2 1)/4 across and down, `times` over. Off pixels neither give nor get. */
export function soften(planes: LinearPlanes, times: number): void {
  for (let n = 0; n < times; n++) for (const p of [planes.r, planes.g, planes.b]) softenPlane(p, planes);
}

function softenPlane(p: Float32Array, { width, height, on }: LinearPlanes): void {
  const above = new Float32Array(width);
  const here = new Float32Array(width);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    // Across: the left neighbour's old value is carried along.
    let left = p[row]!;
    for (let x = 0; x < width; x++) {
      const v = p[row + x]!;
      const right = x + 1 < width && on[row + x + 1] ? p[row + x + 1]! : v;
      const l = x && on[row + x - 1] ? left : v;
      left = v;
      if (on[row + x]) p[row + x] = 0.25 * (l + right) + 0.5 * v;
    }
  }
  for (let y = 0; y < height; y++) {
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const i = row + x;
      const v = p[i]!;
      here[x] = v;
      if (!on[i]) continue;
      const down = y + 1 < height && on[i + width] ? p[i + width]! : v;
      const up = y && on[i - width] ? above[x]! : v;
      p[i] = 0.25 * (up + down) + 0.5 * v;
    }
    above.set(here);
  }
}

/** Row-major 3×3 matrix. */
export type Matrix3 = readonly number[];

/** Turns linear planes to OKLab in place (their arrays are given over), through a matrix of light correction if there is one. */
export function oklabPlanes(from: LinearPlanes, light: Matrix3 | null): Planes {
  const { r, g, b } = from;
  // OKLab's first matrix (Ottosson 2020; CSS Color 4), after the correction of light, both linear.
  const m = light ? multiply(toLms, light) : toLms;
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = m as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  for (let i = 0; i < r.length; i++) {
    const x = r[i]!;
    const y = g[i]!;
    const z = b[i]!;
    const l = Math.cbrt(m0 * x + m1 * y + m2 * z);
    const mm = Math.cbrt(m3 * x + m4 * y + m5 * z);
    const s = Math.cbrt(m6 * x + m7 * y + m8 * z);
    r[i] = 0.210454268309314 * l + 0.7936177747023054 * mm - 0.0040720430116193 * s;
    g[i] = 2 * (1.9779985324311684 * l - 2.4285922420485799 * mm + 0.450593709617411 * s);
    b[i] = 2 * (0.0259040424655478 * l + 0.7827717124575296 * mm - 0.8086757549230774 * s);
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

const toLms: Matrix3 = [
  0.412221469470763, 0.5363325372617348, 0.0514459932675022, 0.2119034958178252, 0.6806995506452344,
  0.1073969535369406, 0.0883024591900564, 0.2817188391361215, 0.6299787016738222,
];

/** Product of two 3×3 matrices, row-major. */
export function multiply(p: Matrix3, q: Matrix3): Matrix3 {
  const out: number[] = [];
  for (let i = 0; i < 3; i++)
    for (let j = 0; j < 3; j++)
      out.push(p[i * 3]! * q[j]! + p[i * 3 + 1]! * q[3 + j]! + p[i * 3 + 2]! * q[6 + j]!);
  return out;
}
