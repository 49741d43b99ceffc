import { partById } from '../drawer/by-id.ts';
import { heldKey, otherSideOfHeld, ownedFrom, pairNames, sideOfHeld } from '../drawer/held.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { compare } from '../harmony/compare.ts';
import type { Comparison, Distance, MendOptions, Remedy } from '../harmony/model.ts';
import { rank } from '../harmony/ranking/rank.ts';
import { remediesFor } from '../harmony/remedies/remedies.ts';
import type { StudyLeaf } from '../notebook/model.ts';
import { ownTurn } from '../storage/own-turn.ts';
import type { RankedCandidate } from './session-types.ts';

/** Comparisons that are worked out once and given again until the drawer they were worked out from changes. */
export interface Comparisons {
  of(drawer: Drawer, anchor: Held, candidate: Held, distance: Distance): Comparison | null;
  /** A study's candidates that are in the drawer, best first. */
  ranked(drawer: Drawer, study: StudyLeaf): readonly RankedCandidate[];
  /** What could mend a pair with what the drawer holds, least effort first. */
  remedies(drawer: Drawer, pair: HeldPair, places: MendOptions['places']): readonly Remedy[];
  /** Has ready what a study is drawn from, a part a task, so that drawing it holds up the hand less long. */
  prepare(drawer: Drawer, study: StudyLeaf): Promise<void>;
}

export interface HeldPair {
  readonly anchor: Held;
  readonly candidate: Held;
  readonly distance: Distance;
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

  const knownOf = (drawer: Drawer): Known => {
    const before = all.find((one) => one.drawer === drawer) ?? all.find((one) => isSame(one.drawer, drawer));
    if (before !== undefined && before === all[0]) return before;
    const known = before ?? { drawer, comparisons: new Map(), rankings: new Map() };
    all = [known, ...all.filter((one) => one !== before)].slice(0, drawersKept);
    return known;
  };

  const comparison: Comparisons['of'] = (drawer, anchor, candidate, distance) => {
    const known = knownOf(drawer).comparisons;
    const key = `${heldKey(anchor)}|${heldKey(candidate)}|${distance}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const sides = [sideOfHeld(drawer, anchor), sideOfHeld(drawer, candidate)] as const;
    const fresh =
      sides[0] === null || sides[1] === null
        ? null
        : compare(sides[0], sides[1], {
            distance,
            names: pairNames(drawer, anchor, candidate),
          });
    known.set(key, fresh);
    return fresh;
  };

  return {
    of: comparison,
    remedies(drawer, { anchor, candidate, distance }, places) {
      const found = comparison(drawer, anchor, candidate, distance);
      if (found === null) return [];
      const otherSide = otherSideOfHeld(drawer, candidate);
      return remediesFor(found, {
        owned: ownedFrom(drawer, [sheetOf(drawer, anchor), sheetOf(drawer, candidate)]),
        ...(otherSide === null ? {} : { otherSide }),
        ...(places === undefined ? {} : { places }),
      });
    },
    async prepare(drawer, study) {
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
      const anchorSide = sideOfHeld(drawer, anchor);
      const there = candidates.flatMap((held, index) => {
        const side = sideOfHeld(drawer, held);
        return side === null ? [] : [{ held, index, side }];
      });
      const sides = there.map((one) => one.side);
      const order = anchorSide === null ? [] : rank(anchorSide, sides, { distance });
      const ranked = order.flatMap((place): RankedCandidate[] => {
        const one = there[place.index];
        if (one === undefined) return [];
        const { index, held } = one;
        return [
          {
            index,
            held,
            // Worked out when it is looked at, not for the whole list.
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
    a === b || (a.length === b.length && a.every((item, i) => item === b[i]));
  return same(one.sheets, other.sheets) && same(one.plains, other.plains) && same(one.parts, other.parts);
}

function sheetOf(drawer: Drawer, held: Held): string {
  if (held.kind !== 'part') return held.id;
  return partById(drawer, held.id)?.sheetId ?? '';
}
