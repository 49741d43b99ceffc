import 'fake-indexeddb/auto';
import { describe, expect, it, vi } from 'vitest';
import { openAhead } from '../../src/storage/ahead.ts';
import { openShelf, type Shelf } from '../../src/storage/shelf.ts';
import type { Session } from '../../src/workbench/session.ts';
import { sampleNotebook } from '../unit/notebook/sample-notebook.ts';
import { freshShelf, openSession } from '../unit/workbench/open-session.ts';

const saved = (session: Session) => vi.waitFor(() => expect(session.state.saving.status).toBe('saved'));
const titled = (session: Session, title: string) => session.dispatch({ do: 'rename notebook', title });

/** Two tabs on one notebook. */
async function twoTabs(): Promise<{ one: Session; other: Session; shelf: Shelf }> {
  const shelf = freshShelf();
  const one = await openSession({ shelf });
  titled(one, 'Shared');
  await saved(one);
  const other = await openSession({ shelf });
  expect(other.state.notebook).toEqual(one.state.notebook);
  return { one, other, shelf };
}

describe('two tabs on one notebook', () => {
  it('show each other’s work, and say that there are two', async () => {
    const { one, other } = await twoTabs();
    titled(one, 'By the one');
    await vi.waitFor(() => expect(other.state.notebook.title).toBe('By the one'));
    expect(other.state.messages).toMatchObject([
      { kind: 'note', says: expect.stringContaining('open in another tab') },
    ]);
    titled(other, 'By the other');
    await vi.waitFor(() => expect(one.state.notebook.title).toBe('By the other'));
    // Neither answers the other for ever.
    await new Promise((done) => setTimeout(done, 60));
    expect(one.state.saving.status).toBe('saved');
    await Promise.all([one.close(), other.close()]);
  });

  it('that change it at the same moment lose nothing: the later one goes on as a copy', async () => {
    const { one, other, shelf } = await twoTabs();
    titled(one, 'One');
    titled(other, 'Other');
    await vi.waitFor(async () => {
      const titles = (await shelf.notebooks()).map((line) => line.title).sort();
      expect(titles).toHaveLength(2);
      expect(titles.some((title) => title?.endsWith('(copy from another tab)'))).toBe(true);
    });
    const titles = (await shelf.notebooks()).map((line) =>
      (line.title ?? '').replace(' (copy from another tab)', ''),
    );
    expect(titles.sort()).toEqual(['One', 'Other']);
    const late = [one, other].find((session) =>
      session.state.notebook.title.endsWith('(copy from another tab)'),
    );
    expect(late?.state.messages.at(-1)).toMatchObject({
      kind: 'trouble',
      says: expect.stringContaining('Nothing is lost'),
    });
    // Undo in the copy stays in the copy.
    late?.undo();
    await saved(late!);
    expect(await shelf.notebooks()).toHaveLength(2);
    await Promise.all([one.close(), other.close()]);
  });
});

describe('a tab that was closed in mid-save', () => {
  it('is opened again where it was, with what it had noted', async () => {
    const shelf = freshShelf();
    const first = await openSession({ shelf });
    await saved(first);
    const { notebook } = first.state;
    await first.close();
    const small = storeOf();
    openAhead(small, 'dead').note(
      { ...notebook, title: 'Typed just now' },
      (await shelf.notebook(notebook.id))!.revision,
    );
    const second = await openSession({ shelf, small });
    expect(second.state.notebook.title).toBe('Typed just now');
    await second.close();
  });

  it('on a full disk is opened from its note all the same', async () => {
    const small = storeOf();
    openAhead(small, 'dead').note({ ...sampleNotebook(), title: 'Only in the note' }, 0);
    const full = {
      ...openShelf({ name: 'full' }),
      save: () => Promise.reject(new DOMException('', 'QuotaExceededError')),
    };
    const session = await openSession({ shelf: full, small });
    expect(session.state.notebook.title).toBe('Only in the note');
    await vi.waitFor(() => expect(session.state.saving.status).toBe('failed'));
    expect(small.length).toBeGreaterThan(0);
    await session.close();
  });
});

describe('a store that can’t be used', () => {
  it('leaves a working notebook in memory, and a sentence', async () => {
    const broken = new Proxy({} as Shelf, {
      get: (_, name) =>
        name === 'close'
          ? () => Promise.resolve()
          : () => Promise.reject(new DOMException('', 'SecurityError')),
    });
    const session = await openSession({ shelf: broken });
    expect(session.state.notebook.title).toBe('Garden book');
    titled(session, 'Still works');
    await vi.waitFor(() =>
      expect(session.state.saving).toMatchObject({
        status: 'failed',
        says: expect.stringContaining('Save a backup file'),
      }),
    );
    expect(session.state.notebook.title).toBe('Still works');
    await session.close();
  });

  it('with a torn notebook opens another, says so, and leaves the torn one where it is', async () => {
    const shelf = freshShelf();
    const torn: Shelf = {
      ...shelf,
      setting: (key) => (key === 'last' ? Promise.resolve('lost') : shelf.setting(key)),
      notebook: (id) => (id === 'lost' ? openTorn() : shelf.notebook(id)),
    };
    const session = await openSession({ shelf: torn });
    expect(session.state.messages).toMatchObject([
      { kind: 'trouble', says: expect.stringMatching(/not whole.*still kept in this browser/) },
    ]);
    expect(session.state.notebook.id).not.toBe('lost');
    await session.close();
  });
});

async function openTorn(): Promise<never> {
  const { notebookFromFile } = await import('../../src/storage/notebook-file.ts');
  notebookFromFile({ format: 'quirewise-notebook', version: 1, notebook: { id: 'lost' } });
  throw new Error('it is torn');
}

function storeOf() {
  const items = new Map<string, string>();
  return {
    get length() {
      return items.size;
    },
    key: (i: number) => [...items.keys()][i] ?? null,
    getItem: (key: string) => items.get(key) ?? null,
    setItem: (key: string, value: string) => void items.set(key, value),
    removeItem: (key: string) => void items.delete(key),
  };
}
