import { steadyLog } from '../../colour/steady.ts';
import type { PixelImage } from '../model.ts';
import { oklabPlanes } from '../oklab-planes.ts';
import { linearPlanes, type Planes } from '../planes.ts';
import type { Quad } from './quad.ts';

/** A photograph brought down to at most so many pixels on its longer side, in OKLab with a and b doubled. */
export function reduced(image: PixelImage, longest: number): Planes {
  const block = Math.max(1, Math.ceil(Math.max(image.width, image.height) / longest));
  const frame = { x: 0, y: 0, width: image.width, height: image.height };
  return oklabPlanes(linearPlanes(image, frame, null, block), null);
}

/** Colours are counted in boxes of this side (lightness 0–1; a and b doubled). */
const box = 0.04;
const deep = 26;
const wide = 28;

/** How much a pixel speaks at most: no single colour outweighs the place. */
const most = 2;

/**
 * How far each pixel speaks for the sheet (above nought) or for the table (below), from how often its colour is met
 * among pixels taken for the one and for the other. `isTable` tells 1 table, 0 sheet, 2 neither.
 */
export function speaksForSheet(planes: Planes, isTable: Uint8Array): Float32Array {
  const boxes = boxOf(planes);
  const table = counted(boxes, isTable, 1);
  const sheet = counted(boxes, isTable, 0);
  const out = new Float32Array(boxes.length);
  // A colour met less often than this tells nothing.
  const little = 4e-4;
  // Each box is asked once: there are fewer of them than pixels.
  const told = new Float32Array(sheet.length).fill(Number.NaN);
  for (let i = 0; i < out.length; i++) {
    const k = boxes[i]!;
    let says = told[k]!;
    if (Number.isNaN(says)) {
      says = steadyLog((sheet[k]! + little) / (table[k]! + little));
      told[k] = says = Math.max(-most, Math.min(most, says));
    }
    out[i] = says;
  }
  return out;
}

/** First guess: a band along the picture's border is table, the middle is sheet. */
export function firstGuess({ width, height }: Planes): Uint8Array {
  const band = Math.max(2, Math.round(0.035 * Math.max(width, height)));
  const out = new Uint8Array(width * height).fill(2);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const rim = Math.min(x, y, width - 1 - x, height - 1 - y);
      if (rim < band) out[y * width + x] = 1;
      else if (Math.abs(x / width - 0.5) < 0.22 && Math.abs(y / height - 0.5) < 0.22) out[y * width + x] = 0;
    }
  return out;
}

/** Inside a quadrilateral is sheet, outside is table, and a narrow band between is neither. */
export function guessFrom(quad: Quad, { width, height }: Planes): Uint8Array {
  const out = new Uint8Array(width * height);
  const lines = quad.map((a, i) => {
    const b = quad[(i + 1) % 4]!;
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    return { a, nx: -(b.y - a.y) / length, ny: (b.x - a.x) / length };
  });
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      let within = Number.POSITIVE_INFINITY;
      for (const { a, nx, ny } of lines)
        within = Math.min(within, (x + 0.5 - a.x) * nx + (y + 0.5 - a.y) * ny);
      out[y * width + x] = within > 3 ? 0 : within < -3 ? 1 : 2;
    }
  return out;
}

function boxOf({ l, a, b }: Planes): Int32Array {
  const at = (v: number, n: number, from: number): number =>
    Math.max(1, Math.min(n - 2, Math.floor((v - from) / box) + 1));
  const out = new Int32Array(l.length);
  for (let i = 0; i < out.length; i++)
    out[i] = (at(l[i]!, deep, 0) * wide + at(a[i]!, wide, -0.52)) * wide + at(b[i]!, wide, -0.52);
  return out;
}

/** Part of the pixels of one kind that lie in each box, softened by its neighbours along each axis. */
function counted(boxes: Int32Array, kinds: Uint8Array, kind: number): Float32Array {
  let from = new Float32Array(deep * wide * wide);
  let total = 0;
  for (let i = 0; i < boxes.length; i++)
    if (kinds[i] === kind) {
      from[boxes[i]!]!++;
      total++;
    }
  for (const step of [1, wide, wide * wide]) {
    const out = new Float32Array(from.length);
    for (let i = step; i < from.length - step; i++)
      out[i] = (0.25 * (from[i - step]! + from[i + step]!) + 0.5 * from[i]!) / (step === 1 ? total || 1 : 1);
    from = out;
  }
  return from;
}
