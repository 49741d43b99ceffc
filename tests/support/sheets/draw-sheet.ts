import type { PixelImage } from '../../../src/sheet/model.ts';
import { type Dice, dice } from './dice.ts';
import { LabelCanvas } from './label-canvas.ts';
import { patterns, strew } from './patterns.ts';
import { farEnough, linearOf, type Rgb3, randomInk } from './truth-colour.ts';

/** What is known of a drawn sheet: its inks as encoded sRGB 0–255 and their true shares, base first. */
export interface Truth {
  readonly pattern: string;
  readonly baseKind: 'white' | 'cream' | 'kraft' | 'tinted' | 'dark';
  readonly inks: readonly {
    readonly rgb: Rgb3;
    readonly share: number;
    readonly accent: boolean;
    /** Its number on the label canvas. */
    readonly label: number;
  }[];
}

/** A sheet before it meets the world: linear light, three numbers a pixel, and which ink lies where. */
export interface DrawnSheet {
  readonly width: number;
  readonly height: number;
  readonly linear: Float32Array;
  readonly truth: Truth;
  /** Label at each pixel's most frequent sample. */
  readonly labels: Uint8Array;
  /** What was drawn, at `samples` a pixel and axis, and the colour of each label. */
  readonly canvas: LabelCanvas;
  readonly samples: number;
  readonly colours: readonly Rgb3[];
  /** The same drawing in other colours (linear light), one for each ink: what a lamp or a screen makes of it. */
  repaint(colours: readonly Rgb3[]): Float32Array;
}

export interface DrawOptions {
  readonly width?: number;
  readonly height?: number;
  readonly pattern?: string;
  readonly baseKind?: Truth['baseKind'];
  /** Least ΔE₀₀ between any two inks. Default 12. */
  readonly apart?: number;
  /** Number of main inks; default 2–5. */
  readonly inks?: number;
  /** Samples a pixel and axis; default 3. */
  readonly samples?: number;
  /** Size of an accent's features in pixels; default 0.7–1.6 % of the width. */
  readonly accentSize?: number;
  readonly accent?: boolean;
  /** A further condition on each ink, given the base. */
  readonly only?: (rgb: Rgb3, base: Rgb3) => boolean;
}

const bases: Record<Truth['baseKind'], (roll: Dice) => Rgb3> = {
  white: (r) => {
    const v = r.whole(243, 254);
    return [v - r.whole(0, 3), v - r.whole(0, 2), v - r.whole(0, 4)];
  },
  cream: (r) => {
    const v = r.whole(242, 253);
    const g = v - r.whole(7, 15);
    return [v, g, g - r.whole(14, 30)];
  },
  kraft: (r) => {
    const k = r.between(0.92, 1.05);
    return [Math.round(187 * k), Math.round(148 * k), Math.round(108 * k)];
  },
  tinted: (r) =>
    r.pick<Rgb3>([
      [206, 228, 226],
      [240, 210, 214],
      [214, 222, 240],
      [222, 234, 204],
      [232, 214, 236],
      [250, 226, 160],
    ]),
  dark: (r) =>
    r.pick<Rgb3>([
      [30, 40, 66],
      [44, 44, 48],
      [58, 28, 42],
      [26, 54, 50],
      [62, 44, 34],
    ]),
};

/** Draws a sheet of known inks. The same seed draws the same sheet. */
export function drawSheet(seed: number, options: DrawOptions = {}): DrawnSheet {
  const roll = dice(seed * 7919 + 17);
  const width = options.width ?? 900;
  const height = options.height ?? width;
  const samples = options.samples ?? 3;
  const names = Object.keys(patterns);
  const pattern = options.pattern ?? names[seed % names.length]!;
  const kinds = ['white', 'cream', 'white', 'kraft', 'tinted', 'white', 'dark'] as const;
  const baseKind = options.baseKind ?? kinds[Math.floor(seed / names.length + seed) % kinds.length]!;
  const main = options.inks ?? roll.whole(2, 5);
  const accent = options.accent ?? roll.next() < 0.7;
  const colours: Rgb3[] = [bases[baseKind](roll)];
  const apart = options.apart ?? 12;
  while (colours.length < 1 + main + (accent ? 1 : 0)) {
    const vivid = accent && colours.length === 1 + main;
    const next = randomInk(roll, vivid);
    if (options.only && !options.only(next, colours[0]!)) continue;
    if (farEnough(next, colours, apart, vivid ? 20 : apart)) colours.push(next);
  }
  const canvas = new LabelCanvas(width * samples, height * samples);
  patterns[pattern]!(canvas, main, roll);
  if (accent) {
    const size = (options.accentSize ?? width * roll.between(0.007, 0.016)) * samples;
    strew(canvas, 1 + main, roll.between(0.009, 0.028), size, roll);
  }
  return sheetOf(canvas, samples, colours, pattern, baseKind);
}

