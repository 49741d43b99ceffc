import { dice } from './dice.ts';
import type { DrawnSheet } from './draw-sheet.ts';
import { toImage } from './draw-sheet.ts';
import { halftone, printable } from './halftone.ts';
import type { SpoiltSheet } from './kinds.ts';
import { blurred, photograph } from './photograph.ts';
import { jpeg, noise } from './spoil.ts';
import { drawStrokes, type StrokeSheet } from './strokes.ts';

/** What the world does to a sheet of thin strokes. */
export type StrokeDamage = 'clean' | 'jpeg' | 'photo' | 'halftone 150';

export const strokeDamages: readonly StrokeDamage[] = ['clean', 'jpeg', 'photo', 'halftone 150'];

/** As a reader gets it; `within` stands beside each ink: a JPEG leaves strokes under 4 px less than that of their colour. */
export interface SpoiltStrokes extends Omit<SpoiltSheet, 'within'> {
  readonly within: readonly number[];
}

/** Draws the sheet of thin strokes of a seed, spoils it, and cuts off some pixels of its left and its top. */
export async function spoiltStrokes(kind: StrokeDamage, seed: number): Promise<SpoiltStrokes> {
  const roll = dice(seed * 1777 + 7);
  const [left, top] = [roll.whole(0, 60), roll.whole(0, 60)];
  if (kind === 'halftone 150') return printedStrokes(seed, left, top);
  const drawn = drawStrokes(seed);
  const { truth, widths } = drawn;
  const crop = { x: left, y: top, width: drawn.width - left, height: drawn.height - top };
  const each = (within: number, ofThin = within): number[] =>
    truth.inks.map(({ label }) => (widths[label]! > 0 && widths[label]! < 4 ? ofThin : within));
  const plain = { truth, options: { crop }, tooSmall: [], period: null };
  if (kind === 'clean') return { ...plain, within: each(3), image: toImage(drawn) };
  if (kind === 'jpeg')
    return { ...plain, within: each(3, 6), image: await jpeg(noise(toImage(drawn), 3, seed), 75) };
  const casts = ['adaptation', 'gains', 'spectra'] as const;
  const shot = await photograph(drawn, seed, casts[seed % casts.length]!);
  const sheet = { ...crop, x: shot.crop.x + left, y: shot.crop.y + top };
  return { ...plain, within: each(5), image: shot.image, options: { crop: sheet, card: shot.card } };
}

/** Four screens of 150 lines an inch, scanned at 300: a stroke is asked for from two screen periods on. */
function printedStrokes(seed: number, left: number, top: number): SpoiltStrokes {
  const drawn: StrokeSheet = drawStrokes(seed, { only: printable, width: 1200 });
  const { linear, truth } = halftone(drawn, { lpi: 150, ppi: 300 });
  const soft: Pick<DrawnSheet, 'width' | 'height' | 'linear'> = {
    width: drawn.width,
    height: drawn.height,
    linear: blurred(linear, drawn.width, drawn.height, 0.45),
  };
  const period = 2;
  const width = (label: number): number => drawn.widths[label]!;
  return {
    image: noise(toImage(soft), 1.5, seed),
    options: { crop: { x: left, y: top, width: drawn.width - left, height: drawn.height - top } },
    truth,
    within: truth.inks.map(() => 4),
    tooSmall: truth.inks.flatMap(({ label }, n) =>
      width(label) > 0 && width(label) < 2 * period ? [n] : [],
    ),
    period,
  };
}
