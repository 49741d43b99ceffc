import type { MeasuredInk } from '../measure/measured.ts';
import type { Stray } from '../rules/troubles.ts';
import { inkLimits, troubleWeights, verdictLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say, type Told } from './build.ts';

/** Strong inks that nothing on the other sheet answers. */
export const strayReasons: ReasonBuilder = (told) =>
  told.judgement.troubles
    .filter((trouble): trouble is Stray => trouble.kind === 'stray')
    .map((stray) =>
      reason({
        kind: 'stray',
        // What is told to be left as it is does not speak against the pair.
        weighs: stray.beside ? 0 : -stray.weight,
        says: sentence(told, stray),
        inks: [stray.ink, ...spokenOf(stray)],
        evidence: {
          chroma: stray.ink.chroma,
          share: stray.ink.share,
          limitChroma: inkLimits.strayChroma,
          limitShare: inkLimits.strayShare,
        },
        figure: `C* ${sentences.number(stray.ink.chroma, 0)} · ${sentences.percent(stray.ink.share)}`,
        sources: stray.beside ? ['link-limits', 'common-practice'] : ['link-limits'],
      }),
    );

/** The other ink that the sentence names. */
function spokenOf({ ink, beside, misses }: Pick<Stray, 'ink' | 'beside' | 'misses'>): MeasuredInk[] {
  if (beside) return [beside];
  return misses ? [misses.a === ink ? misses.b : misses.a] : [];
}

function sentence(told: Told, { ink, beside, misses, weight }: Stray): string {
  const it = say(told, ink);
  const other = told.names[ink.of === 'anchor' ? 'candidate' : 'anchor'];
  if (beside) return sentences.strayTolerated(it, say(told, beside), other);
  if (misses) return sentences.strayWithMiss(it, other, say(told, spokenOf({ ink, beside, misses })[0]!));
  const drawnIn = told.pair.repeated >= troubleWeights.strayTied;
  if (drawnIn && weight < verdictLimits.trouble && weight >= troubleWeights.worthSaying)
    return sentences.strayTied(it, other);
  return ink.share < inkLimits.accentShare ? sentences.straySmall(it, other) : sentences.stray(it, other);
}
