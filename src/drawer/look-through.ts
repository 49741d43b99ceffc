import { findBridge } from '../harmony/further/find-that-answers.ts';
import { takeSide } from '../harmony/measure/take-side.ts';
import type { Comparison, Distance, Verdict } from '../harmony/model.ts';
import { foundColour } from '../harmony/words/found-words.ts';
import type { BaseKind, Ink, Motif, PrintScale } from '../sheet/model.ts';
import { inkWord } from '../sheet/words/side-words.ts';
import { type DrawerFilter, filterHeld } from './filter.ts';
import { heldKey, nameOfHeld, sheetKey, sideOfHeld } from './held.ts';
import { rankDrawer, repeatsOfInk } from './matching-papers.ts';
import type { Drawer, Held } from './model.ts';

/** What is looked for in the drawer. */
export type Wish =
  | { readonly by: 'anchor' }
  | { readonly by: 'ink'; readonly ink: Ink }
  | { readonly by: 'bridge'; readonly candidate: Held };

/** One paper in its place, with the line that says why it stands there. */
export interface DrawerMatch {
  readonly held: Held;
  /** How it holds with the anchor; null where it was looked for by colour. */
  readonly verdict: Verdict | null;
  /** Of a bridge: how it holds with the candidate. */
  readonly toCandidate?: Verdict;
  readonly says: string;
  /** The pair whose inks the line names, or null where it names none by letter. */
  readonly of: Pick<Comparison, 'anchor' | 'candidate'> | null;
}

/** What a study says of what the drawer is held against. */
export interface HeldAgainst {
  readonly anchor: Held | null;
  readonly candidates: readonly Held[];
  readonly distance: Distance;
}

/** The first of what was found, and how many there are in all. */
export interface DrawerMatches {
  readonly places: readonly DrawerMatch[];
  readonly all: number;
}

/**
 * The drawer against a study's anchor, best first; by colour, nearest first; or what could stand between two papers. What
 * was found in a drawer is remembered, so that a filter only narrows it; `most` are put in words.
 */
export function matchesInDrawer(
  drawer: Drawer,
  study: HeldAgainst,
  wish: Wish,
  filter: DrawerFilter,
  most: number,
): DrawerMatches {
  const { anchor } = study;
  if (!anchor) return { places: [], all: 0 };
  const found = remembered(drawer, wishKey(study, anchor, wish), () => findAll(drawer, study, anchor, wish));
  const fits = isOpen(filter) ? null : new Set(filterHeld(drawer, filter).map(heldKey));
  const there = fits === null ? found : found.filter(({ held }) => fits.has(heldKey(held)));
  // Only what is shown is worked out in words.
  return { places: there.slice(0, most).map(({ held, tell }) => ({ held, ...tell() })), all: there.length };
}

/** A paper in its place, put in words when it is asked for. */
interface UntoldMatch {
  readonly held: Held;
  readonly tell: () => Omit<DrawerMatch, 'held'>;
}

function findAll(drawer: Drawer, study: HeldAgainst, anchor: Held, wish: Wish): readonly UntoldMatch[] {
  const { distance } = study;
  switch (wish.by) {
    case 'anchor':
      return rankDrawer(drawer, anchor, { distance }).map(({ held, ranked }) => ({
        held,
        tell: () => ({
          verdict: ranked.verdict,
          says: ranked.decision.summary,
          of: { anchor: ranked.anchor, candidate: ranked.candidate },
        }),
      }));
    case 'ink':
      return repeatsOfInk(drawer, wish.ink, { distance })
        .filter(({ held }) => sheetKey(held) !== sheetKey(anchor))
        .map(({ held, ink, deltaE00 }) => ({
          held,
          tell: () => ({ verdict: null, says: foundColour(inkWord(ink), ink.share, deltaE00), of: null }),
        }));
    case 'bridge':
      return bridges(drawer, anchor, wish.candidate, study.candidates);
  }
}

