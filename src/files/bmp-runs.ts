/**
 * The palette numbers of a BMP packed in runs, a number a pixel, in the file's order of rows (the lowest first). What is
 * left out is 0.
 * Source: Microsoft, Windows GDI, "Bitmap Compression" (BI_RLE8, BI_RLE4).
 * @throws RangeError where it breaks off.
 */
export function unpackedRuns(packed: Uint8Array, width: number, height: number, half: boolean): Uint8Array {
  const out = new Uint8Array(width * height);
  let at = 0;
  let x = 0;
  let y = 0;
  const next = (): number => {
    if (at >= packed.length) throw new RangeError('The runs break off');
    return packed[at++]!;
  };
  const put = (number: number): void => {
    if (x < width && y < height) out[y * width + x] = number;
    x++;
  };
  while (y < height) {
    const count = next();
    const what = next();
    if (count > 0) {
      for (let i = 0; i < count; i++) put(half ? (i % 2 ? what & 15 : what >> 4) : what);
    } else if (what === 0) {
      x = 0;
      y++;
    } else if (what === 1) break;
    else if (what === 2) {
      x += next();
      y += next();
    } else {
      // So many numbers as they are, filled up to an even number of bytes.
      const end = at + 2 * Math.ceil((half ? Math.ceil(what / 2) : what) / 2);
      let byte = 0;
      for (let i = 0; i < what; i++) {
        if (!half || i % 2 === 0) byte = next();
        put(half ? (i % 2 ? byte & 15 : byte >> 4) : byte);
      }
      at = end;
    }
  }
  return out;
}
