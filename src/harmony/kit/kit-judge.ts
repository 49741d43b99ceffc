import type { Tied } from '../measure/links.ts';
import type { MeasuredInk, MeasuredSide } from '../measure/measured.ts';
import { linksOf, pairOf } from '../measure/pair.ts';
import type { Verdict } from '../model.ts';
import type { Told } from '../reasons/build.ts';
import {
  baseQuarrelOf,
  brightMutedOf,
  type NearMiss,
  nearMissesOf,
  type Stray,
  straysOf,
  type Trouble,
} from '../rules/troubles.ts';
import { counted, judge, type Rule, ruleFor, strongestTie, verdictOfRule } from '../rules/verdict.ts';
import { nearTieOf } from '../rules/weights.ts';
import { verdictLimits } from '../thresholds.ts';
import { type Measured, type PlacedPair, placeOf, sheetPairs } from './kit-members.ts';

/** What the rules find in a kit. They are those of a pair, with one change: what a third member answers is answered. */
export interface KitJudgement {
  readonly verdict: Verdict;
  readonly rule: Rule;
  readonly troubles: readonly Trouble[];
  /** Near misses that a third member answers: its place. */
  readonly answeredBy: ReadonlyMap<Tied, number>;
  /** What each stray was told from: its sheet, and all that it is held against. */
  readonly strayTold: ReadonlyMap<Stray, Told>;
  /** The member that is tied least, and how strongly; Infinity where it needs no tie. */
  readonly loosest: { readonly at: number; readonly tie: number };
}

export function judgeKit(kit: Measured): KitJudgement {
  const answeredBy = new Map<Tied, number>();
  const strayTold = new Map<Stray, Told>();
  const troubles = troublesOfKit(kit, answeredBy, strayTold);
  const ties = kit.papers.map((at) => ({ at, tie: tieOfMember(kit, at) }));
  const loosest = ties.reduce((least, one) => (one.tie < least.tie ? one : least), { at: 0, tie: Infinity });
  const loud = kit.papers.filter((at) => !kit.sides[at]!.quiet);
  const rule = ruleFor({
    worst: troubles[0]?.weight ?? 0,
    second: counted(troubles)[1]?.weight ?? 0,
    quiet: loud.length < 2,
    tie: loosest.tie,
    near: () => nearOfMember(kit, troubles[0]!, loosest.at),
  });
  return { verdict: verdictOfRule[rule], rule, troubles, answeredBy, strayTold, loosest };
}

/** Every trouble of a kit, weightiest first. */
function troublesOfKit(kit: Measured, answeredBy: Map<Tied, number>, strayTold: Map<Stray, Told>): Trouble[] {
  const across = sheetPairs(kit).flatMap((placed): Trouble[] => {
    const { pair } = placed;
    const misses = nearMissesOf(pair).map((miss): NearMiss => {
      const { a, b } = miss.tied;
      const third = togetherElsewhere(kit, placed, a, b);
      const answered = Math.max(miss.answered, third.how);
      if (third.how > miss.answered) answeredBy.set(miss.tied, third.at);
      const left = miss.answered < 1 ? (1 - answered) / (1 - miss.answered) : 0;
      return { ...miss, answered, weight: miss.weight * left };
    });
    const found: (Trouble | null)[] = [...misses, baseQuarrelOf(pair), brightMutedOf(pair)];
    return found.filter((one) => one !== null);
  });
  const alone = kit.papers
    .filter((at) => kit.spots[at] === at)
    .flatMap((at) => {
      const found = straysOfMember(kit, at);
      for (const stray of found.strays) strayTold.set(stray, found.told!);
      return found.strays;
    });
  return [...across, ...alone].sort((one, other) => other.weight - one.weight);
}

/** How much some third member shows both colours of a near miss, so that the two look meant, 0–1, and which one. */
function togetherElsewhere(
  kit: Measured,
  { one, other }: PlacedPair,
  a: MeasuredInk,
  b: MeasuredInk,
): { readonly at: number; readonly how: number } {
  const on = (ink: MeasuredInk, third: number): number => {
    const placed = kit.pairs.find(
      (p) =>
        (p.one === placeOf(ink.id) && p.other === third) || (p.other === placeOf(ink.id) && p.one === third),
    );
    return Math.max(
      0,
      ...(placed?.pair.tied ?? [])
        .filter((t) => t.a.id === ink.id || t.b.id === ink.id)
        .map(({ same }) => same),
    );
  };
  const thirds = kit.papers.filter((at) => at !== one && at !== other);
  return thirds
    .map((at) => ({ at, how: Math.min(on(a, at), on(b, at)) }))
    .reduce((best, third) => (third.how > best.how ? third : best), { at: one, how: 0 });
}

/** The strays of one member against all the others taken together. */
function straysOfMember(kit: Measured, at: number): { strays: Stray[]; told: Told | null } {
  const places = kit.papers.filter((other) => other !== at && kit.spots[other] === other);
  const others = places.map((other) => kit.sides[other]!);
  if (others.length === 0) return { strays: [], told: null };
  if (others.length === 1) {
    // Beside one other it is what a study of the two says.
    const [low, high] = [Math.min(at, places[0]!), Math.max(at, places[0]!)];
    const { told } = kit.pairs.find(({ one, other }) => one === low && other === high)!;
    const strays = told.judgement.troubles.filter(
      (one): one is Stray => one.kind === 'stray' && placeOf(one.ink.id) === at,
    );
    return { strays, told };
  }
  const own = kit.sides[at]!;
  const pair = pairOf(joined(others), {
    ...own,
    inks: own.inks.map((ink) => ({ ...ink, of: 'candidate' as const })),
  });
  const strays = straysOf(pair).filter(({ ink }) => ink.of === 'candidate' && linksOf(pair, ink).length > 0);
  const names = { anchor: 'the rest of the kit', candidate: kit.members[at]!.name };
  return { strays, told: { pair, judgement: { ...judge(pair), troubles: strays }, names } };
}

/** Several sides as one, each ink with the share it has of its own. */
function joined(sides: readonly MeasuredSide[]): MeasuredSide {
  return {
    side: sides[0]!.side,
    inks: sides.flatMap(({ inks }) => inks),
    quiet: sides.every(({ quiet }) => quiet),
    plain: false,
  };
}

/** How strongly a member is tied to its best partner; a quiet one needs no tie. */
function tieOfMember(kit: Measured, at: number): number {
  const loud = (place: number) => !kit.sides[place]!.quiet;
  if (!loud(at)) return Infinity;
  const own = kit.pairs.filter(
    ({ one, other }) =>
      kit.spots[one] !== kit.spots[other] && ((one === at && loud(other)) || (other === at && loud(one))),
  );
  if (own.length === 0) return Infinity;
  return Math.max(...own.map(({ pair }) => strongestTie(pair)?.weight ?? 0));
}

/** How near the member in trouble (or the one tied least) comes to being tied to any other. */
function nearOfMember(kit: Measured, worst: Trouble, loosest: number): { any: number; same: number } {
  const at = worst.kind === 'stray' ? placeOf(worst.ink.id) : loosest;
  const near = kit.pairs
    .filter(({ one, other }) => (one === at || other === at) && kit.spots[one] !== kit.spots[other])
    .flatMap(({ pair }) => pair.tied.map((tied) => nearTieOf(tied, pair.distance)));
  return {
    any: Math.max(0, ...near.map(({ any }) => any)),
    same: Math.max(0, ...near.map(({ same }) => same)),
  };
}

/** Whether a trouble is large enough to need an answer. */
export function stands(trouble: Trouble): boolean {
  return trouble.weight >= verdictLimits.trouble;
}
