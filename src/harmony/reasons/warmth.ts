import type { MeasuredInk, MeasuredSide } from '../measure/measured.ts';
import { adviceWeights, pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason } from './build.ts';

/** Which way each sheet leans, warm or cool, by area. */
export const warmthReasons: ReasonBuilder = ({ pair, names }) => {
  const [one, other] = [warmthOf(pair.anchor), warmthOf(pair.candidate)];
  const lean = (value: number) => (Math.abs(value) < pageLimits.leaning ? 0 : Math.sign(value));
  if (lean(one) === 0 || lean(other) === 0) return [];
  const alike = lean(one) === lean(other);
  const [warm, cool] = one > other ? [names.anchor, names.candidate] : [names.candidate, names.anchor];
  return [
    reason({
      kind: 'warm and cool',
      weighs: alike ? adviceWeights.warmAlike : adviceWeights.warmApart,
      says: alike
        ? sentences.warmBoth(names.anchor, names.candidate, one > 0 ? 'warm' : 'cool')
        : sentences.warmAndCool(warm, cool),
      inks: [strongest(pair.anchor, one), strongest(pair.candidate, other)],
      evidence: { anchorWarmth: one, candidateWarmth: other },
      figure: `warmth ${sentences.number(one, 2)} and ${sentences.number(other, 2)}`,
      sources: ['ou-2004'],
    }),
  ];
};

/** Share-weighted warmth of a side, neutral = 0. */
export function warmthOf(side: MeasuredSide): number {
  return side.inks.reduce((sum, ink) => sum + ink.warmth * ink.share, 0);
}

function strongest(side: MeasuredSide, lean: number): MeasuredInk {
  const pull = (ink: MeasuredInk) => ink.warmth * ink.share * Math.sign(lean);
  return side.inks.reduce((best, ink) => (pull(ink) > pull(best) ? ink : best));
}
