import 'fake-indexeddb/auto';
import { IDBFactory, IDBObjectStore } from 'fake-indexeddb';
import { openDB } from 'idb';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Picture } from '../../src/storage/database.ts';
import { openShelf } from '../../src/storage/shelf.ts';
import { StorageTrouble } from '../../src/storage/trouble.ts';
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
    expect(await shelf.save(book, 0)).toBe(1);
    expect(await shelf.save({ ...book, title: 'Two' }, 1)).toBe(2);
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
    const newer = await openDB('quirewise', 2);
    expect(newer.version).toBe(2);
    newer.close();
    await expect(shelf.save(book, 1)).rejects.toBeInstanceOf(StorageTrouble);
  });
});

describe('two tabs', () => {
  it('never write over each other unseen', async () => {
    const [one, other] = [openShelf(), openShelf()];
    const seen = await one.save(book, 0);
    await other.save({ ...book, title: 'By the other' }, seen);
    await expect(one.save({ ...book, title: 'By the one' }, seen)).rejects.toMatchObject({
      kind: 'elsewhere',
    });
    expect((await one.notebook('n1'))?.notebook.title).toBe('By the other');
  });

  it('that save at the same moment: one is through, the other is told', async () => {
    const [one, other] = [openShelf(), openShelf()];
    const seen = await one.save(book, 0);
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
    expect(await shelf.save({ ...book, title: 'New' }, 1)).toBe(2);
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
  async function spoil(file: unknown): Promise<void> {
    const db = await openDB('quirewise');
    await db.put('notebooks', { id: 'n1', revision: 3, savedAt: '2026-11-25T10:00:00.000Z', file });
    db.close();
  }

  it.each([
    [
      'half a record',
      { format: 'quirewise-notebook', version: 1, notebook: { id: 'n1', title: 'x' } },
      /not whole/,
    ],
    ['nothing', undefined, /not a Quirewise notebook/],
    ['a later version', { format: 'quirewise-notebook', version: 12, notebook: {} }, /later version/],
  ])('as %s is told, listed, and stays where it is', async (_, file, says) => {
    const shelf = openShelf();
    await shelf.save(book, 0);
    await spoil(file);
    await expect(shelf.notebook('n1')).rejects.toThrow(says);
    expect(await shelf.notebooks()).toEqual([
      { id: 'n1', title: null, savedAt: '2026-11-25T10:00:00.000Z', revision: 3 },
    ]);
  });
});

it('a browser that stores nothing is told in a sentence', async () => {
  Object.defineProperty(globalThis, 'indexedDB', {
    configurable: true,
    writable: true,
    value: {
      open: () => {
        throw new DOMException('no', 'SecurityError');
      },
    },
  });
  await expect(openShelf().notebook('x')).rejects.toMatchObject({
    kind: 'closed',
    message: expect.stringMatching(/^This browser does not let/),
  });
});
