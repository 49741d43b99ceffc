import { lightValueOf } from '../measure/extension.ts';
import type { MeasuredInk } from '../measure/measured.ts';
import type { Pair } from '../measure/pair.ts';
import type { Reason } from '../model.ts';
import { pageLimits } from '../thresholds.ts';
import * as sentences from '../words/sentences.ts';
import { type ReasonBuilder, reason, say, type Told } from './build.ts';
import { tiesOf } from './ties.ts';

/** Areas, against two conventions: 60–30–10, and the contrast of extension. */
export const dominanceReasons: ReasonBuilder = (told) => [...largest(told), ...extension(told)];

function largest(told: Told): Reason[] {
  const [first, second] = largestGroups(told.pair);
  const { lead, share, inks } = first;
  const from = pageLimits.dominant - pageLimits.dominantSlack;
  const to = pageLimits.dominant + pageLimits.dominantSlack;
  if (second && tooNear(share, second.share, from))
    return [
      reason({
        kind: 'dominance',
        weighs: 0,
        says: sentences.tiedDominant(say(told, lead), say(told, second.lead), share, second.share),
        inks: [...inks, ...second.inks],
        evidence: { largestShare: share, nextShare: second.share, ruleOfThumb: pageLimits.dominant },
        figure: `${sentences.percent(share)} and ${sentences.percent(second.share)} · 60–30–10`,
        sources: ['common-practice'],
      }),
    ];
  const say1 =
    share < from ? sentences.noneDominant : share > to ? sentences.overDominant : sentences.dominant;
  return [
    reason({
      kind: 'dominance',
      weighs: 0,
      says: say1(say(told, lead), share),
      inks,
      evidence: { largestShare: share, ruleOfThumb: pageLimits.dominant },
      figure: `${sentences.percent(share)} · 60–30–10`,
      sources: ['common-practice'],
    }),
  ];
}

/** A dead tie to the eye, or a largest that would lead and is hardly ahead. */
function tooNear(share: number, next: number, leadsFrom: number): boolean {
  const dead = sentences.percent(share) === sentences.percent(next);
  return dead || (share >= leadsFrom && share - next < pageLimits.dominantAhead);
}

interface Group {
  readonly lead: MeasuredInk;
  readonly share: number;
  readonly inks: readonly MeasuredInk[];
}

/** The colour that takes most of two equal sheets, with what repeats it; and the largest of those that are neither. */
function largestGroups({ tied, anchor, candidate }: Pair): [Group, Group | null] {
  const groups = [...anchor.inks, ...candidate.inks].map((lead) => {
    const matching = tied
      .filter(({ link, a, b }) => link.kind === 'repeat' && (a === lead || b === lead))
      .map(({ a, b }) => (a === lead ? b : a));
    const inks = [lead, ...matching];
    return { lead, inks, share: inks.reduce((sum, ink) => sum + ink.share, 0) / 2 };
  });
  const largest = (of: readonly Group[]) =>
    of.reduce<Group | null>((best, group) => (best && best.share >= group.share ? best : group), null);
  const first = largest(groups)!;
  return [first, largest(groups.filter(({ inks }) => !inks.some((ink) => first.inks.includes(ink))))];
}

function extension(told: Told): Reason[] {
  const tie = tiesOf(told.pair, 'opposite')[0];
  if (!tie) return [];
  const { a, b } = tie.tied;
  const [one, other] = [lightValueOf(a.painterDeg ?? 0), lightValueOf(b.painterDeg ?? 0)];
  // Areas stand inversely to light values.
  const ideal = one / other;
  const actual = b.share / a.share;
  return [
    reason({
      kind: 'dominance',
      weighs: 0,
      says: sentences.extension(say(told, a), say(told, b), ratio(1 / ideal), ratio(1 / actual)),
      inks: [a, b],
      evidence: { anchorLightValue: one, candidateLightValue: other, idealRatio: ideal, actualRatio: actual },
      figure: `${ratio(1 / ideal)} taught · ${ratio(1 / actual)} here`,
      sources: ['goethe', 'itten'],
    }),
  ];
}

/** "1 : 3" for a third. */
function ratio(value: number): string {
  return value >= 1 ? `${trim(value)} : 1` : `1 : ${trim(1 / value)}`;
}

const trim = (value: number): string => sentences.number(value).replace(/\.0$/, '');
