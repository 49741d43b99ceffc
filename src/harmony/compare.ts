import type { Side } from '../sheet/model.ts';
import { decisionOf } from './decision.ts';
import type { Names } from './ink-word.ts';
import { measureSide } from './measured.ts';
import type { CompareOptions, Comparison } from './model.ts';
import { pairOf } from './pair.ts';
import { reasonsOf } from './reasons/all.ts';
import { remediesFor } from './remedies.ts';
import { standingOf } from './standing.ts';
import { takeSide } from './take-side.ts';
import { judge } from './verdict.ts';

/**
 * Compares two sides: every link, the reasons weightiest first, the verdict with how it was reached, and what could
 * mend it. Inks are relabelled by order: A, B … on the anchor, a, b … on the candidate.
 * @throws RangeError where an ink of a hand-written side has no colour.
 */
export function compare(anchorSide: Side, candidateSide: Side, options: CompareOptions = {}): Comparison {
  const anchor = measureSide(takeSide(anchorSide, 'anchor'), 'anchor');
  const candidate = measureSide(takeSide(candidateSide, 'candidate'), 'candidate');
  const pair = pairOf(anchor, candidate, options.distance, options.strip);
  const judgement = judge(pair);
  const told = { pair, judgement, names: namesIn(options) };
  const reasons = reasonsOf(told);
  return {
    anchor: anchor.side,
    candidate: candidate.side,
    distance: pair.distance,
    verdict: judgement.verdict,
    decision: decisionOf(told, reasons),
    links: pair.tied.map(({ link }) => link),
    reasons,
    remedies: options.withoutRemedies ? [] : remediesFor(told, options),
    standing: standingOf(pair, judgement),
  };
}

/** The names that sentences use. */
export function namesIn({ names }: CompareOptions): Names {
  return { anchor: names?.anchor ?? 'the anchor', candidate: names?.candidate ?? 'the candidate' };
}
