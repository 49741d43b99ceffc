import type { Oklch, Rgb } from './model.ts';
import { rgbOfCones, rootsOfAb } from './oklab-digits.ts';
import { encodedFromLinear, hexFromRgb, noHueBelowChroma } from './spaces.ts';
import { steadyCos, steadySin } from './steady.ts';

const [longA, longB, middleA, middleB, shortA, shortB] = rootsOfAb;

/** A colour made drawable: sRGB inside 0–1, its hex, and whether chroma had to be given up for it. */
export interface Mapped {
  readonly rgb: Rgb;
  readonly hex: string;
  readonly mapped: boolean;
}

/**
 * How far linear sRGB may leave 0–1 and still count as inside: a third of an 8-bit step at most, and less in the dark,
 * so that nothing drawn shows it. It spans the shallowest part of the hollow beside sRGB blue.
 */
function slackAt(l: number): number {
  return Math.min(1e-4, 1e-3 * l * l * l);
}

/** Lightness beyond 0–1 that is rounding and no colour of its own: white comes out of its conversion at 1 + 2e-16. */
const rounding = 1e-9;

/**
 * The colour with the most chroma, up to the one asked for, that sRGB holds at this lightness and hue.
 * Along one hue and lightness each linear channel is a cubic in chroma. Its crossings of 0 and 1 are bracketed
 * between turning points and bisected, so the answer is right where the gamut is hollow (blue, near 264°), where
 * a search that assumes one way out stops short.
 * Lightness beyond 0–1 becomes white or black.
 * Source: the aim is CSS Color 4, 13.2 (chroma reduction in OKLCH), without its final clip, so that hue and
 * lightness stay exactly as they were.
 */
export function mapToSrgb(oklch: Oklch): Mapped {
  const { l, c } = oklch;
  if (!(l > 0)) return done(0, 0, 0, l < -rounding || c > noHueBelowChroma);
  if (l >= 1) return done(1, 1, 1, l > 1 + rounding || c > noHueBelowChroma);
  const ray = rayOf(oklch);
  if (inside(ray, c)) return finish(ray, c, false);
  const reach = lastInside(ray, c);
  return finish(ray, reach, reach < c);
}

/** `#rrggbb` of OKLCH, its chroma reduced where sRGB cannot hold it. */
export function hexFromOklch(oklch: Oklch): string {
  return mapToSrgb(oklch).hex;
}

/** The largest OKLCH chroma that sRGB holds at this lightness (0–1) and hue (degrees), up to 0.5. */
export function maxChroma(l: number, h: number): number {
  if (!(l > 0) || l >= 1) return 0;
  const ray = rayOf({ l, c: 0, h });
  return inside(ray, 0.5) ? 0.5 : lastInside(ray, 0.5);
}

/** Whether sRGB holds the colour as it stands. */
export function isInSrgb(oklch: Oklch): boolean {
  return !mapToSrgb(oklch).mapped;
}

/** Cube roots of the cone responses along the ray: l + slope × chroma. */
interface Ray {
  readonly l: number;
  readonly slopes: readonly [number, number, number];
}

/** Linear sRGB of the cones, a channel a row. */
const rows = [
  [rgbOfCones[0], rgbOfCones[1], rgbOfCones[2]],
  [rgbOfCones[3], rgbOfCones[4], rgbOfCones[5]],
  [rgbOfCones[6], rgbOfCones[7], rgbOfCones[8]],
] as const;

function rayOf({ l, h }: Oklch): Ray {
  const angle = ((h ?? 0) * Math.PI) / 180;
  const a = steadyCos(angle);
  const b = steadySin(angle);
  return {
    l,
    slopes: [longA * a + longB * b, middleA * a + middleB * b, shortA * a + shortB * b],
  };
}

function channel({ l, slopes }: Ray, row: readonly [number, number, number], c: number): number {
  let sum = 0;
  for (let i = 0; i < 3; i++) {
    const root = l + slopes[i]! * c;
    sum += row[i]! * root * root * root;
  }
  return sum;
}

function inside(ray: Ray, c: number): boolean {
  const slack = slackAt(ray.l);
  for (const row of rows) {
    const v = channel(ray, row, c);
    if (v < -slack || v > 1 + slack) return false;
  }
  return true;
}

/** The largest chroma up to `c` that is inside: one of the places where a channel crosses 0 or 1, or nothing. */
function lastInside(ray: Ray, c: number): number {
  let best = 0;
  for (const row of rows) {
    let from = 0;
    for (const to of [...turningPoints(ray, row, c), c]) {
      for (const bound of [0, 1]) {
        const low = channel(ray, row, from) - bound;
        const high = channel(ray, row, to) - bound;
        if (low < 0 === high < 0) continue;
        const crossing = bisect(ray, row, bound, from, to);
        if (crossing > best && inside(ray, crossing)) best = crossing;
      }
      from = to;
    }
  }
  return best;
}

/** Where a channel turns between 0 and `limit`: roots of the derivative, in order. */
function turningPoints({ l, slopes }: Ray, row: readonly [number, number, number], limit: number): number[] {
  let p = 0;
  let q = 0;
  let r = 0;
  for (let i = 0; i < 3; i++) {
    const s = slopes[i]!;
    p += row[i]! * s * s * s;
    q += 2 * row[i]! * s * s * l;
    r += row[i]! * s * l * l;
  }
  const under = q * q - 4 * p * r;
  if (under < 0 || p === 0) return [];
  const root = Math.sqrt(under);
  return [(-q - root) / (2 * p), (-q + root) / (2 * p)]
    .filter((c) => c > 0 && c < limit)
    .sort((a, b) => a - b);
}

/** Where a channel that only rises or only falls between `from` and `to` equals `bound`. */
function bisect(
  ray: Ray,
  row: readonly [number, number, number],
  bound: number,
  from: number,
  to: number,
): number {
  const rises = channel(ray, row, to) > channel(ray, row, from);
  let low = from;
  let high = to;
  for (let i = 0; i < 44; i++) {
    const middle = (low + high) / 2;
    if (channel(ray, row, middle) > bound === rises) high = middle;
    else low = middle;
  }
  return low;
}

function finish(ray: Ray, c: number, mapped: boolean): Mapped {
  return done(channel(ray, rows[0], c), channel(ray, rows[1], c), channel(ray, rows[2], c), mapped);
}

function done(r: number, g: number, b: number, mapped: boolean): Mapped {
  const rgb = { r: encodedInside(r), g: encodedInside(g), b: encodedInside(b) };
  return { rgb, hex: hexFromRgb(rgb), mapped };
}

function encodedInside(v: number): number {
  return encodedFromLinear(Math.min(1, Math.max(0, v)));
}
