import { deltaE2000 } from '../colour/difference.ts';
import type { Lab } from '../colour/model.ts';
import { labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import { repeatLimit } from '../harmony/measure/links.ts';
import type { Distance, Ranked } from '../harmony/model.ts';
import { fitness, rank } from '../harmony/ranking/rank.ts';
import { verdictOrder } from '../harmony/rules/verdict.ts';
import type { Ink } from '../sheet/model.ts';
import { type DrawerFilter, filterHeld } from './filter.ts';
import { sheetKey, sideOfHeld } from './held.ts';
import type { Drawer, Held } from './model.ts';

export interface SearchOptions {
  /** Default 'apart'. */
  readonly distance?: Distance;
  readonly filter?: DrawerFilter;
}

/** A paper that repeats an ink, by which of its own inks, and how closely. */
export interface Repeating {
  readonly held: Held;
  readonly ink: Ink;
  /** CIEDE2000, CIELAB D65. */
  readonly deltaE00: number;
}

/** "What have I that repeats this ink?" One line a paper, closest first; the limit is that of a repeat at the distance. */
export function repeatsOfInk(drawer: Drawer, ink: Ink, options: SearchOptions = {}): readonly Repeating[] {
  const limit = repeatLimit(options.distance ?? 'apart');
  const lab = labOf(ink);
  return filterHeld(drawer, options.filter ?? {})
    .flatMap((held): Repeating[] => {
      const side = sideOfHeld(drawer, held);
      if (side === null) return [];
      const all = [side.base, ...side.inks].map((one) => ({
        held,
        ink: one,
        deltaE00: deltaE2000(lab, labOf(one)),
      }));
      const closest = all.reduce((best, one) => (one.deltaE00 < best.deltaE00 ? one : best));
      return closest.deltaE00 <= limit ? [closest] : [];
    })
    .sort((one, other) => one.deltaE00 - other.deltaE00);
}

const labs = new WeakMap<Ink, Lab>();

function labOf(ink: Ink): Lab {
  const before = labs.get(ink);
  if (before !== undefined) return before;
  const lab = labFromOklch(oklchFromTuple(ink.oklch));
  labs.set(ink, lab);
  return lab;
}

/** A paper of the drawer in its place, with its comparison. */
export interface RankedHeld {
  readonly held: Held;
  readonly ranked: Ranked;
}

/** The drawer held against an anchor, best first; the anchor itself is left out. Empty where the anchor is not in it. */
export function rankDrawer(drawer: Drawer, anchor: Held, options: SearchOptions = {}): readonly RankedHeld[] {
  const side = sideOfHeld(drawer, anchor);
  if (side === null) return [];
  const candidates = candidatesOf(drawer, [anchor], options.filter);
  const sides = candidates.flatMap((held) => sideOfHeld(drawer, held) ?? []);
  return rank(side, sides, { distance: options.distance ?? 'apart' }).flatMap((ranked) => {
    const held = candidates[ranked.index];
    return held === undefined ? [] : [{ held, ranked }];
  });
}

/** A paper that could lie between two others, with its comparison to each. */
export interface Bridge {
  readonly held: Held;
  readonly toFirst: Ranked;
  readonly toSecond: Ranked;
}

/** "A bridge between these two": papers that hold together with both, those that tie the one they tie less the most first. */
export function bridgesBetween(
  drawer: Drawer,
  first: Held,
  second: Held,
  options: SearchOptions = {},
): readonly Bridge[] {
  const sides = [sideOfHeld(drawer, first), sideOfHeld(drawer, second)] as const;
  if (sides[0] === null || sides[1] === null) return [];
  const candidates = candidatesOf(drawer, [first, second], options.filter);
  const all = candidates.flatMap((held) => sideOfHeld(drawer, held) ?? []);
  const compareOptions = { distance: options.distance ?? 'apart' } as const;
  const [holds] = verdictOrder;
  const holding = (ranked: readonly Ranked[]) =>
    new Map(ranked.filter((one) => one.verdict === holds).map((one) => [one.index, one]));
  const ones = holding(rank(sides[0], all, compareOptions));
  const others = holding(rank(sides[1], all, compareOptions));
  return candidates
    .flatMap((held, index): Bridge[] => {
      const [toFirst, toSecond] = [ones.get(index), others.get(index)];
      return toFirst === undefined || toSecond === undefined ? [] : [{ held, toFirst, toSecond }];
    })
    .sort((a, b) => fitOf(b) - fitOf(a));
}

/** Sheets already in play are left out with both their sides. */
function candidatesOf(drawer: Drawer, inPlay: readonly Held[], filter: DrawerFilter = {}): readonly Held[] {
  const keys = new Set(inPlay.map(sheetKey));
  return filterHeld(drawer, filter).filter((held) => !keys.has(sheetKey(held)));
}

/** A bridge ties both; the one that it ties less counts. */
function fitOf({ toFirst, toSecond }: Bridge): number {
  const of = ({ standing }: Ranked): number => (standing ? fitness(standing) : 0);
  return Math.min(of(toFirst), of(toSecond));
}
