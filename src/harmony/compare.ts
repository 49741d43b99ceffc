import type { Side } from '../sheet/model.ts';
import { LazyComparison } from './lazy-comparison.ts';
import { measureSide } from './measure/measured.ts';
import { takeSide } from './measure/take-side.ts';
import type { CompareOptions, Comparison } from './model.ts';
import { standingOf } from './whole/standing.ts';

/**
 * Compares two sides: every link, the reasons weightiest first, and the verdict with how it was reached. Inks are
 * relabelled by order: A, B … on the anchor, a, b … on the candidate. What could mend it: `remediesFor`.
 * @throws RangeError where an ink of a hand-written side has no colour.
 */
export function compare(anchorSide: Side, candidateSide: Side, options: CompareOptions = {}): Comparison {
  const anchor = measureSide(takeSide(anchorSide, 'anchor'), 'anchor');
  const found = new LazyComparison(anchor, candidateSide, options);
  const { pair, judgement } = found.told;
  return {
    anchor: anchor.side,
    candidate: found.candidate,
    distance: pair.distance,
    strip: pair.strip,
    names: found.told.names,
    verdict: judgement.verdict,
    decision: found.decision,
    findings: judgement.whole.findings,
    links: found.links,
    reasons: found.reasons,
    standing: standingOf(judgement.whole),
  };
}
