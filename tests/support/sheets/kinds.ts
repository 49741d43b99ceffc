import type { PixelImage, ReadOptions } from '../../../src/sheet/model.ts';
import { type DrawnSheet, drawSheet, type Truth, toImage } from './draw-sheet.ts';
import { featureSizes } from './feature-size.ts';
import { halftone, printable } from './halftone.ts';
import { blurred, type CastKind, photograph } from './photograph.ts';
import { jpeg, noise } from './spoil.ts';

/** What the world does to a sheet on its way to the reader. */
export type Damage =
  | 'clean'
  | 'jpeg'
  | 'soft scan'
  | 'photo, adaptation'
  | 'photo, gains'
  | 'photo, spectra'
  | 'halftone 150'
  | 'halftone 100'
  | 'halftone 75';

export const damages: readonly Damage[] = [
  'clean',
  'jpeg',
  'soft scan',
  'photo, adaptation',
  'photo, gains',
  'photo, spectra',
  'halftone 150',
  'halftone 100',
  'halftone 75',
];

/** A sheet as a reader gets it, and what is true of it. */
export interface SpoiltSheet {
  readonly image: PixelImage;
  readonly options: ReadOptions;
  readonly truth: Truth;
  /** ΔE₀₀ within which an ink counts as found. */
  readonly within: number;
  /** Numbers of the true inks whose features are too small to be asked for: under two screen periods. */
  readonly tooSmall: readonly number[];
  /** Period of the screen in pixels, for those that cannot find it. */
  readonly period: number | null;
}

/** Draws the sheet of a seed and spoils it. The same kind and seed give the same picture. */
export async function spoiltSheet(kind: Damage, seed: number): Promise<SpoiltSheet> {
  const lpi = /^halftone (\d+)$/.exec(kind);
  if (lpi) return printed(seed, Number(lpi[1]), 300);
  const drawn = drawSheet(seed);
  const plain = { truth: drawn.truth, options: {}, within: 3, tooSmall: [], period: null };
  if (kind === 'clean') return { ...plain, image: toImage(drawn) };
  if (kind === 'jpeg') return { ...plain, image: await jpeg(noise(toImage(drawn), 3, seed), 75) };
  if (kind === 'soft scan') {
    const linear = blurred(drawn.linear, drawn.width, drawn.height, 0.9);
    return { ...plain, image: await jpeg(noise(toImage({ ...drawn, linear }), 2, seed), 85) };
  }
  const { image, crop, card } = await photograph(drawn, seed, kind.slice('photo, '.length) as CastKind);
  return { ...plain, image, options: { crop, card }, within: 5 };
}

/** Four screens at `lpi` lines an inch, scanned at `ppi`, with a scanner's slight blur and noise. */
export function printed(seed: number, lpi: number, ppi: number, width = 1200): SpoiltSheet {
  const drawn: DrawnSheet = drawSheet(seed, { only: printable, width });
  const { linear, truth } = halftone(drawn, { lpi, ppi });
  const soft = blurred(linear, drawn.width, drawn.height, 0.45);
  const sizes = featureSizes(drawn.canvas, drawn.samples);
  const period = ppi / lpi;
  const tooSmall = truth.inks.flatMap((ink, n) => (sizes[ink.label]! < 2 * period ? [n] : []));
  return {
    image: noise(toImage({ ...drawn, linear: soft }), 1.5, seed),
    options: {},
    truth,
    within: 4,
    tooSmall,
    period,
  };
}
