import type { Ink } from '../../sheet/model.ts';
import { bothChromatic, type Tied, tiedOf } from '../measure/links.ts';
import { type MeasuredInk, type MeasuredSide, measureColour } from '../measure/measured.ts';
import type { Distance } from '../model.ts';
import { linkLimits } from '../thresholds.ts';
import { tieWeight } from './weights.ts';

/** How one colour answers another: the same again, a tone of it, or kin on the wheel. */
export type Answers = 'repeat' | 'lighter' | 'darker' | 'stronger' | 'paler' | 'neighbour' | 'opposite';

/** An ink that something answers, and how. */
export interface Answered {
  readonly ink: MeasuredInk;
  readonly how: Answers;
}

/** How the second ink of a link answers the first, or null where it does not. */
export function answersOf({ link }: Pick<Tied, 'link'>): Answers | null {
  switch (link.kind) {
    case 'repeat':
    case 'neighbour':
    case 'opposite':
      return link.kind;
    case 'tonal':
      if (Math.abs(link.dV) >= linkLimits.tonalValueSteps / 2) return link.dV > 0 ? 'lighter' : 'darker';
      return link.dC > 0 ? 'stronger' : 'paler';
    default:
      return null;
  }
}

/** The ink of a side that a colour laid elsewhere answers best: one that it repeats before its kin; null where none. */
export function answeredOn(side: MeasuredSide, colour: Ink, distance: Distance): Answered | null {
  const of = side.inks[0]!.of === 'anchor' ? 'candidate' : 'anchor';
  const measured = measureColour(colour);
  const laid = (share: number): MeasuredInk => ({
    ...measured,
    ink: colour,
    id: colour.id,
    share,
    isBase: false,
    actsAs: measured.neutral,
    of,
  });
  const found = side.inks
    .map((ink) => tiedOf(ink, laid(ink.share), distance))
    .filter(({ a, b }) => bothChromatic(a, b))
    .flatMap((tied) => {
      const how = answersOf(tied);
      return how === null ? [] : [{ ink: tied.a, how, weight: tieWeight(tied, distance) }];
    })
    .sort((one, other) => first(one.how) - first(other.how) || other.weight - one.weight);
  return found[0] ? { ink: found[0].ink, how: found[0].how } : null;
}

const first = (how: Answers): number => (how === 'repeat' ? 0 : 1);
