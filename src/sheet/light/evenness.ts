import { steadyExp, steadyLog } from '../../colour/steady.ts';
import { eachWindowRow, type WindowRow } from '../inks/windows.ts';
import type { Planes } from '../planes.ts';
import { numbers } from '../reading-limits.ts';
import { solveSymmetric } from './solve.ts';

/** Light over a sheet as a smooth surface: the logarithm of OKLab lightness that it adds at a place. x and y run −1…1 over the sheet. */
export type LightSurface = (x: number, y: number) => number;

const terms = 9;

/** How far apart places are compared, in cells of the grid, and the most their log lightness may differ by to be of one ink. */
const lags: readonly (readonly [cells: number, change: number])[] = [
  [5, 0.05],
  [16, 0.09],
];

/** … and the most that their chroma, relative to lightness, may. */
const mostDriftOfPair = 0.04;

/** A surface's coefficients, and the middle size of what they leave over. */
interface Fit {
  readonly of: Float64Array;
  readonly noise: number;
}

/** Cubic without its constant: what a lamp's fall-off, a lens's vignetting and a shadow's slope look like from afar. */
function termsAt(x: number, y: number, into: Float64Array): void {
  into[0] = x;
  into[1] = y;
  into[2] = x * x;
  into[3] = x * y;
  into[4] = y * y;
  into[5] = x * x * x;
  into[6] = x * x * y;
  into[7] = x * y * y;
  into[8] = y * y * y;
}

/** Flat places on a grid: where they are, and log lightness, and chroma relative to lightness. */
interface Samples {
  readonly across: number;
  readonly down: number;
  readonly step: number;
  /** NaN where the place is not flat. */
  readonly logL: Float32Array;
  readonly u: Float32Array;
  readonly v: Float32Array;
}

/**
 * How the light falls over the sheet, or null where it is even. Told from flat places of like colour a little way apart: what they
 * differ by, the light does. Where colour drifts as well, it is the print that shades and not the light, and nothing is said.
 */
export function lightSurface(planes: Planes, limit: Float64Array): LightSurface | null {
  const samples = flatSamples(planes, limit);
  const pairs = likePairs(samples);
  if (!pairs) return null;
  const light = fitted(pairs, samples.logL);
  if (!light) return null;
  const range = rangeOf(light.of);
  if (range < Math.max(numbers.leastUnevenness, numbers.unevennessOverGrain * light.noise)) return null;
  const drift = Math.max(
    ...[samples.u, samples.v].map((p) => rangeOf(fitted(pairs, p)?.of ?? new Float64Array(terms))),
  );
  if (drift > numbers.mostDrift * range) return null;
  const at = new Float64Array(terms);
  return (x, y) => {
    termsAt(x, y, at);
    return at.reduce((s, t, k) => s + t * light.of[k]!, 0);
  };
}

/** Takes the light's surface out of the planes, in place; `at` is the place (−1…1) whose light counts as right, else the brightest parts. */
export function evenOut(planes: Planes, surface: LightSurface, at: { x: number; y: number } | null): void {
  const { width, height, l, a, b } = planes;
  const right = at ? surface(at.x, at.y) : brightest(surface);
  // Coarse cells with straight lines between: the surface is smooth, and an exponential a pixel is dear.
  const cell = 16;
  const nx = Math.ceil(width / cell) + 1;
  const gainAt = (i: number, j: number): number =>
    steadyExp(right - surface((2 * i * cell) / width - 1, (2 * j * cell) / height - 1));
  let top = Float64Array.from({ length: nx }, (_, i) => gainAt(i, 0));
  for (let j = 0; j * cell < height; j++) {
    const bottom = Float64Array.from({ length: nx }, (_, i) => gainAt(i, j + 1));
    for (let y = j * cell; y < Math.min(height, (j + 1) * cell); y++) {
      const ty = (y - j * cell) / cell;
      for (let i = 0; i * cell < width; i++) {
        const left = top[i]! + ty * (bottom[i]! - top[i]!);
        const slope = (top[i + 1]! + ty * (bottom[i + 1]! - top[i + 1]!) - left) / cell;
        const end = Math.min(width, (i + 1) * cell);
        for (let x = i * cell; x < end; x++) {
          const gain = left + slope * (x - i * cell);
          const p = y * width + x;
          l[p]! *= gain;
          a[p]! *= gain;
          b[p]! *= gain;
        }
      }
    }
    top = bottom;
  }
}

