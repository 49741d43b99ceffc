import 'fake-indexeddb/auto';
import { readFileSync } from 'node:fs';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Notebook } from '../../src/notebook/model.ts';
import { openShelf } from '../../src/storage/shelf.ts';
import { openSession } from '../unit/workbench/open-session.ts';

/** The browser's database as version 1 of it was left by the page of that time: written by its code, not by this one. */
interface Stored {
  readonly version: number;
  readonly stores: Readonly<Record<string, readonly { readonly key: string; readonly value: object }[]>>;
}
const file = new URL('./fixtures/database-1.json', import.meta.url);
const stored = JSON.parse(readFileSync(file, 'utf8'), (_, value) =>
  Array.isArray(value?.bytes) ? Uint8Array.from(value.bytes).buffer : value,
) as Stored;

/** What she had then, as the former page stored it. */
const book = stored.stores
  .notebooks!.map(({ value }) => value as { id: string; file: { notebook: Notebook } })
  .find(({ id }) => id === 'n1')!.file.notebook;

/** Puts the database of version 1 in place, after a change. */
async function putOld(change: (store: string, value: object) => object = (_, value) => value): Promise<void> {
  const db = await openDB('quirewise', stored.version, {
    upgrade(made) {
      made.createObjectStore('notebooks', { keyPath: 'id' });
      made.createObjectStore('pictures', { keyPath: 'id' });
      made.createObjectStore('settings');
    },
  });
  for (const [store, records] of Object.entries(stored.stores)) {
    for (const { key, value } of records) {
      await db.put(store, change(store, value), store === 'settings' ? key : undefined);
    }
  }
  db.close();
}

const all = async (store: string) => {
  const db = await openDB('quirewise');
  const values = await db.getAll(store);
  db.close();
  return values as readonly Record<string, unknown>[];
};

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  vi.restoreAllMocks();
});

describe('a database of version 1', () => {
  it('opens as it was: notebook, other notebooks, pictures and settings', async () => {
    await putOld();
    const session = await openSession({ shelf: openShelf() });
    expect(session.state.notebook).toEqual(book);
    expect(session.state.setAside).toEqual([]);
    expect(session.state.look.surround).toBe('dark');
    expect(await session.keptNotebooks()).toMatchObject([{ id: 'n2', title: 'A second one' }]);
    expect(await session.openKept('n2')).toBe(true);
    expect(session.state.notebook.title).toBe('A second one');
    await session.close();
    expect(new Uint8Array((await openShelf().picture('picture-bunting'))!.bytes)).toEqual(
      Uint8Array.of(137, 80, 78, 71),
    );
  });

  it('is brought over once: the whole notebook goes when its records are there', async () => {
    await putOld();
    const shelf = openShelf();
    expect(await shelf.notebook('n1')).toMatchObject({ revision: 2, notebook: book });
    expect((await all('notebooks')).map(({ id }) => id)).toEqual(['n2']);
    expect(await shelf.save({ ...book, title: 'Gone on' }, 2)).toMatchObject({ revision: 3 });
    expect(await openShelf().notebook('n1')).toMatchObject({ revision: 3, notebook: { title: 'Gone on' } });
    expect((await shelf.notebooks()).map(({ id }) => id).sort()).toEqual(['n1', 'n2']);
  });

  it.each([1, 5, 11, 12])('is whole where bringing it over breaks off at write %i', async (at) => {
    await putOld();
    let writes = 0;
    const put = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      if (++writes === at) throw new DOMException('gone', 'UnknownError');
      return put.apply(this, args);
    });
    await expect(openShelf().notebook('n1')).rejects.toThrow();
    vi.restoreAllMocks();
    expect(await all('records')).toEqual([]);
    expect(await all('heads')).toEqual([]);
    expect((await openShelf().notebook('n1'))?.notebook).toEqual(book);
  });

  it('brought over by two tabs at once is there once', async () => {
    await putOld();
    const [one, other] = await Promise.all([openShelf().notebook('n1'), openShelf().notebook('n1')]);
    expect(one?.notebook).toEqual(book);
    expect(other?.notebook).toEqual(book);
    expect(await openShelf().notebooks()).toHaveLength(2);
  });

  it('with a torn leaf keeps that aside, for good', async () => {
    const torn = { kind: 'note', id: 'w1', title: 'Welcome', text: 12 };
    await putOld((store, value) => {
      const { id, file } = value as { id: string; file: { notebook: typeof book } };
      if (store !== 'notebooks' || id !== 'n1') return value;
      return {
        ...value,
        file: { ...file, notebook: { ...file.notebook, leaves: [torn, ...file.notebook.leaves.slice(1)] } },
      };
    });
    const shelf = openShelf();
    const kept = (await shelf.notebook('n1'))!;
    expect(kept.notebook.leaves).toEqual(book.leaves.slice(1));
    expect(kept.setAside).toMatchObject([{ what: 'leaf', id: 'w1', value: torn }]);
    await shelf.save({ ...kept.notebook, title: 'Gone on' }, 2);
    expect((await openShelf().notebook('n1'))?.setAside).toEqual(kept.setAside);
  });

  it('with a notebook that can’t be read at all keeps that as it is', async () => {
    await putOld((store, value) =>
      store === 'notebooks' && (value as { id: string }).id === 'n1'
        ? { ...value, file: { torn: true } }
        : value,
    );
    const shelf = openShelf();
    await expect(shelf.notebook('n1')).rejects.toMatchObject({ kind: 'torn' });
    expect((await shelf.notebooks()).find(({ id }) => id === 'n1')?.title).toBeNull();
    expect((await all('notebooks')).find(({ id }) => id === 'n1')).toMatchObject({ file: { torn: true } });
    const session = await openSession({ shelf: openShelf() });
    expect(session.state.messages[0]?.says).toMatch(/still kept in this browser/);
    await session.close();
  });
});
