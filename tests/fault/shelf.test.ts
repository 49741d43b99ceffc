import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import fc from 'fast-check';
import { type IDBPDatabase, openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Leaf, Notebook } from '../../src/notebook/model.ts';
import type { Sheet } from '../../src/sheet/model.ts';
import { databaseVersion, type Picture } from '../../src/storage/database.ts';
import { openShelf } from '../../src/storage/shelf.ts';
import { StorageTrouble } from '../../src/storage/words/trouble.ts';
import { note, notebookOf } from '../support/large-notebook.ts';
import { sampleNotebook } from '../unit/notebook/sample-notebook.ts';

const book = sampleNotebook();
const picture: Picture = {
  id: 'p1',
  bytes: Uint8Array.of(1, 2, 3).buffer,
  type: 'image/png',
  width: 1,
  height: 1,
  thumb: null,
  addedAt: '2026-11-25T10:00:00.000Z',
};

beforeEach(() => {
  globalThis.indexedDB = new IDBFactory();
});
afterEach(() => {
  vi.restoreAllMocks();
});

describe('the shelf', () => {
  it('gives back what was put on it', async () => {
    const shelf = openShelf();
    expect(await shelf.save(book, 0)).toEqual({ revision: 1, refused: null });
    expect(await shelf.save({ ...book, title: 'Two' }, 1)).toEqual({ revision: 2, refused: null });
    expect(await shelf.notebook('n1')).toMatchObject({ revision: 2, notebook: { title: 'Two' } });
    await shelf.putPictures([picture]);
    expect(new Uint8Array((await shelf.picture('p1'))!.bytes)).toEqual(Uint8Array.of(1, 2, 3));
    await shelf.setSetting('look', { theme: 'dark' });
    expect(await shelf.setting('look')).toEqual({ theme: 'dark' });
    expect(await shelf.notebook('none')).toBeNull();
    expect(await shelf.picture('none')).toBeNull();
  });

  it('opens again after the browser has closed its database', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    await shelf.close();
    expect(await shelf.notebook('n1')).toMatchObject({ revision: 1 });
  });

  it('lets a newer version in another tab change the stores', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    const newer = await openDB('quirewise', databaseVersion + 1);
    expect(newer.version).toBe(databaseVersion + 1);
    newer.close();
    await expect(shelf.save(book, 1)).rejects.toBeInstanceOf(StorageTrouble);
  });
});

describe('two tabs', () => {
  it('never write over each other unseen', async () => {
    const [one, other] = [openShelf(), openShelf()];
    const { revision: seen } = await one.save(book, 0);
    await other.save({ ...book, title: 'By the other' }, seen);
    await expect(one.save({ ...book, title: 'By the one' }, seen)).rejects.toMatchObject({
      kind: 'elsewhere',
    });
    expect((await one.notebook('n1'))?.notebook.title).toBe('By the other');
  });

  it('that save at the same moment: one is through, the other is told', async () => {
    const [one, other] = [openShelf(), openShelf()];
    const { revision: seen } = await one.save(book, 0);
    const results = await Promise.allSettled([
      one.save({ ...book, title: '1' }, seen),
      other.save({ ...book, title: '2' }, seen),
    ]);
    expect(results.map((result) => result.status).sort()).toEqual(['fulfilled', 'rejected']);
    expect((await one.notebook('n1'))?.revision).toBe(2);
  });
});

describe('a full disk', () => {
  it('is told in a sentence, and what was stored before is still there', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    const put = vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(() => {
      throw new DOMException('full', 'QuotaExceededError');
    });
    await expect(shelf.save({ ...book, title: 'New' }, 1)).rejects.toMatchObject({
      kind: 'full',
      message: expect.stringContaining('no room left'),
    });
    await expect(shelf.putPictures([picture])).rejects.toMatchObject({ kind: 'full' });
    put.mockRestore();
    expect((await shelf.notebook('n1'))?.notebook.title).toBe('Garden book');
    expect(await shelf.save({ ...book, title: 'New' }, 1)).toMatchObject({ revision: 2 });
  });

  it('found in the middle of a save leaves no part of it', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    const real = IDBObjectStore.prototype.put;
    let puts = 0;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      if (++puts > 2) throw new DOMException('full', 'QuotaExceededError');
      return real.apply(this, args);
    });
    const leaves = book.leaves.map((leaf) => ({ ...leaf, title: 'New' }));
    await expect(shelf.save({ ...book, leaves }, 1)).rejects.toMatchObject({ kind: 'full' });
    vi.restoreAllMocks();
    expect((await openShelf().notebook('n1'))?.notebook).toEqual(book);
  });

  it('found only when the transaction ends is told as well, and leaves what was there', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    const real = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      const request = real.apply(this, args);
      // As browsers do it: the put succeeds and the commit fails.
      request.addEventListener('success', () => this.transaction.abort());
      return request;
    });
    await expect(shelf.save({ ...book, title: 'New' }, 1)).rejects.toBeInstanceOf(StorageTrouble);
    vi.restoreAllMocks();
    expect((await shelf.notebook('n1'))?.notebook.title).toBe('Garden book');
  });
});

