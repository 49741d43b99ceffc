import 'fake-indexeddb/auto';
import { describe, expect, it, vi } from 'vitest';
import type { NoteLeaf } from '../../src/notebook/model.ts';
import { openShelf, type Shelf } from '../../src/storage/shelf.ts';
import { openWriteAhead } from '../../src/storage/write-ahead.ts';
import type { Session } from '../../src/workbench/session.ts';
import { sampleNotebook } from '../unit/notebook/sample-notebook.ts';
import { freshShelf, openSession } from '../unit/workbench/open-session.ts';

const saved = (session: Session) => vi.waitFor(() => expect(session.state.saving.status).toBe('saved'));
const titled = (session: Session, title: string) => session.dispatch({ do: 'rename notebook', title });

const textOf = (session: Session) => (session.state.notebook.leaves[0] as NoteLeaf).text;
const write = (session: Session, text: string) => session.dispatch({ do: 'set text', leafId: 'w1', text });

/** Two tabs on one notebook, each with its own way to the database. */
async function twoTabs(): Promise<{ one: Session; other: Session; again: () => Promise<Session> }> {
  const name = `two-tabs-${++count}`;
  const again = () => openSession({ shelf: openShelf({ name }) });
  const one = await again();
  titled(one, 'Shared');
  await saved(one);
  const other = await again();
  expect(other.state.notebook).toEqual(one.state.notebook);
  return { one, other, again };
}
let count = 0;
const bothSaved = async (one: Session, other: Session) => {
  await vi.waitFor(() => {
    expect([one.state.saving.status, other.state.saving.status]).toEqual(['saved', 'saved']);
    expect(one.state.notebook).toEqual(other.state.notebook);
    expect(one.state.choices).toEqual(other.state.choices);
  });
};

