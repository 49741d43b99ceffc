import { all, allOrNothing } from '../all-or-nothing.ts';
import type { Database, Head } from '../database.ts';
import { notebookVersion } from '../migrate.ts';
import { changedElsewhere } from '../words/notebook-words.ts';
import { StorageTrouble } from '../words/trouble.ts';
import {
  type Difference,
  differences,
  type Item,
  isSameWritten,
  listsOf,
  type StoredKind,
  storedKinds,
  type Written,
  writtenOf,
} from '../written.ts';
import { type Positions, positionsOf } from './positions.ts';
import { recordRefused, type SetAside } from './records.ts';

/** What a tab knows to be in the store: what it read or stored last. The next save writes what differs from it. */
export interface Base {
  readonly written: Written;
  readonly revision: number;
  readonly places: PositionsByKind;
  /** True where the records are of an older version, and all have to be written. */
  readonly isOlder?: boolean;
}
export type PositionsByKind = Readonly<Record<StoredKind, Positions>>;

export interface SaveMore {
  /** By tab: the number of its last change that is in what is saved. */
  readonly stored?: Readonly<Record<string, number>>;
  /** The tab that saves. */
  readonly by?: string;
  /** True where the notebook is the one to be opened next time. */
  readonly isOpen?: boolean;
  /** What came with a notebook and could not be read: kept beside its records. */
  readonly aside?: readonly SetAside[];
  readonly savedAt: string;
}

/** Tabs whose last stored change is remembered. */
const mostTabs = 24;

/**
 * Writes what differs from `base`, in one transaction that is on the disk when this resolves. Resolves with the new
 * base. @throws StorageTrouble `elsewhere`, with nothing written, where the store has moved on from `base`.
 */
export async function saveRecords(
  db: Database,
  base: Base | null,
  written: Written,
  more: SaveMore,
): Promise<Base> {
  const { id, title } = written.notebook;
  const before = base?.isOlder ? null : (base?.written ?? null);
  const changes = differences(before, written);
  const places = newPlaces(base, written);
  const tx = db.transaction(['heads', 'records', 'settings', 'setAside'], 'readwrite', {
    durability: 'strict',
  });
  return allOrNothing(tx, async () => {
    const heads = tx.objectStore('heads');
    const [head, last] = await Promise.all([heads.get(id), tx.objectStore('settings').get('last')]);
    if ((head?.revision ?? 0) !== (base?.revision ?? 0)) {
      throw new StorageTrouble('elsewhere', changedElsewhere);
    }
    const revision = (head?.revision ?? 0) + 1;
    const records = tx.objectStore('records');
    const isSmaller = changes.some(({ value }) => value === null);
    const isNext = more.isOpen === true && last !== id;
    await all([
      ...withMoves(changes, base, written, places).map(({ kind, id: item, value }) => () => {
        const place = places[kind].get(item) ?? 0;
        return value === null
          ? records.delete([id, kind, item])
          : records.put({ notebook: id, kind, id: item, place, revision, value });
      }),
      () =>
        heads.put({
          id,
          title,
          revision,
          savedAt: more.savedAt,
          version: notebookVersion,
          removedAt: isSmaller ? revision : (head?.removedAt ?? 0),
          stored: storedBy(head, more.stored ?? {}),
          ...aloneAfter(head, more.by, revision),
        }),
      ...(more.aside ?? []).map((found) => () => tx.objectStore('setAside').put({ notebook: id, found })),
      ...(isNext ? [() => tx.objectStore('settings').put(id, 'last')] : []),
    ]);
    return { written, revision, places };
  });
}

/**
 * What of it can be stored so that it opens again: where a record can't, its former state stands in its place. `why` is
 * a sentence on the first that can't, or null.
 */
export function fitToStore(
  before: Written | null,
  written: Written,
): { readonly fit: Written; readonly why: string | null } {
  const refused = differences(before, written).flatMap(({ kind, id, value }) => {
    const why = value === null || kind === 'choice' ? null : recordRefused(kind, value);
    return why === null ? [] : [{ kind, id, why }];
  });
  if (refused.length === 0) return { fit: written, why: null };
  const old = before === null ? null : listsOf(before);
  const fit = Object.fromEntries(
    storedKinds.map((kind) => {
      const ids = new Set(refused.filter((one) => one.kind === kind).map(({ id }) => id));
      const list: readonly Item[] = listsOf(written)[kind];
      if (ids.size === 0) return [kind, list];
      const was = new Map((old?.[kind] ?? []).map((item: Item) => [item.id, item]));
      return [kind, list.flatMap((item) => (ids.has(item.id) ? (was.get(item.id) ?? []) : item))];
    }),
  ) as unknown as Parameters<typeof writtenOf>[2];
  const { id, title } = written.notebook;
  return { fit: writtenOf(id, title, fit), why: refused[0]!.why };
}

/** True where nothing has to be written. */
export function isStored(base: Base | null, written: Written): base is Base {
  return base !== null && !base.isOlder && isSameWritten(base.written, written);
}

function newPlaces(base: Base | null, written: Written): PositionsByKind {
  const [old, now] = [base === null ? null : listsOf(base.written), listsOf(written)];
  const places = (kind: StoredKind): Positions =>
    base !== null && old?.[kind] === now[kind]
      ? base.places[kind]
      : positionsOf(
          now[kind].map(({ id }) => id),
          base?.places[kind] ?? new Map(),
        );
  return {
    leaf: places('leaf'),
    sheet: places('sheet'),
    plain: places('plain'),
    part: places('part'),
    choice: places('choice'),
  };
}

/** The differences, and the items that only stand somewhere else than before. */
function withMoves(
  changes: readonly Difference[],
  base: Base | null,
  written: Written,
  places: PositionsByKind,
): readonly Difference[] {
  if (base === null) return changes;
  const moved = storedKinds.flatMap((kind): readonly Difference[] => {
    if (places[kind] === base.places[kind]) return [];
    const told = new Set(changes.flatMap((one) => (one.kind === kind ? [one.id] : [])));
    const list: readonly Item[] = listsOf(written)[kind];
    return list.flatMap((value, at) =>
      !told.has(value.id) && base.places[kind].get(value.id) !== places[kind].get(value.id)
        ? [{ kind, id: value.id, value, at }]
        : [],
    );
  });
  return [...changes, ...moved];
}

function aloneAfter(head: Head | undefined, tab: string | undefined, revision: number): Pick<Head, 'alone'> {
  if (tab === undefined) return {};
  return { alone: { tab, since: head?.alone?.tab === tab ? head.alone.since : revision } };
}

function storedBy(head: Head | undefined, more: Readonly<Record<string, number>>): Head['stored'] {
  const all = { ...head?.stored };
  for (const [tab, count] of Object.entries(more)) {
    const known = all[tab] ?? 0;
    // Put last, as the one that stored last.
    delete all[tab];
    all[tab] = Math.max(known, count);
  }
  return Object.fromEntries(Object.entries(all).slice(-mostTabs));
}
