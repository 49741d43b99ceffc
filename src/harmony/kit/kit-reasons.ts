import type { MeasuredInk } from '../measure/measured.ts';
import type { Reason } from '../model.ts';
import { type Draft, reason } from '../reasons/build.ts';
import type { BaseQuarrel } from '../rules/troubles.ts';
import { adviceWeights, inkLimits, troubleWeights } from '../thresholds.ts';
import * as kitSentences from '../words/kit-sentences.ts';
import * as sentences from '../words/sentences.ts';
import type { KitJudgement } from './kit-judge.ts';
import { type Measured, placeOf } from './kit-members.ts';
import { kitPageReasons } from './kit-page-reasons.ts';
import { findingsOf, troublesSaid } from './kit-pairs-say.ts';
import { areaOf, type ColourGroup } from './kit-repeats.ts';

/** The reasons of a kit as a whole, weightiest first. */
export function kitReasons(kit: Measured, judgement: KitJudgement, groups: readonly ColourGroup[]): Reason[] {
  return [
    ...bases(kit, judgement),
    ...repeats(kit, groups),
    ...troublesSaid(kit, judgement),
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

/** The grounds: what one pair says, or all that the pairs say in one sentence. */
function bases(kit: Measured, { troubles }: KitJudgement): Reason[] {
  const quarrels = troubles.filter((one): one is BaseQuarrel => one.kind === 'base quarrel');
  if (quarrels.length > 0) return [quarrelOf(kit, quarrels)];
  const told = findingsOf(kit, 'base agreement');
  const agree = told.filter(({ found }) => found.weighs === adviceWeights.baseAgrees);
  const places = [...new Set(agree.flatMap(({ placed: { one, other } }) => [one, other]))].sort(
    (a, b) => a - b,
  );
  const eachWithEach = agree.length === (places.length * (places.length - 1)) / 2;
  if (agree.length < 2 || !eachWithEach) return (agree[0] ?? told[0]) ? [(agree[0] ?? told[0])!.found] : [];
  const grounds = places.map((at) => kit.sides[at]!.inks[0]!);
  const bs = grounds.map(({ lab }) => lab.b);
  const spread = Math.max(...bs) - Math.min(...bs);
  return [
    kitReason({
      kind: 'base agreement',
      weighs: adviceWeights.baseAgrees,
      says: kitSentences.basesAgree(grounds.map(kit.say)),
      inks: grounds,
      evidence: { spreadB: spread },
      figure: `Δb* ${sentences.number(spread)} at most`,
      sources: ['common-practice'],
    }),
  ];
}

/** All quarrels of grounds as one reason, the weightiest first. */
function quarrelOf(kit: Measured, quarrels: readonly BaseQuarrel[]): Reason {
  const told = findingsOf(kit, 'base quarrel').map(({ found }) => found);
  if (told.length === 1) return told[0]!;
  const pairs = quarrels.map(({ tied: { a, b } }): readonly [MeasuredInk, MeasuredInk] =>
    a.lab.b > b.lab.b ? [a, b] : [b, a],
  );
  const distinct = (all: readonly MeasuredInk[]) =>
    [...new Map(all.map((ink) => [ink.id, ink])).values()].sort((x, y) => y.lab.b - x.lab.b);
  const yellower = distinct(pairs.map(([one]) => one));
  const whiter = distinct(pairs.map(([, one]) => one));
  const all = distinct(pairs.flat());
  const eachWithEach =
    all.length === yellower.length + whiter.length && pairs.length === yellower.length * whiter.length;
  const [y, w] = [yellower.map(kit.say), whiter.map(kit.say)];
  const says = !eachWithEach ? kitSentences.basesInSteps(all.map(kit.say)) : kitSentences.basesDisagree(y, w);
  const unsure = told.some((one) => one.says.endsWith(sentences.lookAgain));
  const deltaB = Math.max(...told.map(({ evidence }) => Math.abs(evidence.deltaB!)));
  const deltaE00 = Math.max(...told.map(({ evidence }) => evidence.deltaE00!));
  return kitReason({
    kind: 'base quarrel',
    weighs: -quarrels[0]!.weight,
    says: unsure ? `${says} ${sentences.lookAgain}` : says,
    inks: all,
    evidence: { deltaB, deltaE00 },
    figure: `Δb* ${sentences.number(deltaB)} · ΔE₀₀ ${sentences.number(deltaE00)} at most`,
    sources: ['common-practice', 'ciede2000'],
  });
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
