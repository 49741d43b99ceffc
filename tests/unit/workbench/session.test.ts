import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { heldKey } from '../../../src/drawer/held.ts';
import type { Edit } from '../../../src/notebook/edits.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { Shelf } from '../../../src/storage/shelf.ts';
import type { Session } from '../../../src/workbench/session.ts';
import { bunting, dots, ledger } from '../notebook/sample-notebook.ts';
import { freshShelf, openSession, pictureFile } from './open-session.ts';

const open: Session[] = [];
async function opened(options: Parameters<typeof openSession>[0] = {}): Promise<Session> {
  const session = await openSession(options);
  open.push(session);
  return session;
}
afterEach(async () => {
  await Promise.all(open.splice(0).map((session) => session.close()));
});
const saved = (session: Session) => vi.waitFor(() => expect(session.state.saving.status).toBe('saved'));
const studies = (session: Session) =>
  session.state.notebook.leaves.filter((leaf): leaf is StudyLeaf => leaf.kind === 'study');

describe('opening', () => {
  it('shows the demo on first start, and afterwards what was open last', async () => {
    const shelf = freshShelf();
    const first = await opened({ shelf });
    expect(first.state).toMatchObject({ isDemo: false, leafId: 'w1', canUndo: false });
    first.dispatch({ do: 'rename notebook', title: 'Mine' });
    first.turnTo('k1');
    await saved(first);
    await first.close();
    const second = await opened({ shelf });
    expect(second.state).toMatchObject({
      notebook: { title: 'Mine' },
      leafId: 'k1',
      saving: { status: 'saved' },
    });
  });

  it('clears in one step, and undo brings it all back', async () => {
    const session = await opened();
    const before = session.state.notebook;
    session.clear();
    expect(session.state).toMatchObject({
      notebook: { leaves: [] },
      leafId: null,
      undoes: 'clear the notebook',
    });
    session.undo();
    expect(session.state.notebook).toBe(before);
    session.redo();
    expect(session.state.notebook.leaves).toEqual([]);
  });

  it('keeps what was replaced on the shelf, to be opened again', async () => {
    const shelf = freshShelf();
    const session = await opened({ shelf });
    session.dispatch({ do: 'rename notebook', title: 'First' });
    await saved(session);
    session.clear();
    session.dispatch({ do: 'rename notebook', title: 'Second' });
    await saved(session);
    const [first] = await session.keptNotebooks();
    expect(first?.title).toBe('First');
    expect(await session.openKept(first!.id)).toBe(true);
    session.dispatch({ do: 'rename notebook', title: 'First again' });
    await saved(session);
    expect((await session.keptNotebooks()).map((line) => line.title)).toEqual(['Second']);
    expect(session.state.messages).toEqual([]);
  });
});

describe('the state', () => {
  it('is the same object between changes and is told after each', async () => {
    const session = await opened();
    const before = session.state;
    expect(session.state).toBe(before);
    const heard: string[] = [];
    const stop = session.subscribe((state) => heard.push(state.notebook.title));
    session.dispatch({ do: 'rename notebook', title: 'A' });
    expect(session.state).not.toBe(before);
    await Promise.resolve();
    expect(heard[0]).toBe('A');
    stop();
    session.dispatch({ do: 'rename notebook', title: 'B' });
    await Promise.resolve();
    expect(heard).not.toContain('B');
  });

  it('goes to the neighbour when the leaf that is looked at is taken out', async () => {
    const session = await opened();
    session.turnTo('k1');
    session.dispatch({ do: 'remove leaf', leafId: 'k1' });
    expect(session.state.leafId).toBe('b1');
    session.undo();
    session.turnTo('gone');
    expect(session.state.leafId).toBe('b1');
  });

  it('remembers how things are shown', async () => {
    const shelf = freshShelf();
    const first = await opened({ shelf });
    first.prefer({ surround: 'dark', hand: 'left' });
    await first.close();
    expect((await opened({ shelf })).state.look).toEqual({ surround: 'dark', theme: 'system', hand: 'left' });
  });
});

