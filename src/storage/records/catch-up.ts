import type { Database, StoredRecord } from '../database.ts';
import { notebookVersion } from '../migrate.ts';
import { type Item, listsOf, recordName, storedKinds, type Written, writtenOf } from '../written.ts';
import { itemFrom, type Raw, rangeOf } from './read-records.ts';
import type { Base } from './save-records.ts';

/** What is known of the store once a notebook was read from it. */
export function baseOf({ head, records }: Raw, written: Written): Base {
  const places = Object.fromEntries(
    storedKinds.map((kind) => [
      kind,
      new Map(records.flatMap((one) => (one.kind === kind ? [[one.id, one.place] as const] : []))),
    ]),
  ) as unknown as Base['places'];
  return { written, revision: head.revision, places, isOlder: head.version < notebookVersion };
}

/** The base as the store has it now, with all that did not change as the same objects; null where it is gone. */
export async function changesSince(db: Database, id: string, base: Base): Promise<Base | null> {
  const tx = db.transaction(['heads', 'records']);
  const head = await tx.objectStore('heads').get(id);
  if (head === undefined) return null;
  if (head.revision === base.revision) return base;
  const store = tx.objectStore('records');
  const changed = await store
    .index('changes')
    .getAll(IDBKeyRange.bound([id, base.revision + 1], [id, head.revision]));
  const keys = head.removedAt > base.revision ? await store.getAllKeys(rangeOf(id)) : null;
  const there = keys === null ? null : new Set(keys.map(([, kind, item]) => recordName(kind, item)));
  const lists = listsOf(base.written);
  const next = Object.fromEntries(
    storedKinds.map((kind) => [
      kind,
      listNow(
        lists[kind],
        base.places[kind],
        changed.filter((one) => one.kind === kind),
        (item) => there === null || there.has(recordName(kind, item)),
      ),
    ]),
  ) as unknown as Record<(typeof storedKinds)[number], { list: never; places: Map<string, number> }>;
  const { leaf, sheet, plain, part, choice } = next;
  return {
    written: writtenOf(id, head.title, {
      leaf: leaf.list,
      sheet: sheet.list,
      plain: plain.list,
      part: part.list,
      choice: choice.list,
    }),
    revision: head.revision,
    places: {
      leaf: leaf.places,
      sheet: sheet.places,
      plain: plain.places,
      part: part.places,
      choice: choice.places,
    },
  };
}

function listNow(
  list: readonly Item[],
  places: ReadonlyMap<string, number>,
  changed: readonly StoredRecord[],
  isThere: (id: string) => boolean,
): { list: readonly Item[]; places: ReadonlyMap<string, number> } {
  if (changed.length === 0 && list.every(({ id }) => isThere(id))) return { list, places };
  const items = new Map(list.flatMap((item) => (isThere(item.id) ? [[item.id, item] as const] : [])));
  const next = new Map(places);
  for (const { kind, id, value, place } of changed) {
    next.set(id, place);
    const read = itemFrom(kind, id, value);
    if ('item' in read) items.set(id, read.item);
  }
  const at = (id: string) => next.get(id) ?? 0;
  return { list: [...items.values()].sort((a, b) => at(a.id) - at(b.id)), places: next };
}
