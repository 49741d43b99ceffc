import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { Notebook, NoteLeaf } from '../../src/notebook/model.ts';
import { databaseName, openDatabase } from '../../src/storage/database.ts';
import { serialiseNotebook } from '../../src/storage/notebook-file.ts';
import { recover } from '../../src/storage/records/recover.ts';
import { openShelf, type Shelf } from '../../src/storage/shelf.ts';
import { openWriteAhead, type SmallStore } from '../../src/storage/write-ahead.ts';
import type { Written } from '../../src/storage/written.ts';
import { note, notebookOf } from '../support/large-notebook.ts';
import { sampleNotebook } from '../unit/notebook/sample-notebook.ts';
import { openSession } from '../unit/workbench/open-session.ts';

const book = sampleNotebook();
const titled = (title: string): Notebook => ({ ...book, title });
const withText = (notebook: Notebook, text: string): Notebook => ({
  ...notebook,
  leaves: notebook.leaves.with(0, { ...(notebook.leaves[0] as NoteLeaf), text }),
});
const textIn = (kept: { readonly notebook: Notebook } | null) => (kept!.notebook.leaves[0] as NoteLeaf).text;
const written = (notebook: Notebook): Written => ({ notebook, choices: [] });
const dead = () => Promise.resolve(false);
let small: SmallStore;
let shelf: Shelf;
let count = 0;
const newId = () => `choice-${++count}`;

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  small = memoryStore();
  shelf = openShelf();
  count = 0;
});

const recoverAll = async () => recover(await openWriteAhead(small, 'new-tab').left(dead), openShelf(), newId);
/** What a tab notes that has seen `revision` of the book and changed it. */
const notedBy = (tab: string, after: Notebook, revision: number, before: Notebook | null = book) => {
  const ahead = openWriteAhead(small, tab);
  ahead.note(before === null ? null : written(before), written(after), revision);
  return ahead;
};
const nothing = { notebookId: null, unsaved: [] };

