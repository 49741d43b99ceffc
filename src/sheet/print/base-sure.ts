import { labFromOklch, oklchFromTuple } from '../../colour/spaces.ts';
import { steadyExp } from '../../colour/steady.ts';
import type { Base, Side } from '../model.ts';
import { baseKind } from './base.ts';

/** How far a base is off what it was read as, in CIELAB units (standard deviation), with the light known and without. Ours. */
const readingError = { lightKnown: 1.5, lightUnknown: 4 };
/** As far as a border between two kinds is looked for, in the same units. */
const farthest = 12;

/** What is said of a base: its kind, b* (CIELAB D65, how yellow it is) and how sure the kind is. */
export interface GroundSaid {
  readonly b: number;
  /** 0–1; null where a hand has set the colour. */
  readonly sure: number | null;
}

/**
 * b* of a side's base, and how sure its kind is: the chance that a reading off by the usual error has not crossed the
 * nearest border between two kinds (the normal distribution along one axis of CIELAB at a time). The errors are ours.
 */
export function groundSaid({ base, light }: Pick<Side, 'base' | 'light'>): GroundSaid {
  const { b } = labFromOklch(oklchFromTuple(base.oklch));
  if (base.byHand) return { b, sure: null };
  const error = light.known ? readingError.lightKnown : readingError.lightUnknown;
  const away = borderAway(base) / error;
  return { b, sure: Math.min(0.99, Math.max(0.5, chanceBelow(away))) };
}

/** "b* 13.1, 88 % sure": what stands beside the kind of a base. */
export function groundWords(side: Pick<Side, 'base' | 'light'>): string {
  const { b, sure } = groundSaid(side);
  const words = `b* ${(Math.round(b * 10) / 10 + 0).toFixed(1).replace('-', '−')}`;
  return sure === null ? words : `${words}, ${Math.round(sure * 100)} % sure`;
}

/** How far the base's colour lies from the nearest one of another kind, along L*, a* or b*; at most `farthest`. */
function borderAway(base: Base): number {
  const lab = labFromOklch(oklchFromTuple(base.oklch));
  const kind = baseKind(lab);
  for (let away = 0.5; away < farthest; away += 0.5)
    for (const axis of ['l', 'a', 'b'] as const)
      for (const sign of [-1, 1])
        if (baseKind({ ...lab, [axis]: lab[axis] + sign * away }) !== kind) return away;
  return farthest;
}

/** The normal distribution up to `z` deviations. Source of the fit: Abramowitz & Stegun 1964, 26.2.17 (error below 7.5e-8). */
function chanceBelow(z: number): number {
  const t = 1 / (1 + 0.2316419 * z);
  const tail =
    t * (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return 1 - (steadyExp(-(z * z) / 2) / Math.sqrt(2 * Math.PI)) * tail;
}
