import { type Dice, dice } from './dice.ts';
import { type DrawnSheet, sheetOf, type Truth } from './draw-sheet.ts';
import { LabelCanvas } from './label-canvas.ts';
import { strokePatterns } from './stroke-patterns.ts';
import { farEnough, type Rgb3, randomInk } from './truth-colour.ts';

/** A sheet of thin strokes, and how wide those of each label are, in pixels; 0 where a label has broad places. */
export interface StrokeSheet extends DrawnSheet {
  readonly widths: readonly number[];
}

export interface StrokeOptions {
  readonly width?: number;
  readonly pattern?: string;
  readonly baseKind?: Truth['baseKind'];
  /** Widths of strokes in pixels. Default 2–5. */
  readonly strokes?: readonly [number, number];
  /** A further condition on each ink, given the base. */
  readonly only?: (rgb: Rgb3, base: Rgb3) => boolean;
}

const grounds: Record<'white' | 'cream' | 'kraft' | 'tinted', (roll: Dice) => Rgb3> = {
  white: (r) => {
    const v = r.whole(243, 254);
    return [v, v - r.whole(0, 2), v - r.whole(0, 4)];
  },
  cream: (r) => {
    const v = r.whole(243, 252);
    return [v, v - r.whole(8, 14), v - r.whole(24, 40)];
  },
  // Kraft is not one brown: from a reddish one to one as yellow as #bca26d.
  kraft: (r) => {
    const [t, k] = [r.next(), r.between(0.93, 1.05)];
    return [Math.round(k * 187), Math.round(k * (148 + 13 * t)), Math.round(k * 108)];
  },
  tinted: (r) =>
    r.pick<Rgb3>([
      [204, 226, 228],
      [238, 208, 214],
      [212, 220, 241],
      [220, 233, 202],
      [230, 212, 235],
      [181, 205, 194],
    ]),
};

/** Draws a sheet whose inks are mostly strokes of 2–5 px. The same seed draws the same sheet. */
export function drawStrokes(seed: number, options: StrokeOptions = {}): StrokeSheet {
  const roll = dice(seed * 6571 + 29);
  const samples = 3;
  const width = options.width ?? 900;
  const names = Object.keys(strokePatterns);
  const pattern = options.pattern ?? names[seed % names.length]!;
  const kinds = ['white', 'cream', 'kraft', 'tinted'] as const;
  const baseKind = (options.baseKind ??
    kinds[Math.floor(seed / names.length) % kinds.length]!) as (typeof kinds)[number];
  const [least, most] = options.strokes ?? [2, 5];
  const { broad, thin, draw } = strokePatterns[pattern]!;
  const fills = roll.whole(...broad);
  const lines = roll.whole(...thin);
  // On every other sheet inks lie closer than the twelve that other sheets keep.
  const apart = roll.next() < 0.5 ? roll.between(8, 12) : 12;
  const colours: Rgb3[] = [grounds[baseKind](roll)];
  while (colours.length < 1 + fills + lines) {
    const next = randomInk(roll, roll.next() < 0.3);
    if (options.only && !options.only(next, colours[0]!)) continue;
    if (farEnough(next, colours, apart, apart)) colours.push(next);
  }
  const widths = colours.map((_, n) => (n > fills ? roll.between(least, most) : 0));
  const canvas = new LabelCanvas(width * samples, width * samples);
  draw({
    on: canvas,
    fills: colours.flatMap((_, n) => (n > 0 && n <= fills ? [n] : [])),
    lines: colours.flatMap((_, n) => (n > fills ? [{ label: n, width: widths[n]! * samples }] : [])),
    px: samples,
    roll,
  });
  return { ...sheetOf(canvas, samples, colours, pattern, baseKind), widths };
}
