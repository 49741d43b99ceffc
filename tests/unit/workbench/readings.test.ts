import 'fake-indexeddb/auto';
import { afterEach, describe, expect, it, vi } from 'vitest';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { Corners } from '../../../src/sheet/model.ts';
import type { ReadClient } from '../../../src/workbench/reading/read-client.ts';
import type { Session } from '../../../src/workbench/session.ts';
import type { ReadRequest } from '../../../src/workers/messages.ts';
import { openSession, pictureFile, quickReader } from './open-session.ts';

const open: Session[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((session) => session.close()));
});

/** A reader that gives each picture when it is told to, by the file's text; `asked` tells what it was asked for. */
function readerInHand() {
  const quick = quickReader();
  const asked: string[] = [];
  const gates = new Map<string, () => void>();
  const client: ReadClient = {
    ...quick,
    async read(request, onProgress) {
      const text = new TextDecoder().decode(request.bytes);
      asked.push(text);
      await new Promise<void>((go) => gates.set(text, go));
      const result = await quick.read(request, onProgress);
      return {
        ...result,
        done: { ...result.done, notes: [`Reduced, like all but ${text === 'b' ? 1 : 0}.`] },
      };
    },
  };
  return { client, asked, give: (text: string) => gates.get(text)?.() };
}

async function empty(client: ReadClient): Promise<Session> {
  const session = await openSession({ client });
  open.push(session);
  session.clear();
  return session;
}
const studyOf = (session: Session) => session.state.notebook.leaves[0] as StudyLeaf | undefined;
const filesOf = (session: Session) =>
  session.state.notebook.drawer.sheets.map((sheet) => sheet.sides.A.reading.file);

describe('several pictures dropped at once', () => {
  it('are asked for together, and lie in the order in which they were dropped, whichever is ready first', async () => {
    const { client, asked, give } = readerInHand();
    const session = await empty(client);
    const adding = session.addPictures([pictureFile('first.png', 'a'), pictureFile('second.png', 'b')]);
    await vi.waitFor(() => expect(asked.toSorted()).toEqual(['a', 'b']));
    give('b');
    await vi.waitFor(() => expect(session.state.readings.at(-1)).toMatchObject({ stage: 'reading' }));
    expect(session.state.notebook.drawer.sheets).toEqual([]);
    give('a');
    const added = await adding;
    expect(filesOf(session)).toEqual(['first.png', 'second.png']);
    expect(studyOf(session)).toMatchObject({ anchor: added[0], candidates: [added[1]] });
    session.undo();
    expect(session.state.notebook.leaves).toEqual([]);
  });

  it('are not all in memory at the same time', async () => {
    const { client, asked, give } = readerInHand();
    const session = await empty(client);
    const names = ['a', 'b', 'c', 'd', 'e'];
    const adding = session.addPictures(names.map((name) => pictureFile(`${name}.png`, name)));
    await vi.waitFor(() => expect(asked.toSorted()).toEqual(['a', 'b', 'c']));
    give('a');
    await vi.waitFor(() => expect(asked.toSorted()).toEqual(['a', 'b', 'c', 'd']));
    for (const name of ['b', 'c', 'd']) give(name);
    await vi.waitFor(() => expect(asked).toHaveLength(5));
    give('e');
    expect(await adding).toHaveLength(5);
    expect(filesOf(session)).toEqual(names.map((name) => `${name}.png`));
  });

  it('of which one is cancelled while it waits for its turn leave it out', async () => {
    const { client, asked, give } = readerInHand();
    const session = await empty(client);
    const adding = session.addPictures([pictureFile('first.png', 'a'), pictureFile('second.png', 'b')]);
    await vi.waitFor(() => expect(asked).toHaveLength(2));
    give('b');
    await vi.waitFor(() => expect(session.state.readings.at(-1)).toMatchObject({ stage: 'reading' }));
    session.cancelReading(session.state.readings.at(-1)!.id);
    give('a');
    expect(await adding).toHaveLength(1);
    expect(filesOf(session)).toEqual(['first.png']);
    expect(session.state.readings).toEqual([]);
  });

  it('of which two are the same file are read once', async () => {
    const { client, asked, give } = readerInHand();
    const session = await empty(client);
    const adding = session.addPictures([pictureFile('first.png', 'a'), pictureFile('copy.png', 'a')]);
    await vi.waitFor(() => expect(asked).toEqual(['a']));
    give('a');
    const added = await adding;
    expect(added[1]).toEqual(added[0]);
    expect(asked).toEqual(['a']);
    expect(session.state.messages.map(({ says }) => says)).toContain(
      '“copy.png” is already in your drawer, as First.',
    );
  });

  it('are known as the same whichever of them is worked out first', async () => {
    const { client, asked, give } = readerInHand();
    const session = await empty(client);
    const { subtle } = globalThis.crypto;
    const digest = subtle.digest.bind(subtle);
    const slow = vi.spyOn(subtle, 'digest').mockImplementationOnce(async (...given) => {
      await new Promise((go) => setTimeout(go, 40));
      return digest(...given);
    });
    const adding = session.addPictures([pictureFile('first.png', 'a'), pictureFile('copy.png', 'a')]);
    await vi.waitFor(() => expect(asked).toEqual(['a']));
    give('a');
    expect(await adding).toHaveLength(2);
    slow.mockRestore();
    expect(asked).toEqual(['a']);
    expect(filesOf(session)).toEqual(['first.png']);
  });

  it('of which two are the same and the first is cancelled read the second after all', async () => {
    const { client, asked, give } = readerInHand();
    const session = await empty(client);
    const adding = session.addPictures([pictureFile('first.png', 'a'), pictureFile('copy.png', 'a')]);
    await vi.waitFor(() => expect(asked).toEqual(['a']));
    session.cancelReading(session.state.readings[0]!.id);
    give('a');
    await vi.waitFor(() => expect(asked).toEqual(['a', 'a']));
    give('a');
    expect(await adding).toHaveLength(1);
    expect(filesOf(session)).toEqual(['copy.png']);
  });

  it('tell once what was done to all of them', async () => {
    const { client, asked, give } = readerInHand();
    const session = await empty(client);
    const names = ['a', 'c', 'b'];
    const adding = session.addPictures(names.map((name) => pictureFile(`${name}.png`, name)));
    await vi.waitFor(() => expect(asked).toHaveLength(3));
    for (const name of names) give(name);
    await adding;
    expect(session.state.messages.map(({ says }) => says)).toEqual([
      '“a.png” and “c.png”: Reduced, like all but 0.',
      '“b.png”: Reduced, like all but 1.',
    ]);
  });
});

