import { IDBFactory } from 'fake-indexeddb';
import 'fake-indexeddb/auto';
import { afterEach, beforeAll, describe, expect, it, vi } from 'vitest';
import type { Edit } from '../../../src/notebook/edits.ts';
import { emptyStudy } from '../../../src/notebook/empty.ts';
import type { Notebook } from '../../../src/notebook/model.ts';
import { plainOf } from '../../../src/sheet/plain.ts';
import type { Shelf } from '../../../src/storage/shelf.ts';
import { makeDemo } from '../../../src/workbench/demo-client.ts';
import { tidy } from '../../../src/workbench/housekeeping.ts';
import type { Session } from '../../../src/workbench/session.ts';
import { freshShelf, openSession } from './open-session.ts';

// Its papers are read when it is first asked for, which takes a while on a machine that has not kept them.
beforeAll(async () => {
  globalThis.indexedDB = new IDBFactory();
  await makeDemo('demo-first');
}, 240_000);
const open: Session[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((session) => session.close()));
});
const saved = (session: Session) => vi.waitFor(() => expect(session.state.saving.status).toBe('saved'));

/** The page's own demo, without its pictures. */
async function demo(id: string) {
  return { ...(await makeDemo(id)), draw: () => Promise.resolve() };
}
async function opened(shelf: Shelf): Promise<Session> {
  const session = await openSession({ shelf, makeDemo: demo });
  open.push(session);
  return session;
}
async function tidied(shelf: Shelf, session: Session): Promise<readonly (string | null)[]> {
  await saved(session);
  await tidy(
    shelf,
    () => session.state.notebook,
    () => Promise.resolve(false),
  );
  return (await session.keptNotebooks()).map(({ title }) => title);
}
const first = <K extends Notebook['leaves'][number]['kind']>({ leaves }: Notebook, kind: K) =>
  leaves.find((leaf): leaf is Extract<typeof leaf, { kind: K }> => leaf.kind === kind)!;

/** What she may do in it, and what of it she finds again. */
const hers: readonly [string, (notebook: Notebook) => Edit][] = [
  ['a note', () => ({ do: 'add leaf', leaf: { kind: 'note', id: 'mine', title: 'Mine', text: 'For Mia' } })],
  [
    'a plain',
    () => ({
      do: 'add plain',
      plain: { ...plainOf({ name: 'My brown', kind: 'cardstock', hex: '#6b4a2f' }), id: 'mine' },
    }),
  ],
  ['a kit', () => ({ do: 'add leaf', leaf: { kind: 'kit', id: 'mine', title: 'K', text: '', pieces: [] } })],
  ['a study', () => ({ do: 'add leaf', leaf: emptyStudy('mine') })],
  [
    'an opinion',
    (notebook) => {
      const study = first(notebook, 'study');
      return {
        do: 'say',
        leafId: study.id,
        candidate: study.candidates[0]!,
        opinion: { verdict: 'pulls-apart', likes: true },
      };
    },
  ],
  ['a text', ({ leaves }) => ({ do: 'set text', leafId: leaves[0]!.id, text: 'My own words' })],
  ['another title of a leaf', ({ leaves }) => ({ do: 'rename leaf', leafId: leaves[1]!.id, title: 'Mine' })],
  ['another title of the notebook', () => ({ do: 'rename notebook', title: 'Mine' })],
  [
    'another name of a sheet',
    ({ drawer }) => ({ do: 'update sheet', sheetId: drawer.sheets[0]!.id, change: { name: 'Mine' } }),
  ],
  ['another order', ({ leaves }) => ({ do: 'move leaf', leafId: leaves[0]!.id, to: 1 })],
  ['less', ({ leaves }) => ({ do: 'remove leaf', leafId: leaves[0]!.id })],
];

describe('the demo', () => {
  it.each(hers)('with %s of hers is kept when she starts her own notebook', async (_, edit) => {
    const shelf = freshShelf();
    const session = await opened(shelf);
    const { id } = session.state.notebook;
    expect(id).toMatch(/^demo-/);
    session.dispatch(edit(session.state.notebook));
    expect(session.state.messages.filter(({ kind }) => kind === 'trouble')).toEqual([]);
    await saved(session);
    const written = session.state.notebook;
    session.clear();
    session.dispatch({ do: 'rename notebook', title: 'My own' });
    expect(await tidied(shelf, session)).toEqual([written.title]);
    expect((await shelf.notebook(id))?.notebook).toEqual(written);
  });

  it('is kept with it after a backup was opened', async () => {
    const shelf = freshShelf();
    const session = await opened(shelf);
    const backup = await session.saveBundle();
    session.dispatch({ do: 'rename notebook', title: 'Mine' });
    await saved(session);
    expect(await session.openBundle(new File([backup!.blob], backup!.name))).toBe(true);
    expect(await tidied(shelf, session)).toEqual(['Mine']);
  });

  it('is taken away where it is as it was drawn, however it was looked at', async () => {
    const shelf = freshShelf();
    const session = await opened(shelf);
    const study = first(session.state.notebook, 'study');
    session.dispatch({ do: 'show candidate', leafId: study.id, index: 1 });
    session.dispatch({ do: 'set wheel', leafId: study.id, wheel: study.wheel === 'eye' ? 'painter' : 'eye' });
    await saved(session);
    session.clear();
    session.dispatch({ do: 'rename notebook', title: 'My own' });
    expect(await tidied(shelf, session)).toEqual([]);
  });

  it('is not the only thing that is kept: an empty notebook with a title of hers is', async () => {
    const shelf = freshShelf();
    const session = await opened(shelf);
    session.clear();
    await saved(session);
    session.clear();
    session.dispatch({ do: 'rename notebook', title: 'For Mia' });
    await saved(session);
    session.clear();
    session.dispatch({ do: 'rename notebook', title: 'Now' });
    expect(await tidied(shelf, session)).toEqual(['For Mia']);
  });
});
