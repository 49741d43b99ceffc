import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { openAhead, type SmallStore } from '../../src/storage/ahead.ts';
import { recover } from '../../src/storage/recover.ts';
import { openShelf, type Shelf } from '../../src/storage/shelf.ts';
import { sampleNotebook } from '../unit/notebook/sample-notebook.ts';
import { openSession } from '../unit/workbench/open-session.ts';

const book = sampleNotebook();
const titled = (title: string) => ({ ...book, title });
const dead = () => Promise.resolve(false);
let small: SmallStore;
let shelf: Shelf;
let count = 0;
const newId = () => `copy-${++count}`;

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
  small = memoryStore();
  shelf = openShelf();
  count = 0;
});

const recoverAll = async () => recover(await openAhead(small, 'new-tab').left(dead), shelf, newId);

describe('a tab closed in mid-save', () => {
  it('loses nothing: the next tab stores what it had noted', async () => {
    const revision = await shelf.save(titled('before'), 0);
    openAhead(small, 'old-tab').note(titled('typed just now'), revision);
    expect(await recoverAll()).toEqual({ notebookId: 'n1', copies: [] });
    expect(await shelf.notebook('n1')).toMatchObject({ revision: 2, notebook: { title: 'typed just now' } });
    expect(small.length).toBe(0);
  });

  it('before it had ever stored anything loses nothing either', async () => {
    openAhead(small, 'old-tab').note(titled('first'), 0);
    await recoverAll();
    expect((await shelf.notebook('n1'))?.notebook.title).toBe('first');
  });

  it('whose save was through after all leaves no second copy', async () => {
    openAhead(small, 'old-tab').note(titled('stored'), 0);
    await shelf.save(titled('stored'), 0);
    expect(await recoverAll()).toEqual({ notebookId: null, copies: [] });
    expect(await shelf.notebooks()).toHaveLength(1);
  });

  it('while another tab went on keeps both, the late one as a copy', async () => {
    const revision = await shelf.save(titled('before'), 0);
    openAhead(small, 'old-tab').note(titled('mine'), revision);
    await shelf.save(titled('theirs'), revision);
    expect(await recoverAll()).toEqual({ notebookId: null, copies: ['mine (from a closed tab)'] });
    expect((await shelf.notebook('n1'))?.notebook.title).toBe('theirs');
    expect((await shelf.notebook('copy-1'))?.notebook.title).toBe('mine (from a closed tab)');
  });

  it('that is not closed at all is left alone', async () => {
    openAhead(small, 'living-tab').note(titled('in work'), 0);
    const left = await openAhead(small, 'new-tab').left((id) => Promise.resolve(id === 'living-tab'));
    expect(left).toEqual([]);
    expect(small.length).toBe(1);
  });

  it('whose note is torn costs only that note', async () => {
    openAhead(small, 'old-tab').note(titled('whole'), 0);
    small.setItem('quirewise-ahead:torn', (small.getItem('quirewise-ahead:old-tab') ?? '').slice(0, 300));
    await recoverAll();
    expect((await shelf.notebook('n1'))?.notebook.title).toBe('whole');
    expect(small.length).toBe(0);
  });

  it('keeps its note until it is stored, also when storing fails', async () => {
    openAhead(small, 'old-tab').note(titled('work'), 0);
    const full = { ...shelf, save: () => Promise.reject(new DOMException('full', 'QuotaExceededError')) };
    await expect(recover(await openAhead(small, 'new-tab').left(dead), full, newId)).rejects.toThrow();
    expect(small.length).toBe(1);
  });
});

describe('the notebook of a tab closed in mid-save', () => {
  it.each([
    ['was not stored', (_: Shelf) => Promise.resolve()],
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
    openAhead(small, 'old-tab').note({ ...titled('left'), id: 'n2' }, 0);
    expect([await opened(), await opened()]).toEqual(['n2', 'n2']);
  });
});

describe('the note ahead', () => {
  it('goes once the save is through', () => {
    const ahead = openAhead(small, 'tab');
    ahead.note(book, 0);
    expect(small.length).toBe(1);
    ahead.forget();
    expect(small.length).toBe(0);
  });

  it('that no longer fits takes the older one with it, rather than let it stand for the newer', () => {
    const ahead = openAhead(small, 'tab');
    ahead.note(titled('old'), 0);
    small.setItem = () => {
      throw new DOMException('full', 'QuotaExceededError');
    };
    ahead.note(titled('new'), 0);
    expect(small.length).toBe(0);
  });

  it('is done without where the browser forbids it', () => {
    expect(() => openAhead(null, 'tab').note(book, 0)).not.toThrow();
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
