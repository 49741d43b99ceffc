import { hueDistanceDeg, wrapDeg } from './hue.ts';
import type { Wheel } from './model.ts';

/** One of the twelve steps of the painter's wheel and the OKLCH hue it stands for. */
export interface PainterStep {
  readonly name: string;
  /** Degrees on the painter's wheel: yellow 0, then 30 a step towards orange and red. */
  readonly painterDeg: number;
  /** OKLCH hue in degrees. */
  readonly hueDeg: number;
}

/**
 * The twelve steps, in the order of Itten's circle.
 * The hues are ours: each is the OKLCH hue of the ISCC-NBS "strong" centroid that bears the step's name, or the middle
 * of the two where the standard splits the step (numbers 84 and 99, 68, 50, 35, 12, 237 and 255, 207 and 218,
 * 196 and 207, 178 and 196, 160 and 169, 131 and 141, 117). A test computes them again from the published centroids.
 * Source: `itten` for order and steps, `iscc-centroids` for the names.
 */
export const painterSteps: readonly PainterStep[] = [
  ['yellow', 98.9],
  ['yellow-orange', 74.5],
  ['orange', 57.2],
  ['red-orange', 37.6],
  ['red', 18.6],
  ['red-violet', 348.8],
  ['violet', 308.2],
  ['blue-violet', 286.6],
  ['blue', 258.9],
  ['blue-green', 202.3],
  ['green', 156.5],
  ['yellow-green', 122.7],
].map(([name, hueDeg], i) => ({ name: name as string, painterDeg: 30 * i, hueDeg: hueDeg as number }));

/** Degrees on the painter's wheel, [0, 360), of an OKLCH hue; the inverse of `hueFromPainter`. */
export function painterFromHue(h: number): number {
  const below = wrapDeg(painterSteps[0]!.hueDeg - h);
  let low = 0;
  while (low < 11 && knots()[low + 1]!.fall <= below) low++;
  const a = knots()[low]!;
  const b = knots()[low + 1]!;
  let from = 0;
  let to = 1;
  let t = (below - a.fall) / (b.fall - a.fall);
  // Newton's steps inside a bracket that closes: each piece rises all the way, so there is one place to find.
  for (let i = 0; i < 40; i++) {
    const over = fallAt(a, b, t) - below;
    if (over > 0) to = t;
    else from = t;
    const next = t - over / slopeAt(a, b, t);
    const last = t;
    t = next > from && next < to ? next : (from + to) / 2;
    if (Math.abs(t - last) < 1e-13) break;
  }
  return wrapDeg(30 * (low + t));
}

/** OKLCH hue, [0, 360), of a place on the painter's wheel in degrees: a smooth, always falling curve through the steps. */
export function hueFromPainter(p: number): number {
  const place = wrapDeg(p) / 30;
  const low = Math.min(11, Math.floor(place));
  return wrapDeg(painterSteps[0]!.hueDeg - fallAt(knots()[low]!, knots()[low + 1]!, place - low));
}

/** Angle between two OKLCH hues on one wheel, 0–180. */
export function wheelDistanceDeg(h1: number, h2: number, wheel: Wheel): number {
  return wheel === 'eye' ? hueDistanceDeg(h1, h2) : hueDistanceDeg(painterFromHue(h1), painterFromHue(h2));
}

/** Where an OKLCH hue stands on a wheel, degrees. */
export function placeOnWheel(h: number, wheel: Wheel): number {
  return wheel === 'eye' ? wrapDeg(h) : painterFromHue(h);
}

/** Degrees of hue gone by since yellow, and how steeply, at each step. */
interface Knot {
  readonly fall: number;
  readonly slope: number;
}

let kept: readonly Knot[] | undefined;

/** Slopes by Fritsch and Carlson's rule (SIAM J. Numer. Anal. 17:238, 1980), which keeps a cubic curve monotone. */
function knots(): readonly Knot[] {
  if (kept) return kept;
  const gaps = painterSteps.map((step, i) => wrapDeg(step.hueDeg - painterSteps[(i + 1) % 12]!.hueDeg));
  const falls = [0];
  for (const gap of gaps) falls.push(falls.at(-1)! + gap);
  const slopes = gaps.map((gap, i) => {
    const before = gaps[(i + 11) % 12]!;
    return (2 * before * gap) / (before + gap);
  });
  kept = falls.map((fall, i) => ({ fall, slope: slopes[i % 12]! }));
  return kept;
}

/** Cubic Hermite piece from one step to the next, t from 0 to 1. */
function fallAt(a: Knot, b: Knot, t: number): number {
  const rest = 1 - t;
  return (
    a.fall * (1 + 2 * t) * rest * rest +
    a.slope * t * rest * rest +
    b.fall * t * t * (3 - 2 * t) -
    b.slope * t * t * rest
  );
}

/** Its slope. */
function slopeAt(a: Knot, b: Knot, t: number): number {
  return 6 * t * (1 - t) * (b.fall - a.fall) + a.slope * (1 - t) * (1 - 3 * t) - b.slope * t * (2 - 3 * t);
}
