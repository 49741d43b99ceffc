import { inflateSync } from 'node:zlib';

interface Table {
  readonly tag: string;
  readonly checksum: number;
  readonly bytes: Uint8Array;
}

/**
 * The font inside a WOFF 1.0 file, its tables unpacked and in their first order.
 * Source: W3C, WOFF File Format 1.0 (2012), sections 3–5.
 * @param family to call it by; default its own name. A weight that calls itself a family of its own ("… SemiBold")
 * is found by its weight only under the family's name.
 * @throws RangeError where the bytes are no WOFF file.
 */
export function sfntFromWoff(woff: Uint8Array, family?: string): Uint8Array {
  const from = new DataView(woff.buffer, woff.byteOffset, woff.byteLength);
  if (woff.byteLength < 44 || from.getUint32(0) !== 0x774f4646) throw new RangeError('Not a WOFF 1.0 file');
  const tables = Array.from({ length: from.getUint16(12) }, (_, i): Table => {
    const at = 44 + i * 20;
    const [offset, packed, length] = [
      from.getUint32(at + 4),
      from.getUint32(at + 8),
      from.getUint32(at + 12),
    ];
    const bytes = woff.subarray(offset, offset + packed);
    return {
      tag: String.fromCharCode(...woff.subarray(at, at + 4)),
      checksum: from.getUint32(at + 16),
      bytes: packed < length ? inflateSync(bytes) : bytes,
    };
  });
  return sfntOf(
    from.getUint32(4),
    tables.map((table) => (table.tag === 'name' && family ? nameTable(family) : table)),
  );
}

/** Source: OpenType 1.9, "OpenType font file": table directory and alignment. */
function sfntOf(flavour: number, tables: readonly Table[]): Uint8Array {
  const count = tables.length;
  const sfnt = new Uint8Array(tables.reduce((sum, { bytes }) => sum + padded(bytes.length), 12 + 16 * count));
  const to = new DataView(sfnt.buffer);
  const power = 2 ** Math.floor(Math.log2(count));
  to.setUint32(0, flavour);
  to.setUint16(4, count);
  to.setUint16(6, power * 16);
  to.setUint16(8, Math.log2(power));
  to.setUint16(10, (count - power) * 16);
  let at = 12 + 16 * count;
  tables.forEach(({ tag, checksum, bytes }, i) => {
    const entry = 12 + 16 * i;
    for (let k = 0; k < 4; k += 1) sfnt[entry + k] = tag.charCodeAt(k);
    to.setUint32(entry + 4, checksum);
    to.setUint32(entry + 8, at);
    to.setUint32(entry + 12, bytes.length);
    sfnt.set(bytes, at);
    at += padded(bytes.length);
  });
  return sfnt;
}

/** A name table that says the family and nothing else. Source: OpenType 1.9, "name": version 0, Windows, English. */
function nameTable(family: string): Table {
  const names = [
    [1, family],
    [6, family.replaceAll(' ', '')],
  ] as const;
  const start = 6 + names.length * 12;
  const length = names.reduce((sum, [, text]) => sum + text.length * 2, start);
  const view = new DataView(new ArrayBuffer(padded(length)));
  view.setUint16(2, names.length);
  view.setUint16(4, start);
  let at = 0;
  names.forEach(([id, text], i) => {
    [3, 1, 0x409, id, text.length * 2, at].forEach((value, k) => {
      view.setUint16(6 + i * 12 + k * 2, value);
    });
    [...text].forEach((letter, k) => {
      view.setUint16(start + at + k * 2, letter.charCodeAt(0));
    });
    at += text.length * 2;
  });
  let checksum = 0;
  for (let word = 0; word < view.byteLength; word += 4) checksum = (checksum + view.getUint32(word)) >>> 0;
  return { tag: 'name', checksum, bytes: new Uint8Array(view.buffer, 0, length) };
}

function padded(length: number): number {
  return (length + 3) & ~3;
}