describe('a tab closed in mid-save', () => {
  it('loses nothing: the next tab stores what it had noted', async () => {
    const { revision } = await shelf.save(book, 0);
    notedBy('old-tab', withText(titled('typed just now'), 'and this'), revision);
    expect(await recoverAll()).toEqual({ notebookId: 'n1', unsaved: [] });
    const kept = await openShelf().notebook('n1');
    expect(kept).toMatchObject({ revision: 2, notebook: { title: 'typed just now' } });
    expect(textIn(kept)).toBe('and this');
    expect(small.length).toBe(0);
  });

  it('puts its words beside a leaf that can’t be read on the shelf, and leaves that as it is', async () => {
    const { revision } = await shelf.save(book, 0);
    const db = await openDatabase(databaseName, () => undefined);
    const { id } = book.leaves[0]!;
    const stored = (await db.get('records', ['n1', 'leaf', id]))!;
    const torn = { ...(stored.value as object), text: 7 };
    await db.put('records', { ...stored, value: torn });
    db.close();
    notedBy('old-tab', withText(book, 'typed just now'), revision);
    await recoverAll();
    const kept = await openShelf().notebook('n1');
    expect(kept?.setAside).toMatchObject([{ what: 'leaf', id, value: torn }]);
    expect(textIn(kept)).toBe('typed just now');
    expect(kept?.notebook.leaves[0]?.id).not.toBe(id);
  });

  it('before it had ever stored anything loses nothing either', async () => {
    notedBy('old-tab', titled('first'), 0, null);
    await recoverAll();
    expect((await openShelf().notebook('n1'))?.notebook).toEqual(titled('first'));
  });

  it('whose save was through after all leaves nothing behind', async () => {
    notedBy('old-tab', titled('stored'), 0, null);
    await shelf.save(titled('stored'), 0);
    expect(await recoverAll()).toEqual(nothing);
    expect(await shelf.notebooks()).toHaveLength(1);
    expect(small.length).toBe(0);
  });

  it('that had gone on and stored more brings back none of the older words', async () => {
    const { revision } = await shelf.save(book, 0);
    // As after a kill of the browser, whose small store is behind its database.
    notedBy('old-tab', withText(book, 'half of it'), revision);
    await shelf.save(withText(book, 'all of it'), revision, { stored: { 'old-tab': 2 } });
    expect(await recoverAll()).toEqual(nothing);
    const kept = await openShelf().notebook('n1');
    expect(textIn(kept)).toBe('all of it');
    expect(kept?.choices).toEqual([]);
  });

  it('between two letters, of which it had stored the first, needs no choice: both are its own', async () => {
    const { revision } = await shelf.save(book, 0, { by: 'old-tab' });
    const ahead = openWriteAhead(small, 'old-tab');
    ahead.note(written(book), written(withText(book, 'a')), revision);
    ahead.note(written(withText(book, 'a')), written(withText(book, 'ab')), revision);
    await shelf.save(withText(book, 'a'), revision, { by: 'old-tab', stored: { 'old-tab': 1 } });
    await recoverAll();
    const kept = await openShelf().notebook('n1');
    expect(textIn(kept)).toBe('ab');
    expect(kept?.choices).toEqual([]);
  });

  it('between two letters, beside another tab that wrote there, leaves the choice to her', async () => {
    const { revision } = await shelf.save(book, 0, { by: 'old-tab' });
    openWriteAhead(small, 'old-tab').note(written(book), written(withText(book, 'ab')), revision);
    await shelf.save(withText(book, 'other'), revision, { by: 'other-tab' });
    await recoverAll();
    const kept = await openShelf().notebook('n1');
    expect([textIn(kept), kept?.choices.map(({ other }) => other)]).toEqual(['other', ['ab']]);
  });

  it('that had taken a leaf out and stored that does not bring it back', async () => {
    const { revision } = await shelf.save(book, 0);
    notedBy('old-tab', withText(book, 'words on it'), revision);
    await shelf.save({ ...book, leaves: book.leaves.slice(1) }, revision, { stored: { 'old-tab': 2 } });
    expect(await recoverAll()).toEqual(nothing);
    expect((await openShelf().notebook('n1'))?.notebook.leaves).toHaveLength(book.leaves.length - 1);
  });

  it('while another tab went on elsewhere in the notebook: both are in it', async () => {
    const { revision } = await shelf.save(book, 0);
    notedBy('old-tab', withText(book, 'mine'), revision);
    await shelf.save(titled('theirs'), revision);
    await recoverAll();
    const kept = await openShelf().notebook('n1');
    expect([kept?.notebook.title, textIn(kept), kept?.choices]).toEqual(['theirs', 'mine', []]);
    expect(await shelf.notebooks()).toHaveLength(1);
  });

  it('while another tab wrote on the same leaf: that stands, and what was noted is to be chosen', async () => {
    const { revision } = await shelf.save(book, 0);
    notedBy('old-tab', withText(book, 'mine'), revision);
    await shelf.save(withText(book, 'theirs'), revision);
    await recoverAll();
    const kept = await openShelf().notebook('n1');
    expect(textIn(kept)).toBe('theirs');
    expect(kept?.choices).toEqual([{ id: 'choice-1', leafId: 'w1', of: 'text', other: 'mine' }]);
    // And only once, however often it is opened.
    expect(await recoverAll()).toEqual(nothing);
  });

  it('that added a leaf and took one out did so', async () => {
    const { revision } = await shelf.save(book, 0);
    const [first, , ...rest] = book.leaves;
    const after = { ...book, leaves: [first!, note('new', 'New'), ...rest] };
    notedBy('old-tab', after, revision);
    await recoverAll();
    expect((await openShelf().notebook('n1'))?.notebook).toEqual(after);
  });

  it('that is not closed at all is left alone', async () => {
    notedBy('living-tab', titled('in work'), 0, null);
    const noted = small.length;
    const left = await openWriteAhead(small, 'new-tab').left((id) => Promise.resolve(id === 'living-tab'));
    expect(left).toEqual([]);
    expect(small.length).toBe(noted);
  });

  it('whose note is torn costs only that note', async () => {
    const { revision } = await shelf.save(book, 0);
    notedBy('old-tab', withText(titled('whole'), 'torn'), revision);
    const key = [...Array(small.length).keys()]
      .map((i) => small.key(i)!)
      .find((one) => one.includes('leaf'))!;
    small.setItem(key, small.getItem(key)!.slice(0, 30));
    await recoverAll();
    const kept = await openShelf().notebook('n1');
    expect([kept?.notebook.title, textIn(kept)]).toEqual(['whole', 'Hello']);
    expect(small.length).toBe(0);
  });

  it('keeps its note until it is stored, also when storing fails', async () => {
    notedBy('old-tab', titled('work'), 0, null);
    const noted = small.length;
    const full = { ...shelf, save: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
    const { unsaved } = await recover(await openWriteAhead(small, 'new-tab').left(dead), full, newId);
    expect(unsaved[0]?.written.notebook).toEqual(titled('work'));
    expect(small.length).toBe(noted);
  });

  it('of the version before, which noted the notebook whole, loses nothing and brings back nothing twice', async () => {
    const { revision } = await shelf.save(book, 0);
    small.setItem(
      'quirewise-ahead:tab-old',
      `${revision} 1790000000000 ${serialiseNotebook(withText(book, 'old'))}`,
    );
    expect(await recoverAll()).toMatchObject({ notebookId: 'n1' });
    expect(textIn(await openShelf().notebook('n1'))).toBe('old');
    expect(small.length).toBe(0);
    small.setItem(
      'quirewise-ahead:tab-old',
      `${revision} 1790000000000 ${serialiseNotebook(withText(book, 'old'))}`,
    );
    expect(await recoverAll()).toEqual(nothing);
  });
});

describe('the notebook of a tab closed in mid-save', () => {
  it.each([
    ['was not stored', (_: Shelf) => Promise.resolve<unknown>(null)],
    ['was stored just before', (there: Shelf) => there.save({ ...titled('left'), id: 'n2' }, 0)],
  ])('is opened, and is opened again the time after: %s', async (_, before) => {
    const opened = async () => {
      const session = await openSession({ shelf: openShelf(), small });
      await vi.waitFor(() => expect(session.state.saving.status).toBe('saved'));
      const { id } = session.state.notebook;
      await session.close();
      return id;
    };
    expect(await opened()).not.toBe('n2');
    await before(shelf);
    notedBy('old-tab', { ...titled('left'), id: 'n2' }, 0, null);
    expect([await opened(), await opened()]).toEqual(['n2', 'n2']);
  });
});

describe('the note ahead', () => {
  it('goes once the save is through, and only what is in the save', () => {
    const ahead = notedBy('tab', withText(book, 'one'), 0);
    expect(small.length).toBe(1);
    ahead.note(written(book), written(titled('two')), 0);
    ahead.forget('n1', 1);
    expect(small.length).toBe(1);
    ahead.forget('n1', 2);
    expect(small.length).toBe(0);
  });

  it('of a keystroke is the one leaf, however large the notebook is', () => {
    const large = notebookOf({ sheets: 3_000, leaves: 3 });
    const leaves = large.leaves.with(0, note('note-0', 'A letter'));
    openWriteAhead(small, 'tab').note(written(large), written({ ...large, leaves }), 1);
    expect(small.length).toBe(1);
    expect(small.getItem(small.key(0)!)!.length).toBeLessThan(300);
  });

  it('that finds no room says so, and leaves the older words', () => {
    const ahead = notedBy('tab', withText(book, 'old'), 0);
    small.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    expect(ahead.note(written(book), written(withText(book, 'new')), 0)).toBe(false);
    expect(small.getItem(small.key(0)!)).toContain('"old"');
  });

  it('of a whole large notebook, or where the browser forbids it, is not made, and says so', () => {
    expect(openWriteAhead(small, 'tab').note(null, written(notebookOf({ sheets: 500 })), 0)).toBe(false);
    expect(small.length).toBe(0);
    expect(openWriteAhead(null, 'tab').note(null, written(book), 0)).toBe(false);
  });
});

function memoryStore(): SmallStore {
  const items = new Map<string, string>();
  return {
    get length() {
      return items.size;
    },
    key: (i) => [...items.keys()][i] ?? null,
    getItem: (key) => items.get(key) ?? null,
    setItem: (key, value) => void items.set(key, value),
    removeItem: (key) => void items.delete(key),
  };
}
