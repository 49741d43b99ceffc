import { encodedTable, linearOfByte } from '../../colour/light-tables.ts';
import type { Corners, PixelImage, SizeMm, Spot } from '../model.ts';
import { type Homography, homographyOf } from './homography.ts';

export interface StraightenOptions {
  /** Size of the picture that comes out. Where one is missing, it follows from the sheet's proportion. */
  readonly widthPx?: number;
  readonly heightPx?: number;
  /** Size of the sheet. Default: the proportion that it has in the photograph, the longer side 305 mm (12 in). */
  readonly sizeMm?: SizeMm;
}

export interface Straightened {
  readonly image: PixelImage;
  readonly mmPerPixel: number;
}

/**
 * The sheet between four corners of a photograph (fractions 0–1), seen from straight above. Resampled in linear light;
 * where it shrinks, each pixel is the mean of what it covers, so that fine print does not alias. About as large as in
 * the photograph unless told. What lies outside the photograph comes out transparent.
 * @throws RangeError where the corners make no sheet or the size is no size.
 */
export function straighten(
  image: PixelImage,
  corners: Corners,
  options: StraightenOptions = {},
): Straightened {
  const at = corners.map(({ x, y }) => ({ x: x * image.width, y: y * image.height }));
  const [a, b, c, d] = at as [Spot, Spot, Spot, Spot];
  const across = (far(a, b) + far(d, c)) / 2;
  const down = (far(a, d) + far(b, c)) / 2;
  const { width, height } = sizeOf(across, down, options);
  const target: Corners = [
    { x: 0, y: 0 },
    { x: width, y: 0 },
    { x: width, y: height },
    { x: 0, y: height },
  ];
  const map = homographyOf(target, [a, b, c, d]);
  if (!map || map[6] * width + 1 <= 0.02 || map[7] * height + 1 <= 0.02)
    throw new RangeError('These corners do not make a sheet: they cross or lie on one line.');
  const mmPerPixel = options.sizeMm
    ? (options.sizeMm.width / width + options.sizeMm.height / height) / 2
    : 305 / Math.max(width, height);
  return { image: resampled(image, map, width, height), mmPerPixel };
}

function sizeOf(across: number, down: number, { widthPx, heightPx, sizeMm }: StraightenOptions) {
  const ratio = sizeMm ? sizeMm.width / sizeMm.height : across / down;
  const area = across * down;
  const width = widthPx ?? (heightPx ? heightPx * ratio : Math.sqrt(area * ratio));
  const height = heightPx ?? (widthPx ? widthPx / ratio : Math.sqrt(area / ratio));
  if (!(width > 0 && height > 0 && width * height < 2e9))
    throw new RangeError('A straightened sheet needs a width and a height.');
  return { width: Math.max(1, Math.round(width)), height: Math.max(1, Math.round(height)) };
}

/** So many pixels of a row take the same number of samples; perspective changes slowly. */
const stretch = 16;

function resampled(image: PixelImage, h: Homography, width: number, height: number): PixelImage {
  const { data: from, width: w, height: tall } = image;
  const out = new Uint8ClampedArray(width * height * 4);
  const encoded = encodedTable();
  const linear = linearOfByte;
  for (let y = 0; y < height; y++)
    for (let start = 0; start < width; start += stretch) {
      const end = Math.min(width, start + stretch);
      const [nx, ny] = samples(h, (start + end) / 2, y + 0.5);
      const n = nx * ny;
      for (let x = start; x < end; x++) {
        let r = 0;
        let g = 0;
        let b = 0;
        let weight = 0;
        for (let j = 0; j < ny; j++) {
          const v = y + (j + 0.5) / ny;
          for (let i = 0; i < nx; i++) {
            const u = x + (i + 0.5) / nx;
            const z = 1 / (h[6] * u + h[7] * v + 1);
            const sx = (h[0] * u + h[1] * v + h[2]) * z - 0.5;
            const sy = (h[3] * u + h[4] * v + h[5]) * z - 0.5;
            if (!(sx >= -0.5 && sy >= -0.5 && sx <= w - 0.5 && sy <= tall - 0.5)) continue;
            const x0 = sx > 0 ? sx | 0 : 0;
            const y0 = sy > 0 ? sy | 0 : 0;
            const tx = sx > 0 ? sx - x0 : 0;
            const ty = sy > 0 ? sy - y0 : 0;
            const p = (y0 * w + x0) * 4;
            const q = x0 + 1 < w ? p + 4 : p;
            const below = y0 + 1 < tall ? w * 4 : 0;
            const alpha = from[p + 3]!;
            const w11 = tx * ty * alpha;
            const w10 = tx * alpha - w11;
            const w01 = ty * alpha - w11;
            const w00 = alpha - w10 - w01 - w11;
            const s = p + below;
            const t = q + below;
            r += linear[from[p]!]! * w00 + linear[from[q]!]! * w10;
            r += linear[from[s]!]! * w01 + linear[from[t]!]! * w11;
            g += linear[from[p + 1]!]! * w00 + linear[from[q + 1]!]! * w10;
            g += linear[from[s + 1]!]! * w01 + linear[from[t + 1]!]! * w11;
            b += linear[from[p + 2]!]! * w00 + linear[from[q + 2]!]! * w10;
            b += linear[from[s + 2]!]! * w01 + linear[from[t + 2]!]! * w11;
            weight += alpha;
          }
        }
        if (weight === 0) continue;
        const o = (y * width + x) * 4;
        const scale = 65535 / weight;
        out[o] = encoded[(r * scale + 0.5) | 0]!;
        out[o + 1] = encoded[(g * scale + 0.5) | 0]!;
        out[o + 2] = encoded[(b * scale + 0.5) | 0]!;
        out[o + 3] = weight / n;
      }
    }
  return { data: out, width, height };
}

/** How many samples across and down one pixel needs, so that they lie at most about one pixel of the photograph apart. */
function samples(h: Homography, u: number, v: number): [number, number] {
  const z = 1 / (h[6] * u + h[7] * v + 1);
  const sx = (h[0] * u + h[1] * v + h[2]) * z;
  const sy = (h[3] * u + h[4] * v + h[5]) * z;
  const across = Math.hypot(h[0] - sx * h[6], h[3] - sy * h[6]) * Math.abs(z);
  const down = Math.hypot(h[1] - sx * h[7], h[4] - sy * h[7]) * Math.abs(z);
  return [count(across), count(down)];
}

function count(length: number): number {
  return Math.min(64, Math.max(1, Math.ceil(length - 0.1)));
}

function far(a: Spot, b: Spot): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
