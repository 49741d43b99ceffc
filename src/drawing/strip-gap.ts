import { labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import type { Side } from '../sheet/model.ts';
import { inksOf } from './says.ts';

/** A stretch of lightness, CIELAB L* 0–100. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Narrower stretches are not worth a word; L*, our choice. */
export const smallestStretch = 12;

/**
 * The widest stretch of L* between two neighbouring inks of the given sides that holds no ink, or null where it is
 * narrower than 12. A photograph whose tones lie there stands out from both papers.
 */
export function emptyStretch(sides: readonly Side[]): Stretch | null {
  const lightness = sides
    .flatMap((side) => inksOf(side).map((ink) => labFromOklch(oklchFromTuple(ink.oklch)).l))
    .sort((a, b) => a - b);
  let widest: Stretch | null = null;
  for (let i = 1; i < lightness.length; i += 1) {
    const from = lightness[i - 1]!;
    const to = lightness[i]!;
    if (to - from >= smallestStretch && to - from > (widest ? widest.to - widest.from : 0))
      widest = { from, to };
  }
  return widest;
}
