import { linearFromEncoded, rgbFromHex } from '../colour/spaces.ts';

/** The side of every demo sheet, in millimetres (12 in). */
export const sideMm = 305;

/** A square of linear light that shapes are printed on; places are in millimetres from the top left. */
export interface Raster {
  /** Pixels along one side. */
  readonly px: number;
  /** Red, green and blue of each pixel, 0–1, rows from the top. */
  readonly light: Float32Array;
  /** Scratch for the coverage of one shape, two entries more a row than there are pixels; zero between calls. */
  readonly cover: Float32Array;
}

/** One closed outline: x0, y0, x1, y1 … in millimetres. */
export type Outline = readonly number[];

/** A sheet of one colour, `px` pixels along each side. */
export function blankRaster(px: number, hex: string): Raster {
  const [r, g, b] = lightOf(hex);
  const light = new Float32Array(px * px * 3);
  for (let i = 0; i < light.length; i += 3) {
    light[i] = r;
    light[i + 1] = g;
    light[i + 2] = b;
  }
  return { px, light, cover: new Float32Array(px * (px + 2)) };
}

/** Linear red, green and blue of a colour, 0–1. */
export function lightOf(hex: string): readonly [number, number, number] {
  const { r, g, b } = rgbFromHex(hex);
  return [linearFromEncoded(r), linearFromEncoded(g), linearFromEncoded(b)];
}

/**
 * Prints outlines in one ink. Every pixel is covered by exactly the area that lies inside (where outlines overlap,
 * once), so that edges come out as a scanner averages them: in linear light.
 * @param opacity 0–1, default 1.
 */
export function print(raster: Raster, outlines: readonly Outline[], hex: string, opacity = 1): void {
  const { px, light, cover } = raster;
  const box = boundsOf(outlines, px);
  if (box === null) return;
  for (const outline of outlines) addEdges(cover, outline, px, box);
  const [r, g, b] = lightOf(hex);
  for (let y = box.top; y < box.bottom; y += 1) {
    const row = y * (px + 2);
    let sum = 0;
    for (let x = box.left; x < box.right; x += 1) {
      sum += cover[row + x]!;
      const inside = Math.min(1, Math.abs(sum)) * opacity;
      if (inside < 1e-4) continue;
      const i = (y * px + x) * 3;
      light[i] = light[i]! + (r - light[i]!) * inside;
      light[i + 1] = light[i + 1]! + (g - light[i + 1]!) * inside;
      light[i + 2] = light[i + 2]! + (b - light[i + 2]!) * inside;
    }
    cover.fill(0, row + box.left, row + box.right + 2);
  }
}

interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

function boundsOf(outlines: readonly Outline[], px: number): Box | null {
  let [left, right, top, bottom] = [Infinity, -Infinity, Infinity, -Infinity];
  for (const outline of outlines) {
    for (let i = 0; i < outline.length; i += 2) {
      left = Math.min(left, outline[i]!);
      right = Math.max(right, outline[i]!);
      top = Math.min(top, outline[i + 1]!);
      bottom = Math.max(bottom, outline[i + 1]!);
    }
  }
  const scale = px / sideMm;
  const box = {
    left: Math.max(0, Math.floor(left * scale)),
    right: Math.min(px, Math.ceil(right * scale) + 1),
    top: Math.max(0, Math.floor(top * scale)),
    bottom: Math.min(px, Math.ceil(bottom * scale)),
  };
  return box.left < box.right && box.top < box.bottom ? box : null;
}

/**
 * Adds each edge's change of coverage, row by row: running sums along a row then give the area inside. What lies left
 * of the sheet counts from its first pixel, and what lies right of it not at all.
 */
function addEdges(cover: Float32Array, outline: Outline, px: number, box: Box): void {
  const scale = px / sideMm;
  const count = outline.length;
  for (let i = 0; i < count; i += 2) {
    const next = (i + 2) % count;
    addEdge(
      cover,
      outline[i]! * scale,
      outline[i + 1]! * scale,
      outline[next]! * scale,
      outline[next + 1]! * scale,
      px,
      box,
    );
  }
}

function addEdge(
  cover: Float32Array,
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  px: number,
  box: Box,
): void {
  if (y0 === y1) return;
  const down = y0 < y1 ? 1 : -1;
  const [xTop, yTop, xEnd, yEnd] = down > 0 ? [x0, y0, x1, y1] : [x1, y1, x0, y0];
  const slope = (xEnd - xTop) / (yEnd - yTop);
  const from = Math.max(yTop, box.top);
  const to = Math.min(yEnd, box.bottom);
  for (let y = Math.floor(from); y < to; y += 1) {
    const [a, b] = [Math.max(y, from), Math.min(y + 1, to)];
    if (b <= a) continue;
    const height = (b - a) * down;
    const xa = clamp(xTop + (a - yTop) * slope, 0, px);
    const xb = clamp(xTop + (b - yTop) * slope, 0, px);
    addSpan(cover, y * (px + 2), Math.min(xa, xb), Math.max(xa, xb), height);
  }
}

/** One edge within one row: the height that it crosses, shared over the pixels that it passes. */
function addSpan(cover: Float32Array, row: number, left: number, right: number, height: number): void {
  const first = Math.floor(left);
  if (right <= first + 1) {
    const inFirst = first + 1 - (left + right) / 2;
    cover[row + first] = cover[row + first]! + height * inFirst;
    cover[row + first + 1] = cover[row + first + 1]! + height * (1 - inFirst);
    return;
  }
  const perPixel = height / (right - left);
  let [passed, before, x] = [0, 0, first];
  for (; x < right; x += 1) {
    const [a, b] = [Math.max(left, x), Math.min(right, x + 1)];
    const here = passed + perPixel * (b - a) * (x + 1 - (a + b) / 2);
    cover[row + x] = cover[row + x]! + here - before;
    passed += perPixel * (b - a);
    before = here;
  }
  cover[row + x] = cover[row + x]! + height - before;
}

function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value));
}
