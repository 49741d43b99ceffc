import { linearFromEncoded } from '../colour/spaces.ts';
import type { Corners, PixelImage, SizeMm, Spot } from '../sheet/model.ts';
import { encodedTable } from './encoded-table.ts';

/**
 * The sheet between four corners of a photograph, seen from straight above: a homography, resampled in linear light.
 * It is about as large as it was in the photograph, in the proportion of `sizeMm`. Null where the corners make no sheet.
 * Source: for the homography of a square, Heckbert, Fundamentals of Texture Mapping and Image Warping (1989), §2.2.3.
 */
export function straightened(image: PixelImage, corners: Corners, sizeMm: SizeMm): PixelImage | null {
  const [a, b, c, d] = corners.map(({ x, y }) => ({ x: x * image.width, y: y * image.height })) as Quad;
  const across = (far(a, b) + far(d, c)) / 2;
  const down = (far(a, d) + far(b, c)) / 2;
  const map = homography([a, b, c, d]);
  if (map === null || Math.min(across, down) < 2) return null;
  const ratio = sizeMm.width / sizeMm.height;
  const area = across * down;
  const width = Math.max(2, Math.round(Math.sqrt(area * ratio)));
  const height = Math.max(2, Math.round(Math.sqrt(area / ratio)));
  return resampled(image, map, width, height);
}

type Quad = [Spot, Spot, Spot, Spot];
type Map = readonly [number, number, number, number, number, number, number, number];

/** Takes the unit square to a quadrilateral; null where it is not convex. */
function homography([a, b, c, d]: Quad): Map | null {
  const dx1 = b.x - c.x;
  const dx2 = d.x - c.x;
  const dx3 = a.x - b.x + c.x - d.x;
  const dy1 = b.y - c.y;
  const dy2 = d.y - c.y;
  const dy3 = a.y - b.y + c.y - d.y;
  const cross = dx1 * dy2 - dx2 * dy1;
  if (Math.abs(cross) < 1e-6) return null;
  const g = (dx3 * dy2 - dx2 * dy3) / cross;
  const h = (dx1 * dy3 - dx3 * dy1) / cross;
  // The horizon must not cross the sheet.
  if (Math.min(1 + g, 1 + h, 1 + g + h) <= 0.01) return null;
  return [b.x - a.x + g * b.x, d.x - a.x + h * d.x, a.x, b.y - a.y + g * b.y, d.y - a.y + h * d.y, a.y, g, h];
}

function resampled(image: PixelImage, map: Map, width: number, height: number): PixelImage {
  const [ax, bx, cx, ay, by, cy, g, h] = map;
  const data = new Uint8ClampedArray(width * height * 4);
  const linear = Float32Array.from({ length: 256 }, (_, i) => linearFromEncoded(i / 255));
  const encoded = encodedTable();
  const { data: from, width: w, height: tall } = image;
  for (let y = 0; y < height; y++) {
    const v = (y + 0.5) / height;
    for (let x = 0; x < width; x++) {
      const u = (x + 0.5) / width;
      const z = g * u + h * v + 1;
      const sx = Math.min(Math.max((ax * u + bx * v + cx) / z - 0.5, 0), w - 1);
      const sy = Math.min(Math.max((ay * u + by * v + cy) / z - 0.5, 0), tall - 1);
      const x0 = Math.floor(sx);
      const y0 = Math.floor(sy);
      const right = x0 + 1 < w ? 4 : 0;
      const below = y0 + 1 < tall ? w * 4 : 0;
      const tx = sx - x0;
      const ty = sy - y0;
      const p = (y0 * w + x0) * 4;
      const o = (y * width + x) * 4;
      for (let k = 0; k < 3; k++) {
        const upper = linear[from[p + k]!]! * (1 - tx) + linear[from[p + right + k]!]! * tx;
        const lower = linear[from[p + below + k]!]! * (1 - tx) + linear[from[p + below + right + k]!]! * tx;
        data[o + k] = encoded[Math.round((upper * (1 - ty) + lower * ty) * 65_535)]!;
      }
      data[o + 3] = from[p + 3]!;
    }
  }
  return { data, width, height };
}

function far(a: Spot, b: Spot): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}
