import type { MeasuredSide } from '../measure/measured.ts';
import type { Reason } from '../model.ts';
import { pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason } from './build.ts';

/** Thin sheets, to be mounted. */
export const weightReasons: ReasonBuilder = ({ pair, names }) =>
  (['anchor', 'candidate'] as const).flatMap((of) => thinReasons(pair[of], names[of]));

/** The same of one sheet. */
export function thinReasons({ side, inks }: MeasuredSide, name: string): Reason[] {
  const gsm = side.tags?.weight?.gsm;
  if (gsm === undefined || gsm >= pageLimits.thinGsm) return [];
  return [
    reason({
      kind: 'weight',
      weighs: 0,
      says: sentences.thin(name, gsm),
      inks: [inks[0]!],
      evidence: { gsm, thinBelowGsm: pageLimits.thinGsm },
      figure: `${Math.round(gsm)} g/m²`,
      sources: ['common-practice', 'paper-weights'],
    }),
  ];
}
