import { encodedTable, linearOfByte } from '../../colour/light-tables.ts';
import type { Matrix } from '../../colour/matrix.ts';
import type { PixelImage } from '../model.ts';

/**
 * A copy of a picture with its light undone, to be looked at: 8 bits a channel, so what leaves 0–1 is cut off. Nothing is
 * read from it that can be read from the picture as it was taken.
 */
export function pictureUnderLight(image: PixelImage, matrix: Matrix): PixelImage {
  const { data: from, width, height } = image;
  const data = new Uint8ClampedArray(from.length);
  const linear = Float32Array.from(linearOfByte, (v) => v * 65_535);
  const encoded = encodedTable();
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = matrix;
  const shown = (value: number) => encoded[value <= 0 ? 0 : value >= 65_535 ? 65_535 : Math.round(value)]!;
  for (let i = 0; i < from.length; i += 4) {
    const r = linear[from[i]!]!;
    const g = linear[from[i + 1]!]!;
    const b = linear[from[i + 2]!]!;
    data[i] = shown(m0 * r + m1 * g + m2 * b);
    data[i + 1] = shown(m3 * r + m4 * g + m5 * b);
    data[i + 2] = shown(m6 * r + m7 * g + m8 * b);
    data[i + 3] = from[i + 3]!;
  }
  return { data, width, height };
}
