/**
 * CRC-32 as zip and PNG use it, of `bytes` that follow on those that gave `before`. Eight bytes a turn, since all of a
 * backup goes through it twice. Source: ISO/IEC 15948 (PNG) annex D; Kounavis & Berry 2008 for the tables by slices.
 */
export function crc32(bytes: Uint8Array, before = 0): number {
  const [t0, t1, t2, t3, t4, t5, t6, t7] = tables as unknown as Eight;
  let crc = ~before;
  let at = 0;
  for (const end = bytes.length - 7; at < end; at += 8) {
    const low = crc ^ (bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16) | (bytes[at + 3]! << 24));
    crc =
      t7[low & 0xff]! ^
      t6[(low >>> 8) & 0xff]! ^
      t5[(low >>> 16) & 0xff]! ^
      t4[low >>> 24]! ^
      t3[bytes[at + 4]!]! ^
      t2[bytes[at + 5]!]! ^
      t1[bytes[at + 6]!]! ^
      t0[bytes[at + 7]!]!;
  }
  for (; at < bytes.length; at++) crc = t0[(crc ^ bytes[at]!) & 0xff]! ^ (crc >>> 8);
  return ~crc >>> 0;
}

type Eight = readonly [
  Int32Array,
  Int32Array,
  Int32Array,
  Int32Array,
  Int32Array,
  Int32Array,
  Int32Array,
  Int32Array,
];

const tables: Int32Array[] = [
  Int32Array.from({ length: 256 }, (_, n) => {
    let c = n;
    for (let k = 0; k < 8; k++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
    return c;
  }),
];
for (let slice = 1; slice < 8; slice++) {
  const [one, last] = [tables[0]!, tables[slice - 1]!];
  tables.push(last.map((c) => one[c & 0xff]! ^ (c >>> 8)));
}
