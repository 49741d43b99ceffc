import type { Side } from '../../sheet/model.ts';
import { takeSide } from '../measure/take-side.ts';
import type { FamilySide, Standing, Verdict } from '../model.ts';
import { balanceOf, type Lying } from '../whole/findings.ts';
import { verdictAt } from '../whole/judge.ts';
import { type Portrait, portraitOf } from '../whole/portrait.ts';

/** What a ranking goes by. */
export interface Score {
  readonly verdict: Verdict;
  readonly standing: Standing;
}

/** Scores candidates beside one anchor as a full comparison judges them, without saying why. */
export function scorerOf(anchor: FamilySide, lying: Lying): (side: Side) => Score {
  const own: Portrait = portraitOf(anchor);
  return (side) => {
    const standing = balanceOf(own, portraitOf(takeSide(side, 'candidate')), lying);
    return { verdict: verdictAt(standing.balance), standing };
  };
}
