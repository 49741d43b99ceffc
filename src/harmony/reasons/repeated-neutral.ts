import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say } from './build.ts';
import { tiesOf } from './ties.ts';

/** A neutral on both sheets: the strongest one that is not merely the two grounds. */
export const repeatedNeutralReasons: ReasonBuilder = (told) => {
  const tie = tiesOf(told.pair, 'repeat', false).find(({ tied }) => !(tied.a.isBase && tied.b.isBase));
  if (!tie) return [];
  const { link, a, b } = tie.tied;
  return [
    reason({
      kind: 'repeated neutral',
      weighs: 0,
      says: sentences.repeatedNeutral(say(told, a), say(told, b)),
      inks: [a, b],
      evidence: { deltaE00: link.deltaE00, anchorShare: a.share, candidateShare: b.share },
      figure: `ΔE₀₀ ${sentences.number(link.deltaE00)} · neutral`,
      sources: ['ciede2000', 'neutral-regions'],
    }),
  ];
};
