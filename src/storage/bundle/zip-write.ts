import { Deflate } from 'fflate';
import { crc32 } from '../../files/crc32.ts';
import { breath } from '../breath.ts';

/** Takes the next bytes of a file; they are not touched afterwards. */
export type Write = (part: Uint8Array<ArrayBuffer>) => void | Promise<void>;

export interface ZipWriter {
  /** Adds a file as it is. */
  store(name: string, bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  /** Adds a file packed. */
  pack(name: string, bytes: Uint8Array<ArrayBuffer>): Promise<void>;
  /** Writes the directory; nothing may be added any more. */
  end(): Promise<void>;
}

/**
 * Writes a zip from its beginning to its end, holding no more of it than the file that is being added. Beyond 65,534
 * files or 4 GB it is a zip64, as the same programs open. Source: PKWARE APPNOTE 6.3 §4.3–4.5.
 * @param from - bytes that stand before the zip.
 */
export function zipWriter(write: Write, from = 0): ZipWriter {
  const directory: Uint8Array<ArrayBuffer>[] = [];
  let at = from;
  const put = async (part: Uint8Array<ArrayBuffer>) => {
    at += part.length;
    await write(part);
  };
  const add = async (name: string, method: number, size: number, crc: number, data: Data) => {
    const packed = lengthOf(data);
    // A file this long is no part of a backup; its size would have no place in the short fields.
    if (Math.max(size, packed) >= most32) throw new RangeError(`${name} is too long for a zip`);
    const entry: Entry = { name: new TextEncoder().encode(name), method, size, packed, crc, offset: at };
    directory.push(directoryLine(entry));
    await put(localHeader(entry));
    for (const part of data) await put(part);
  };
  return {
    store: (name, bytes) => add(name, 0, bytes.length, crc32(bytes), [bytes]),
    async pack(name, bytes) {
      await add(name, 8, bytes.length, crc32(bytes), await deflated(bytes));
    },
    async end() {
      const start = at;
      for (const line of directory) await put(line);
      for (const part of endRecords(directory.length, start, at - start)) await put(part);
    },
  };
}

type Data = readonly Uint8Array<ArrayBuffer>[];
const lengthOf = (data: Data) => data.reduce((sum, part) => sum + part.length, 0);

/** What stands in a short field whose value is in the long one. */
const most16 = 0xffff;
const most32 = 0xffffffff;

interface Entry {
  readonly name: Uint8Array;
  readonly method: number;
  readonly size: number;
  readonly packed: number;
  readonly crc: number;
  readonly offset: number;
}

/** Packed a piece at a time, with a turn for the page between. */
async function deflated(bytes: Uint8Array<ArrayBuffer>): Promise<Data> {
  const out: Uint8Array<ArrayBuffer>[] = [];
  const stream = new Deflate({ level: 6 }, (chunk) => void out.push(chunk.slice()));
  const piece = 262_144;
  for (let at = 0; at < bytes.length || at === 0; at += piece) {
    stream.push(bytes.subarray(at, at + piece), at + piece >= bytes.length);
    await breath();
  }
  return out;
}

/** The bits of a name in UTF-8; 1 January 1980, since when a backup was made is told by its own name. */
const utf8 = 0x0800;
const date = 0x0021;

/** §4.3.7 */
function localHeader({ name, method, size, packed, crc }: Entry): Uint8Array<ArrayBuffer> {
  const fields = record(30 + name.length);
  fields.u32(0x04034b50).u16(20).u16(utf8).u16(method).u16(0).u16(date).u32(crc).u32(packed).u32(size);
  return fields.u16(name.length).u16(0).bytes(name);
}

/** §4.3.12, with the long offset of §4.5.3 where it is needed. */
function directoryLine({ name, method, size, packed, crc, offset }: Entry): Uint8Array<ArrayBuffer> {
  const isLong = offset >= most32;
  const fields = record(46 + name.length + (isLong ? 12 : 0));
  fields
    .u32(0x02014b50)
    .u16(isLong ? 45 : 20)
    .u16(isLong ? 45 : 20)
    .u16(utf8)
    .u16(method)
    .u16(0)
    .u16(date);
  fields
    .u32(crc)
    .u32(packed)
    .u32(size)
    .u16(name.length)
    .u16(isLong ? 12 : 0)
    .u16(0)
    .u16(0)
    .u16(0)
    .u32(0);
  fields.u32(isLong ? most32 : offset);
  const out = fields.bytes(name);
  if (isLong) fields.u16(0x0001).u16(8).u64(offset);
  return out;
}

/** §4.3.16, and before it §4.3.14 and §4.3.15 where a number has no place in it. */
function endRecords(count: number, start: number, length: number): Data {
  const isLong = count >= most16 || start >= most32 || length >= most32;
  const end = record(22);
  end.u32(0x06054b50).u16(0).u16(0).u16(Math.min(count, most16)).u16(Math.min(count, most16));
  end.u32(Math.min(length, most32)).u32(Math.min(start, most32)).u16(0);
  if (!isLong) return [end.whole];
  const long = record(56);
  long.u32(0x06064b50).u64(44).u16(45).u16(45).u32(0).u32(0).u64(count).u64(count).u64(length).u64(start);
  const locator = record(20);
  locator
    .u32(0x07064b50)
    .u32(0)
    .u64(start + length)
    .u32(1);
  return [long.whole, locator.whole, end.whole];
}

/** Fields one after the other, low byte first. */
function record(length: number) {
  const whole = new Uint8Array(length);
  const view = new DataView(whole.buffer);
  let at = 0;
  const fields = {
    whole,
    u16: (value: number) => {
      view.setUint16(at, value, true);
      at += 2;
      return fields;
    },
    u32: (value: number) => {
      view.setUint32(at, value, true);
      at += 4;
      return fields;
    },
    u64: (value: number) => {
      view.setBigUint64(at, BigInt(value), true);
      at += 8;
      return fields;
    },
    bytes: (value: Uint8Array) => {
      whole.set(value, at);
      at += value.length;
      return whole;
    },
  };
  return fields;
}