describe('a notebook that is torn in the store', () => {
  async function spoil(change: (db: IDBPDatabase) => Promise<unknown>): Promise<void> {
    const db = await openDB('quirewise');
    await change(db);
    db.close();
  }

  it('opens without what is torn, which stays as it is, whatever is saved later', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    const leaf = book.leaves[0]!;
    const torn = { ...leaf, title: 7 };
    const key = ['n1', 'leaf', leaf.id];
    await spoil(async (db) => db.put('records', { ...(await db.get('records', key)), value: torn }));
    const other = openShelf();
    const kept = (await other.notebook('n1'))!;
    expect(kept.notebook).toEqual({ ...book, leaves: book.leaves.slice(1) });
    expect(kept.setAside).toMatchObject([{ what: 'leaf', id: leaf.id, value: torn }]);
    const rest = kept.notebook.leaves.slice(1);
    await other.save({ ...kept.notebook, title: 'Gone on', leaves: rest }, 1);
    const again = (await openShelf().notebook('n1'))!;
    expect(again.notebook).toEqual({ ...book, title: 'Gone on', leaves: rest });
    expect(again.setAside).toEqual(kept.setAside);
  });

  it('of a later version is told, listed, and stays where it is', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    await spoil(async (db) => db.put('heads', { ...(await db.get('heads', 'n1')), version: 12 }));
    await expect(openShelf().notebook('n1')).rejects.toMatchObject({ kind: 'later version' });
    expect(await openShelf().notebooks()).toMatchObject([{ id: 'n1', title: null, revision: 1 }]);
    await expect(openShelf().save({ ...book, title: 'Over it' }, 1)).rejects.toMatchObject({
      kind: 'later version',
    });
    expect(await (await openDB('quirewise')).get('heads', 'n1')).toMatchObject({ version: 12, revision: 1 });
  });
});

describe('a save', () => {
  const puts = () => {
    const written: unknown[] = [];
    const real = IDBObjectStore.prototype.put;
    vi.spyOn(IDBObjectStore.prototype, 'put').mockImplementation(function (this: IDBObjectStore, ...args) {
      written.push(args[0]);
      return real.apply(this, args);
    });
    return written;
  };

  it('writes the record that changed and the head, however large the notebook is', async () => {
    const shelf = openShelf();
    const large = notebookOf({ sheets: 300, leaves: 20 });
    await shelf.save(large, 0);
    const written = puts();
    const leaves = large.leaves.with(3, { ...large.leaves[3]!, title: 'Only this' });
    await shelf.save({ ...large, leaves }, 1);
    expect(written).toHaveLength(2);
    // Ours: at 10,000 sheets a keystroke is to write less than 100 kB.
    expect(JSON.stringify(written).length).toBeLessThan(5_000);
    expect((await openShelf().notebook(large.id))?.notebook).toEqual({ ...large, leaves });
  });

  it.each([
    ['moved to the front', (list: readonly Sheet[]) => [list[7]!, ...list.toSpliced(7, 1)], 1],
    ['moved to the end', (list: readonly Sheet[]) => [...list.toSpliced(7, 1), list[7]!], 1],
    ['taken out', (list: readonly Sheet[]) => list.toSpliced(7, 1), 0],
    ['added between', (list: readonly Sheet[]) => list.toSpliced(7, 0, { ...list[7]!, id: 'new' }), 1],
    ['all turned about', (list: readonly Sheet[]) => list.toReversed(), 29],
  ])('of a sheet that was %s writes only what has to be', async (_, change, records) => {
    const shelf = openShelf();
    const before = notebookOf({ sheets: 30 });
    await shelf.save(before, 0);
    const written = puts();
    const after = { ...before, drawer: { ...before.drawer, sheets: change(before.drawer.sheets) } };
    await shelf.save(after, 1);
    expect(written).toHaveLength(records + 1);
    expect((await openShelf().notebook(before.id))?.notebook).toEqual(after);
  });

  it('keeps any list of edits, in their order', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(3), fc.nat(40), fc.nat(40)), { maxLength: 40 }),
        async (edits) => {
          globalThis.indexedDB = new IDBFactory();
          const shelf = openShelf();
          let at = notebookOf({ leaves: 12 });
          let { revision } = await shelf.save(at, 0);
          for (const [what, from, to] of edits) {
            const { leaves } = at;
            const i = leaves.length === 0 ? 0 : from % leaves.length;
            const taken = leaves.toSpliced(i, 1);
            const next: readonly Leaf[] =
              what === 0 || leaves.length === 0
                ? leaves.toSpliced(to % (leaves.length + 1), 0, note(`l-${revision}`, `${to}`))
                : what === 1
                  ? taken
                  : what === 2
                    ? taken.toSpliced(to % leaves.length, 0, leaves[i]!)
                    : leaves.with(i, { ...leaves[i]!, title: `${to}` });
            at = { ...at, leaves: next };
            ({ revision } = await shelf.save(at, revision));
          }
          expect((await openShelf().notebook(at.id))?.notebook).toEqual(at);
        },
      ),
      { numRuns: 60 },
    );
  });

  it('of something that would not open again leaves its former state, stores the rest, and says why', async () => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    const sheet = book.drawer.sheets[0]!;
    const heavy = { ...sheet, weight: { gsm: 10_750_000 } };
    const sheets = book.drawer.sheets.with(0, heavy);
    const changed: Notebook = { ...book, title: 'And a title', drawer: { ...book.drawer, sheets } };
    const { refused } = await shelf.save(changed, 1);
    expect(refused).toMatch(/weight is too large/);
    expect((await openShelf().notebook('n1'))?.notebook).toEqual({ ...book, title: 'And a title' });
    // Again, as it is tried again by itself, and then in a state that can be stored.
    expect(await shelf.save(changed, 2)).toMatchObject({ revision: 2, refused: expect.any(String) });
    await shelf.save({ ...changed, drawer: book.drawer }, 2);
    expect((await openShelf().notebook('n1'))?.revision).toBe(3);
  });
});

