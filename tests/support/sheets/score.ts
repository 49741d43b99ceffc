import type { Side } from '../../../src/sheet/model.ts';
import type { Truth } from './draw-sheet.ts';
import { apartBy, type Rgb3, rgbOfHex } from './truth-colour.ts';

/** How well a list of swatches answers what was drawn. */
export interface Score {
  /** True inks (base among them), and how many were found. */
  readonly inks: number;
  readonly found: number;
  /** The same without those that are too small to be asked for. */
  readonly asked: number;
  readonly askedFound: number;
  readonly accents: number;
  readonly accentsFound: number;
  /** Swatches that belong to no true ink. */
  readonly invented: number;
  /** Largest error of a share among the found, in points of a hundred. */
  readonly shareError: number;
  readonly missed: readonly string[];
  readonly extra: readonly string[];
}

/** `tooSmall` are the numbers of inks that are not asked for among the accents. Each true ink takes its nearest free swatch within `within` ΔE₀₀ (of all, or of each). A swatch that answers no ink is invented, unless it lies within that reach of one. */
export function score(
  truth: Truth,
  swatches: readonly { rgb: Rgb3; share: number }[],
  within: number | readonly number[],
  tooSmall: readonly number[] = [],
): Score {
  const reach = (i: number): number => (typeof within === 'number' ? within : within[i]!);
  const pairs = truth.inks
    .flatMap((ink, i) => swatches.map((s, j) => ({ i, j, d: apartBy(ink.rgb, s.rgb) })))
    .sort((p, q) => p.d - q.d);
  const inkOf = new Map<number, number>();
  const swatchOf = new Map<number, number>();
  for (const { i, j, d } of pairs) {
    if (d > reach(i) || swatchOf.has(i) || inkOf.has(j)) continue;
    swatchOf.set(i, j);
    inkOf.set(j, i);
  }
  let shareError = 0;
  for (const [i, j] of swatchOf)
    shareError = Math.max(shareError, 100 * Math.abs(truth.inks[i]!.share - swatches[j]!.share));
  const missed = truth.inks.flatMap((ink, i) => {
    if (swatchOf.has(i)) return [];
    const near = Math.min(...pairs.filter((p) => p.i === i).map((p) => p.d));
    return [
      `${i === 0 ? 'base' : ink.accent ? 'accent' : 'ink'} ${ink.rgb} ${(100 * ink.share).toFixed(1)}% nearest ${near.toFixed(1)}`,
    ];
  });
  const extra = swatches.flatMap((s, j) => {
    if (inkOf.has(j)) return [];
    const near = Math.min(...pairs.filter((p) => p.j === j).map((p) => p.d));
    return [`${s.rgb} ${(100 * s.share).toFixed(1)}% nearest ${near.toFixed(1)}`];
  });
  const asked = truth.inks.flatMap((_, i) => (tooSmall.includes(i) ? [] : [i]));
  const accents = truth.inks.flatMap((ink, i) => (ink.accent && !tooSmall.includes(i) ? [i] : []));
  return {
    inks: truth.inks.length,
    found: swatchOf.size,
    asked: asked.length,
    askedFound: asked.filter((i) => swatchOf.has(i)).length,
    accents: accents.length,
    accentsFound: accents.filter((i) => swatchOf.has(i)).length,
    invented: extra.length,
    shareError,
    missed,
    extra,
  };
}

export function swatchesOf(side: Side): { rgb: Rgb3; share: number }[] {
  return [side.base, ...side.inks].map((ink) => ({ rgb: rgbOfHex(ink.hex), share: ink.share }));
}
