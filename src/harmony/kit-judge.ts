import { type Measured, type PlacedPair, placeOf } from './kit-members.ts';
import type { MeasuredInk, MeasuredSide } from './measured.ts';
import type { Verdict } from './model.ts';
import { linksOf, pairOf } from './pair.ts';
import { verdictLimits } from './thresholds.ts';
import {
  baseQuarrelOf,
  brightMutedOf,
  type NearMiss,
  nearMissesOf,
  type Stray,
  straysOf,
  type Trouble,
} from './troubles.ts';
import { counted, type Rule, ruleFor, strongestTie, verdictOfRule } from './verdict.ts';
import { nearTieOf } from './weights.ts';

/** What the rules find in a kit. They are those of a pair, with one change: what a third member answers is answered. */
export interface KitJudgement {
  readonly verdict: Verdict;
  readonly rule: Rule;
  readonly troubles: readonly Trouble[];
  /** The member that is tied least, and how strongly; Infinity where it needs no tie. */
  readonly loosest: { readonly at: number; readonly tie: number };
}

export function judgeKit(kit: Measured): KitJudgement {
  const troubles = troublesOfKit(kit);
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
  return { verdict: verdictOfRule[rule], rule, troubles, loosest };
}

/** Every trouble of a kit, weightiest first. */
function troublesOfKit(kit: Measured): Trouble[] {
  const across = sheetPairs(kit).flatMap((placed): Trouble[] => {
    const { pair } = placed;
    const misses = nearMissesOf(pair).map((miss): NearMiss => {
      const { a, b } = miss.tied;
      const answered = Math.max(miss.answered, togetherElsewhere(kit, placed, a, b));
      const left = miss.answered < 1 ? (1 - answered) / (1 - miss.answered) : 0;
      return { ...miss, answered, weight: miss.weight * left };
    });
    const found: (Trouble | null)[] = [...misses, baseQuarrelOf(pair), brightMutedOf(pair)];
    return found.filter((one) => one !== null);
  });
  const alone = kit.papers.filter((at) => kit.spots[at] === at).flatMap((at) => straysOfMember(kit, at));
  return [...across, ...alone].sort((one, other) => other.weight - one.weight);
}

/** Every two sheets once: one that is in the kit twice makes no trouble twice. */
function sheetPairs({ pairs, sheets }: Measured): readonly PlacedPair[] {
  return pairs.filter(({ one, other }) => sheets.includes(one) && sheets.includes(other));
}

/** How much some third member shows both colours of a near miss, so that the two look meant, 0–1. */
function togetherElsewhere(
  kit: Measured,
  { one, other }: PlacedPair,
  a: MeasuredInk,
  b: MeasuredInk,
): number {
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
  return Math.max(0, ...thirds.map((third) => Math.min(on(a, third), on(b, third))));
}

/** The strays of one member against all the others taken together. */
function straysOfMember(kit: Measured, at: number): Stray[] {
  const others = kit.papers
    .filter((other) => kit.spots[other] !== kit.spots[at])
    .map((other) => kit.sides[other]!);
  if (others.length === 0) return [];
  const own = kit.sides[at]!;
  const pair = pairOf(joined(others), {
    ...own,
    inks: own.inks.map((ink) => ({ ...ink, of: 'candidate' as const })),
  });
  return straysOf(pair).filter(({ ink }) => ink.of === 'candidate' && linksOf(pair, ink).length > 0);
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