describe('a large notebook', () => {
  it('is read in slices between which the page has its turn', async () => {
    const shelf = openShelf();
    const large = notebookOf({ sheets: 2_000 });
    await shelf.save(large, 0);
    let turns = 0;
    const count = setInterval(() => turns++, 1);
    const kept = await openShelf().notebook(large.id);
    clearInterval(count);
    expect(kept?.notebook).toEqual(large);
    expect(turns).toBeGreaterThan(2);
  });

  it('names every picture that it needs, once it is looked through part by part, also of what can’t be read', async () => {
    const shelf = openShelf();
    const count = 317;
    const sheets = Array.from({ length: count }, (_, n): Sheet => {
      const sheet = book.drawer.sheets[0]!;
      return { ...sheet, id: `s-${n}`, sides: { A: { ...sheet.sides.A, pictureId: `p-${n}` } } };
    });
    await shelf.save({ ...book, leaves: [], drawer: { sheets, plains: [], parts: [] } }, 0);
    // One in the middle is torn: its picture is needed all the same.
    const db = await openDB('quirewise');
    const torn = { notebook: book.id, kind: 'sheet', id: 's-200', place: 200, revision: 1 };
    await db.put('records', { ...torn, value: { torn: [{ pictureId: 'p-torn' }] } });
    db.close();
    const named = await shelf.picturesNamed(book.id);
    for (let n = 0; n < count; n++) expect([n, named.has(`p-${n}`)]).toEqual([n, n !== 200]);
    expect(named.has('p-torn')).toBe(true);
    expect(await shelf.picturesNamed('none')).toEqual(new Set());
  });

  it('costs its list nothing: titles stand in the heads', async () => {
    const shelf = openShelf();
    await shelf.save(notebookOf({ sheets: 20 }), 0);
    const read = vi.spyOn(IDBObjectStore.prototype, 'getAll');
    expect(await shelf.notebooks()).toHaveLength(1);
    expect(read.mock.contexts.map((store) => (store as IDBObjectStore).name)).not.toContain('records');
  });
});

it('a browser that stores nothing is told in a sentence', async () => {
  const open = () => {
    throw new DOMException('no', 'SecurityError');
  };
  globalThis.indexedDB = { open } as unknown as IDBFactory;
  await expect(openShelf().notebook('x')).rejects.toMatchObject({
    kind: 'closed',
    message: expect.stringMatching(/^This browser does not let/),
  });
  // Other files share what is global.
  globalThis.indexedDB = new IDBFactory();
});
