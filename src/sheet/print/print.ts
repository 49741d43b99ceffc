import { nothing } from '../inks/label-counts.ts';
import type { Places, Print, PrintScale } from '../model.ts';
import { LineTransform } from '../screen/fourier.ts';

/** Repeats shorter than `small` mm are a small print, longer than `large` a large one. Common practice, no source. */
export const scaleMm = { small: 20, large: 65 } as const;

/** Busyness, repeat and scale of a print from where its inks lie. `mmPerPlace` is the size of one place. */
export function printOf(places: Places, lightness: readonly number[], mmPerPlace: number): Print {
  const busyness = busynessOf(places, mmPerPlace);
  if (busyness < 0.002) return { busyness: 0, repeatMm: null, scale: null };
  const found = repeatOf(places, lightness, mmPerPlace);
  const size = found ?? spacingOf(places, mmPerPlace);
  return { busyness, repeatMm: found, scale: size === null ? null : scaleOf(size) };
}

function scaleOf(mm: number): PrintScale {
  if (mm < scaleMm.small) return 'small';
  return mm > scaleMm.large ? 'large' : 'medium';
}

/** How much of the side lies within a millimetre of an edge between two inks, 0–1. */
function busynessOf({ width, height, labels }: Places, mmPerPlace: number): number {
  const step = Math.max(1, Math.round(1 / mmPerPlace));
  let near = 0;
  let all = 0;
  for (let y = step; y < height - step; y++)
    for (let x = step; x < width - step; x++) {
      const k = labels[y * width + x]!;
      if (k === nothing) continue;
      all++;
      const differs = (i: number): boolean => labels[i] !== k && labels[i] !== nothing;
      const i = y * width + x;
      if (differs(i - step) || differs(i + step) || differs(i - step * width) || differs(i + step * width))
        near++;
    }
  return all ? near / all : 0;
}

/** Mean distance between edges met along rows and columns, in mm: the grain of a print that has no repeat. */
function spacingOf({ width, height, labels }: Places, mmPerPlace: number): number | null {
  let edges = 0;
  for (let y = 0; y < height; y++)
    for (let x = 1; x < width; x++) if (labels[y * width + x] !== labels[y * width + x - 1]) edges++;
  for (let x = 0; x < width; x++)
    for (let y = 1; y < height; y++) if (labels[y * width + x] !== labels[(y - 1) * width + x]) edges++;
  if (!edges) return null;
  return ((2 * 2 * width * height) / edges) * mmPerPlace;
}

/** The shortest shift, along a row or a column, at which the print agrees with itself; the longer of the two. */
function repeatOf(places: Places, lightness: readonly number[], mmPerPlace: number): number | null {
  const shifts = [true, false].map((across) => repeatAlong(agreement(places, lightness, across)));
  const found = shifts.filter((s) => s !== null);
  return found.length ? Math.round(Math.max(...found) * mmPerPlace * 10) / 10 : null;
}

/** How far lines of the print agree with themselves shifted by 0, 1, 2 … places, as a part of the agreement at 0. */
function agreement(
  { width, height, labels }: Places,
  lightness: readonly number[],
  across: boolean,
): Float64Array {
  const along = across ? width : height;
  const lines = across ? height : width;
  const stride = across ? 1 : width;
  const value = new Float64Array(256);
  let mean = 0;
  let n = 0;
  for (const k of labels) {
    if (k === nothing) continue;
    mean += lightness[k]!;
    n++;
  }
  for (let k = 0; k < lightness.length; k++) value[k] = lightness[k]! - mean / (n || 1);
  // By the power spectrum, each line followed by as many noughts, so that no end meets a beginning; two lines in one transform.
  const length = 1 << (32 - Math.clz32(2 * along - 1));
  const transform = new LineTransform(length);
  const power = new Float64Array(length);
  const re = new Float64Array(length);
  const im = new Float64Array(length);
  const every = Math.max(1, Math.floor(lines / 64));
  for (let line = 0; line + every < lines; line += 2 * every) {
    re.fill(0);
    im.fill(0);
    const start = line * (across ? width : 1);
    const next = start + every * (across ? width : 1);
    for (let i = 0; i < along; i++) {
      re[i] = value[labels[start + i * stride]!]!;
      im[i] = value[labels[next + i * stride]!]!;
    }
    transform.run(re, im);
    for (let k = 0; k < length; k++) power[k]! += re[k]! * re[k]! + im[k]! * im[k]!;
  }
  im.fill(0);
  transform.run(power, im);
  const most = Math.floor(along / 2);
  const whole = power[0]! / along;
  return Float64Array.from({ length: most + 1 }, (_, s) => (whole > 0 ? power[s]! / (along - s) / whole : 0));
}

function repeatAlong(agree: Float64Array): number | null {
  const most = agree.length - 1;
  let shift = 1;
  while (shift < most && agree[shift]! > 0.4) shift++;
  let low = 1;
  for (; shift < most; shift++) {
    const here = agree[shift]!;
    if (here < low) low = here;
    if (here < 0.45 || here - low < 0.3 || here < agree[shift - 1]! || here < agree[shift + 1]!) continue;
    // The top lies between places: through the three highest, a parabola.
    const bend = agree[shift - 1]! - 2 * here + agree[shift + 1]!;
    return shift + (bend < 0 ? (0.5 * (agree[shift - 1]! - agree[shift + 1]!)) / bend : 0);
  }
  return null;
}
