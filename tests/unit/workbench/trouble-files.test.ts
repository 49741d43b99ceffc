import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { openDB } from 'idb';
import { afterEach, beforeAll, expect, it, vi } from 'vitest';
import { openShelf } from '../../../src/storage/shelf.ts';
import type { Session } from '../../../src/workbench/session.ts';
import { setAsideFile } from '../../../src/workbench/trouble-files.ts';
import { sampleNotebook } from '../notebook/sample-notebook.ts';
import { openSession } from './open-session.ts';

beforeAll(() => {
  globalThis.indexedDB = new IDBFactory();
});
const open: Session[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((session) => session.close()));
});

it('a notebook that a later version stored is listed, can’t be opened, and is saved as a file just as it stands', async () => {
  const record = {
    id: 'later',
    revision: 4,
    savedAt: '2027-01-01T00:00:00.000Z',
    file: { format: 'quirewise-notebook', version: 99, notebook: { title: 'From the time to come' } },
  };
  const session = await openSession({ shelf: openShelf() });
  open.push(session);
  await vi.waitFor(() => expect(session.state.saving.status).toBe('saved'));
  const database = await openDB('quirewise');
  await database.put('notebooks', record);
  database.close();
  expect(await session.keptNotebooks()).toMatchObject([{ id: 'later', title: null }]);
  expect(await session.openKept('later')).toBe(false);
  const file = await session.saveKept('later');
  expect(file?.name).toMatch(/^notebook-as-stored-\d{4}-\d\d-\d\d\.json$/);
  expect(JSON.parse(await file!.blob.text())).toEqual({
    format: 'quirewise-as-stored',
    version: 1,
    id: 'later',
    stored: { notebooks: [record] },
  });
  expect(await session.saveKept('gone')).toBeNull();
  expect(await session.saveSetAside()).toBeNull();
});

it('what was set aside is a file that holds each thing as it was found, with its name and why', async () => {
  const book = sampleNotebook();
  const setAside = [
    { what: 'sheet', id: 's', name: 'Vine', value: { id: 's', count: 'NaN' }, why: 'No number.' },
  ] as const;
  const { name, blob } = setAsideFile(book, setAside, new Date(2026, 11, 1));
  expect(name).toBe('garden-book-set-aside-2026-12-01.json');
  expect(JSON.parse(await blob.text())).toMatchObject({ notebook: { title: 'Garden book' }, setAside });
});
