import { type BrightMuted, intensityOf } from '../rules/troubles.ts';
import { adviceWeights, troubleWeights } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say } from './build.ts';

/** Bright against muted, or both alike. */
export const intensityReasons: ReasonBuilder = (told) => {
  const { anchor, candidate } = told.pair;
  if (anchor.quiet || candidate.quiet) return [];
  const trouble = told.judgement.troubles.find((t): t is BrightMuted => t.kind === 'bright against muted');
  const [one, other] = [intensityOf(anchor), intensityOf(candidate)];
  const evidence = {
    anchorChroma: one.chroma,
    candidateChroma: other.chroma,
    anchorSaturation: one.saturation,
    candidateSaturation: other.saturation,
  };
  const figure = `mean C* ${sentences.number(one.chroma, 0)} and ${sentences.number(other.chroma, 0)}`;
  const common = {
    inks: [one.lead, other.lead],
    evidence,
    figure,
    sources: ['common-practice', 'verdict-rules'],
  } as const;
  if (trouble) {
    const [bright, muted] = one.chroma > other.chroma ? [one, other] : [other, one];
    const says = sentences.brightAgainstMuted(say(told, bright.lead), say(told, muted.lead));
    return [reason({ kind: 'bright against muted', weighs: -trouble.weight, says, ...common })];
  }
  const { fromChroma, fromSaturation } = troubleWeights.brightMuted;
  const how = [one, other].every((side) => side.chroma > fromChroma)
    ? 'bright'
    : [one, other].every((side) => side.chroma <= fromChroma && side.saturation <= fromSaturation + 0.1)
      ? 'muted'
      : null;
  if (!how || Math.abs(one.chroma - other.chroma) > fromChroma / 2) return [];
  const says = sentences.intensityAlike(say(told, one.lead), say(told, other.lead), how);
  return [reason({ kind: 'bright against muted', weighs: adviceWeights.brightAlike, says, ...common })];
};