describe('an edit whose outcome could not be opened again', () => {
  const cases: readonly [string, Edit, RegExp][] = [
    [
      'a sheet of 10,750 g/m²',
      { do: 'update sheet', sheetId: 'bunting', change: { weight: { gsm: 10_750, weighed: true } } },
      /weight is too large: the most that can be kept is 10,000/,
    ],
    [
      'a plain of a colour that there is not',
      {
        do: 'add plain',
        plain: {
          id: 'p9',
          name: 'Slip',
          kind: 'cardstock',
          ink: { id: 'A', hex: '#0000ff', oklch: [0.5, 2.6, 280], name: '', share: 1, accent: false },
        },
      },
      /colour is too large/,
    ],
    [
      'a kit 12,000 in wide',
      {
        do: 'add piece',
        leafId: 'k1',
        piece: { held: bunting, areaMm2: null, sizeMm: { width: 304_800, height: 305 } },
      },
      /size is too large/,
    ],
    [
      'a board of a size that there is not',
      { do: 'set board size', leafId: 'b1', size: 'a0' as 'a4' },
      /not what it should be/,
    ],
  ];
  it.each(cases)('%s changes nothing, is said, and what is stored opens', async (_, edit, says) => {
    const shelf = freshShelf();
    const session = await opened({ shelf });
    session.dispatch({ do: 'rename notebook', title: 'Mine' });
    const before = session.state.notebook;
    session.dispatch(edit);
    expect(session.state.notebook).toBe(before);
    expect(session.state.messages).toMatchObject([{ kind: 'trouble', says: expect.stringMatching(says) }]);
    expect(session.state.messages[0]?.says).toMatch(/Nothing was changed\.$/);
    session.dispatch({ do: 'set text', leafId: 'w1', text: 'On I go.' });
    expect(session.state.messages).toEqual([]);
    await saved(session);
    await session.close();
    const again = await opened({ shelf });
    expect(again.state).toMatchObject({ notebook: { title: 'Mine' }, messages: [], setAside: [] });
  });
});

describe('comparing', () => {
  it('gives the same object for the same papers until the drawer changes', async () => {
    const session = await opened();
    const found = session.compare(bunting, ledger, 'apart');
    expect(found?.reasons.length).toBeGreaterThan(0);
    expect(session.compare(bunting, ledger, 'apart')).toBe(found);
    expect(session.compare(bunting, ledger, 'touching')).not.toBe(found);
    session.dispatch({ do: 'set text', leafId: 'w1', text: 'x' });
    expect(session.compare(bunting, ledger, 'apart')).toBe(found);
    session.dispatch({
      do: 'correct',
      of: bunting,
      made: { change: { kind: 'move-spot', ink: 'B', spot: { x: 0.5, y: 0.5 } }, inks: {}, hex: '#8040a0' },
    });
    expect(session.compare(bunting, ledger, 'apart')).not.toBe(found);
    expect(session.compare(bunting, { kind: 'sheet', id: 'gone', side: 'A' }, 'apart')).toBeNull();
  });

  it('ranks a study’s candidates, each with its place among them', async () => {
    const session = await opened();
    const ranked = session.rank('s1');
    expect(ranked.map(({ index }) => index).sort()).toEqual([0, 1, 2]);
    const one = ranked.find(({ index }) => index === 1);
    expect(one?.held).toEqual(dots);
    expect(one?.comparison).toBe(session.compare(bunting, dots, 'apart'));
    expect(session.rank('w1')).toEqual([]);
  });
});

