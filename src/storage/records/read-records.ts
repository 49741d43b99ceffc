import { keptName, limits } from '../../notebook/limits.ts';
import { type Choice, parseChoice } from '../choice.ts';
import type { Database, Head, StoredRecord } from '../database.ts';
import { notebookFormat, notebookVersion } from '../migrate.ts';
import { openNotebookFile } from '../notebook-file.ts';
import { laterVersion, whyAside } from '../words/notebook-words.ts';
import { StorageTrouble } from '../words/trouble.ts';
import { type Item, type Lists, type StoredKind, storedKinds, type Written, writtenOf } from '../written.ts';
import { recordFrom, type SetAside, setAside } from './records.ts';

/** A notebook as its records stand in the store, not looked into yet. */
export interface Raw {
  readonly head: Head;
  /** In the order of their keys. */
  readonly records: StoredRecord[];
  readonly aside: readonly SetAside[];
}

/** What was made of it. */
export interface Read {
  readonly written: Written;
  /** What could not be read; it stays in the store as it is. */
  readonly setAside: readonly SetAside[];
}

/** Records fetched at a time; a few hundred sheets are some hundred kilobytes, and take a few ms. Ours. */
const chunk = 250;
/** Longest time in ms that records are looked into before the page gets its turn. Ours. */
const sliceMs = 20;

/** All keys of a notebook's records: arrays come after all strings. */
export function rangeOf(id: string): IDBKeyRange {
  return IDBKeyRange.bound([id], [id, []]);
}

/** All of a notebook at one moment, in one transaction; null where there is none. */
export async function readRaw(db: Database, id: string): Promise<Raw | null> {
  const records: StoredRecord[] = [];
  const rest = await walkRaw(db, id, chunk, (some) => {
    for (const one of some) records.push(one);
  });
  return rest && { ...rest, records };
}

/**
 * The same, but its records are handed on in parts of so many, in the order of their keys, and not kept. No part is
 * handed on where there is no such notebook; null then.
 */
export async function walkRaw(
  db: Database,
  id: string,
  count: number,
  take: (some: readonly StoredRecord[]) => void,
): Promise<Omit<Raw, 'records'> | null> {
  const tx = db.transaction(['heads', 'records', 'setAside']);
  const head = await tx.objectStore('heads').get(id);
  if (head === undefined) return null;
  const aside = (await tx.objectStore('setAside').index('notebook').getAll(id)).map(({ found }) => found);
  const store = tx.objectStore('records');
  for (let range = rangeOf(id); ; ) {
    const some = await store.getAll(range, count);
    take(some);
    const last = some.at(-1);
    if (last === undefined || some.length < count) return { head, aside };
    range = IDBKeyRange.bound([id, last.kind, last.id], [id, []], true);
  }
}

/**
 * The notebook in them. What can't be read is set aside and named; the rest opens. Yields between slices, so that no
 * task is long, however many records there are.
 * @throws StorageTrouble where a later version of Quirewise stored it
 */
export async function readRecords({ head, records, aside }: Raw): Promise<Read> {
  if (head.version > notebookVersion) {
    throw new StorageTrouble('later version', laterVersion(head.version, notebookVersion));
  }
  const sorted = records.toSorted((a, b) => a.place - b.place || (a.id < b.id ? -1 : 1));
  if (head.version < notebookVersion) return readOlder(head, sorted, aside);
  const lists = emptyLists();
  const found = [...aside];
  let from = performance.now();
  for (const { kind, id, value } of sorted) {
    const item = itemFrom(kind, id, value);
    if (!('why' in item)) (lists[kind] as Item[] | undefined)?.push(item.item);
    else if (kind !== 'choice') found.push(setAside(kind, value, item.why));
    if (performance.now() - from > sliceMs) {
      await new Promise((next) => setTimeout(next));
      from = performance.now();
    }
  }
  // As it would come from a file: one that is too long opens cut.
  return { written: writtenOf(head.id, keptName(head.title), lists), setAside: found };
}

/** A record's value, checked; or why it can't be read, as a sentence. */
export function itemFrom(
  kind: StoredKind,
  id: string,
  value: unknown,
): { readonly item: Item } | { readonly why: string } {
  if (kind === 'choice') {
    const choice: Choice | undefined = parseChoice(value);
    return choice === undefined ? { why: whyAside.noChoice } : { item: choice };
  }
  const checked = recordFrom(kind, value);
  if (!checked.ok) return { why: checked.why };
  return checked.value.id === id ? { item: checked.value } : { why: whyAside.otherPlace };
}

export function emptyLists(): { [K in StoredKind]: Lists[K][number][] } {
  return { leaf: [], sheet: [], plain: [], part: [], choice: [] };
}

/** The ways up from older versions are of whole notebooks. */
function readOlder(head: Head, records: readonly StoredRecord[], aside: readonly SetAside[]): Read {
  const [leaves, sheets, plains, parts, choices] = storedKinds.map((wanted) =>
    records.filter(({ kind }) => kind === wanted).map(({ value }) => value),
  );
  const notebook = { id: head.id, title: head.title, leaves, drawer: { sheets, plains, parts } };
  const opened = openNotebookFile({ format: notebookFormat, version: head.version, notebook });
  return {
    written: {
      notebook: opened.notebook,
      choices: (choices ?? []).flatMap((value) => parseChoice(value) ?? []).slice(0, limits.leaves),
    },
    setAside: [...aside, ...opened.setAside],
  };
}
