import fc from 'fast-check';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Notebook } from '../../../src/notebook/model.ts';
import { bundleLimits } from '../../../src/storage/bundle/bundle-limits.ts';
import { readBundle } from '../../../src/storage/bundle/bundle-read.ts';
import { writeBundle } from '../../../src/storage/bundle/bundle-write.ts';
import type { Picture } from '../../../src/storage/database.ts';
import { pictureIdsOf } from '../../../src/storage/pictures-of.ts';
import { StorageTrouble } from '../../../src/storage/words/trouble.ts';
import { sampleNotebook } from '../notebook/sample-notebook.ts';
import { anyNotebook } from './any-notebook.ts';
import { bundleBytes, opened } from './bundles.ts';
import { joinedBytes, pngChunk, smallPng } from './small-pictures.ts';

const book = sampleNotebook();
const png = smallPng();
const words = pngChunk('tEXt', strToU8('Comment\0Taken at 51.5 N'));

const picture = (id: string, bytes = png): Picture => ({
  id,
  bytes: bytes.buffer,
  type: 'image/png',
  width: 3,
  height: 2,
  thumb: null,
  addedAt: '2026-11-25T10:00:00.000Z',
});
const bundled = (notebook: Notebook = book, bytes = png) =>
  bundleBytes(notebook, (id) => Promise.resolve(picture(id, bytes)));
const open = opened;

describe('a bundle', () => {
  it('is a zip that other programs open, with the notebook and its pictures in it', async () => {
    const files = unzipSync(await bundled());
    expect(Object.keys(files).sort()).toEqual([
      'notebook.json',
      'pictures/1.png',
      'pictures/2.png',
      'pictures/3.png',
    ]);
    expect(JSON.parse(new TextDecoder().decode(files['notebook.json']))).toMatchObject({
      format: 'quirewise-notebook',
      version: 1,
      notebook: { title: 'Garden book' },
    });
    expect(files['pictures/1.png']).toEqual(png);
  });

  it('brings a notebook back the same but for fresh ids of itself and its pictures', async () => {
    await fc.assert(
      fc.asyncProperty(anyNotebook, async (notebook) => {
        const { notebook: back, pictures } = await open(await bundled(notebook));
        expect(back.id).not.toBe(notebook.id);
        expect(pictureIdsOf(back).size).toBe(pictureIdsOf(notebook).size);
        expect(new Set(pictures.map(({ id }) => id))).toEqual(pictureIdsOf(back));
        expect(withoutIds(back)).toEqual(withoutIds(notebook));
      }),
      { numRuns: 40 },
    );
  });

  it('holds nothing of a picture but its pixels, on the way out and on the way in', async () => {
    const spoken = smallPng(3, 2, [words]);
    expect(Buffer.from(await bundled(book, spoken)).includes('51.5 N')).toBe(false);
    const files = unzipSync(await bundled());
    const { pictures } = await open(zipSync({ ...files, 'pictures/1.png': spoken }));
    for (const { bytes } of pictures) expect(Buffer.from(bytes).includes('51.5 N')).toBe(false);
  });

  it('is whole without a picture that is no longer there: its sheet keeps what was read', async () => {
    const { notebook, pictures } = await open(
      await bundleBytes(book, (id) => Promise.resolve(id === 'picture-dots' ? null : picture(id))),
    );
    expect(pictures).toHaveLength(2);
    expect(notebook.drawer.sheets.map((sheet) => sheet.sides.A.pictureId === null)).toEqual([
      false,
      false,
      true,
    ]);
  });
});

