import { steadyCos } from '../../colour/steady.ts';
import type { Frame, PixelImage } from '../model.ts';
import { LineTransform } from './fourier.ts';

/** Side of the tiles that are looked at, in samples. */
export const tile = 64;
/** Tiles with coarse contrast weigh less; this much (8-bit steps) is nothing. */
const quietSteps = 3;
/** How many tiles are weighed for being looked at, across and down. */
const mostCandidates = 22;

/** Power of a picture's red and of its green at each frequency, row-major, `tile` × `tile`. Blue shows no screen that they do not. */
export type Spectra = readonly [red: Float64Array, green: Float64Array];

/**
 * Power of small tiles, summed: of those with most fine contrast, and of `any` others. A sample is the mean of `pixels` ×
 * `pixels`. Null where not one tile fits in.
 */
export function spectraOf(
  image: PixelImage,
  frame: Frame,
  pixels: 1 | 2,
  finest: number,
  any: number,
): Spectra | null {
  if (frame.width < tile * pixels || frame.height < tile * pixels) return null;
  const spectra: Spectra = [new Float64Array(tile * tile), new Float64Array(tile * tile)];
  const transform = new LineTransform(tile);
  const re = new Float64Array(tile * tile);
  const im = new Float64Array(tile * tile);
  for (const [x, y] of tilePlaces(image, frame, tile * pixels, finest, any)) {
    if (pixels === 1) load(image, x, y, re, im);
    else loadHalved(image, x, y, re, im);
    centre(re);
    centre(im);
    transform.runSquare(re, im);
    addTile(re, im, spectra);
  }
  return spectra;
}

/** The tiles that have most fine contrast beside their coarse one: printed dots may lie on the motifs alone, or on the ground alone. */
function tilePlaces(
  image: PixelImage,
  frame: Frame,
  side: number,
  finest: number,
  any: number,
): [x: number, y: number][] {
  const across = Math.min(mostCandidates, Math.floor(frame.width / side));
  const down = Math.min(mostCandidates, Math.floor(frame.height / side));
  const places: { x: number; y: number; fine: number }[] = [];
  for (let j = 0; j < down; j++)
    for (let i = 0; i < across; i++) {
      const x = frame.x + Math.floor(((i + 0.5) * frame.width) / across - side / 2);
      const y = frame.y + Math.floor(((j + 0.5) * frame.height) / down - side / 2);
      places.push({ x, y, fine: fineness(image, x, y, side) });
    }
  places.sort((p, q) => q.fine - p.fine);
  const best = places.slice(0, finest);
  const rest = places.slice(best.length);
  const some = Array.from(
    { length: Math.min(any, rest.length) },
    (_, n) => rest[Math.floor(((n + 0.5) * rest.length) / any)]!,
  );
  return [...best, ...some].map(({ x, y }) => [x, y]);
}

/** Mean change over a 64th of the tile against the change from one quarter of it to the next, along a few rows. */
function fineness(image: PixelImage, x0: number, y0: number, side: number): number {
  const near = (4 * side) / tile;
  const stretch = tile / 4;
  let fine = 0;
  let coarse = 0;
  for (let y = y0 + 3; y < y0 + side; y += (9 * side) / tile) {
    let i = (y * image.width + x0) * 4;
    let last = -1;
    for (let x = 0; x < tile; x += stretch) {
      let sum = 0;
      for (let k = 0; k < stretch; k++, i += near) {
        const here = image.data[i]! + image.data[i + 1]!;
        sum += here;
        if (k) fine += Math.abs(here - image.data[i - near]! - image.data[i - near + 1]!);
      }
      if (last >= 0) coarse += Math.abs(sum - last);
      last = sum;
    }
  }
  return fine / (quietSteps * tile + coarse / stretch);
}

function load(image: PixelImage, x0: number, y0: number, red: Float64Array, green: Float64Array): void {
  const { data, width } = image;
  for (let y = 0, k = 0; y < tile; y++) {
    let p = ((y0 + y) * width + x0) * 4;
    for (let x = 0; x < tile; x++, p += 4, k++) {
      red[k] = data[p]!;
      green[k] = data[p + 1]!;
    }
  }
}

function loadHalved(image: PixelImage, x0: number, y0: number, red: Float64Array, green: Float64Array): void {
  const { data, width } = image;
  const below = 4 * width;
  for (let y = 0, k = 0; y < tile; y++) {
    let p = ((y0 + 2 * y) * width + x0) * 4;
    for (let x = 0; x < tile; x++, p += 8, k++) {
      red[k] = (data[p]! + data[p + 4]! + data[p + below]! + data[p + below + 4]!) / 4;
      green[k] = (data[p + 1]! + data[p + 5]! + data[p + below + 1]! + data[p + below + 5]!) / 4;
    }
  }
}

const hann = Float64Array.from(
  { length: tile },
  (_, i) => 0.5 - 0.5 * steadyCos((2 * Math.PI * (i + 0.5)) / tile),
);

/** Takes the mean away and lets the rim fade out. */
function centre(values: Float64Array): void {
  let mean = 0;
  for (let k = 0; k < values.length; k++) mean += values[k]!;
  mean /= values.length;
  for (let y = 0, k = 0; y < tile; y++)
    for (let x = 0; x < tile; x++, k++) values[k] = (values[k]! - mean) * hann[y]! * hann[x]!;
}

/** Adds a tile's power, channel by channel. Red and green went through one transform as its real and imaginary part. */
function addTile(re: Float64Array, im: Float64Array, [red, green]: Spectra): void {
  const n = tile;
  const first = new Float64Array(n * n);
  const second = new Float64Array(n * n);
  for (let y = 0; y < n; y++)
    for (let x = 0; x < n; x++) {
      const i = y * n + x;
      const j = ((n - y) % n) * n + ((n - x) % n);
      first[i] = ((re[i]! + re[j]!) ** 2 + (im[i]! - im[j]!) ** 2) / 4;
      second[i] = ((im[i]! + im[j]!) ** 2 + (re[j]! - re[i]!) ** 2) / 4;
    }
  addQuiet(first, red);
  addQuiet(second, green);
}

/** Adds a tile's spectrum by how little coarse contrast it has: a tint of dots alone tells more than one beside an edge. */
function addQuiet(spectrum: Float64Array, sum: Float64Array): void {
  let coarse = 0;
  for (let y = -4; y <= 4; y++)
    for (let x = -4; x <= 4; x++) {
      const r = x * x + y * y;
      if (r >= 1 && r <= 16) coarse += spectrum[((y + tile) % tile) * tile + ((x + tile) % tile)]!;
    }
  const quiet = (quietSteps * tile * tile * 0.375) ** 2;
  const weight = 1 / (quiet + coarse);
  for (let i = 0; i < sum.length; i++) sum[i]! += weight * spectrum[i]!;
}