describe('two tabs on one notebook', () => {
  it('show each other’s work, and say once that there are two', async () => {
    const { one, other } = await twoTabs();
    titled(one, 'By the one');
    await vi.waitFor(() => expect(other.state.notebook.title).toBe('By the one'));
    expect(other.state.messages).toMatchObject([
      { kind: 'note', says: expect.stringContaining('open in another tab') },
    ]);
    other.dismiss(other.state.messages[0]!.id);
    titled(one, 'By the one again');
    await vi.waitFor(() => expect(other.state.notebook.title).toBe('By the one again'));
    expect(other.state.messages).toEqual([]);
    titled(other, 'By the other');
    await vi.waitFor(() => expect(one.state.notebook.title).toBe('By the other'));
    // Neither answers the other for ever.
    await new Promise((done) => setTimeout(done, 60));
    expect(one.state.saving.status).toBe('saved');
    await Promise.all([one.close(), other.close()]);
  });

  it('that change different things at the same moment have both, in one notebook', async () => {
    const { one, other, again } = await twoTabs();
    titled(one, 'One');
    write(other, 'by the other');
    one.dispatch({ do: 'remove leaf', leafId: 'e1' });
    other.dispatch({ do: 'add leaf', leaf: { kind: 'note', id: 'new', title: 'New', text: '' } });
    await bothSaved(one, other);
    const { notebook, choices } = one.state;
    expect([notebook.title, textOf(one), choices]).toEqual(['One', 'by the other', []]);
    expect(notebook.leaves.map(({ id }) => id)).toEqual(['w1', 's1', 'k1', 'b1', 'l1', 'new']);
    await Promise.all([one.close(), other.close()]);
    const later = await again();
    expect(later.state.notebook).toEqual(notebook);
    expect(await later.keptNotebooks()).toEqual([]);
    await later.close();
  });

  it('that write on one leaf at the same moment keep both texts until she chooses, also after a reload', async () => {
    const { one, other, again } = await twoTabs();
    write(one, 'by the one');
    write(other, 'by the other');
    await bothSaved(one, other);
    const texts = [textOf(one), one.state.choices[0]?.other].sort();
    expect(texts).toEqual(['by the one', 'by the other']);
    expect(one.state.choices).toHaveLength(1);
    await Promise.all([one.close(), other.close()]);
    const later = await again();
    expect([textOf(later), later.state.choices[0]?.other].sort()).toEqual(texts);
    const here = textOf(later);
    const { id, other: there } = later.state.choices[0]!;
    later.choose(id, 'both');
    expect(textOf(later)).toBe(`${here}\n\n${there}`);
    expect(later.state.choices).toEqual([]);
    await saved(later);
    await later.close();
    const last = await again();
    expect([textOf(last), last.state.choices]).toEqual([`${here}\n\n${there}`, []]);
    await last.close();
  });

  it.each([
    ['this', (here: string, _: string) => here],
    ['that', (_: string, there: string) => there],
  ] as const)('once she keeps %s, the choice is gone in both', async (keep, expected) => {
    const { one, other } = await twoTabs();
    write(one, 'by the one');
    write(other, 'by the other');
    await bothSaved(one, other);
    const here = textOf(one);
    const { id, other: there } = one.state.choices[0]!;
    one.choose(id, keep);
    await bothSaved(one, other);
    expect([textOf(other), other.state.choices]).toEqual([expected(here, there), []]);
    await Promise.all([one.close(), other.close()]);
  });

  it('lose no letter that one has stored to the typing of the other', async () => {
    const { one, other } = await twoTabs();
    let typed = '';
    for (let at = 0; at < 30; at++) {
      typed += String.fromCharCode(97 + (at % 26));
      write(other, `other ${typed}`);
      if (at === 10) write(one, 'stored by the one');
      await new Promise((done) => setTimeout(done, 3));
    }
    await bothSaved(one, other);
    const all = [textOf(one), ...one.state.choices.map((choice) => choice.other)].join('\n');
    expect(all).toContain(`other ${typed}`);
    expect(all).toContain('stored by the one');
    await Promise.all([one.close(), other.close()]);
  });

  it('that name it at the same moment leave one name, and tell the other', async () => {
    const { one, other } = await twoTabs();
    titled(one, 'One');
    titled(other, 'Other');
    await bothSaved(one, other);
    const says = [...one.state.messages, ...other.state.messages].map((message) => message.says).join();
    const lost = one.state.notebook.title === 'One' ? 'Other' : 'One';
    expect(says).toContain(`was named “${lost}”`);
    expect(await one.keptNotebooks()).toEqual([]);
    await Promise.all([one.close(), other.close()]);
  });

  it('one of which took it out of the browser lose nothing of the other', async () => {
    const { one, other, again } = await twoTabs();
    const { id } = one.state.notebook;
    one.clear();
    await saved(one);
    await one.removeKept(id);
    write(other, 'still here');
    await saved(other);
    await Promise.all([one.close(), other.close()]);
    const later = await again();
    expect(later.state.notebook.id).toBe(id);
    expect(textOf(later)).toBe('still here');
    await later.close();
  });
});

describe('a notebook that is replaced at once after a change', () => {
  it('is kept with that change', async () => {
    const shelf = openShelf({ name: 'replaced' });
    const session = await openSession({ shelf, delayMs: 200 });
    await saved(session);
    const { id } = session.state.notebook;
    write(session, 'just before');
    session.clear();
    await session.saveNow();
    expect(((await shelf.notebook(id))!.notebook.leaves[0] as NoteLeaf).text).toBe('just before');
    await session.close();
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
    openWriteAhead(small, 'dead').note(
      { notebook, choices: [] },
      { notebook: { ...notebook, title: 'Typed just now' }, choices: [] },
      (await shelf.notebook(notebook.id))!.revision,
    );
    const second = await openSession({ shelf, small });
    expect(second.state.notebook.title).toBe('Typed just now');
    await second.close();
  });

  it('on a full disk is opened from its note all the same', async () => {
    const small = storeOf();
    const notebook = { ...sampleNotebook(), title: 'Only in the note' };
    openWriteAhead(small, 'dead').note(null, { notebook, choices: [] }, 0);
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
