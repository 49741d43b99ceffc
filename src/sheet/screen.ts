import { LineTransform } from './fourier.ts';
import type { Frame, PixelImage } from './model.ts';

/** Side of the tiles that are looked at, in pixels. */
const tile = 64;
/** A peak counts where it stands this many times above what is around it. */
const peakOverGround = 12;
/** Coarser dots than this are motifs. Pixels. */
const longestPeriod = 11;
/** A lattice that all channels share is a screen only where it is finer than this: else it is a texture or a print of dots. Pixels. */
const longestSharedPeriod = 4.6;
/** … and this strong beside the coarse contrast of its tiles, summed over them. */
const leastSharedPower = 0.02;
/** No peak under this counts at all. */
const leastPower = 3e-4;
/** … and this many times above the highest a little further off: the streak of an edge does not. */
const peakOverStreak = 3.5;
/** Tiles with coarse contrast weigh less; this much (8-bit steps) is nothing. */
const quietSteps = 3;

/**
 * Period in pixels of the printing screen that a picture shows, or null. Looks for peaks in the spectra of small tiles that recur
 * over the frame, a square lattice for each channel: four-colour printing turns each ink's screen by another angle, which
 * neither a paper's texture nor a print of dots does.
 */
export function screenPeriod(image: PixelImage, frame: Frame): number | null {
  if (frame.width < tile || frame.height < tile) return null;
  const power = [0, 1].map(() => new Float64Array(tile * tile));
  const transform = new LineTransform(tile);
  for (const [x, y] of tilePlaces(image, frame)) addTile(image, x, y, transform, power);
  const peaks = power.map(strongestPeak).filter((p) => p !== null);
  if (!peaks.length) return null;
  const periods = peaks.map((p) => tile / Math.hypot(p.fx, p.fy));
  const period = Math.max(...periods);
  if (period > longestPeriod) return null;
  // One ink's screen may lie along the rows, but never all of them: what does is drawn.
  if (peaks.every((p) => Math.min(Math.abs(p.fx), Math.abs(p.fy)) < 0.06 * Math.hypot(p.fx, p.fy)))
    return null;
  const shared = peaks.every((p) => sameLattice(p, peaks[0]!));
  if (shared && (period > longestSharedPeriod || peaks.every((p) => p.power < leastSharedPower))) return null;
  return period;
}

interface Peak {
  readonly fx: number;
  readonly fy: number;
  readonly power: number;
}

/** How many tiles are looked at, and how many of them are from all the rest. */
const tiles = 25;
const anyTiles = 9;
/** How many are weighed for it, across and down. */
const mostCandidates = 22;

/** The tiles that have most fine contrast beside their coarse one: printed dots may lie on the motifs alone, or on the ground alone. */
function tilePlaces(image: PixelImage, frame: Frame): [x: number, y: number][] {
  const across = Math.min(mostCandidates, Math.floor(frame.width / tile));
  const down = Math.min(mostCandidates, Math.floor(frame.height / tile));
  const places: { x: number; y: number; fine: number }[] = [];
  for (let j = 0; j < down; j++)
    for (let i = 0; i < across; i++) {
      const x = frame.x + Math.floor(((i + 0.5) * frame.width) / across - tile / 2);
      const y = frame.y + Math.floor(((j + 0.5) * frame.height) / down - tile / 2);
      places.push({ x, y, fine: fineness(image, x, y) });
    }
  places.sort((p, q) => q.fine - p.fine);
  const finest = places.slice(0, tiles - anyTiles);
  const rest = places.slice(finest.length);
  const some = Array.from(
    { length: Math.min(anyTiles, rest.length) },
    (_, n) => rest[Math.floor(((n + 0.5) * rest.length) / anyTiles)]!,
  );
  return [...finest, ...some].map(({ x, y }) => [x, y]);
}

/** Mean change from one pixel to the next against the change from one stretch of pixels to the next, along a few rows. */
function fineness(image: PixelImage, x0: number, y0: number): number {
  const stretch = 16;
  let fine = 0;
  let coarse = 0;
  for (let y = y0 + 3; y < y0 + tile; y += 9) {
    const row = (y * image.width + x0) * 4;
    let last = -1;
    for (let x = 0; x < tile; x += stretch) {
      let sum = 0;
      for (let k = 0; k < stretch; k++) {
        const i = row + 4 * (x + k);
        const here = image.data[i]! + image.data[i + 1]!;
        sum += here;
        if (k) fine += Math.abs(here - image.data[i - 4]! - image.data[i - 3]!);
      }
      if (last >= 0) coarse += Math.abs(sum - last);
      last = sum;
    }
  }
  return fine / (quietSteps * tile + coarse / stretch);
}

