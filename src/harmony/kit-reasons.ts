import type { KitJudgement } from './kit-judge.ts';
import { type Measured, placeOf } from './kit-members.ts';
import { kitPageReasons } from './kit-page-reasons.ts';
import { areaOf, type ColourGroup } from './kit-repeats.ts';
import * as kitSentences from './kit-sentences.ts';
import { isLightNeutral } from './links.ts';
import type { MeasuredInk } from './measured.ts';
import type { Reason } from './model.ts';
import { type Draft, reason } from './reasons/build.ts';
import * as sentences from './sentences.ts';
import { adviceWeights, inkLimits, troubleWeights } from './thresholds.ts';
import type { BaseQuarrel, BrightMuted, NearMiss, Stray } from './troubles.ts';

/** The reasons of a kit as a whole, weightiest first. */
export function kitReasons(kit: Measured, judgement: KitJudgement, groups: readonly ColourGroup[]): Reason[] {
  return [
    ...bases(kit, judgement),
    ...repeats(kit, groups),
    ...misses(kit, judgement),
    ...strays(kit, judgement),
    ...brightness(kit, judgement),
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

function misses(kit: Measured, { troubles }: KitJudgement): Reason[] {
  return troubles
    .filter((one): one is NearMiss => one.kind === 'near miss' && one.weight >= troubleWeights.worthSaying)
    .map(({ tied: { link, a, b }, weight, answered }) =>
      kitReason({
        kind: 'near miss',
        weighs: -weight,
        says: kitSentences.nearMissAcross(kit.say(a), kit.say(b)),
        inks: [a, b],
        evidence: {
          deltaE00: link.deltaE00,
          hueDeg: link.hueDeg ?? 0,
          hueSteps: link.hueSteps ?? 0,
          answered,
        },
        figure: `ΔE₀₀ ${sentences.number(link.deltaE00)} · hue ${sentences.number(link.hueDeg ?? 0, 0)}°`,
        sources: ['moon-spencer', 'link-limits'],
      }),
    );
}

function strays(kit: Measured, { troubles }: KitJudgement): Reason[] {
  return troubles
    .filter((one): one is Stray => one.kind === 'stray')
    .map(({ ink, weight, beside }) =>
      kitReason({
        kind: 'stray',
        weighs: beside ? 0 : -weight,
        says: beside
          ? sentences.strayTolerated(kit.say(ink), kit.say(beside), 'the rest')
          : kitSentences.alone(kit.say(ink)),
        inks: beside ? [ink, beside] : [ink],
        evidence: { chroma: ink.chroma, share: ink.share, limitChroma: inkLimits.strayChroma },
        figure: `C* ${sentences.number(ink.chroma, 0)} · ${sentences.percent(ink.share)}`,
        sources: ['link-limits'],
      }),
    );
}

function bases(kit: Measured, { troubles }: KitJudgement): Reason[] {
  const quarrels = troubles.filter((one): one is BaseQuarrel => one.kind === 'base quarrel');
  if (quarrels.length > 0) return [quarrelOf(kit, quarrels)];
  const light = kit.sheets.map((at) => kit.sides[at]!.inks[0]!).filter(isLightNeutral);
  if (light.length < 2) return [];
  const bs = light.map(({ lab }) => lab.b);
  const spread = Math.max(...bs) - Math.min(...bs);
  return [
    kitReason({
      kind: 'base agreement',
      weighs: adviceWeights.baseAgrees,
      says: kitSentences.basesAgree(light.map(kit.say)),
      inks: light,
      evidence: { spreadB: spread },
      figure: `Δb* ${sentences.number(spread)} at most`,
      sources: ['common-practice'],
    }),
  ];
}

/** All quarrels of grounds as one reason, the weightiest first. */
function quarrelOf(kit: Measured, quarrels: readonly BaseQuarrel[]): Reason {
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
  const says = !eachWithEach
    ? kitSentences.basesInSteps(all.map(kit.say))
    : pairs.length === 1
      ? sentences.basesQuarrel(y[0]!, w[0]!)
      : kitSentences.basesDisagree(y, w);
  const deltaB = Math.max(...quarrels.map(({ tied: { a, b } }) => Math.abs(b.lab.b - a.lab.b)));
  const deltaE00 = Math.max(...quarrels.map(({ tied }) => tied.link.deltaE00));
  const most = quarrels.length > 1 ? ' at most' : '';
  return kitReason({
    kind: 'base quarrel',
    weighs: -quarrels[0]!.weight,
    says,
    inks: all,
    evidence: { deltaB, deltaE00 },
    figure: `Δb* ${sentences.number(deltaB)} · ΔE₀₀ ${sentences.number(deltaE00)}${most}`,
    sources: ['common-practice', 'ciede2000'],
  });
}

function brightness(kit: Measured, { troubles }: KitJudgement): Reason[] {
  const worst = troubles.find((one): one is BrightMuted => one.kind === 'bright against muted');
  if (!worst) return [];
  const [bright, muted] =
    worst.anchor.chroma > worst.candidate.chroma
      ? [worst.anchor, worst.candidate]
      : [worst.candidate, worst.anchor];
  return [
    kitReason({
      kind: 'bright against muted',
      weighs: -worst.weight,
      says: sentences.brightAgainstMuted(kit.say(bright.lead), kit.say(muted.lead)),
      inks: [bright.lead, muted.lead],
      evidence: { brightChroma: bright.chroma, mutedChroma: muted.chroma },
      figure: `mean C* ${sentences.number(bright.chroma, 0)} and ${sentences.number(muted.chroma, 0)}`,
      sources: ['common-practice', 'verdict-rules'],
    }),
  ];
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

/** The neutrals of a kit that are large enough to rest on, one a member. */
export function neutralsOf(kit: Measured): MeasuredInk[] {
  return kit.sheets.flatMap((at) =>
    kit.sides[at]!.inks.filter((ink) => ink.actsAs !== null && ink.share >= inkLimits.accentShare).slice(
      0,
      1,
    ),
  );
}
