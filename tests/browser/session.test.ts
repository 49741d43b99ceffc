import { afterAll, afterEach, describe, expect, it, vi } from 'vitest';
import { emptyNotebook } from '../../src/notebook/empty.ts';
import { writeBundle } from '../../src/storage/bundle/bundle-write.ts';
import { openShelf } from '../../src/storage/shelf.ts';
import { type ReadClient, startReadClient } from '../../src/workbench/reading/read-client.ts';
import { Session } from '../../src/workbench/session.ts';

/** The whole session in a real browser: worker, database, demo, boards and bundles. */

/** One reader for all: a session that closes leaves it to the next, as starting workers is most of a short test. */
const reader = startReadClient();
const client: ReadClient = { ...reader, close: () => {} };
afterAll(() => reader.close());

const open: Session[] = [];
afterEach(async () => {
  await Promise.all(open.splice(0).map((session) => session.close()));
});

async function opened(name = `session-${crypto.randomUUID()}`, withDemo = false): Promise<Session> {
  const makeDemo = (id: string) =>
    Promise.resolve({ notebook: emptyNotebook(id), draw: () => Promise.resolve() });
  const shelf = openShelf({ name });
  const session = await Session.open({ shelf, client, small: null, ...(withDemo ? {} : { makeDemo }) });
  open.push(session);
  return session;
}
const waiting = { timeout: 25_000, interval: 50 };
const saved = (session: Session) =>
  vi.waitFor(() => expect(session.state.saving.status).toBe('saved'), waiting);

describe('first start', () => {
  it('opens the demo with its readings at once and draws its papers meanwhile', async () => {
    const from = performance.now();
    const session = await opened(undefined, true);
    console.info(`session open with the demo after ${Math.round(performance.now() - from)} ms`);
    expect(session.state).toMatchObject({ isDemo: true, saving: { status: expect.any(String) } });
    const study = session.state.notebook.leaves.find((leaf) => leaf.kind === 'study');
    if (study?.kind !== 'study' || study.anchor === null) throw new Error('the demo has a study');
    const { anchor } = study;
    expect(session.rank(study.id)).toHaveLength(study.candidates.length);
    await vi.waitFor(() => expect(session.pictureUrl(anchor)).toMatch(/^blob:/), waiting);
    await vi.waitFor(() => expect(session.pictureUrl(anchor, 'thumb')).toMatch(/^blob:/), waiting);
    const places = await session.places(anchor);
    expect(new Set(places?.labels).size).toBeGreaterThan(2);
    // Where the sources have changed, the demo's papers are read for the first time here.
  }, 120_000);

  it('is cleared in one step, and two papers dropped then make a study', async () => {
    const session = await opened();
    session.clear();
    const added = await session.addPictures([
      await paper('old-dots.png', '#1f3a5f'),
      await paper('new-dots.png', '#c23b4e'),
    ]);
    expect(added).toHaveLength(2);
    const [study] = session.state.notebook.leaves;
    expect(study).toMatchObject({ kind: 'study', anchor: added[0], candidates: [added[1]] });
    const found = session.compare(added[0]!, added[1]!, 'apart');
    expect(found?.reasons.length).toBeGreaterThan(0);
    expect(session.nameOf(added[0]!)).toBe('Old dots');
  });
});

describe('after a reload', () => {
  it('everything is there again', async () => {
    const name = `session-${crypto.randomUUID()}`;
    const first = await opened(name);
    first.clear();
    const [held] = await first.addPictures([await paper('dots.png', '#1f3a5f')]);
    first.dispatch({ do: 'rename notebook', title: 'Mine' });
    await saved(first);
    const before = first.state.notebook;
    await first.close();
    const second = await opened(name);
    expect(second.state.notebook).toEqual(before);
    await vi.waitFor(() => expect(second.pictureUrl(held!)).toMatch(/^blob:/), waiting);
    expect((await second.places(held!))?.labels.includes(1)).toBe(true);
  });
});

