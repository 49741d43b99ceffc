import type { MeasuredSide } from '../measure/measured.ts';
import type { Reason } from '../model.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason } from './build.ts';

/** Pictures read without a card. */
export const lightReasons: ReasonBuilder = ({ pair, names }) =>
  lightReasonsOf((['anchor', 'candidate'] as const).map((of) => ({ side: pair[of], name: names[of] })));

/** The same of any sheets. */
export function lightReasonsOf(
  sheets: readonly { readonly side: MeasuredSide; readonly name: string }[],
): Reason[] {
  const unknown = sheets.filter(({ side }) => !side.side.light.known);
  if (unknown.length === 0) return [];
  return [
    reason({
      kind: 'light unknown',
      weighs: 0,
      says: sentences.lightUnknown(unknown.map(({ name }) => name)),
      inks: unknown.map(({ side }) => side.inks[0]!),
      evidence: { sheets: unknown.length },
      figure: sentences.noCardFigure,
      sources: ['common-practice'],
    }),
  ];
}