describe('two pictures dropped on an empty notebook', () => {
  it('make a study with the first as anchor and the second as candidate, in one step', async () => {
    const session = await opened();
    session.clear();
    const added = await session.addPictures([pictureFile('old-dots.png', 'b'), pictureFile('new.png')]);
    const [study] = studies(session);
    expect(study).toMatchObject({
      title: 'Old dots with New',
      anchor: added[0],
      candidates: [added[1]],
      shown: 0,
    });
    expect(session.state.leafId).toBe(study?.id);
    expect(session.nameOf(added[0]!)).toBe('Old dots');
    expect(session.state.notebook.drawer.sheets[0]?.sizeMm).toEqual({ width: 305, height: 203 });
    expect(session.state.undoes).toBe('add pictures');
    session.undo();
    expect(session.state.notebook.leaves).toEqual([]);
    expect(session.state.notebook.drawer.sheets).toEqual([]);
  });

  it('on a study become its candidates; elsewhere one goes to the drawer', async () => {
    const session = await opened();
    session.turnTo('s1');
    await session.addPictures([pictureFile('x.png'), pictureFile('y.png')]);
    expect(studies(session)[0]?.candidates).toHaveLength(5);
    session.turnTo('w1');
    await session.addPictures([pictureFile('z.png')]);
    expect(studies(session)).toHaveLength(1);
    expect(session.state.notebook.drawer.sheets).toHaveLength(6);
    expect(session.state.leafId).toBe('w1');
  });

  it('go where they are told to', async () => {
    const session = await opened();
    const [anchor] = await session.addPictures([pictureFile('x.png')], {
      to: 'study',
      studyId: 's1',
      as: 'anchor',
    });
    expect(studies(session)[0]?.anchor).toEqual(anchor);
    const [back] = await session.addPictures([pictureFile('y.png')], {
      to: 'other side',
      sheetId: 'bunting',
    });
    expect(back).toEqual({ kind: 'sheet', id: 'bunting', side: 'B' });
    expect(session.state.notebook.drawer.sheets[0]?.sides.B?.reading.file).toBe('y.png');
    await session.addPictures([pictureFile('a.png'), pictureFile('b.png')], { to: 'new study' });
    expect(studies(session)).toHaveLength(2);
  });

  it('of which one can’t be read give the other, and a sentence with the file’s name', async () => {
    const session = await opened();
    session.clear();
    const added = await session.addPictures([pictureFile('letter.png', '!'), pictureFile('dots.png')]);
    expect(added).toHaveLength(1);
    expect(studies(session)[0]).toMatchObject({ anchor: added[0], candidates: [] });
    expect(session.state.messages).toMatchObject([
      { kind: 'trouble', says: '“letter.png”: This file is not a picture, whatever its name says.' },
    ]);
    session.dismiss(session.state.messages[0]!.id);
    expect(session.state.messages).toEqual([]);
  });

  it('of which ten can’t be read are told of in one message, and none of them names the study', async () => {
    const session = await opened();
    session.clear();
    const bad = Array.from({ length: 10 }, (_, i) => pictureFile(`letter ${i}.png`, `!${i}`));
    const adding = session.addPictures([...bad, pictureFile('dots.png'), pictureFile('stripes.png', 'b')]);
    const titles = new Set<string>();
    session.subscribe(() => {
      for (const { title } of studies(session)) titles.add(title);
    });
    expect(await adding).toHaveLength(2);
    expect([...titles]).toEqual(['A study', 'Dots', 'Dots with Stripes']);
    expect(session.state.messages).toMatchObject([{ kind: 'trouble', says: '10 files could not be read.' }]);
    expect(session.state.messages[0]?.list).toHaveLength(10);
    expect(session.state.messages[0]?.list?.[9]).toBe(
      '“letter 9.png”: This file is not a picture, whatever its name says.',
    );
    session.undo();
    expect(session.state.notebook.leaves).toEqual([]);
    await session.addPictures(Array.from({ length: 30 }, (_, i) => pictureFile(`${i}.png`, `!${i}`)));
    expect(session.state.messages).toMatchObject([{ says: '30 files could not be read.' }]);
    expect(session.state.messages[0]?.list?.at(-1)).toBe('And 18 more.');
    expect(session.state.notebook.leaves).toEqual([]);
  });

  it('leave a study the title that she gives it meanwhile', async () => {
    const session = await opened();
    session.clear();
    const adding = session.addPictures([pictureFile('a.png'), pictureFile('b.png', 'b')]);
    session.dispatch({ do: 'rename leaf', leafId: studies(session)[0]!.id, title: 'For Mia' });
    await adding;
    expect(studies(session)[0]?.title).toBe('For Mia');
  });

  it('take away what was said of those before them, and so does turning the leaf', async () => {
    const session = await opened();
    const said = () => session.state.messages.map(({ says }) => says.slice(0, 5));
    await session.addPictures([pictureFile('a.png', '!')]);
    await session.addPictures([pictureFile('b.png', '!')]);
    expect(said()).toEqual(['“b.pn']);
    const [first, second] = session.state.notebook.leaves;
    session.turnTo((session.state.leafId === first!.id ? second : first)!.id);
    expect(said()).toEqual([]);
  });

  it('one of which goes only to the drawer is told of, and a study is offered with it until something else is done', async () => {
    const session = await opened();
    const note = session.state.notebook.leaves.find(({ kind }) => kind === 'note')!;
    session.turnTo(note.id);
    const [held] = await session.addPictures([pictureFile('old-dots.png')]);
    expect(session.state.messages).toMatchObject([
      { kind: 'note', says: '“Old dots” is in the drawer.', offers: 'study', key: heldKey(held!) },
    ]);
    session.dispatch({ do: 'set text', leafId: note.id, text: 'On I go.' });
    expect(session.state.messages).toEqual([]);
    await session.addPictures([pictureFile('more.png', 'b')], { to: 'drawer' });
    expect(session.state.messages).toEqual([]);
  });

  it('none of which can be read leave the notebook exactly as it was', async () => {
    const session = await opened();
    const before = session.state.notebook;
    await session.addPictures([pictureFile('a.png', '!'), pictureFile('b.png', '!')]);
    expect(session.state.notebook).toBe(before);
    expect(session.state.readings).toEqual([]);
  });

  it('show how far they are, and can be stopped', async () => {
    const session = await opened();
    const before = session.state.notebook;
    const adding = session.addPictures([pictureFile('slow.png', '?')]);
    await vi.waitFor(() =>
      expect(session.state.readings).toMatchObject([
        { fileName: 'slow.png', stage: 'reading', fraction: 0.4 },
      ]),
    );
    session.cancelReading(session.state.readings[0]!.id);
    expect(await adding).toEqual([]);
    expect(session.state.readings).toEqual([]);
    expect(session.state.messages).toEqual([]);
    expect(session.state.notebook).toBe(before);
  });

  it('are there again after a reload, with their pictures and the places of their inks', async () => {
    const shelf = freshShelf();
    const first = await opened({ shelf });
    const [held] = await first.addPictures([pictureFile('x.png')]);
    expect([...(await first.places(held!))!.labels]).toEqual([1]);
    await saved(first);
    await first.close();
    const second = await opened({ shelf });
    expect(second.pictureUrl(held!)).toBeNull();
    await vi.waitFor(() => expect(second.pictureUrl(held!)).toMatch(/^blob:/));
    expect(second.state.pictures).toBeGreaterThan(0);
    expect([...(await second.places(held!))!.labels]).toEqual([1]);
    expect(await second.places(bunting)).toBeNull();
  });
});