/** Papers that could stand between two, but for those that lie in the study as it is. */
function bridges(
  drawer: Drawer,
  anchor: Held,
  candidate: Held,
  others: readonly Held[],
): readonly UntoldMatch[] {
  const inPlay = new Set([anchor, candidate, ...others].map(sheetKey));
  const there = filterHeld(drawer, {}).filter((held) => !inPlay.has(sheetKey(held)));
  const ends = [sideOfHeld(drawer, anchor), sideOfHeld(drawer, candidate)] as const;
  if (!ends[0] || !ends[1]) return [];
  const sides = there.flatMap((held) => sideOfHeld(drawer, held) ?? []);
  const names = there.map((held) => nameOfHeld(drawer, held));
  const of = { anchor: takeSide(ends[0], 'anchor'), candidate: takeSide(ends[1], 'candidate') };
  return findBridge(ends[0], ends[1], sides, names).map(({ index, toAnchor, toCandidate, says }) => ({
    held: there[index]!,
    tell: () => ({ verdict: toAnchor, toCandidate, says, of }),
  }));
}

/** What was found last in a drawer, newest last; a drawer that has changed is another one. */
const memory = new WeakMap<Drawer, Map<string, readonly UntoldMatch[]>>();
/** Questions that are remembered of one drawer: the three ways to look, for a study or two. Ours. */
const mostRemembered = 6;

function remembered(drawer: Drawer, key: string, find: () => readonly UntoldMatch[]): readonly UntoldMatch[] {
  const known = memory.get(drawer) ?? new Map<string, readonly UntoldMatch[]>();
  memory.set(drawer, known);
  const found = known.get(key) ?? find();
  known.delete(key);
  known.set(key, found);
  const [oldest] = known.keys();
  if (known.size > mostRemembered && oldest !== undefined) known.delete(oldest);
  return found;
}

function wishKey({ candidates, distance }: HeldAgainst, anchor: Held, wish: Wish): string {
  const of =
    wish.by === 'ink'
      ? [wish.ink.oklch]
      : wish.by === 'bridge'
        ? [wish.candidate, ...candidates].map(heldKey)
        : [];
  return JSON.stringify([wish.by, distance, heldKey(anchor), of]);
}

function isOpen({
  words = '',
  kinds,
  bases,
  scales,
  motifs,
  finishes,
  leastCount = 0,
}: DrawerFilter): boolean {
  const lists = [kinds, bases, scales, motifs, finishes];
  return words.trim() === '' && leastCount <= 0 && lists.every((list) => !list?.length);
}

/** Values of the filter that something in the drawer has, so that none is offered in vain. */
export function filterChoices(drawer: Drawer): FilterChoices {
  const before = choicesOf.get(drawer);
  if (before !== undefined) return before;
  const sides = filterHeld(drawer, {}).flatMap((held) => sideOfHeld(drawer, held) ?? []);
  const distinct = <T>(values: readonly (T | null | undefined)[]): T[] =>
    [...new Set(values.filter((value): value is T => value !== null && value !== undefined))].sort();
  const choices = {
    bases: distinct(sides.map(({ base }) => base.kind)),
    scales: (['small', 'medium', 'large'] as const).filter((one) =>
      sides.some(({ print }) => print.scale === one),
    ),
    motifs: distinct(sides.flatMap(({ tags }) => tags?.motifs ?? [])),
    mostCount: drawer.sheets.reduce((most, { count }) => Math.max(most, count), 1),
  };
  choicesOf.set(drawer, choices);
  return choices;
}

const choicesOf = new WeakMap<Drawer, FilterChoices>();

export interface FilterChoices {
  readonly bases: readonly BaseKind[];
  readonly scales: readonly PrintScale[];
  readonly motifs: readonly Motif[];
  /** The largest number that there is of any sheet. */
  readonly mostCount: number;
}
