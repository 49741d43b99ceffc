import { ColourCells } from './cells.ts';
import { type Explained, explain } from './explain.ts';
import { countLabels } from './label-counts.ts';
import { type Mode, modesOf } from './modes.ts';
import { numbers } from './numbers.ts';
import type { Planes } from './planes.ts';
import { residualModes } from './residue.ts';
import { apart, mergeNear, offMixture } from './settle.ts';
import { eachWindow } from './windows.ts';

/** The colours a sheet is printed in, and where each lies. */
export interface Found extends Explained {
  readonly colours: readonly Mode[];
}

/** Finds the inks by what flat places say, then what those leave unexplained; drops what is only a mixture or a rim. */
export function findInks(planes: Planes): Found {
  const flat = flatLimit(planes, 1);
  const cells = flatVotes(planes, flat.limit);
  const near = Math.max(numbers.explainedNear, numbers.explainedTimesNoise * flat.noise);
  let colours = mergeNear(modesOf(cells).filter((m) => m.votes >= numbers.leastVotes * cells.total));
  let explained = explain(planes, colours, near);
  for (let turn = 0; turn < 3; turn++) {
    const fresh = newModes(planes, colours, explained.off);
    if (!fresh.length) break;
    colours = [...colours, ...fresh];
    explained = explain(planes, colours, near);
  }
  for (let turn = 0; turn < 6; turn++) {
    const keep = sifted(colours, explained, planes);
    if (keep.length === colours.length) break;
    colours = keep;
    explained = explain(planes, colours, near);
  }
  return { colours, ...explained };
}

function newModes(planes: Planes, colours: readonly Mode[], off: Float32Array): Mode[] {
  const fresh: Mode[] = [];
  for (const mode of residualModes(planes, off)) {
    if (mode.votes < numbers.leastHearts * planes.count) break;
    if ([...colours, ...fresh].every((c) => apart(c, mode) > 0.08)) fresh.push(mode);
    if (fresh.length === 4) break;
  }
  return fresh;
}

function flatVotes(planes: Planes, limit: Float64Array): ColourCells {
  const cells = new ColourCells();
  eachWindow(planes, 1, 1, (_, l, a, b, spread) => {
    if (spread <= limit[Math.min(limit.length - 1, Math.max(0, (l * limit.length) | 0))]!)
      cells.add(l, a, b, 1);
  });
  if (cells.total === 0) eachWindow(planes, 0, 1, (_, l, a, b) => cells.add(l, a, b, 1));
  return cells;
}

/** The most spread a flat window may have, by lightness in ten bands, from the quietest windows of each band. */
function flatLimit(planes: Planes, reach: number): { limit: Float64Array; noise: number } {
  const bands = 10;
  const steps = 200;
  const top = 0.2;
  const counts = Array.from({ length: bands }, () => new Float64Array(steps));
  const all = new Float64Array(steps);
  eachWindow(planes, reach, 3, (_, l, _a, _b, spread) => {
    const band = Math.min(bands - 1, Math.max(0, (l * bands) | 0));
    const at = Math.min(steps - 1, ((spread / top) * steps) | 0);
    counts[band]![at]!++;
    all[at]!++;
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

function sifted(colours: readonly Mode[], { labels, amounts }: Explained, planes: Planes): Mode[] {
  const { area, inside } = countLabels(labels, planes.width, planes.height, colours.length);
  const order = colours.map((_, k) => k).sort((p, q) => area[q]! - area[p]!);
  const kept: number[] = [];
  const out = new Set<number>();
  for (const k of order) {
    const share = amounts[k]! / planes.count;
    const solid = inside[k]! / Math.max(1, area[k]!);
    if (kept.length && share < numbers.leastShare) out.add(k);
    else if (kept.length && solid < numbers.leastInside) out.add(k);
    else if (kept.length > 1 && solid < 0.35 && isMixture(k, kept, colours)) out.add(k);
    else kept.push(k);
  }
  return colours.filter((_, k) => !out.has(k));
}

function isMixture(k: number, of: readonly number[], colours: readonly Mode[]): boolean {
  for (const i of of)
    for (const j of of) {
      if (i >= j) continue;
      const { off, share } = offMixture(colours[k]!, colours[i]!, colours[j]!);
      if (off < numbers.mixtureOffLine && share > 0.08 && share < 0.92) return true;
    }
  return false;
}
