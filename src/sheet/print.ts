import { nothing } from './label-counts.ts';
import type { Places, Print, PrintScale } from './model.ts';

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

/** The shortest shift, along a row or a column, at which the print agrees with itself. */
function repeatOf(places: Places, lightness: readonly number[], mmPerPlace: number): number | null {
  const across = shiftOf(places, lightness, true);
  const down = shiftOf(places, lightness, false);
  const shifts = [across, down].filter((s): s is number => s !== null);
  return shifts.length ? Math.round(Math.max(...shifts) * mmPerPlace * 10) / 10 : null;
}

function shiftOf(
  { width, height, labels }: Places,
  lightness: readonly number[],
  across: boolean,
): number | null {
  const along = across ? width : height;
  const lines = across ? height : width;
  const most = Math.floor(along / 2);
  const value = new Float32Array(256);
  let mean = 0;
  let n = 0;
  for (const k of labels) {
    if (k === nothing) continue;
    mean += lightness[k]!;
    n++;
  }
  mean /= n || 1;
  for (let k = 0; k < lightness.length; k++) value[k] = lightness[k]! - mean;
  const stride = across ? 1 : width;
  const step = across ? width : 1;
  const every = Math.max(1, Math.floor(lines / 160));
  const agree = new Float64Array(most + 1);
  for (let shift = 0; shift <= most; shift++) {
    let sum = 0;
    let used = 0;
    for (let line = 0; line < lines; line += every) {
      const start = line * step;
      for (let i = 0; i + shift < along; i++)
        sum += value[labels[start + i * stride]!]! * value[labels[start + (i + shift) * stride]!]!;
      used += along - shift;
    }
    agree[shift] = sum / used;
  }
  const whole = agree[0]!;
  if (!(whole > 1e-6)) return null;
  let low = 1;
  let shift = 1;
  while (shift < most && agree[shift]! / whole > 0.4) shift++;
  for (; shift < most; shift++) {
    const here = agree[shift]! / whole;
    if (here < low) low = here;
    if (
      here > 0.45 &&
      here - low > 0.3 &&
      here >= agree[shift - 1]! / whole &&
      here >= agree[shift + 1]! / whole
    )
      return shift;
  }
  return null;
}
