import { emptyNotebook } from '../../notebook/empty.ts';
import { keptName } from '../../notebook/limits.ts';
import type { Kept, Shelf } from '../shelf.ts';
import { troubleFrom } from '../words/trouble.ts';
import type { Left, Note } from '../write-ahead.ts';
import {
  type Item,
  isSameWritten,
  type Lists,
  listsOf,
  recordName,
  type storedKinds,
  type Written,
  writtenOf,
} from '../written.ts';
import { type Clash, choicesAfter, isSame, mergedFields } from './merge.ts';
import { itemFrom } from './read-records.ts';

/** What came of the entries that closed tabs left. */
export interface Recovered {
  /** The notebook that was brought up to date last, or null. */
  readonly notebookId: string | null;
  /** What the shelf could not take: it is whole in memory, and its notes stay until it is stored. */
  readonly unsaved: readonly Unsaved[];
}

export interface Unsaved {
  readonly written: Written;
  /** What it was put together with, as it is on the shelf; null where there is nothing. */
  readonly kept: Kept | null;
  readonly left: Left;
}

/**
 * Brings what closed tabs did not get stored onto the shelf, record by record. What such a tab had stored after all is
 * known by its number, and nothing comes of it. A text that another tab stored meanwhile stays, and what was noted is
 * shown beside it for the reader to choose. An entry goes only once it is stored.
 */
export async function recover(left: readonly Left[], shelf: Shelf, newId: () => string): Promise<Recovered> {
  let notebookId: string | null = null;
  const unsaved: Unsaved[] = [];
  for (const entry of left) {
    // Another tab may store between reading and saving, so once more where it did.
    const done = (await bringIn(entry, shelf, newId)) ?? (await bringIn(entry, shelf, newId));
    if (done === 'stored') notebookId = entry.notebookId;
    else if (typeof done === 'object' && done !== null) unsaved.push(done);
  }
  return { notebookId, unsaved };
}

async function bringIn(
  left: Left,
  shelf: Shelf,
  newId: () => string,
): Promise<'stored' | 'nothing' | Unsaved | null> {
  const kept = await shelf.notebook(left.notebookId).catch((error: unknown) => troubleFrom(error));
  if (kept instanceof Error) {
    // What can't be read here may be readable to a later version: its notes wait for that.
    if (kept.kind === 'torn' || kept.kind === 'later version') return 'nothing';
    throw kept;
  }
  const written = withNotes(kept, left, newId);
  if (written === null) {
    left.remove();
    return 'nothing';
  }
  const count = left.notes.at(-1)?.count ?? 0;
  try {
    await shelf.save(written.notebook, kept?.revision ?? 0, {
      choices: written.choices,
      stored: { [left.tabId]: count },
    });
  } catch (error) {
    return troubleFrom(error).kind === 'elsewhere' ? null : { written, kept, left };
  }
  left.remove();
  return 'stored';
}

/** The notebook with what was noted and not stored; null where nothing is missing. */
function withNotes(
  kept: Kept | null,
  { tabId, notebookId, notes }: Left,
  newId: () => string,
): Written | null {
  const missing = notes.filter(({ count }) => count > (kept?.stored[tabId] ?? 0));
  // A notebook that is gone was taken out, unless it was noted from its first word.
  if (missing.length === 0 || (kept === null && !missing.some(({ kind }) => kind === 'title'))) return null;
  const before: Written = kept ?? { notebook: emptyNotebook(notebookId), choices: [] };
  const lists: Record<keyof Lists, readonly Item[]> = { ...listsOf(before) };
  const clashes: Clash[] = [];
  const aside = new Set(kept?.setAside.map(({ id }) => id));
  // What a tab stored itself, one letter after the other, is no other tab's.
  const isOwn = (revision: number) => kept?.alone?.tab === tabId && kept.alone.since <= revision + 1;
  let { title } = before.notebook;
  for (const note of missing) {
    if (note.kind === 'title') title = typeof note.value === 'string' ? keptName(note.value) : title;
    else
      lists[note.kind] = withNote(
        lists[note.kind],
        note,
        note.kind,
        isOwn(note.revision) ? null : kept,
        clashes,
        aside,
        newId,
      );
  }
  const leaves = lists.leaf as Lists['leaf'];
  const choice = choicesAfter(lists.choice as Lists['choice'], leaves, clashes, newId);
  const after = writtenOf(notebookId, title, { ...(lists as unknown as Lists), choice });
  return kept !== null && isSameWritten(before, after) ? null : after;
}

function withNote(
  list: readonly Item[],
  { id, value, at, revision }: Note,
  kind: (typeof storedKinds)[number],
  /** What another tab may have stored since; null where none has. */
  kept: Kept | null,
  clashes: Clash[],
  aside: ReadonlySet<string | null>,
  newId: () => string,
): readonly Item[] {
  const stands = list.findIndex((item) => item.id === id);
  const there = list[stands];
  const isNewer = (kept?.storedAt.get(recordName(kind, id)) ?? 0) > revision;
  if (value === null) return there === undefined || isNewer ? list : list.toSpliced(stands, 1);
  const read = itemFrom(kind, id, value);
  if (!('item' in read)) return list;
  // What is kept aside as unreadable stays kept: under its id this would take its place.
  if (there === undefined && aside.has(id))
    return kind === 'leaf' ? list.toSpliced(at, 0, { ...read.item, id: newId() }) : list;
  if (there === undefined) return list.toSpliced(at, 0, read.item);
  if (isSame(there, read.item)) return list;
  return list.with(stands, isNewer ? mergedFields(kind, undefined, there, read.item, clashes) : read.item);
}