describe('a torn bundle', () => {
  it('is told, wherever it breaks off', async () => {
    const whole = await bundled();
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), async (at) => {
        await expect(open(whole.slice(0, at))).rejects.toThrow(StorageTrouble);
      }),
      { numRuns: 60 },
    );
  });

  it('is told, or still gives the very same notebook, whichever byte of it is changed', async () => {
    const whole = await bundled();
    await fc.assert(
      fc.asyncProperty(fc.nat(whole.length - 1), fc.integer({ min: 1, max: 255 }), async (at, by) => {
        const other = whole.slice();
        other[at] = (other[at] ?? 0) ^ by;
        const got = await open(other).catch((error: unknown) => error);
        if (got instanceof Error) expect(got).toBeInstanceOf(StorageTrouble);
        else expect(withoutIds((got as { notebook: Notebook }).notebook)).toEqual(withoutIds(book));
      }),
      { numRuns: Number(process.env.QUIREWISE_DAMAGES ?? 300) },
    );
  });
});

describe('a bundle by a hostile hand', () => {
  const cases: readonly [
    string,
    (files: Record<string, Uint8Array>) => Uint8Array | Promise<Uint8Array>,
    RegExp,
  ][] = [
    ['that is empty', () => new Uint8Array(), /file is empty/],
    ['that is a picture', () => png, /damaged/],
    ['without a notebook', ({ 'notebook.json': _, ...rest }) => zipSync(rest), /holds no notebook/],
    [
      'whose notebook is no JSON',
      (files) => zipSync({ ...files, 'notebook.json': strToU8('{"format":') }),
      /is damaged/,
    ],
    [
      'with a way out of its folder',
      (files) => zipSync({ ...files, '../../startup.js': strToU8('x') }),
      /not laid out/,
    ],
    ['with an absolute path', (files) => zipSync({ ...files, '/etc/passwd': strToU8('x') }), /not laid out/],
    ['with a drive in a name', (files) => zipSync({ ...files, 'C:\\x.png': strToU8('x') }), /not laid out/],
    [
      'with too many parts',
      (files) => sayingParts(zipSync(files), bundleLimits.entries + 1),
      /holds 200001 parts/,
    ],
    [
      'whose picture is a script',
      (files) => zipSync({ ...files, 'pictures/1.png': strToU8('<script>alert(1)</script>'.repeat(9)) }),
      /not what the file says/,
    ],
    [
      'whose picture says it is small and is not',
      (files) => zipSync({ ...files, 'pictures/1.png': smallPng(9000, 1) }),
      /not what the file says/,
    ],
    ['whose picture is missing', ({ 'pictures/1.png': _, ...rest }) => zipSync(rest), /missing/],
    [
      'that lists a picture outside',
      (files) => changed(files, (file) => (file.pictures[0].file = '../1.png')),
      /list of pictures/,
    ],
    [
      'that lists a picture of a size that none has',
      (files) => changed(files, (file) => (file.pictures[0].width = 1e9)),
      /list of pictures/,
    ],
    [
      'that lists a picture twice',
      (files) => changed(files, (file) => file.pictures.push(file.pictures[0])),
      /not laid out/,
    ],
    ['of a later version', (files) => changed(files, (file) => (file.version = 7)), /later version/],
    [
      'that holds no notebook in its notebook',
      (files) => changed(files, (file) => (file.notebook = [1])),
      /not whole/,
    ],
  ];
  it.each(cases)('%s is refused in one sentence', async (_, spoil, says) => {
    const bytes = await spoil(unzipSync(await bundled()));
    await expect(open(bytes)).rejects.toThrow(says);
    await expect(open(bytes)).rejects.toBeInstanceOf(StorageTrouble);
  });

  const damaged: readonly [string, (files: Record<string, Uint8Array>) => Uint8Array][] = [
    [
      'with a number that is none',
      (files) => changed(files, (file) => (file.notebook.drawer.sheets[0].count = 'NaN')),
    ],
    ['with an endless number', endless],
  ];
  it.each(damaged)('%s opens without that sheet, which is kept with its picture', async (_, spoil) => {
    const { notebook, setAside, pictures } = await open(spoil(unzipSync(await bundled())));
    expect(notebook.drawer.sheets.map(({ id }) => id)).toEqual(
      book.drawer.sheets.slice(1).map(({ id }) => id),
    );
    expect(setAside).toMatchObject([
      {
        what: 'sheet',
        name: book.drawer.sheets[0]?.name,
        why: expect.stringMatching(
          /^The number of them is (not what it should be|too large: .*) \(at count\)\.$/,
        ) as string,
      },
    ]);
    expect(pictures).toHaveLength(3);
    expect(JSON.stringify(setAside)).toContain(pictures[0]?.id);
  });

  it('with what was set aside in it gives it back the same, with its picture', async () => {
    const value = { ...book.drawer.sheets[0], count: -3 };
    const kept = { ...book, drawer: { ...book.drawer, sheets: book.drawer.sheets.slice(1), parts: [] } };
    const aside = [
      { what: 'sheet' as const, id: 'x', name: null, value, why: '' },
      { what: 'leaf' as const, id: null, name: null, value: [1], why: '' },
    ];
    const source = {
      picture: (id: string) => Promise.resolve(picture(id)),
      isDecodable: () => Promise.resolve(true),
      setAside: aside,
    };
    const parts: Uint8Array<ArrayBuffer>[] = [];
    expect(await writeBundle(kept, source, (part) => void parts.push(part))).toEqual({
      pictures: 3,
      left: 0,
    });
    const { notebook, setAside, pictures } = await open(joinedBytes(parts));
    expect(withoutIds(notebook)).toEqual(withoutIds(kept));
    expect(pictures).toHaveLength(3);
    expect(setAside.map(({ what }) => what)).toEqual(['leaf', 'sheet']);
    expect(setAside[0]?.value).toEqual([1]);
    expect(setAside[1]?.value).toMatchObject({ count: -3, name: book.drawer.sheets[0]?.name });
  });

  it('leaves out, and counts, pictures that no bundle with them would open by', async () => {
    const bad = (id: string): Picture =>
      id === 'picture-dots'
        ? { ...picture(id), width: 4 }
        : picture(id, png.slice(0, id === 'picture-ledger' ? -20 : undefined));
    const parts: Uint8Array<ArrayBuffer>[] = [];
    const source = {
      picture: (id: string) => Promise.resolve(bad(id)),
      isDecodable: () => Promise.resolve(true),
    };
    expect(await writeBundle(book, source, (part) => void parts.push(part))).toEqual({
      pictures: 1,
      left: 2,
    });
    expect((await open(joinedBytes(parts))).pictures).toHaveLength(1);
    const none = { ...source, picture: () => Promise.reject(new Error('closed')) };
    expect(await writeBundle(book, none, () => {})).toEqual({ pictures: 0, left: 3 });
  });

  it('hands its pictures on in portions, and fetches no more where one is not taken', async () => {
    const many = {
      ...book,
      drawer: {
        ...book.drawer,
        parts: [],
        sheets: Array.from({ length: 40 }, (_, i) => ({
          ...book.drawer.sheets[0]!,
          id: `s${i}`,
          sides: { A: { ...book.drawer.sheets[0]!.sides.A, pictureId: `p${i}` } },
        })),
      },
    };
    const bytes = await bundled(many);
    const { portions } = await open(bytes);
    expect(portions.map(({ length }) => length)).toEqual([16, 16, 8]);
    let asked = 0;
    const taker = {
      newId: (kind: string) => `${kind}-${++asked}`,
      thumb: () => Promise.resolve(null),
      put: () => Promise.reject(new StorageTrouble('full', 'No room.')),
    };
    await expect(readBundle(new Blob([bytes]), taker)).rejects.toThrow('No room.');
    expect(asked).toBe(16);
  });

  it('that unpacks to very much is not unpacked where it says so, and stops early where it says less', async () => {
    const files = unzipSync(await bundled());
    const bomb = zipSync({ ...files, 'notebook.json': new Uint8Array(2_000_000) }, { level: 9 });
    patchSize(bomb, 'notebook.json', bundleLimits.notebook + 1);
    await expect(open(bomb)).rejects.toThrow(/more than a notebook can/);
    // A directory that says it is more than so few bytes can make: no memory is asked for.
    patchSize(bomb, 'notebook.json', bundleLimits.notebook);
    await expect(open(bomb)).rejects.toThrow(/damaged/);
    // And a directory that says it is 100 bytes.
    patchSize(bomb, 'notebook.json', 100);
    await expect(open(bomb)).rejects.toThrow(/damaged/);
  });

  it('whose files lie on each other, so that few bytes count many times, is refused', async () => {
    const bomb = zipSync({ ...unzipSync(await bundled()), 'x/1': png, 'x/2': png, 'x/3': png }, { level: 0 });
    // All of the last three say that they are where the first of them is, and as long as the file.
    for (const name of ['x/1', 'x/2', 'x/3']) patchField(bomb, name, 20, bomb.length / 2);
    await expect(open(bomb)).rejects.toThrow(/damaged/);
  });

  it('with a picture that no decoder opens is refused', async () => {
    await expect(opened(await bundled(), false)).rejects.toThrow(
      'A picture in this file is damaged. Nothing was changed.',
    );
  });

  it('can’t name pictures so that they take the place of stored ones', async () => {
    const { notebook, pictures } = await open(await bundled());
    for (const id of ['picture-bunting', 'picture-ledger', 'picture-dots']) {
      expect(pictures.some((one) => one.id === id)).toBe(false);
    }
    expect(notebook.id).not.toBe(book.id);
  });
});

