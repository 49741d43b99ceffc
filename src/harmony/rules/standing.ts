import type { MeasuredInk } from '../measure/measured.ts';
import { linksOf, type Pair } from '../measure/pair.ts';
import type { Standing } from '../model.ts';
import type { Judgement } from './verdict.ts';

/**
 * What a ranking goes by after the verdict, both directions apart: how much of the anchor finds a partner, and how
 * much of the candidate intrudes.
 * Source: after the minimum-colour-difference model, Q. Pan, S. Westland 2018; the order is ours.
 */
export function standingOf(pair: Pair, { troubles }: Judgement): Standing {
  const anchorInks = pair.anchor.inks.length > 1 ? pair.anchor.inks.slice(1) : pair.anchor.inks;
  const area = sum(anchorInks);
  const answered = sum(anchorInks.filter((ink) => isAnswered(pair, ink)));
  const intruders = pair.candidate.inks.filter((ink) => ink.actsAs === null && !isAnswered(pair, ink));
  return {
    worst: troubles[0]?.weight ?? 0,
    answered: area > 0 ? answered / area : 1,
    intrudes: sum(intruders),
  };
}

function isAnswered(pair: Pair, ink: MeasuredInk): boolean {
  return linksOf(pair, ink).some(({ link }) => link.kind !== 'unrelated' && link.kind !== 'near miss');
}

function sum(inks: readonly MeasuredInk[]): number {
  return inks.reduce((total, ink) => total + ink.share, 0);
}