function brightest(surface: LightSurface): number {
  const all: number[] = [];
  for (let y = -0.9; y < 1; y += 0.2) for (let x = -0.9; x < 1; x += 0.2) all.push(surface(x, y));
  all.sort((p, q) => p - q);
  return all[Math.floor(all.length * 0.95)]!;
}

function rangeOf(coefficients: Float64Array): number {
  const at = new Float64Array(terms);
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (let y = -0.9; y <= 0.9; y += 0.3)
    for (let x = -0.9; x <= 0.9; x += 0.3) {
      termsAt(x, y, at);
      const v = at.reduce((s, t, k) => s + t * coefficients[k]!, 0);
      low = Math.min(low, v);
      high = Math.max(high, v);
    }
  return high - low;
}

function flatSamples(planes: Planes, limit: Float64Array): Samples {
  const step = Math.max(2, Math.round(Math.max(planes.width, planes.height) / 110));
  const across = Math.ceil(planes.width / step);
  const down = Math.ceil(planes.height / step);
  const logL = new Float32Array(across * down);
  const u = new Float32Array(across * down);
  const v = new Float32Array(across * down);
  const n = new Uint16Array(across * down);
  // Two rows a cell at odd places: rows at even distances would beat with the ribs of a laid paper.
  const odd = (y: number): boolean => {
    const j = Math.floor(y / step);
    const first = ((j * 2654435761) >>> 8) % step;
    const at = y - j * step;
    return at === first || at === (first + 1 + ((j * 40503) % Math.max(1, step - 1))) % step;
  };
  let skew = 0;
  const each = (y: number, row: WindowRow): void => {
    const line = Math.floor(y / step) * across;
    skew = (skew + 3) % step;
    for (let x = 1 + (skew % Math.max(1, step >> 1)); x < planes.width - 1; x += Math.max(1, step >> 1)) {
      const l = row.l[x]!;
      const spread = row.spread[x]!;
      if (spread < 0 || l < 0.15 || spread > limit[Math.min(limit.length - 1, (l * limit.length) | 0)]!)
        continue;
      const at = line + Math.floor(x / step);
      // A second ink in the cell would be averaged in: only what is like the first counts.
      if (n[at]! && Math.abs(l - steadyExp(logL[at]! / n[at]!)) > 0.08 * l) continue;
      n[at]!++;
      logL[at]! += steadyLog(l);
      u[at]! += row.a[x]! / l;
      v[at]! += row.b[x]! / l;
    }
  };
  eachWindowRow(planes, 1, each, odd);
  for (let at = 0; at < n.length; at++) {
    const k = n[at]!;
    logL[at] = k > 1 ? logL[at]! / k : Number.NaN;
    u[at]! /= k;
    v[at]! /= k;
  }
  return { across, down, step, logL, u, v };
}

/** Pairs of like places a few steps apart, one after the other, and by what each of the surface's terms differs between them. */
interface LikePairs {
  readonly pairs: readonly number[];
  readonly slopes: Float64Array;
}

