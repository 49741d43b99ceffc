import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { crc32 } from '../../../src/files/crc32.ts';
import { type Sliced, unzipEntry, zipEntries } from '../../../src/storage/bundle/zip-directory.ts';
import { zipWriter } from '../../../src/storage/bundle/zip-write.ts';
import { joinedBytes } from './small-pictures.ts';

const limits = { entries: 100_000, directory: 20_000_000 };
const bytesOf = (text: string) => new TextEncoder().encode(text);

async function zipOf(files: Readonly<Record<string, Uint8Array<ArrayBuffer>>>, from = 0, packs = false) {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const zip = zipWriter((part) => void parts.push(part), from);
  for (const [name, bytes] of Object.entries(files))
    await (packs ? zip.pack(name, bytes) : zip.store(name, bytes));
  await zip.end();
  return joinedBytes(parts);
}

/** A file whose first bytes are a hole of any length: nothing is in it, and it takes no memory. */
function behindHole(hole: number, bytes: Uint8Array<ArrayBuffer>): Sliced {
  return {
    size: hole + bytes.length,
    slice(from = 0, to = hole + bytes.length) {
      if (to - from > 1_000_000) throw new Error('more was asked for than is needed');
      const out = new Uint8Array(to - from);
      const [first, last] = [Math.max(from, hole), Math.max(to, hole)];
      out.set(bytes.subarray(first - hole, last - hole), first - from);
      return new Blob([out]);
    },
  };
}

describe('a checksum', () => {
  // Checked against the check value of CRC-32/ISO-HDLC: Williams 1993, "A painless guide to CRC error detection".
  it('is the published one', () => {
    expect(crc32(bytesOf('123456789'))).toBe(0xcbf43926);
    expect(crc32(new Uint8Array())).toBe(0);
  });

  it('is the same in one go and in pieces of any length', () => {
    const bytes = Uint8Array.from({ length: 97 }, (_, i) => (i * 89) & 0xff);
    for (let at = 0; at <= bytes.length; at++) {
      expect(crc32(bytes.subarray(at), crc32(bytes.subarray(0, at)))).toBe(crc32(bytes));
    }
  });
});

describe('a zip as it is written', () => {
  // Checked against fflate's own reader.
  it.each([false, true])('is read by another program, packed: %s', async (packs) => {
    const files = { 'a.txt': bytesOf('a'.repeat(700_000)), 'größe/b': bytesOf('b'), empty: new Uint8Array() };
    const back = unzipSync(await zipOf(files, 0, packs));
    expect(Object.keys(back)).toEqual(Object.keys(files));
    for (const [name, bytes] of Object.entries(files)) {
      expect(Buffer.compare(back[name] ?? Buffer.from('none'), bytes)).toBe(0);
    }
  });

  it('with more files than short fields can count is read by another program and by us', async () => {
    const files = Object.fromEntries(Array.from({ length: 65_600 }, (_, i) => [`${i}`, new Uint8Array()]));
    const bytes = await zipOf(files);
    expect(Object.keys(unzipSync(bytes))).toHaveLength(65_600);
    const entries = await zipEntries(new Blob([bytes]), limits);
    expect(entries).toHaveLength(65_600);
    expect(entries.at(-1)).toMatchObject({ name: '65599', size: 0 });
    await expect(zipEntries(new Blob([bytes]), { ...limits, entries: 65_599 })).rejects.toThrow(
      'holds 65600 parts',
    );
  });

  it('that begins before 4 GB and ends behind it is read, by small pieces', async () => {
    const hole = 2 ** 32 - 500;
    const files = Object.fromEntries(
      Array.from({ length: 40 }, (_, i) => [`${i}.txt`, bytesOf(`file ${i}`)]),
    );
    const file = behindHole(hole, await zipOf(files, hole));
    const entries = await zipEntries(file, limits);
    expect(entries.map(({ name }) => name)).toEqual(Object.keys(files));
    expect(entries.some(({ offset }) => offset > 2 ** 32)).toBe(true);
    expect(entries.some(({ offset }) => offset < 2 ** 32)).toBe(true);
    for (const entry of entries) expect(await unzipEntry(file, entry)).toEqual(files[entry.name]);
  });
});