describe('a full disk', () => {
  it('is said in a sentence; the work goes on in memory and is stored once there is room', async () => {
    const real = freshShelf();
    let isFull = false;
    const guard =
      <A extends unknown[], R>(act: (...args: A) => Promise<R>) =>
      (...args: A) =>
        isFull ? Promise.reject(new DOMException('full', 'QuotaExceededError')) : act(...args);
    const shelf: Shelf = { ...real, save: guard(real.save), putPictures: guard(real.putPictures) };
    const session = await opened({ shelf });
    await saved(session);
    isFull = true;
    const [held] = await session.addPictures([pictureFile('x.png')]);
    await vi.waitFor(() =>
      expect(session.state.saving).toMatchObject({
        status: 'failed',
        says: expect.stringContaining('no room left'),
      }),
    );
    expect(session.state.notebook.drawer.sheets).toHaveLength(4);
    expect((await session.saveBundle())?.blob.size).toBeGreaterThan(0);
    isFull = false;
    await saved(session);
    const pictureId = session.state.notebook.drawer.sheets.at(-1)?.sides.A.pictureId ?? '';
    expect(await real.picture(pictureId)).not.toBeNull();
    expect((await real.notebook(session.state.notebook.id))?.notebook.drawer.sheets.at(-1)?.id).toBe(
      held?.id,
    );
  });
});

describe('a bundle', () => {
  it('saved sets the date of the last backup', async () => {
    const session = await opened();
    const file = await session.saveBundle();
    expect(file?.name).toMatch(/^garden-book-\d{4}-\d\d-\d\d\.quire$/);
    expect(Date.parse(session.state.lastBackup ?? '')).toBeGreaterThan(Date.now() - 60_000);
  });

  it('that is torn changes nothing and says so', async () => {
    const session = await opened();
    const before = session.state.notebook;
    expect(await session.openBundle(new File(['PK torn'], 'old.quire'))).toBe(false);
    expect(session.state.notebook).toBe(before);
    expect(session.state.messages[0]?.says).toMatch(
      /^“old.quire”: This file is damaged.*Nothing was changed\.$/,
    );
  });

  it('dropped among pictures is opened as a bundle', async () => {
    const session = await opened();
    const file = await session.saveBundle();
    const { id } = session.state.notebook;
    await session.addPictures([new File([file!.blob], file!.name)]);
    expect(session.state.notebook.title).toBe('Garden book');
    expect(session.state.notebook.id).not.toBe(id);
    expect(session.state.undoes).toBe('open a backup file');
  });
});