/** Null where there are too few. */
function likePairs({ across, down, logL, u, v }: Samples): LikePairs | null {
  const pairs: number[] = [];
  // A short way finds places of one ink most surely, a long way tells small differences of light from grain.
  for (const [lag, change] of lags)
    for (let y = 0; y < down; y++)
      for (let x = 0; x < across; x++) {
        const p = y * across + x;
        if (Number.isNaN(logL[p]!)) continue;
        for (let way = 0; way < 2; way++) {
          const q = way === 0 ? (x + lag < across ? p + lag : -1) : y + lag < down ? p + lag * across : -1;
          if (q < 0 || Number.isNaN(logL[q]!)) continue;
          if (Math.abs(logL[p]! - logL[q]!) > change) continue;
          if ((u[p]! - u[q]!) ** 2 + (v[p]! - v[q]!) ** 2 > mostDriftOfPair ** 2) continue;
          pairs.push(p, q);
        }
      }
  if (pairs.length < 400) return null;
  thin(pairs, 3600);
  const slopes = new Float64Array((pairs.length / 2) * terms);
  const from = new Float64Array(terms);
  const to = new Float64Array(terms);
  const place = (p: number, into: Float64Array): void =>
    termsAt((2 * (p % across)) / across - 1, (2 * Math.floor(p / across)) / down - 1, into);
  for (let n = 0; 2 * n < pairs.length; n++) {
    place(pairs[2 * n]!, from);
    place(pairs[2 * n + 1]!, to);
    for (let k = 0; k < terms; k++) slopes[n * terms + k] = to[k]! - from[k]!;
  }
  return { pairs, slopes };
}

/** Coefficients of the surface whose differences between like places a few steps apart come nearest to the measured ones. */
function fitted({ pairs, slopes }: LikePairs, of: Float32Array): Fit | null {
  const change = new Float64Array(pairs.length / 2);
  for (let n = 0; n < change.length; n++) change[n] = of[pairs[2 * n + 1]!]! - of[pairs[2 * n]!]!;
  return robust(slopes, change);
}

/** Leaves about `most` pairs, evenly strewn. */
function thin(pairs: number[], most: number): void {
  const every = Math.max(1, Math.round(pairs.length / 2 / most));
  let n = 0;
  for (let k = 0; 2 * k < pairs.length; k += every) {
    pairs[n++] = pairs[2 * k]!;
    pairs[n++] = pairs[2 * k + 1]!;
  }
  pairs.length = n;
}

/** Least squares that lets outliers go, by weights that shrink with what is left over (Tukey's biweight, four turns). */
function robust(slopes: Float64Array, change: Float64Array): Fit | null {
  let solution = new Float64Array(terms);
  const left = Float64Array.from(change);
  for (let turn = 0; turn < 4; turn++) {
    const spread = turn === 0 ? 0.03 : Math.max(0.004, 4 * medianSize(left));
    const matrix = new Float64Array(terms * terms);
    const right = new Float64Array(terms);
    for (let n = 0; n < change.length; n++) {
      const z = left[n]! / spread;
      if (Math.abs(z) >= 1) continue;
      const w = (1 - z * z) ** 2;
      const at = n * terms;
      for (let i = 0; i < terms; i++) {
        const wi = w * slopes[at + i]!;
        right[i]! += wi * change[n]!;
        for (let j = 0; j <= i; j++) matrix[i * terms + j]! += wi * slopes[at + j]!;
      }
    }
    for (let i = 0; i < terms; i++)
      for (let j = 0; j < i; j++) matrix[j * terms + i] = matrix[i * terms + j]!;
    const next = solveSymmetric(matrix, right, terms, 1e-4);
    if (!next) return null;
    solution = Float64Array.from(next);
    for (let n = 0; n < change.length; n++) {
      let v = change[n]!;
      for (let k = 0; k < terms; k++) v -= solution[k]! * slopes[n * terms + k]!;
      left[n] = v;
    }
  }
  return { of: solution, noise: medianSize(left) };
}

function medianSize(values: Float64Array): number {
  const every = Math.max(1, Math.floor(values.length / 2000));
  const some = new Float64Array(Math.ceil(values.length / every));
  for (let n = 0; n < some.length; n++) some[n] = Math.abs(values[n * every]!);
  some.sort();
  return some[some.length >> 1]!;
}
