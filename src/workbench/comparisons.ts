import { heldKey, otherSideOfHeld, ownedFrom, pairNames, sideOfHeld } from '../drawer/find.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import { compare } from '../harmony/compare.ts';
import type { Comparison, Distance } from '../harmony/model.ts';
import { rank } from '../harmony/rank.ts';
import type { StudyLeaf } from '../notebook/model.ts';
import type { Plain, Side } from '../sheet/model.ts';
import type { RankedCandidate } from './session-types.ts';

/** Comparisons that are worked out once and given again until the drawer they were worked out from changes. */
export interface Comparisons {
  of(drawer: Drawer, anchor: Held, candidate: Held, distance: Distance): Comparison | null;
  /** A study's candidates that are in the drawer, best first. */
  ranked(drawer: Drawer, study: StudyLeaf): readonly RankedCandidate[];
}

export function startComparisons(): Comparisons {
  /** Papers are few and drawers change seldom, so all that was worked out from one drawer is kept, and only that. */
  let of: Drawer | null = null;
  let known = new Map<string, Comparison | null>();
  let rankings = new Map<string, readonly RankedCandidate[]>();
  const plains = new WeakMap<Plain, Side>();

  const turnTo = (drawer: Drawer) => {
    if (drawer === of) return;
    of = drawer;
    known = new Map();
    rankings = new Map();
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
    turnTo(drawer);
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
          });
    known.set(key, fresh);
    return fresh;
  };

  return {
    of: comparison,
    ranked(drawer, study) {
      turnTo(drawer);
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

function withOther(otherSide: Side | null): { readonly otherSide?: Side } {
  return otherSide === null ? {} : { otherSide };
}

function sheetOf(drawer: Drawer, held: Held): string {
  if (held.kind !== 'part') return held.id;
  return drawer.parts.find((part) => part.id === held.id)?.sheetId ?? '';
}
