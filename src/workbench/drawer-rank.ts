import { type DrawerFilter, filterHeld } from '../drawer/filter.ts';
import { nameOfHeld, sheetKey, sideOfHeld } from '../drawer/find.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { rankDrawer, repeatsOfInk } from '../drawer/search.ts';
import { findBridge } from '../harmony/find.ts';
import { foundColour } from '../harmony/found-words.ts';
import type { Comparison, Verdict } from '../harmony/model.ts';
import type { StudyLeaf } from '../notebook/model.ts';
import type { BaseKind, Ink, Motif, PrintScale } from '../sheet/model.ts';
import { relabel } from '../sheet/relabel.ts';
import { inkWord } from '../sheet/words.ts';

/** What is looked for in the drawer. */
export type Wish =
  | { readonly by: 'anchor' }
  | { readonly by: 'ink'; readonly ink: Ink }
  | { readonly by: 'bridge'; readonly candidate: Held };

/** One paper in its place, with the line that says why it stands there. */
export interface FoundPlace {
  readonly held: Held;
  /** How it holds with the anchor; null where it was looked for by colour. */
  readonly verdict: Verdict | null;
  /** Of a bridge: how it holds with the candidate. */
  readonly toCandidate?: Verdict;
  readonly says: string;
  /** The pair whose inks the line names, or null where it names none by letter. */
  readonly of: Pick<Comparison, 'anchor' | 'candidate'> | null;
}

/** The drawer against a study's anchor, best first; by colour, nearest first; or what could stand between two papers. */
export function findPlaces(
  drawer: Drawer,
  study: StudyLeaf,
  wish: Wish,
  filter: DrawerFilter,
  most: number,
): { readonly places: readonly FoundPlace[]; readonly all: number } {
  const { anchor, distance } = study;
  if (!anchor) return { places: [], all: 0 };
  switch (wish.by) {
    case 'anchor': {
      const ranked = rankDrawer(drawer, anchor, { distance, filter });
      // Only what is shown is worked out in words.
      const places = ranked.slice(0, most).map(
        ({ held, ranked: place }): FoundPlace => ({
          held,
          verdict: place.verdict,
          says: place.decision.summary,
          of: { anchor: place.anchor, candidate: place.candidate },
        }),
      );
      return { places, all: ranked.length };
    }
    case 'ink': {
      const found = repeatsOfInk(drawer, wish.ink, { distance, filter }).filter(
        ({ held }) => sheetKey(held) !== sheetKey(anchor),
      );
      const places = found.slice(0, most).map(
        ({ held, ink, deltaE00 }): FoundPlace => ({
          held,
          verdict: null,
          says: foundColour(inkWord(ink), ink.share, deltaE00),
          of: null,
        }),
      );
      return { places, all: found.length };
    }
    case 'bridge':
      return bridges(drawer, { anchor, candidate: wish.candidate }, study.candidates, filter, most);
  }
}

/** Values of the filter that something in the drawer has, so that none is offered in vain. */
export function filterChoices(drawer: Drawer): FilterChoices {
  const sides = filterHeld(drawer, {}).flatMap((held) => sideOfHeld(drawer, held) ?? []);
  const distinct = <T>(values: readonly (T | null | undefined)[]): T[] =>
    [...new Set(values.filter((value): value is T => value !== null && value !== undefined))].sort();
  return {
    bases: distinct(sides.map(({ base }) => base.kind)),
    scales: (['small', 'medium', 'large'] as const).filter((one) =>
      sides.some(({ print }) => print.scale === one),
    ),
    motifs: distinct(sides.flatMap(({ tags }) => tags?.motifs ?? [])),
    mostCount: Math.max(1, ...drawer.sheets.map(({ count }) => count)),
  };
}

export interface FilterChoices {
  readonly bases: readonly BaseKind[];
  readonly scales: readonly PrintScale[];
  readonly motifs: readonly Motif[];
  /** The largest number that there is of any sheet. */
  readonly mostCount: number;
}

/** Papers that could stand between two, but for those that lie in the study as it is. */
function bridges(
  drawer: Drawer,
  { anchor, candidate }: { readonly anchor: Held; readonly candidate: Held },
  others: readonly Held[],
  filter: DrawerFilter,
  most: number,
) {
  const inPlay = new Set([anchor, candidate, ...others].map(sheetKey));
  const there = filterHeld(drawer, filter).filter((held) => !inPlay.has(sheetKey(held)));
  const ends = [sideOfHeld(drawer, anchor), sideOfHeld(drawer, candidate)] as const;
  if (!ends[0] || !ends[1]) return { places: [], all: 0 };
  const sides = there.flatMap((held) => sideOfHeld(drawer, held) ?? []);
  const names = there.map((held) => nameOfHeld(drawer, held));
  const found = findBridge(ends[0], ends[1], sides, names);
  const of = { anchor: relabel(ends[0], 'anchor'), candidate: relabel(ends[1], 'candidate') };
  const places = found.slice(0, most).map(
    ({ index, toAnchor, toCandidate, says }): FoundPlace => ({
      held: there[index]!,
      verdict: toAnchor,
      toCandidate,
      says,
      of,
    }),
  );
  return { places, all: found.length };
}
