import type { Planes } from '../planes.ts';
import { numbers } from '../reading-limits.ts';
import type { Explained } from './explain.ts';
import { countLabels, nothing } from './label-counts.ts';
import { Edge } from './mixtures.ts';
import type { Mode } from './modes.ts';
import { offMixture } from './settled-inks.ts';

/** The colours that are inks: not too little of them, and not the mixture of two others that they lie between. */
export function sifted(colours: readonly Mode[], { labels, amounts }: Explained, planes: Planes): Mode[] {
  const { area, inside } = countLabels(labels, planes.width, planes.height, colours.length);
  const order = colours.map((_, k) => k).sort((p, q) => area[q]! - area[p]!);
  const kept: number[] = [];
  const out = new Set<number>();
  for (const k of order) {
    const solid = inside[k]! / Math.max(1, area[k]!);
    if (kept.length && amounts[k]! < numbers.leastShare * planes.count) out.add(k);
    else if (
      kept.length > 1 &&
      solid < numbers.rimInside &&
      liesBetween(k, solid, kept, colours, labels, planes.width)
    )
      out.add(k);
    else kept.push(k);
  }
  return colours.filter((_, k) => !out.has(k));
}

/**
 * The colours without specks: inks that have hardly an inside and of which there is too little even now that every edge is
 * shared out, as flecks of a paper are.
 */
export function withoutSpecks(
  colours: readonly Mode[],
  { labels, amounts }: Explained,
  planes: Planes,
): Mode[] {
  const { area, inside } = countLabels(labels, planes.width, planes.height, colours.length);
  return colours.filter(
    (_, k) =>
      amounts[k]! >= numbers.leastThinShare * planes.count || inside[k]! >= numbers.hardlyInside * area[k]!,
  );
}

/** Whether a colour is a mixture of two others and its places mostly lie between those two. */
function liesBetween(
  k: number,
  solid: number,
  kept: readonly number[],
  colours: readonly Mode[],
  labels: Uint8Array,
  width: number,
): boolean {
  const pairs: [number, number][] = [];
  const edgeOff = solid < numbers.noInside ? numbers.edgeOffNoInside : numbers.edgeOff;
  for (const p of kept)
    for (const q of kept) {
      if (p >= q) continue;
      const { off, share } = offMixture(colours[k]!, colours[p]!, colours[q]!);
      const { l, a, b } = colours[k]!;
      if (off < numbers.mixtureOffLine && share > 0.08 && share < 0.92) pairs.push([p, q]);
      // What has hardly an inside may be an edge whose colour a JPEG has blurred off the line.
      else if (solid < numbers.hardlyInside && new Edge(colours[p]!, colours[q]!).off(l, a, b) < edgeOff)
        pairs.push([p, q]);
    }
  if (!pairs.length) return false;
  const seen = labelsAround(k, labels, width);
  return pairs.some(
    ([p, q]) => seen.filter((set) => set.has(p) && set.has(q)).length >= numbers.betweenBoth * seen.length,
  );
}

/** The other labels within three pixels, at up to 600 of a label's places. */
function labelsAround(k: number, labels: Uint8Array, width: number): Set<number>[] {
  let places = 0;
  for (let i = 0; i < labels.length; i++) if (labels[i] === k) places++;
  const every = Math.max(1, places / 600);
  const out: Set<number>[] = [];
  for (let i = 0, n = -1, next = 0; i < labels.length; i++) {
    if (labels[i] !== k || ++n < Math.floor(next)) continue;
    next += every;
    const set = new Set<number>();
    for (let dy = -3; dy <= 3; dy++)
      for (let dx = -3; dx <= 3; dx++) {
        const m = labels[i + dy * width + dx];
        if (m !== undefined && m !== k && m !== nothing) set.add(m);
      }
    out.push(set);
  }
  return out;
}
