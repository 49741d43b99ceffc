import { Inflate } from 'fflate';
import { crc32 } from '../../files/crc32.ts';
import { breath } from '../breath.ts';
import { noWholeFile, tooManyParts } from '../words/bundle-words.ts';
import { StorageTrouble } from '../words/trouble.ts';

/** One file in a zip, as its central directory tells. Source: PKWARE APPNOTE 6.3 §4.3.7, §4.3.12–16, §4.5.3. */
export interface ZipEntry {
  readonly name: string;
  readonly size: number;
  readonly packed: number;
  readonly crc: number;
  readonly method: number;
  readonly offset: number;
  readonly encrypted: boolean;
}

/** A file of any length that is read by pieces: a Blob. */
export type Sliced = Pick<Blob, 'size' | 'slice'>;

/** What a zip may hold. */
export interface ZipLimits {
  /** Files in it. */
  readonly entries: number;
  /** Bytes of its directory. */
  readonly directory: number;
}

const torn = () => new StorageTrouble('torn', noWholeFile);

/** What a zip holds. @throws StorageTrouble where it is torn, no zip, holds more than it may, or two files in it lie on each other. */
export async function zipEntries(file: Sliced, most: ZipLimits): Promise<readonly ZipEntry[]> {
  const { count, start, end } = await findDirectory(file);
  if (count > most.entries || end - start > most.directory) {
    throw new StorageTrouble('large', tooManyParts(count));
  }
  if (start > end || count * 46 > end - start) throw torn();
  const bytes = await piece(file, start, end);
  const view = viewOf(bytes);
  const entries: ZipEntry[] = [];
  let at = 0;
  for (let i = 0; i < count; i++) {
    if (at + 46 > bytes.length || view.getUint32(at, true) !== 0x02014b50) throw torn();
    const nameEnd = at + 46 + view.getUint16(at + 28, true);
    const extraEnd = nameEnd + view.getUint16(at + 30, true);
    const next = extraEnd + view.getUint16(at + 32, true);
    if (next > bytes.length) throw torn();
    const [size, packed, offset] = longValues(
      [view.getUint32(at + 24, true), view.getUint32(at + 20, true), view.getUint32(at + 42, true)],
      bytes.subarray(nameEnd, extraEnd),
    );
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, nameEnd)),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed,
      size,
      offset,
    });
    at = next;
  }
  // Many names for the same bytes would make a small file unpack to a large one.
  if (entries.reduce((sum, { packed }) => sum + 30 + packed, 0) > start) throw torn();
  return entries;
}

/**
 * The bytes of one file in a zip. Unpacking stops as soon as more comes out than the directory told, so a small file
 * can't fill the memory. @throws StorageTrouble where size or checksum are not as told.
 */
export async function unzipEntry(file: Sliced, entry: ZipEntry): Promise<Uint8Array<ArrayBuffer>> {
  const { offset, packed, size, method } = entry;
  if (entry.encrypted || (method !== 0 && method !== 8)) throw torn();
  if (method === 0 && packed !== size) throw torn();
  // Header and data mostly come in one look: the header seldom holds more than the name.
  const likely = 30 + new TextEncoder().encode(entry.name).length;
  const first = await piece(file, offset, Math.min(offset + likely + packed, file.size));
  const view = viewOf(first);
  if (first.length < 30 || view.getUint32(0, true) !== 0x04034b50) throw torn();
  const start = 30 + view.getUint16(26, true) + view.getUint16(28, true);
  if (offset + start + packed > file.size) throw torn();
  const data =
    start + packed <= first.length
      ? first.subarray(start, start + packed)
      : await piece(file, offset + start, offset + start + packed);
  const out = method === 0 ? data : await inflated(data, size);
  if (crc32(out) !== entry.crc) throw torn();
  return out;
}

async function piece(file: Sliced, from: number, to: number): Promise<Uint8Array<ArrayBuffer>> {
  if (!(from >= 0 && to >= from && to <= file.size)) throw torn();
  const bytes = new Uint8Array(await file.slice(from, to).arrayBuffer());
  if (bytes.length !== to - from) throw torn();
  return bytes;
}

const viewOf = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

/** A long number; one beyond what is exact stands for none that a file can have. */
function longAt(view: DataView, at: number): number {
  const value = Number(view.getBigUint64(at, true));
  if (!Number.isSafeInteger(value)) throw torn();
  return value;
}

const most32 = 0xffffffff;

/** Size, packed size and offset; those that have no place in the short fields stand in the extra field, in this order. */
function longValues(short: Three, extra: Uint8Array): Three {
  if (short.every((value) => value !== most32)) return short;
  const view = viewOf(extra);
  for (let at = 0; at + 4 <= extra.length; ) {
    const end = at + 4 + view.getUint16(at + 2, true);
    if (end > extra.length) throw torn();
    if (view.getUint16(at, true) === 0x0001) {
      let next = at + 4;
      return short.map((value) => {
        if (value !== most32) return value;
        if (next + 8 > end) throw torn();
        next += 8;
        return longAt(view, next - 8);
      }) as unknown as Three;
    }
    at = end;
  }
  throw torn();
}

type Three = readonly [number, number, number];

async function inflated(data: Uint8Array, size: number): Promise<Uint8Array<ArrayBuffer>> {
  // What the directory says is not believed beforehand: deflate makes at most 1,032 bytes of one. Source: zlib's technical notes.
  if (size > data.length * 1_032 + 1_032) throw torn();
  const out = new Uint8Array(size);
  let filled = 0;
  let ended = false;
  const stream = new Inflate((chunk, final) => {
    if (filled + chunk.length > size) throw torn();
    out.set(chunk, filled);
    filled += chunk.length;
    ended ||= final;
  });
  let rested = 0;
  // Small slices, because one slice may unpack to a thousand times its length before it is seen.
  for (let at = 0; at < data.length || at === 0; at += 4096) {
    try {
      stream.push(data.subarray(at, at + 4096), at + 4096 >= data.length);
    } catch {
      throw torn();
    }
    if (filled - rested > 2_000_000) {
      rested = filled;
      await breath();
    }
  }
  if (filled !== size || !ended) throw torn();
  return out;
}

interface Directory {
  readonly count: number;
  readonly start: number;
  /** Where the directory must have ended. */
  readonly end: number;
}

/** The end record stands last, but a comment of up to 65,535 bytes may follow it. */
async function findDirectory(file: Sliced): Promise<Directory> {
  const from = Math.max(0, file.size - 22 - 0xffff);
  const tail = await piece(file, from, file.size);
  const view = viewOf(tail);
  for (let at = tail.length - 22; at >= 0; at--) {
    if (view.getUint32(at, true) !== 0x06054b50) continue;
    const [count, start] = [view.getUint16(at + 10, true), view.getUint32(at + 16, true)];
    if (count !== 0xffff && start !== most32) return { count, start, end: from + at };
    return (await longDirectory(file, from + at)) ?? { count, start, end: from + at };
  }
  throw torn();
}

/** Null where there is no long record: then the short one means what it says. */
async function longDirectory(file: Sliced, end: number): Promise<Directory | null> {
  if (end < 76) return null;
  const locator = viewOf(await piece(file, end - 20, end));
  if (locator.getUint32(0, true) !== 0x07064b50) return null;
  const at = longAt(locator, 8);
  if (at + 56 > end - 20) throw torn();
  const record = viewOf(await piece(file, at, at + 56));
  if (record.getUint32(0, true) !== 0x06064b50) throw torn();
  return { count: longAt(record, 32), start: longAt(record, 48), end: at };
}