const hann = Float64Array.from(
  { length: tile },
  (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / tile),
);

/** Adds the tile's power at each frequency, channel by channel. Red and green go through one transform as its real and imaginary part; blue shows no screen that they do not. */
function addTile(
  image: PixelImage,
  x0: number,
  y0: number,
  transform: LineTransform,
  power: Float64Array[],
): void {
  const re = new Float64Array(tile * tile);
  const im = new Float64Array(tile * tile);
  load(image, x0, y0, 0, re);
  load(image, x0, y0, 1, im);
  transform.runSquare(re, im);
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
  addQuiet(first, power[0]!);
  addQuiet(second, power[1]!);
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

function load(image: PixelImage, x0: number, y0: number, channel: number, into: Float64Array): void {
  let mean = 0;
  for (let y = 0; y < tile; y++) {
    let p = ((y0 + y) * image.width + x0) * 4 + channel;
    for (let x = 0; x < tile; x++, p += 4) mean += into[y * tile + x] = image.data[p]!;
  }
  mean /= tile * tile;
  for (let y = 0; y < tile; y++)
    for (let x = 0; x < tile; x++) into[y * tile + x] = (into[y * tile + x]! - mean) * hann[y]! * hann[x]!;
}

/** The strongest peak of a channel that has its partner a quarter turn away. */
function strongestPeak(power: Float64Array): Peak | null {
  let best: Peak | null = null;
  let most = leastPower;
  const half = tile / 2;
  const at = (fx: number, fy: number): number => power[((fy + tile) % tile) * tile + ((fx + tile) % tile)]!;
  for (let fy = 0; fy <= half; fy++)
    for (let fx = -half + 1; fx <= half; fx++) {
      if (fy === 0 && fx <= 0) continue;
      if (Math.hypot(fx, fy) < 2.5) continue;
      const here = at(fx, fy);
      if (here <= most) continue;
      if (!isPeak(at, fx, fy)) continue;
      if (!hasPartner(at, fx, fy, here)) continue;
      most = here;
      best = { ...refined(at, fx, fy), power: here };
    }
  return best;
}

type At = (fx: number, fy: number) => number;

function isPeak(at: At, fx: number, fy: number): boolean {
  const here = at(fx, fy);
  const around: number[] = [];
  for (let dy = -5; dy <= 5; dy++)
    for (let dx = -5; dx <= 5; dx++) {
      const far = Math.max(Math.abs(dx), Math.abs(dy));
      if (far <= 2 && at(fx + dx, fy + dy) > here) return false;
      // Towards the middle of the spectrum every picture has power: the ground is what lies as far out.
      if (far >= 4 && Math.hypot(fx + dx, fy + dy) > 1.5) around.push(at(fx + dx, fy + dy));
    }
  const r = Math.hypot(fx, fy);
  let streak = 0;
  for (const step of [-4, -3, -2, 2, 3, 4]) {
    if (r + step < 1.5) continue;
    streak = Math.max(streak, at(Math.round(fx * (1 + step / r)), Math.round(fy * (1 + step / r))));
  }
  around.sort((p, q) => p - q);
  if (here < peakOverStreak * streak) return false;
  return here > peakOverGround * around[around.length >> 1]!;
}

function hasPartner(at: At, fx: number, fy: number, here: number): boolean {
  let most = 0;
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) most = Math.max(most, at(-fy + dx, fx + dy));
  return most > 0.12 * here;
}

/** The peak's middle between bins, by the weight of its neighbours. */
function refined(at: At, fx: number, fy: number): { fx: number; fy: number } {
  let [sx, sy, sum] = [0, 0, 0];
  for (let dy = -1; dy <= 1; dy++)
    for (let dx = -1; dx <= 1; dx++) {
      const w = at(fx + dx, fy + dy);
      sx += w * dx;
      sy += w * dy;
      sum += w;
    }
  return { fx: fx + sx / sum, fy: fy + sy / sum };
}

function sameLattice(p: Peak, q: Peak): boolean {
  const near = (ax: number, ay: number): boolean => Math.hypot(ax - q.fx, ay - q.fy) < 1.6;
  return near(p.fx, p.fy) || near(-p.fy, p.fx) || near(-p.fx, -p.fy) || near(p.fy, -p.fx);
}
