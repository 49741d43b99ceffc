import type { MeasuredInk } from '../measure/measured.ts';
import type { Reason } from '../model.ts';
import { type Draft, reason } from '../reasons/build.ts';
import { inkLimits, troubleWeights } from '../thresholds.ts';
import * as kitSentences from '../words/kit-sentences.ts';
import type { KitJudgement } from './kit-judge.ts';
import { type Measured, placeOf } from './kit-members.ts';
import { kitPageReasons } from './kit-page-reasons.ts';
import { findingsOf, pairsSaid } from './kit-pairs-say.ts';
import { areaOf, type ColourGroup } from './kit-repeats.ts';

/** The reasons of a kit as a whole, weightiest first. */
export function kitReasons(kit: Measured, judgement: KitJudgement, groups: readonly ColourGroup[]): Reason[] {
  return [
    ...repeats(kit, groups),
    ...pairsSaid(kit, judgement),
    ...neutrals(kit),
    ...kitPageReasons(kit),
  ].sort((one, other) => Math.abs(other.weighs) - Math.abs(one.weighs) || one.weighs - other.weighs);
}

/** A reason of a kit: inks in the order of its members. */
export function kitReason(draft: Draft): Reason {
  const inks = [...draft.inks].sort((a, b) => placeOf(a.id) - placeOf(b.id));
  return { ...reason({ ...draft, inks: [] }), inks: [...new Set(inks.map(({ id }) => id))] };
}

function repeats(kit: Measured, groups: readonly ColourGroup[]): Reason[] {
  return groups
    .filter(({ places }) => places > 1)
    .map(({ word, inks, placed, places }) =>
      kitReason({
        kind: 'repeat',
        weighs: Math.min(0.9, 0.3 + 0.15 * (places - 1) + areaOf(kit, inks)),
        says: kitSentences.inPlaces(word, placed.map(kit.say)),
        inks,
        evidence: { places, ...shareOf(kit, inks) },
        figure: kitSentences.placesFigure(places, shareOf(kit, inks).areaShare ?? null),
        sources: ['common-practice', 'link-limits'],
      }),
    );
}

function neutrals(kit: Measured): Reason[] {
  const found = neutralsOf(kit);
  return [
    kitReason({
      kind: 'repeated neutral',
      weighs: found.length > 0 ? troubleWeights.worthSaying * 3 : -troubleWeights.worthSaying * 3,
      says: found.length > 0 ? kitSentences.neutrals(found.map(kit.say)) : kitSentences.noNeutral(),
      inks: found,
      evidence: { neutrals: found.length, ...shareOf(kit, found) },
      figure: kitSentences.neutralsFigure(found.length, shareOf(kit, found).areaShare ?? null),
      sources: ['common-practice', 'neutral-regions'],
    }),
  ];
}

/** The share of the page that some inks take, where sizes are known. */
function shareOf(kit: Measured, inks: readonly MeasuredInk[]): { readonly areaShare?: number } {
  return kit.sized ? { areaShare: areaOf(kit, inks) } : {};
}

/** The neutrals of a kit that are large enough to rest on, one a member, and those that a pair names as repeated. */
export function neutralsOf(kit: Measured): MeasuredInk[] {
  const named = new Set(findingsOf(kit, 'repeated neutral').flatMap(({ found }) => found.inks));
  return kit.sheets.flatMap((at) => {
    const { inks } = kit.sides[at]!;
    const large = inks.find((ink) => ink.actsAs !== null && ink.share >= inkLimits.accentShare);
    return large ? [large] : inks.filter(({ id }) => named.has(id)).slice(0, 1);
  });
}
