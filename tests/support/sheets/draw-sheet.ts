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
  return finish(canvas, samples, colours, pattern, baseKind);
}

function finish(
  canvas: LabelCanvas,
  samples: number,
  colours: readonly Rgb3[],
  pattern: string,
  baseKind: Truth['baseKind'],
): DrawnSheet {
  const width = canvas.width / samples;
  const height = canvas.height / samples;
  const counts = new Float64Array(colours.length);
  for (const k of canvas.labels) counts[k]!++;
  const total = canvas.labels.length;
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

function painted(canvas: LabelCanvas, samples: number, lin: readonly Rgb3[]): Float32Array {
  const width = canvas.width / samples;
  const height = canvas.height / samples;
  const linear = new Float32Array(width * height * 3);
  const k = 1 / (samples * samples);
  for (let y = 0; y < canvas.height; y++)
    for (let x = 0; x < canvas.width; x++) {
      const c = lin[canvas.labels[y * canvas.width + x]!]!;
      const at = (Math.floor(y / samples) * width + Math.floor(x / samples)) * 3;
      linear[at]! += c[0] * k;
      linear[at + 1]! += c[1] * k;
      linear[at + 2]! += c[2] * k;
    }
  return linear;
}

/** 8-bit sRGB of linear light, alpha 255. */
export function toImage(sheet: Pick<DrawnSheet, 'width' | 'height' | 'linear'>): PixelImage {
  const data = new Uint8ClampedArray(sheet.width * sheet.height * 4);
  for (let i = 0, n = sheet.width * sheet.height; i < n; i++) {
    for (let c = 0; c < 3; c++) {
      const v = Math.min(1, Math.max(0, sheet.linear[i * 3 + c]!));
      data[i * 4 + c] = 255 * (v <= 0.0031308 ? 12.92 * v : 1.055 * v ** (1 / 2.4) - 0.055);
    }
    data[i * 4 + 3] = 255;
  }
  return { data, width: sheet.width, height: sheet.height };
}
