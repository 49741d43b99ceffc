import { inkLimits, pageLimits } from '../harmony/thresholds.ts';
import type { Side } from '../sheet/model.ts';
import { inksOf } from './says.ts';
import { lightnessOf } from './strip-look.ts';

/** A stretch of lightness, CIELAB L* 0–100. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/**
 * The widest stretch of L* between two neighbouring inks of the given sides that holds no ink, or null where there is
 * none that a photograph can sit in. By the same limits as the reason that speaks of it: specks do not count, and on
 * papers of one lightness nothing is a gap.
 */
export function emptyStretch(sides: readonly Side[]): Stretch | null {
  const lightness = sides
    .flatMap((side) => inksOf(side).filter((ink) => ink.share >= inkLimits.strayShare))
    .map(lightnessOf)
    .sort((a, b) => a - b);
  if (lightness.length < 2 || lightness.at(-1)! - lightness[0]! < pageLimits.flatRange) return null;
  let widest: Stretch = { from: lightness[0]!, to: lightness[0]! };
  for (let i = 1; i < lightness.length; i += 1) {
    const stretch = { from: lightness[i - 1]!, to: lightness[i]! };
    if (stretch.to - stretch.from > widest.to - widest.from) widest = stretch;
  }
  return widest.to - widest.from < pageLimits.photoGap ? null : widest;
}
