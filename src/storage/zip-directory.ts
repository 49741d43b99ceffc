import { Inflate } from 'fflate';
import { StorageTrouble } from './trouble.ts';

/** One file in a zip, as its central directory tells. Source: PKWARE APPNOTE 6.3 §4.3.7, §4.3.12, §4.3.16. */
export interface ZipEntry {
  readonly name: string;
  readonly size: number;
  readonly packed: number;
  readonly crc: number;
  readonly method: number;
  readonly offset: number;
  readonly encrypted: boolean;
}

const torn = () =>
  new StorageTrouble('torn', 'This file is torn: it is not a whole notebook file. Nothing was changed.');

/** What a zip holds. @throws StorageTrouble where it is torn, no zip, or holds more than `mostEntries` files. */
export function zipEntries(bytes: Uint8Array, mostEntries: number): readonly ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  let at = view.getUint32(end + 16, true);
  if (count > mostEntries) {
    throw new StorageTrouble(
      'large',
      `This file holds ${count} parts, more than a notebook can. Nothing was changed.`,
    );
  }
  const entries: ZipEntry[] = [];
  for (let i = 0; i < count; i++) {
    if (at + 46 > end || view.getUint32(at, true) !== 0x02014b50) throw torn();
    const nameLength = view.getUint16(at + 28, true);
    const next = at + 46 + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end) throw torn();
    entries.push({
      name: new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + nameLength)),
      encrypted: (view.getUint16(at + 8, true) & 1) === 1,
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packed: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      offset: view.getUint32(at + 42, true),
    });
    at = next;
  }
  return entries;
}

/**
 * The bytes of one file in a zip. Unpacking stops as soon as more comes out than the directory told, so a small file
 * can't fill the memory. @throws StorageTrouble where size or checksum are not as told.
 */
export function unzipEntry(bytes: Uint8Array, entry: ZipEntry): Uint8Array<ArrayBuffer> {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const { offset, packed, size, method } = entry;
  if (entry.encrypted || (method !== 0 && method !== 8)) throw torn();
  if (offset + 30 > bytes.length || view.getUint32(offset, true) !== 0x04034b50) throw torn();
  const start = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (start + packed > bytes.length) throw torn();
  const data = bytes.subarray(start, start + packed);
  const out = method === 0 ? stored(data, size) : inflated(data, size);
  if (crc32(out) !== entry.crc) throw torn();
  return out;
}

function stored(data: Uint8Array, size: number): Uint8Array<ArrayBuffer> {
  if (data.length !== size) throw torn();
  return data.slice();
}

function inflated(data: Uint8Array, size: number): Uint8Array<ArrayBuffer> {
  const out = new Uint8Array(size);
  let filled = 0;
  let ended = false;
  const stream = new Inflate((chunk, final) => {
    if (filled + chunk.length > size) throw torn();
    out.set(chunk, filled);
    filled += chunk.length;
    ended ||= final;
  });
  try {
    // Small slices, because one slice may unpack to a thousand times its length before it is seen.
    for (let at = 0; at < data.length || at === 0; at += 4096) {
      stream.push(data.subarray(at, at + 4096), at + 4096 >= data.length);
    }
  } catch {
    throw torn();
  }
  if (filled !== size || !ended) throw torn();
  return out;
}

/** The end record stands last, but a comment of up to 65,535 bytes may follow it. */
function findEnd(view: DataView): number {
  const lowest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= lowest; at--) {
    if (view.getUint32(at, true) === 0x06054b50) return at;
  }
  throw torn();
}

/** CRC-32 as zip and PNG use it. Source: ISO/IEC 15948 (PNG) annex D. */
export function crc32(bytes: Uint8Array): number {
  let crc = ~0;
  for (let i = 0; i < bytes.length; i++) crc = (table[(crc ^ bytes[i]!) & 0xff] ?? 0) ^ (crc >>> 8);
  return ~crc >>> 0;
}

const table = Int32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});
