import { heldKey, otherSideOfHeld, ownedFrom, pairNames, sideOfHeld } from '../drawer/find.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { compare } from '../harmony/compare.ts';
import type { Comparison, Distance } from '../harmony/model.ts';
import { rank } from '../harmony/rank.ts';
import type { StudyLeaf } from '../notebook/model.ts';
import type { Places, Plain, Side } from '../sheet/model.ts';
import { ownTurn } from '../storage/own-turn.ts';
import type { RankedCandidate } from './session-types.ts';

/** Comparisons that are worked out once and given again until the drawer they were worked out from changes. */
export interface Comparisons {
  of(drawer: Drawer, anchor: Held, candidate: Held, distance: Distance): Comparison | null;
  /** A study's candidates that are in the drawer, best first. */
  ranked(drawer: Drawer, study: StudyLeaf): readonly RankedCandidate[];
  /** Where the inks of a reading lie, known from now on: what can be cut away goes by it. */
  lies(reading: Side, places: Places): void;
  /** Has ready what a study is drawn from, a part a task, so that drawing it holds up the hand less long. */
  ahead(drawer: Drawer, study: StudyLeaf): Promise<void>;
}

/** All that was worked out from one drawer. */
interface Known {
  readonly drawer: Drawer;
  readonly comparisons: Map<string, Comparison | null>;
  readonly rankings: Map<string, readonly RankedCandidate[]>;
}

/** Drawers of which it is kept: the one that is open, and the one that it is about to become. */
const drawersKept = 2;

export function startComparisons(): Comparisons {
  /** Papers are few and drawers change seldom, so all that was worked out from a drawer is kept. Newest first. */
  let all: readonly Known[] = [];
  const plains = new WeakMap<Plain, Side>();
  const lying = new WeakMap<Side, Places>();

  const knownOf = (drawer: Drawer): Known => {
    const before = all.find((one) => one.drawer === drawer) ?? all.find((one) => isSame(one.drawer, drawer));
    if (before !== undefined && before === all[0]) return before;
    const known = before ?? { drawer, comparisons: new Map(), rankings: new Map() };
    all = [known, ...all.filter((one) => one !== before)].slice(0, drawersKept);
    return known;
  };
  const sideOf = (drawer: Drawer, held: Held): Side | null => {
    if (held.kind !== 'plain') return sideOfHeld(drawer, held);
    const plain = drawer.plains.find((one) => one.id === held.id);
    const side = plain === undefined ? undefined : plains.get(plain);
    if (plain === undefined || side !== undefined) return side ?? null;
    const fresh = sideOfHeld(drawer, held);
    if (fresh !== null) plains.set(plain, fresh);
    return fresh;
  };

  const comparison: Comparisons['of'] = (drawer, anchor, candidate, distance) => {
    const known = knownOf(drawer).comparisons;
    const key = `${heldKey(anchor)}|${heldKey(candidate)}|${distance}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const sides = [sideOf(drawer, anchor), sideOf(drawer, candidate)] as const;
    const fresh =
      sides[0] === null || sides[1] === null
        ? null
        : compare(sides[0], sides[1], {
            distance,
            names: pairNames(drawer, anchor, candidate),
            owned: ownedFrom(drawer, [sheetOf(drawer, anchor), sheetOf(drawer, candidate)]),
            ...withOther(otherSideOfHeld(drawer, candidate)),
            ...withPlaces(lying.get(sides[0]), lying.get(sides[1])),
          });
    known.set(key, fresh);
    return fresh;
  };

  return {
    of: comparison,
    lies(reading, places) {
      if (lying.get(reading) === places) return;
      lying.set(reading, places);
      for (const { drawer, comparisons } of all) {
        const keys = heldWith(drawer, reading).map(heldKey);
        for (const key of comparisons.keys())
          if (key.split('|').some((part) => keys.includes(part))) comparisons.delete(key);
      }
    },
    async ahead(drawer, study) {
      await ownTurn();
      const { anchor, distance } = study;
      const ranked = this.ranked(drawer, study);
      for (const { held } of ranked.slice(0, mostAhead)) {
        await ownTurn();
        if (anchor !== null) comparison(drawer, anchor, held, distance);
      }
    },
    ranked(drawer, study) {
      const { rankings } = knownOf(drawer);
      const { anchor, candidates, distance } = study;
      if (anchor === null) return [];
      const key = [anchor, ...candidates].map(heldKey).join('|') + distance;
      const before = rankings.get(key);
      if (before !== undefined) return before;
      const anchorSide = sideOf(drawer, anchor);
      const there = candidates.flatMap((held, index) => {
        const side = sideOf(drawer, held);
        return side === null ? [] : [{ held, index, side }];
      });
      const sides = there.map((one) => one.side);
      const order = anchorSide === null ? [] : rank(anchorSide, sides, { distance, withoutRemedies: true });
      const ranked = order.flatMap((place): RankedCandidate[] => {
        const one = there[place.index];
        if (one === undefined) return [];
        const { index, held } = one;
        return [
          {
            index,
            held,
            // Remedies are searched when they are looked at, not for the whole list.
            get comparison() {
              return comparison(drawer, anchor, held, distance) ?? place;
            },
          },
        ];
      });
      rankings.set(key, ranked);
      return ranked;
    },
  };
}

/** Comparisons of a study that are had ready: a page shows one in full and the others as tabs. Ours. */
const mostAhead = 6;

/** True where two drawers hold the very same things: an edit that was tried gives another drawer than when it is made. */
function isSame(one: Drawer, other: Drawer): boolean {
  const same = (a: readonly unknown[], b: readonly unknown[]) =>
    a.length === b.length && a.every((item, i) => item === b[i]);
  return same(one.sheets, other.sheets) && same(one.plains, other.plains) && same(one.parts, other.parts);
}

/** The sheets and parts of a drawer that were read like this. */
function heldWith({ sheets, parts }: Drawer, reading: Side): Held[] {
  const faces = (['A', 'B'] as const).flatMap((side) =>
    sheets
      .filter(({ sides }) => sides[side]?.reading === reading)
      .map(({ id }): Held => ({ kind: 'sheet', id, side })),
  );
  const cut = parts.filter((part) => part.reading === reading).map(({ id }): Held => ({ kind: 'part', id }));
  return [...faces, ...cut];
}

function withPlaces(
  anchor: Places | undefined,
  candidate: Places | undefined,
): { readonly places?: { readonly anchor?: Places; readonly candidate?: Places } } {
  if (anchor === undefined && candidate === undefined) return {};
  return { places: { ...(anchor ? { anchor } : {}), ...(candidate ? { candidate } : {}) } };
}

function withOther(otherSide: Side | null): { readonly otherSide?: Side } {
  return otherSide === null ? {} : { otherSide };
}

function sheetOf(drawer: Drawer, held: Held): string {
  if (held.kind !== 'part') return held.id;
  return drawer.parts.find((part) => part.id === held.id)?.sheetId ?? '';
}
