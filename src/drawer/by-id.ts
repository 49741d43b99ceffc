import type { Part, Plain, Sheet } from '../sheet/model.ts';
import type { Drawer } from './model.ts';

/** The sheet with this id, or undefined. Takes as long in a drawer of ten thousand as in one of ten. */
export function sheetById({ sheets }: Drawer, id: string): Sheet | undefined {
  return oneById(sheets, id);
}

/** The plain with this id, or undefined. */
export function plainById({ plains }: Drawer, id: string): Plain | undefined {
  return oneById(plains, id);
}

/** The part with this id, or undefined. */
export function partById({ parts }: Drawer, id: string): Part | undefined {
  return oneById(parts, id);
}

/** Where the one with this id stands in a list that never changes; −1 where it holds none. Of two with one id, the first. */
export function indexById(list: readonly Named[], id: string): number {
  return placesIn(list).get(id) ?? -1;
}

interface Named {
  readonly id: string;
}

function oneById<T extends Named>(list: readonly T[], id: string): T | undefined {
  return list[indexById(list, id)];
}

/** By the list itself, which an edit replaces and never changes; it is forgotten with the list. */
const known = new WeakMap<readonly Named[], ReadonlyMap<string, number>>();

function placesIn(list: readonly Named[]): ReadonlyMap<string, number> {
  const before = known.get(list);
  if (before !== undefined) return before;
  const places = new Map<string, number>();
  for (const [at, { id }] of list.entries()) if (!places.has(id)) places.set(id, at);
  known.set(list, places);
  return places;
}
