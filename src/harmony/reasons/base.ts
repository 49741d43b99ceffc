import { isLightNeutral } from '../measure/links.ts';
import type { Reason } from '../model.ts';
import type { BaseQuarrel } from '../rules/troubles.ts';
import { adviceWeights, linkLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say, type Told } from './build.ts';

/** What the two grounds make of each other. */
export const baseReasons: ReasonBuilder = (told) => {
  const quarrel = told.judgement.troubles.find(
    (trouble): trouble is BaseQuarrel => trouble.kind === 'base quarrel',
  );
  if (quarrel) return [quarrelReason(told, quarrel)];
  const { link, a, b } = told.pair.tied[0]!;
  if (a.actsAs === null || b.actsAs === null) return [];
  const agree = link.kind === 'repeat' || bothLight(told);
  const touching = told.pair.distance === 'touching' && !told.pair.anchor.plain && !told.pair.candidate.plain;
  const [one, other] = [say(told, a), say(told, b)];
  return [
    reason({
      kind: 'base agreement',
      weighs: agree ? adviceWeights.baseAgrees : adviceWeights.baseApart,
      says: agree ? sentences.basesAgree(one, other, touching) : sentences.basesAlikeInKind(one, other),
      inks: [a, b],
      evidence: evidenceOf(told),
      figure: figureOf(told),
      sources: ['common-practice', 'ciede2000'],
    }),
  ];
};

function quarrelReason(told: Told, { tied: { a, b }, weight }: BaseQuarrel): Reason {
  const [yellower, whiter] = a.lab.b > b.lab.b ? [a, b] : [b, a];
  const unknown = !told.pair.anchor.side.light.known || !told.pair.candidate.side.light.known;
  const quarrel = told.pair.strip ? sentences.basesQuarrelBehindStrip : sentences.basesQuarrel;
  const says = quarrel(say(told, yellower), say(told, whiter));
  return reason({
    kind: 'base quarrel',
    weighs: -weight,
    says: unknown ? `${says} ${sentences.lookAgain}` : says,
    inks: [a, b],
    evidence: { ...evidenceOf(told), limitDeltaB: linkLimits.whitesDeltaB },
    figure: figureOf(told),
    sources: ['common-practice', 'ciede2000'],
  });
}

function bothLight(told: Told): boolean {
  const { a, b } = told.pair.tied[0]!;
  return isLightNeutral(a) && isLightNeutral(b);
}

function evidenceOf(told: Told): Record<string, number> {
  const { link, a, b } = told.pair.tied[0]!;
  return { deltaE00: link.deltaE00, deltaB: b.lab.b - a.lab.b, deltaL: link.dL };
}

function figureOf(told: Told): string {
  const { deltaB, deltaE00 } = evidenceOf(told);
  return `Δb* ${sentences.number(deltaB!)} · ΔE₀₀ ${sentences.number(deltaE00!)}`;
}
