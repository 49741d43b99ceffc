import { encodedTable, linearOfByte } from '../colour/light-tables.ts';
import type { PixelImage } from '../sheet/model.ts';
import { reduction } from './picture-limits.ts';

/** Fills `row` with one row of a picture: linear-light RGBA, 0–1, colour not multiplied by alpha. */
export type RowReader = (y: number, row: Float32Array) => void;

/**
 * A picture brought down to at most `mostPixels` while its rows are read, so that it never stands whole in memory as
 * RGBA. Each pixel is the mean, in linear light, of exactly the area that it covers. Where the picture is small enough
 * it comes back as it is.
 */
export function reducedPicture(
  fullWidth: number,
  fullHeight: number,
  readRow: RowReader,
  mostPixels: number,
): PixelImage {
  const factor = reduction(fullWidth, fullHeight, mostPixels);
  const width = Math.max(1, Math.floor(fullWidth * factor));
  const height = Math.max(1, Math.floor(fullHeight * factor));
  const data = new Uint8ClampedArray(width * height * 4);
  const source = new Float32Array(fullWidth * 4);
  const narrow = new Float32Array(width * 4);
  const sum = new Float32Array(width * 4);
  const tall = fullHeight / height;
  let held = -1;
  for (let y = 0; y < height; y++) {
    sum.fill(0);
    const from = y * tall;
    const to = Math.min(fullHeight, from + tall);
    for (let row = Math.floor(from); row < to; row++) {
      const weight = Math.min(row + 1, to) - Math.max(row, from);
      if (weight < 1e-6) continue;
      if (row !== held) {
        readRow(row, source);
        narrowed(source, fullWidth, narrow, width);
        held = row;
      }
      for (let i = 0; i < sum.length; i++) sum[i]! += narrow[i]! * weight;
    }
    written(sum, data, y * width * 4, (fullWidth / width) * (to - from));
  }
  return { data, width, height };
}

/** Reads rows out of 8-bit RGBA. */
export function rowsOfRgba(data: Uint8Array | Uint8ClampedArray, width: number): RowReader {
  const linear = linearOfByte;
  return (y, row) => {
    let at = y * width * 4;
    for (let i = 0; i < width * 4; i += 4, at += 4) {
      row[i] = linear[data[at]!]!;
      row[i + 1] = linear[data[at + 1]!]!;
      row[i + 2] = linear[data[at + 2]!]!;
      row[i + 3] = data[at + 3]! / 255;
    }
  };
}

/** Sums a row into fewer columns; colour is multiplied by alpha here, and stays so in the sums. */
function narrowed(source: Float32Array, from: number, narrow: Float32Array, to: number): void {
  narrow.fill(0);
  const wide = from / to;
  for (let x = 0; x < to; x++) {
    const start = x * wide;
    const end = Math.min(from, start + wide);
    let r = 0;
    let g = 0;
    let b = 0;
    let a = 0;
    for (let column = Math.floor(start); column < end; column++) {
      const weight = Math.min(column + 1, end) - Math.max(column, start);
      if (weight < 1e-6) continue;
      const i = column * 4;
      const seen = source[i + 3]! * weight;
      r += source[i]! * seen;
      g += source[i + 1]! * seen;
      b += source[i + 2]! * seen;
      a += seen;
    }
    narrow[x * 4] = r;
    narrow[x * 4 + 1] = g;
    narrow[x * 4 + 2] = b;
    narrow[x * 4 + 3] = a;
  }
}

function written(sum: Float32Array, data: Uint8ClampedArray, at: number, area: number): void {
  const encoded = encodedTable();
  for (let i = 0; i < sum.length; i += 4) {
    const seen = sum[i + 3]!;
    const scale = seen > 0 ? 65_535 / seen : 0;
    data[at + i] = encoded[Math.min(65_535, Math.round(sum[i]! * scale))]!;
    data[at + i + 1] = encoded[Math.min(65_535, Math.round(sum[i + 1]! * scale))]!;
    data[at + i + 2] = encoded[Math.min(65_535, Math.round(sum[i + 2]! * scale))]!;
    data[at + i + 3] = Math.round((seen / area) * 255);
  }
}
