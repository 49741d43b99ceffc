import type { Planes } from '../planes.ts';
import { numbers } from '../reading-limits.ts';
import { eachWindowRow } from './windows.ts';

/** How quiet a picture is. */
export interface Flatness {
  /** The most spread a flat window may have, by OKLab lightness in equal bands from 0 to 1. */
  readonly limit: Float64Array;
  /** Spread of the quietest windows. */
  readonly noise: number;
}

/** The most spread a flat window of this OKLab lightness may have. */
export function limitAt({ limit }: Flatness, l: number): number {
  return limit[Math.min(limit.length - 1, Math.max(0, (l * limit.length) | 0))]!;
}

/** Measured from the quietest windows of each band of lightness. */
export function flatness(planes: Planes): Flatness {
  const bands = 10;
  const steps = 200;
  const top = 0.2;
  const counts = Array.from({ length: bands }, () => new Float64Array(steps));
  const all = new Float64Array(steps);
  const step = Math.max(1, Math.round(Math.sqrt(planes.count / 60000)));
  eachWindowRow(planes, step, (_, row) => {
    for (let x = 1; x < planes.width - 1; x += step) {
      const spread = row.spread[x]!;
      if (spread < 0) continue;
      const band = Math.min(bands - 1, Math.max(0, (row.l[x]! * bands) | 0));
      const at = Math.min(steps - 1, ((spread / top) * steps) | 0);
      counts[band]![at]!++;
      all[at]!++;
    }
  });
  const everywhere = percentile(all, numbers.noisePercentile) * (top / steps);
  const limit = Float64Array.from(counts, (band) => {
    const enough = band.reduce((s, n) => s + n, 0) > 400;
    const noise = enough
      ? Math.min(percentile(band, numbers.noisePercentile) * (top / steps), 3 * everywhere)
      : everywhere;
    return Math.min(numbers.flatCeiling, Math.max(numbers.flatFloor, numbers.flatTimesNoise * noise));
  });
  return { limit, noise: everywhere };
}

function percentile(counts: Float64Array, part: number): number {
  const goal = part * counts.reduce((s, n) => s + n, 0);
  let sum = 0;
  for (let i = 0; i < counts.length; i++) {
    sum += counts[i]!;
    if (sum >= goal) return i + 1;
  }
  return counts.length;
}