// biome-ignore lint/suspicious/noExplicitAny: a hostile hand keeps to no type
type Loose = any;

function changed(files: Record<string, Uint8Array>, how: (file: Loose) => unknown): Uint8Array {
  const file: Loose = JSON.parse(new TextDecoder().decode(files['notebook.json']));
  how(file);
  return zipSync({ ...files, 'notebook.json': strToU8(JSON.stringify(file)) });
}

function endless(files: Record<string, Uint8Array>): Uint8Array {
  const text = new TextDecoder().decode(files['notebook.json']).replace('"count":1', '"count":1e999');
  return zipSync({ ...files, 'notebook.json': strToU8(text) });
}

/** The zip with a long end record that says it holds so many files. Source: PKWARE APPNOTE 6.3 §4.3.14–16. */
function sayingParts(zip: Uint8Array, count: number): Uint8Array {
  const end = Buffer.from(zip.subarray(zip.length - 22));
  const long = Buffer.alloc(56);
  long.writeUInt32LE(0x06064b50, 0);
  long.writeBigUInt64LE(BigInt(count), 32);
  long.writeBigUInt64LE(BigInt(end.readUInt32LE(16)), 48);
  const locator = Buffer.alloc(20);
  locator.writeUInt32LE(0x07064b50, 0);
  locator.writeBigUInt64LE(BigInt(zip.length - 22), 8);
  end.writeUInt16LE(0xffff, 10);
  return joinedBytes([zip.subarray(0, -22), long, locator, end]);
}

/** Writes another size into the central directory's entry. Source: PKWARE APPNOTE 6.3 §4.3.12. */
function patchSize(zip: Uint8Array, name: string, size: number): void {
  patchField(zip, name, 24, size);
}

function patchField(zip: Uint8Array, name: string, field: number, value: number): void {
  const buffer = Buffer.from(zip.buffer, zip.byteOffset, zip.byteLength);
  const at = buffer.lastIndexOf(name) - 46;
  expect(buffer.readUInt32LE(at)).toBe(0x02014b50);
  buffer.writeUInt32LE(value, at + field);
}

function withoutIds(notebook: Notebook): unknown {
  return JSON.parse(
    JSON.stringify({ ...notebook, id: '' }, (key, value: unknown) =>
      key === 'pictureId' && value !== null ? 'some' : value,
    ),
  );
}