describe('a bundle', () => {
  it('goes out and comes in whole, with its pictures', async () => {
    const session = await opened();
    session.clear();
    await session.addPictures([
      await paper('dots.png', '#1f3a5f'),
      await paper('other.jpg', '#c23b4e', 'image/jpeg'),
    ]);
    const file = await session.saveBundle();
    expect(file?.name).toMatch(/\.quire$/);
    const other = await opened();
    expect(await other.openBundle(new File([file!.blob], file!.name))).toBe(true);
    const readings = (one: Session) => one.state.notebook.drawer.sheets.map((sheet) => sheet.sides.A.reading);
    expect(readings(other)).toEqual(readings(session));
    const [sheet] = other.state.notebook.drawer.sheets;
    await vi.waitFor(
      () => expect(other.pictureUrl({ kind: 'sheet', id: sheet!.id, side: 'A' })).toMatch(/^blob:/),
      waiting,
    );
  });

  it('opens with what can’t be read of it kept beside it, through a reload and into the next backup', async () => {
    const name = `session-${crypto.randomUUID()}`;
    const session = await opened(name);
    session.clear();
    const { notebook } = session.state;
    const torn = { kind: 'note', id: 'torn-leaf', title: 'My best page', text: 7 };
    const parts: Uint8Array<ArrayBuffer>[] = [];
    const aside = [{ what: 'leaf' as const, id: 'torn-leaf', name: 'My best page', value: torn, why: '' }];
    const source = {
      picture: () => Promise.resolve(null),
      isDecodable: () => Promise.resolve(true),
      setAside: aside,
    };
    await writeBundle(notebook, source, (part) => void parts.push(part));
    expect(await session.openBundle(new File(parts, 'half.quire'))).toBe(true);
    const kept = [{ what: 'leaf', id: 'torn-leaf', name: 'My best page', value: torn }];
    expect(session.state.setAside).toMatchObject(kept);
    expect(session.state.messages.at(-1)?.says).toContain('One thing in this notebook could not be read.');
    await saved(session);
    await session.close();
    const again = await opened(name);
    expect(again.state.setAside).toMatchObject(kept);
    const file = await again.saveBundle();
    const other = await opened();
    expect(await other.openBundle(new File([file!.blob], file!.name))).toBe(true);
    expect(other.state.setAside).toMatchObject(kept);
  });

  it('with a torn picture in it changes nothing', async () => {
    const session = await opened();
    session.clear();
    await session.addPictures([await paper('dots.png', '#1f3a5f')]);
    const { notebook } = session.state;
    // A picture whose every chunk is where it should be, and whose pixels are rubbish.
    const bytes = new Uint8Array(await (await paper('x.png', '#123456')).arrayBuffer());
    const idat = indexOf(bytes, 'IDAT');
    bytes.fill(0xaa, idat + 10, idat + 200);
    const picture = {
      id: '',
      bytes: bytes.buffer,
      type: 'image/png' as const,
      width: 240,
      height: 240,
      thumb: null,
      addedAt: '',
    };
    const parts: Uint8Array<ArrayBuffer>[] = [];
    const source = {
      picture: (id: string) => Promise.resolve({ ...picture, id }),
      isDecodable: () => Promise.resolve(true),
    };
    await writeBundle(notebook, source, (part) => void parts.push(part));
    expect(await session.openBundle(new File(parts, 'bad.quire'))).toBe(false);
    expect(session.state.notebook).toBe(notebook);
    expect(session.state.messages.at(-1)?.says).toContain(
      'A picture in this file is damaged. Nothing was changed.',
    );
  });
});

describe('a board', () => {
  it('is saved as PNG, SVG and PDF under a proper name', async () => {
    const session = await opened(undefined, true);
    const board = session.state.notebook.leaves.find((leaf) => leaf.kind === 'board');
    const png = await session.exportBoard(board!.id, 'png');
    expect(png?.name).toMatch(/^[\p{L}\p{N}-]+\.png$/u);
    const bitmap = await createImageBitmap(png!.blob);
    expect([bitmap.width, bitmap.height]).toEqual([3600, 3600]);
    const svg = await session.exportBoard(board!.id, 'svg');
    const text = await svg!.blob.text();
    expect(text).toContain('@font-face');
    expect(text).not.toMatch(/(href|src)="(?!data:|#)|url\((?!data:|#)/);
    const pdf = await session.exportBoard(board!.id, 'pdf');
    expect((await pdf!.blob.text()).slice(0, 5)).toBe('%PDF-');
    // Two pictures of 13 megapixels are drawn and packed, which takes a busy machine long.
  }, 120_000);

  it('of a leaf without a pair is refused in a sentence', async () => {
    const session = await opened(undefined, true);
    const note = session.state.notebook.leaves.find((leaf) => leaf.kind === 'note');
    expect(await session.exportBoard(note!.id, 'png')).toBeNull();
    expect(session.state.messages.at(-1)?.says).toContain('needs an anchor and a candidate');
  });
});

async function paper(name: string, ink: string, type = 'image/png'): Promise<File> {
  const canvas = new OffscreenCanvas(240, 240);
  const context = canvas.getContext('2d')!;
  context.fillStyle = '#f4e8cd';
  context.fillRect(0, 0, 240, 240);
  context.fillStyle = ink;
  for (let i = 0; i < 36; i++) context.fillRect((i % 6) * 40 + 8, Math.floor(i / 6) * 40 + 8, 22, 22);
  return new File([await canvas.convertToBlob({ type, quality: 0.95 })], name, { type });
}

function indexOf(bytes: Uint8Array, word: string): number {
  return Array.from(bytes, (byte) => String.fromCharCode(byte))
    .join('')
    .indexOf(word);
}
