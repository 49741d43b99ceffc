import { idAt } from '../../sheet/ink.ts';
import type { Side } from '../../sheet/model.ts';
import { type MeasuredInk, type MeasuredSide, measureSide } from '../measure/measured.ts';
import { type Pair, pairOf } from '../measure/pair.ts';
import { takeSide } from '../measure/take-side.ts';
import type { FamilySide, KitMember, Reason } from '../model.ts';
import { reasonsOf } from '../reasons/all.ts';
import type { Told } from '../reasons/build.ts';
import { judge } from '../rules/verdict.ts';
import { inkLimits, kitLimits } from '../thresholds.ts';
import { wordOf } from '../words/ink-word.ts';
import type { Said } from '../words/sentences.ts';

/** The members of a kit, measured once, and all their pairs. */
export interface Measured {
  readonly members: readonly KitMember[];
  /** By place; ids are "1A", "2B" … */
  readonly sides: readonly MeasuredSide[];
  /** Places of all members that are judged: all but the photographs, and no more than a page can hold. */
  readonly papers: readonly number[];
  /** How many papers are left out because they are too many. */
  readonly unjudged: number;
  /** The same, each sheet once. */
  readonly sheets: readonly number[];
  /** By place: the first member of the same sheet, or its own place. */
  readonly first: readonly number[];
  readonly pairs: readonly PlacedPair[];
  /** Share of the page by place, of papers and plains together 1. */
  readonly areas: readonly number[];
  /** Whether any paper's size is known: without one, nothing is said of shares of the page. */
  readonly sized: boolean;
  /** Where on the page each member lies, by place: the place of the member that it shares one with, or its own. */
  readonly spots: readonly number[];
  /** Whether an ink is strong enough, and large enough, to want a partner. */
  readonly isStrong: (ink: MeasuredInk) => boolean;
  /** An ink ready to be said. */
  readonly say: (ink: MeasuredInk) => Said;
}

export interface PlacedPair {
  readonly one: number;
  readonly other: number;
  readonly pair: Pair;
  /** What a study of the two says; inks go by their kit ids. */
  readonly told: Told;
  readonly findings: readonly Reason[];
}

/** Every two sheets once: one that is in the kit twice says nothing twice. */
export function sheetPairs({ pairs, sheets }: Measured): readonly PlacedPair[] {
  return pairs.filter(({ one, other }) => sheets.includes(one) && sheets.includes(other));
}

export function measureKit(given: readonly KitMember[]): Measured {
  const members = given.map((member, at) => ({ ...member, side: numbered(member.side, at + 1) }));
  const sides = members.map(({ side }) => measureSide(side, 'anchor'));
  const other = members.map(({ side }) => measureSide(side, 'candidate'));
  const all = members.flatMap(({ role }, at) => (role === 'photo' ? [] : [at]));
  const papers = all.slice(0, kitLimits.papers);
  const first = members.map(({ side }) => members.findIndex((other) => isSameSheet(other.side, side)));
  const pairs = papers.flatMap((one, n) =>
    papers.slice(n + 1).map((to): PlacedPair => {
      const pair = pairOf(sides[one]!, other[to]!);
      const names = { anchor: members[one]!.name, candidate: members[to]!.name };
      const told = { pair, judgement: judge(pair), names };
      return { one, other: to, pair, told, findings: reasonsOf(told) };
    }),
  );
  return {
    members,
    sides,
    papers,
    unjudged: all.length - papers.length,
    sheets: papers.filter((at) => papers.find((one) => first[one] === first[at]) === at),
    first,
    pairs,
    areas: areasOf(members, papers),
    sized: papers.some((at) => isSized(members[at]!)),
    spots: spotsOf(members, first),
    isStrong: (ink) =>
      ink.actsAs === null && ink.chroma >= inkLimits.strayChroma && ink.share >= inkLimits.accentShare,
    say: (ink) => ({
      word: wordOf(ink),
      id: ink.id,
      of: members[placeOf(ink.id)]!.name,
      share: ink.share,
    }),
  };
}

/** The member an ink of a kit belongs to, by its id. */
export function placeOf(id: string): number {
  return Number.parseInt(id, 10) - 1;
}

function numbered(side: Side, number: number): FamilySide {
  const whole = takeSide(side, 'anchor');
  const name = <T extends { readonly id: string }>(ink: T, at: number): T => ({
    ...ink,
    id: `${number}${idAt(at)}`,
  });
  return {
    ...whole,
    base: name(whole.base, 0),
    inks: whole.inks.map((ink, at) => name(ink, at + 1)),
    families: whole.families.map((family, at) => ({
      ...name(family, at),
      inks: family.inks.map((id) => `${number}${id}`),
    })),
    within: whole.within.map((ink) => ({ ...ink, id: `${number}${ink.id}` })),
  };
}

/**
 * A sheet that is in a kit twice is one sheet, and its colours lie in one place, unless both have sizes: then they are
 * two pieces of it, and what lies in two places is seen in two. Common practice, no source.
 */
function spotsOf(members: readonly KitMember[], first: readonly number[]): number[] {
  return members.map((member, at) => {
    if (isSized(member)) return at;
    const piece = members.findIndex((other, to) => first[to] === first[at] && isSized(other));
    return piece < 0 ? first[at]! : piece;
  });
}

function isSized({ areaMm2 }: KitMember): boolean {
  return areaMm2 !== null && areaMm2 > 0;
}

/** Two readings are of one sheet where they hold the very same colours, not equal ones. */
function isSameSheet(one: Side, other: Side): boolean {
  return (
    one.base.oklch === other.base.oklch &&
    one.inks.length === other.inks.length &&
    one.inks.every(({ oklch }, at) => oklch === other.inks[at]!.oklch)
  );
}

function areasOf(members: readonly KitMember[], papers: readonly number[]): number[] {
  const known = papers.map((at) => members[at]!.areaMm2 ?? 0).filter((area) => area > 0);
  // A piece whose area is not known takes what the others take on average.
  const usual = known.length > 0 ? known.reduce((a, b) => a + b, 0) / known.length : 1;
  const area = (at: number) => members[at]!.areaMm2 || usual;
  const sum = papers.reduce((total, at) => total + area(at), 0);
  return members.map(({ role }, at) => (role === 'photo' ? 0 : area(at) / sum));
}