describe('a paper that lies on a table', () => {
  const corners: Corners = [
    { x: 0.1, y: 0.2 },
    { x: 0.6, y: 0.2 },
    { x: 0.6, y: 0.9 },
    { x: 0.1, y: 0.9 },
  ];
  const sizeMm = { width: 304.8, height: 304.8 };

  /** A reader that finds it, surely or not, and is asked to cut it out or not; `prepared` tells how it was read. */
  async function dropped(isSure: boolean) {
    const quick = quickReader();
    const prepared: ReadRequest['prepare'][] = [];
    const client: ReadClient = {
      ...quick,
      async read(request, onProgress) {
        const result = await quick.read(request, onProgress);
        prepared.push(request.prepare);
        if (request.findsPaper !== true) return result;
        const paper = { corners, sizeMm, taken: isSure ? result.done.picture : null };
        return { ...result, done: { ...result.done, paper } };
      },
    };
    const session = await empty(client);
    const [held] = await session.addPictures([pictureFile('Old dots.png', 'a')]);
    const side = () => session.state.notebook.drawer.sheets[0]!.sides.A;
    return { session, id: held!.id, side, prepared };
  }

  it('is cut out where that is sure, from the photograph that is kept beside it, at the size that papers are sold in', async () => {
    const { session, side } = await dropped(true);
    expect(side().taken).toMatchObject({ corners, unasked: true });
    expect(side().taken?.pictureId).not.toBe(side().pictureId);
    expect(side().asks).toBeUndefined();
    expect(session.state.notebook.drawer.sheets[0]!.sizeMm).toEqual(sizeMm);
  });

  it('is put back into its picture and asked about where that was wrong; undo cuts it out again', async () => {
    const { session, id, side, prepared } = await dropped(true);
    await session.settlePaper(id, 'A', 'ask');
    expect(side()).toMatchObject({ asks: corners });
    expect(side().taken).toBeUndefined();
    expect(prepared.at(-1)).not.toHaveProperty('corners');
    session.undo();
    expect(side().taken).toMatchObject({ corners, unasked: true });
    expect(side().asks).toBeUndefined();
  });

  it('is asked about where it is not sure, through another light, until she says that all of it is paper', async () => {
    const { session, id, side } = await dropped(false);
    expect(side()).toMatchObject({ asks: corners });
    const frame = { x: 0, y: 0, width: 0.1, height: 0.1 };
    await session.prepareSide(id, 'A', { light: { kind: 'white', frame, reflectance: 0.9 } });
    expect(side()).toMatchObject({ asks: corners });
    const { reading } = side();
    await session.settlePaper(id, 'A', 'whole');
    expect(side().asks).toBeUndefined();
    expect(side().reading).toBe(reading);
    session.undo();
    expect(side()).toMatchObject({ asks: corners });
  });

  it('is cut out once she says so, and that is hers: nothing says any more that it was done unasked', async () => {
    const { session, id, side, prepared } = await dropped(false);
    await session.settlePaper(id, 'A', 'cut out');
    expect(prepared.at(-1)).toMatchObject({ corners });
    expect(side().taken).toMatchObject({ corners });
    expect(side().taken).not.toHaveProperty('unasked');
    expect(side().asks).toBeUndefined();
    session.undo();
    expect(side()).toMatchObject({ asks: corners });
  });
});
