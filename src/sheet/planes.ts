import { linearOfByte } from '../colour/light-tables.ts';
import type { Frame, PixelImage } from './model.ts';
import { UnreadableImage } from './unreadable.ts';
import { refusals } from './words/refusals.ts';

/** The sheet as it is read: block averages in OKLab, `a` and `b` doubled, as texture moves lightness more. */
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

/** Up to about twice this many pixels the reader works on all of them; beyond, on averages of blocks. A trade of time against thin lines. */
const workingPixels = 0.84e6;

/** The block side that brings a frame of this many pixels near the working size. */
export function blockFor(pixels: number): number {
  return Math.max(1, Math.round(Math.sqrt(pixels / workingPixels) - 0.25));
}

/** A frame brought inside the picture, in whole pixels. @throws UnreadableImage where nothing of it lies inside. */
export function clampFrame(frame: Frame | undefined, image: PixelImage): Frame {
  const x = Math.max(0, Math.round(frame?.x ?? 0));
  const y = Math.max(0, Math.round(frame?.y ?? 0));
  const right = Math.min(image.width, Math.round((frame?.x ?? 0) + (frame?.width ?? image.width)));
  const bottom = Math.min(image.height, Math.round((frame?.y ?? 0) + (frame?.height ?? image.height)));
  if (!(right > x && bottom > y)) throw new UnreadableImage(refusals.partOutside);
  return { x, y, width: right - x, height: bottom - y };
}

/**
 * Block averages of a frame in linear light. Transparent pixels are left out; half-transparent ones count as far as
 * they are opaque, by their own colour. `without` (a card) is left out too. `sparse` lets large blocks skip rows.
 */
export function linearPlanes(
  image: PixelImage,
  frame: Frame,
  without: Frame | null,
  block: number,
  sparse = false,
): LinearPlanes {
  const width = Math.max(1, Math.floor(frame.width / block));
  const height = Math.max(1, Math.floor(frame.height / block));
  const size = width * height;
  const r = new Float32Array(size);
  const g = new Float32Array(size);
  const b = new Float32Array(size);
  const on = new Uint8Array(size);
  const words = wordsOf(image.data);
  const sums = [0, 1, 2, 3].map(() => new Int32Array(width)) as unknown as RowSums;
  // Of four rows or more every other one tells the block's mean as well, where nothing in the picture keeps step with them.
  const rowStep = sparse && block >= 4 ? 2 : 1;
  // A pixel counts with weight 255 where it is opaque.
  const full = block * Math.ceil(block / rowStep) * 255;
  let count = 0;
  for (let y = 0; y < height; y++) {
    for (const s of sums) s.fill(0);
    for (let dy = 0; dy < block; dy += rowStep)
      addRow(words, (frame.y + y * block + dy) * image.width + frame.x, block, width, sums);
    const [sr, sg, sb, sw] = sums;
    const row = y * width;
    for (let x = 0; x < width; x++) {
      const w = sw[x]!;
      if (w * 2 < full) continue;
      const k = 255 / (w * lightSteps);
      r[row + x] = sr[x]! * k;
      g[row + x] = sg[x]! * k;
      b[row + x] = sb[x]! * k;
      on[row + x] = 1;
      count++;
    }
  }
  if (without) count -= leaveOut(on, width, height, frame, without, block);
  return { width, height, r, g, b, on, count, block };
}

type RowSums = readonly [r: Int32Array, g: Int32Array, b: Int32Array, weight: Int32Array];

/** Linear light in whole steps: sums of whole numbers are quicker, and a block of 45 × 45 still fits 31 bits. */
const lightSteps = 1 << 20;
const lightOfByte = Int32Array.from(linearOfByte, (v) => Math.round(v * lightSteps));

/** Adds one row of pixels to the sums of the blocks above it. */
function addRow(
  words: Uint32Array,
  start: number,
  block: number,
  width: number,
  [sr, sg, sb, sw]: RowSums,
): void {
  const lut = lightOfByte;
  let p = start;
  for (let x = 0; x < width; x++) {
    let r = 0;
    let g = 0;
    let b = 0;
    let both = -1;
    for (let dx = 0; dx < block; dx++) {
      const word = words[p + dx]! | 0;
      both &= word;
      r = (r + lut[word & 255]!) | 0;
      g = (g + lut[(word >>> 8) & 255]!) | 0;
      b = (b + lut[(word >>> 16) & 255]!) | 0;
    }
    let w = 255 * block;
    if (both >>> 24 !== 255) {
      // Some of them are not opaque: these count only as far as they are.
      r = g = b = w = 0;
      for (let dx = 0; dx < block; dx++) {
        const word = words[p + dx]! | 0;
        const alpha = word >>> 24;
        r += Math.round((alpha * lut[word & 255]!) / 255);
        g += Math.round((alpha * lut[(word >>> 8) & 255]!) / 255);
        b += Math.round((alpha * lut[(word >>> 16) & 255]!) / 255);
        w += alpha;
      }
    }
    p += block;
    sr[x]! += r;
    sg[x]! += g;
    sb[x]! += b;
    sw[x]! += w;
  }
}

/** The pixels as words 0xAABBGGRR; a copy where the bytes are not aligned or the machine is of the other order. */
function wordsOf(data: Uint8ClampedArray): Uint32Array {
  const little = new Uint8Array(new Uint32Array([1]).buffer)[0] === 1;
  const n = data.length >> 2;
  if (little && data.byteOffset % 4 === 0) return new Uint32Array(data.buffer, data.byteOffset, n);
  const words = new Uint32Array(n);
  for (let i = 0; i < n; i++)
    words[i] = data[4 * i]! | (data[4 * i + 1]! << 8) | (data[4 * i + 2]! << 16) | (data[4 * i + 3]! << 24);
  return words;
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

/** Softens linear planes in place, `times` over: each pixel takes `weight` of its neighbours left and right, then above and below. Off pixels neither give nor get. */
export function soften(planes: LinearPlanes, times: number, weight: number): void {
  const { width, height, count } = planes;
  const whole = count === width * height && width > 1 && height > 1;
  for (let n = 0; n < times; n++)
    for (const p of [planes.r, planes.g, planes.b])
      if (whole) softenWhole(p, width, height, weight);
      else softenPlane(p, planes, weight);
}

/** The same where no pixel is off. */
function softenWhole(p: Float32Array, width: number, height: number, weight: number): void {
  const own = 1 - 2 * weight;
  const last = width - 1;
  for (let y = 0; y < height; y++) {
    const row = y * width;
    let left = p[row]!;
    let v = left;
    for (let i = row; i < row + last; i++) {
      const right = p[i + 1]!;
      p[i] = weight * (left + right) + own * v;
      left = v;
      v = right;
    }
    p[row + last] = weight * (left + v) + own * v;
  }
  const above = p.slice(0, width);
  for (let y = 0; y < height; y++) {
    const row = y * width;
    const below = y + 1 < height ? row + width : row;
    for (let x = 0; x < width; x++) {
      const v = p[row + x]!;
      p[row + x] = weight * (above[x]! + p[below + x]!) + own * v;
      above[x] = v;
    }
  }
}

function softenPlane(p: Float32Array, { width, height, on }: LinearPlanes, weight: number): void {
  const own = 1 - 2 * weight;
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
      if (on[row + x]) p[row + x] = weight * (l + right) + own * v;
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
      p[i] = weight * (up + down) + own * v;
    }
    above.set(here);
  }
}
