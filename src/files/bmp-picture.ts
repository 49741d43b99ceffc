import type { PixelImage } from '../sheet/model.ts';
import { unpackedRuns } from './bmp-runs.ts';
import { torn } from './words/picture-refusals.ts';

/**
 * The pixels of a BMP file: 1, 4, 8, 16, 24 and 32 bits a pixel, plain, by masks, or in runs; opaque unless it names a mask
 * for alpha. Of a colour profile nothing is taken.
 * Source: Microsoft, Windows GDI, BITMAPFILEHEADER, BITMAPINFOHEADER, BITMAPV4HEADER and "Bitmap Compression".
 * @throws UnreadableImage where it breaks off or is of a kind that is not known.
 */
export function bmpPicture(bytes: Uint8Array): PixelImage {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  try {
    return pixelsOf(headOf(view), bytes, view);
  } catch (error) {
    throw torn('bmp', error);
  }
}

interface Head {
  readonly width: number;
  readonly height: number;
  readonly topDown: boolean;
  readonly bits: number;
  readonly compression: number;
  /** Where the pixels begin. */
  readonly start: number;
  /** Four bytes a colour: blue, green, red and one that says nothing. */
  readonly palette: number;
  readonly colours: number;
  /** Red, green, blue, alpha. */
  readonly masks: readonly number[];
}

const plain = 0;
const runs8 = 1;
const runs4 = 2;
const byMasks = [3, 6];

function headOf(view: DataView): Head {
  const size = view.getUint32(14, true);
  const height = view.getInt32(22, true);
  const bits = view.getUint16(28, true);
  const compression = view.getUint32(30, true);
  const masked = byMasks.includes(compression);
  const after = size === 40 && masked ? (compression === 6 ? 16 : 12) : 0;
  const palette = 14 + size + after;
  const mask = (at: number) => view.getUint32(54 + 4 * at, true);
  const hasAlpha = masked && (size >= 56 || compression === 6);
  return {
    width: view.getInt32(18, true),
    height: Math.abs(height),
    topDown: height < 0,
    bits,
    compression,
    start: view.getUint32(10, true),
    palette,
    colours: view.getUint32(46, true) || 2 ** bits,
    masks: masked
      ? [mask(0), mask(1), mask(2), hasAlpha ? mask(3) : 0]
      : bits === 16
        ? [0x7c00, 0x3e0, 0x1f, 0]
        : [0xff0000, 0xff00, 0xff, 0],
  };
}

function pixelsOf(head: Head, bytes: Uint8Array, view: DataView): PixelImage {
  const { width, height, topDown, bits, compression, start } = head;
  const known = bits <= 8 ? [plain, runs8, runs4] : bits === 24 ? [plain] : [plain, ...byMasks];
  if (![1, 4, 8, 16, 24, 32].includes(bits) || !known.includes(compression))
    throw new RangeError(`BMP of ${bits} bits, compression ${compression}`);
  const data = new Uint8ClampedArray(width * height * 4);
  const inRuns = compression === runs8 || compression === runs4;
  const row = Math.ceil((width * bits) / 32) * 4;
  if (!inRuns && start + row * height > bytes.length) throw new RangeError('The pixels break off');
  const numbers = inRuns ? unpackedRuns(bytes.subarray(start), width, height, compression === runs4) : null;
  const colour = bits <= 8 ? byPalette(head, bytes) : bits === 24 ? inThree(bytes) : inParts(head.masks);
  for (let y = 0; y < height; y++) {
    const from = start + y * row;
    let to = (topDown ? y : height - 1 - y) * width * 4;
    for (let x = 0; x < width; x++, to += 4) {
      if (numbers !== null) colour(numbers[y * width + x]!, data, to);
      else if (bits < 8) {
        const shift = 8 - bits - ((x * bits) & 7);
        colour((bytes[from + ((x * bits) >> 3)]! >> shift) & (2 ** bits - 1), data, to);
      } else if (bits === 8) colour(bytes[from + x]!, data, to);
      else if (bits === 16) colour(view.getUint16(from + 2 * x, true), data, to);
      else if (bits === 24) colour(from + 3 * x, data, to);
      else colour(view.getUint32(from + 4 * x, true), data, to);
    }
  }
  return { data, width, height };
}

/** Puts the colour of a number, or of a place in the file, into a picture. */
type Painter = (value: number, data: Uint8ClampedArray, to: number) => void;

function byPalette({ palette, colours, start }: Head, bytes: Uint8Array): Painter {
  const last = Math.min(colours, Math.floor((start - palette) / 4)) - 1;
  if (last < 0) throw new RangeError('No colours');
  return (value, data, to) => {
    // What stands beyond the palette is black.
    const at = palette + 4 * value;
    const within = value <= last;
    data[to] = within ? bytes[at + 2]! : 0;
    data[to + 1] = within ? bytes[at + 1]! : 0;
    data[to + 2] = within ? bytes[at]! : 0;
    data[to + 3] = 255;
  };
}

function inThree(bytes: Uint8Array): Painter {
  return (at, data, to) => {
    data[to] = bytes[at + 2]!;
    data[to + 1] = bytes[at + 1]!;
    data[to + 2] = bytes[at]!;
    data[to + 3] = 255;
  };
}

function inParts(masks: readonly number[]): Painter {
  const parts = masks.map((mask) => {
    const shift = mask === 0 ? 0 : 31 - Math.clz32(mask & -mask);
    return { mask, shift, most: mask >>> shift };
  });
  return (value, data, to) => {
    parts.forEach(({ mask, shift, most }, k) => {
      if (mask === 0) data[to + k] = k === 3 ? 255 : 0;
      else data[to + k] = (((value & mask) >>> shift) * 255) / most;
    });
  };
}
