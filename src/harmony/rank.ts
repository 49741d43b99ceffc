import type { Side } from '../sheet/model.ts';
import { compare } from './compare.ts';
import type { CompareOptions, Comparison, Ranked } from './model.ts';
import { verdictOrder } from './verdict.ts';

/**
 * Compares every candidate with the anchor, best first: by verdict; then the weight of the worst unanswered trouble;
 * then the share of the anchor's inks that is answered; then the share of the candidate that intrudes; then the
 * order given.
 */
export function rank(
  anchorSide: Side,
  candidateSides: readonly Side[],
  options: CompareOptions = {},
): Ranked[] {
  return candidateSides
    .map((side, index): Ranked => ({ index, ...compare(anchorSide, side, options) }))
    .sort((one, other) => byStanding(one, other) || one.index - other.index);
}

/** The order of two comparisons with one anchor; negative where the first stands before the second. */
export function byStanding(one: Comparison, other: Comparison): number {
  const [a, b] = [one.standing!, other.standing!];
  return (
    verdictOrder.indexOf(one.verdict) - verdictOrder.indexOf(other.verdict) ||
    a.worst - b.worst ||
    b.answered - a.answered ||
    a.intrudes - b.intrudes
  );
}
