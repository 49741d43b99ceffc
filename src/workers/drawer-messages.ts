import type { DrawerFilter } from '../drawer/filter.ts';
import type { DrawerMatches, FilterChoices, HeldAgainst, Wish } from '../drawer/look-through.ts';
import type { Part, Plain, Sheet } from '../sheet/model.ts';

/** What the page tells the worker that looks through the drawer. One answer comes for each `find`. */
export type DrawerRequest =
  /** Things that are new or have changed, a few at a time, so that handing them over never holds up the page. */
  | ({ readonly kind: 'things' } & DrawerThings)
  /** The drawer as it stands now: ids in order, of things that were all handed over. */
  | ({ readonly kind: 'drawer' } & DrawerOrder)
  | {
      readonly kind: 'find';
      readonly id: number;
      readonly study: HeldAgainst;
      readonly wish: Wish;
      readonly filter: DrawerFilter;
      readonly most: number;
    };

export interface DrawerThings {
  readonly sheets?: readonly Sheet[];
  readonly plains?: readonly Plain[];
  readonly parts?: readonly Part[];
}

export interface DrawerOrder {
  readonly sheets: readonly string[];
  readonly plains: readonly string[];
  readonly parts: readonly string[];
}

export interface DrawerAnswer extends DrawerMatches {
  readonly id: number;
  readonly choices: FilterChoices;
}