/** A sheet of what was drawn: shares counted, painted in linear light. */
export function sheetOf(
  canvas: LabelCanvas,
  samples: number,
  colours: readonly Rgb3[],
  pattern: string,
  baseKind: Truth['baseKind'],
): DrawnSheet {
  const width = canvas.width / samples;
  const height = canvas.height / samples;
  const counts = new Uint32Array(colours.length);
  const all = canvas.labels;
  const total = all.length;
  for (let i = 0; i < total; i++) counts[all[i]!]!++;
  const inks = colours
    .map((rgb, n) => ({
      rgb,
      share: counts[n]! / total,
      accent: n > 0 && counts[n]! / total < 0.05,
      label: n,
    }))
    .filter((ink, n) => n === 0 || ink.share > 0.004);
  const labels = new Uint8Array(width * height);
  const middle = samples >> 1;
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      labels[y * width + x] = canvas.labels[(y * samples + middle) * canvas.width + x * samples + middle]!;
  const repaint = (lin: readonly Rgb3[]): Float32Array => painted(canvas, samples, lin);
  return {
    width,
    height,
    canvas,
    samples,
    colours,
    linear: repaint(colours.map(linearOf)),
    labels,
    repaint,
    truth: { pattern, baseKind, inks },
  };
}

/** Each pixel is the sum of its samples in reading order, rounded to a float at each step. */
function painted(canvas: LabelCanvas, samples: number, lin: readonly Rgb3[]): Float32Array {
  const width = canvas.width / samples;
  const height = canvas.height / samples;
  const linear = new Float32Array(width * height * 3);
  const k = 1 / (samples * samples);
  const parts = Float64Array.from(lin.flatMap((c) => c.map((v) => v * k)));
  // What a pixel comes to whose samples are all of one label: most are.
  const solid = new Float32Array(parts.length);
  for (let n = 0; n < solid.length; n++) for (let i = 0; i < samples * samples; i++) solid[n]! += parts[n]!;
  const { labels } = canvas;
  for (let y = 0, at = 0; y < height; y++)
    for (let x = 0; x < width; x++, at += 3) {
      const corner = y * samples * canvas.width + x * samples;
      const end = corner + samples * canvas.width;
      const first = labels[corner]!;
      let same = true;
      for (let row = corner; same && row < end; row += canvas.width)
        for (let i = row; i < row + samples; i++) if (labels[i] !== first) same = false;
      if (same) {
        for (let c = 0; c < 3; c++) linear[at + c] = solid[first * 3 + c]!;
        continue;
      }
      for (let row = corner; row < end; row += canvas.width)
        for (let i = row; i < row + samples; i++) {
          const n = labels[i]! * 3;
          linear[at]! += parts[n]!;
          linear[at + 1]! += parts[n + 1]!;
          linear[at + 2]! += parts[n + 2]!;
        }
    }
  return linear;
}

/** 8-bit sRGB of linear light, alpha 255. */
export function toImage(sheet: Pick<DrawnSheet, 'width' | 'height' | 'linear'>): PixelImage {
  const { width, height, linear } = sheet;
  const data = new Uint8ClampedArray(width * height * 4);
  for (let i = 0, from = 0; i < data.length; i += 4, from += 3) {
    data[i] = encoded(linear[from]!);
    data[i + 1] = encoded(linear[from + 1]!);
    data[i + 2] = encoded(linear[from + 2]!);
    data[i + 3] = 255;
  }
  return { data, width, height };
}

/** The 8-bit level of a float of linear light, by the least float of each level. */
function encoded(v: number): number {
  if (v >= 1) return 255;
  if (!(v > 0)) return 0;
  let level = startLevels[Math.floor(v * startLevels.length)]!;
  while (v >= leastOf[level + 1]!) level++;
  return level;
}

/** The least float of linear light that each 8-bit level stands for. The level only rises with the light. */
const leastOf: Float32Array = (() => {
  const level = new Uint8ClampedArray(1);
  const bits = new Uint32Array(1);
  const float = new Float32Array(bits.buffer);
  return Float32Array.from({ length: 257 }, (_, n) => {
    if (n === 256) return Number.POSITIVE_INFINITY;
    let [low, high] = [0, 0x3f800000];
    while (low < high) {
      bits[0] = (low + high) >> 1;
      const v = float[0]!;
      level[0] = 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);
      if (level[0]! >= n) high = bits[0]!;
      else low = bits[0]! + 1;
    }
    bits[0] = low;
    return float[0]!;
  });
})();

/** The level at the start of each of 4096 equal steps of linear light. */
const startLevels: Uint8Array = (() => {
  const levels = new Uint8Array(4096);
  for (let i = 0, n = 0; i < levels.length; i++) {
    while (i / levels.length >= leastOf[n + 1]!) n++;
    levels[i] = n;
  }
  return levels;
})();
