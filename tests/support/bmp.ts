/**
 * BMP files of one drawing, packed by hand in the ways that there are. Source: Microsoft, Windows GDI, BITMAPFILEHEADER,
 * BITMAPINFOHEADER and "Bitmap Compression".
 */
export type Rgb = readonly [number, number, number];

export interface BmpOptions {
  readonly bits: number;
  readonly compression?: number;
  readonly topDown?: boolean;
  readonly palette?: readonly Rgb[];
  readonly masks?: readonly number[];
}

/** The file: its heads, and then `pixels` as they are. */
export function bmpFile(
  width: number,
  height: number,
  options: BmpOptions,
  pixels: readonly number[],
): Uint8Array {
  const { bits, compression = 0, topDown = false, palette = [], masks = [] } = options;
  const start = 54 + 4 * masks.length + 4 * palette.length;
  const bytes = new Uint8Array(start + pixels.length);
  const view = new DataView(bytes.buffer);
  bytes.set([0x42, 0x4d]);
  view.setUint32(2, bytes.length, true);
  view.setUint32(10, start, true);
  view.setUint32(14, 40, true);
  view.setInt32(18, width, true);
  view.setInt32(22, topDown ? -height : height, true);
  view.setUint16(26, 1, true);
  view.setUint16(28, bits, true);
  view.setUint32(30, compression, true);
  view.setUint32(34, pixels.length, true);
  view.setUint32(46, palette.length, true);
  masks.forEach((mask, k) => void view.setUint32(54 + 4 * k, mask, true));
  palette.forEach(([r, g, b], k) => void bytes.set([b, g, r, 0], 54 + 4 * masks.length + 4 * k));
  bytes.set(pixels, start);
  return bytes;
}

export const coral: Rgb = [226, 111, 87];
export const navy: Rgb = [34, 53, 90];

/** Left half coral, right half navy, and a row of navy along the top: 18 × 10, so that rows need filling up. */
const [width, height] = [18, 10];
const isNavy = (x: number, y: number) => y === 0 || x >= width / 2;
/** Palette numbers of a row. */
const numbers = (y: number) => Array.from({ length: width }, (_, x) => (isNavy(x, y) ? 1 : 0));
const filled = (row: readonly number[]) => [...row, ...Array<number>((4 - (row.length % 4)) % 4).fill(0)];
/** The lowest row first. */
const upward = (row: (y: number) => readonly number[]) =>
  Array.from({ length: height }, (_, i) => row(height - 1 - i)).flat();
const colour = (x: number, y: number) => (isNavy(x, y) ? navy : coral);
const bitsOf = (per: number) => (y: number) => {
  const row: number[] = [];
  for (let x = 0; x < width; x += per)
    row.push(
      Array.from({ length: per }, (_, k) => (x + k < width && isNavy(x + k, y) ? 1 : 0)).reduce<number>(
        (byte, v) => (byte << (8 / per)) | v,
        0,
      ),
    );
  return filled(row);
};
const low = (v: number) => [v & 255, v >> 8];
const in565 = ([r, g, b]: Rgb) => ((r >> 3) << 11) | ((g >> 2) << 5) | (b >> 3);
const in555 = ([r, g, b]: Rgb) => ((r >> 3) << 10) | ((g >> 3) << 5) | (b >> 3);
const across = (each: (rgb: Rgb) => readonly number[]) => (y: number) =>
  Array.from({ length: width }, (_, x) => each(colour(x, y))).flat();
const palette = [coral, navy];

/** The drawing in each way, how far its colours may be from those that were drawn, and its size. */
export const bmpWays: readonly (readonly [way: string, file: Uint8Array, within: number])[] = [
  ['1 bit', bmpFile(width, height, { bits: 1, palette }, upward(bitsOf(8))), 0],
  ['4 bits', bmpFile(width, height, { bits: 4, palette }, upward(bitsOf(2))), 0],
  [
    '8 bits',
    bmpFile(
      width,
      height,
      { bits: 8, palette },
      upward((y) => filled(numbers(y))),
    ),
    0,
  ],
  ['8 bits in runs', bmpFile(width, height, { bits: 8, compression: 1, palette }, runs8()), 0],
  ['4 bits in runs', bmpFile(width, height, { bits: 4, compression: 2, palette }, runs4()), 0],
  [
    '16 bits',
    bmpFile(
      width,
      height,
      { bits: 16 },
      upward((y) => filled(across((c) => low(in555(c)))(y))),
    ),
    8,
  ],
  [
    '16 bits by masks',
    bmpFile(
      width,
      height,
      { bits: 16, compression: 3, masks: [0xf800, 0x7e0, 0x1f] },
      upward((y) => filled(across((c) => low(in565(c)))(y))),
    ),
    8,
  ],
  [
    '24 bits',
    bmpFile(
      width,
      height,
      { bits: 24 },
      upward((y) => filled(across(([r, g, b]) => [b, g, r])(y))),
    ),
    0,
  ],
  [
    '32 bits, the top row first',
    bmpFile(
      width,
      height,
      { bits: 32, topDown: true },
      Array.from({ length: height }, (_, y) => across(([r, g, b]) => [b, g, r, 0])(y)).flat(),
    ),
    0,
  ],
];

/** Rows of the drawing: a run of coral and one of navy each; the topmost as its numbers stand, after a jump to it. */
function runs8(): number[] {
  const half = width / 2;
  const rows = Array.from({ length: height - 1 }, () => [half, 0, half, 1]);
  const all = rows.slice(1).flatMap((row) => [...row, 0, 0]);
  return [...rows[0]!, 0, 0, ...all, 0, width, ...numbers(0), ...(width % 2 ? [0] : []), 0, 1];
}

function runs4(): number[] {
  const half = width / 2;
  const rows = Array.from({ length: height - 1 }, () => [half, 0x00, half, 0x11, 0, 0]).flat();
  return [...rows, 0, width, ...Array<number>(width / 2).fill(0x11), ...((width / 2) % 2 ? [0] : []), 0, 1];
}
