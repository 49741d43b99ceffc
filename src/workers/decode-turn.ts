import type { PixelImage } from '../sheet/model.ts';

/**
 * A picture stood upright. `orientation` is what EXIF and TIFF say of where the first row and column lie: 1 as it is,
 * 2 mirrored, 3 upside down, 4 both, 5–8 the same on its side. Source: TIFF 6.0, tag 274; Exif 2.3, §4.6.4.
 */
export function upright(image: PixelImage, orientation: number): PixelImage {
  if (!(orientation >= 2 && orientation <= 8)) return image;
  const { width: w, height: h } = image;
  const onSide = orientation >= 5;
  const width = onSide ? h : w;
  const height = onSide ? w : h;
  const from = new Uint32Array(image.data.buffer, image.data.byteOffset, w * h);
  const to = new Uint32Array(w * h);
  const place = places[orientation - 1]!;
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const [sx, sy] = place(x, y, w - 1, h - 1);
      to[y * width + x] = from[sy * w + sx]!;
    }
  }
  return { data: new Uint8ClampedArray(to.buffer), width, height };
}

/** Where the pixel shown at x, y stands in the file, by orientation. */
const places: readonly ((
  x: number,
  y: number,
  right: number,
  bottom: number,
) => readonly [number, number])[] = [
  (x, y) => [x, y],
  (x, y, right) => [right - x, y],
  (x, y, right, bottom) => [right - x, bottom - y],
  (x, y, _, bottom) => [x, bottom - y],
  (x, y) => [y, x],
  (x, y, _, bottom) => [y, bottom - x],
  (x, y, right, bottom) => [right - y, bottom - x],
  (x, y, right) => [right - y, x],
];
