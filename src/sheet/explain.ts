import { cellCount, cellOf, middleOf } from './cells.ts';
import { nothing } from './label-counts.ts';
import { Edges } from './mixtures.ts';
import type { Planes } from './planes.ts';

/** Every pixel told as an ink, an edge between two inks near it, or neither. */
export interface Explained {
  /** The ink at each pixel: on an edge the one that has more of it; where nothing explains the pixel, the nearest. */
  readonly labels: Uint8Array;
  /** How far each pixel is from its explanation, 0 where it is explained. */
  readonly off: Float32Array;
  /** How many pixels each ink covers, edges shared out by linear light. */
  readonly amounts: Float64Array;
}

/** How far around an edge the inks on its two sides are looked for, in pixels. */
const reach = 4;

/** Explains every pixel by these colours (a and b doubled). `near` is how close an explanation must come. */
export function explain(
  planes: Planes,
  colours: readonly { readonly l: number; readonly a: number; readonly b: number }[],
  near: number,
): Explained {
  const { l, a, b, on } = planes;
  const size = l.length;
  const labels = new Uint8Array(size).fill(nothing);
  const off = new Float32Array(size);
  const amounts = new Float64Array(colours.length);
  // Nearest ink of each histogram cell, plus 1; from 128 up the ink is too far to explain it.
  const known = new Uint8Array(cellCount);
  for (let i = 0; i < size; i++) {
    if (!on[i]) continue;
    const cell = cellOf(l[i]!, a[i]!, b[i]!);
    let k = known[cell]!;
    if (!k) {
      const [cl, ca, cb] = middleOf(cell);
      let best = 1e9;
      for (let n = 0; n < colours.length; n++) {
        const c = colours[n]!;
        const d = (c.l - cl) ** 2 + (c.a - ca) ** 2 + (c.b - cb) ** 2;
        if (d < best) {
          best = d;
          k = n + 1;
        }
      }
      if (best > near * near) k |= 128;
      known[cell] = k;
    }
    if (k & 128) {
      labels[i] = (k & 127) - 1;
      off[i] = 1;
    } else {
      labels[i] = k - 1;
      amounts[k - 1]!++;
    }
  }
  shareEdges(planes, colours, near, labels, off, amounts);
  return { labels, off, amounts };
}

function shareEdges(
  { width, height, l, a, b }: Planes,
  colours: readonly { readonly l: number; readonly a: number; readonly b: number }[],
  near: number,
  labels: Uint8Array,
  off: Float32Array,
  amounts: Float64Array,
): void {
  const ring = ringSteps(width);
  const edges = new Edges(colours);
  const here = new Uint8Array(8);
  const relabelled: number[] = [];
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (off[i] === 0) continue;
      const k = labels[i]!;
      const c = colours[k]!;
      const pl = l[i]!;
      const pa = a[i]!;
      const pb = b[i]!;
      let least = Math.sqrt((c.l - pl) ** 2 + (c.a - pa) ** 2 + (c.b - pb) ** 2);
      let first = -1;
      let second = -1;
      if (x >= reach && y >= reach && x < width - reach && y < height - reach) {
        let n = 0;
        for (let s = 0; s < ring.length && n < 8; s++) {
          const j = i + ring[s]!;
          // Pixels that wait for an explanation hold 1 or more in `off`; those already told on this pass hold less.
          if (off[j]! !== 0) continue;
          const m = labels[j]!;
          if (m === nothing) continue;
          let seen = false;
          for (let e = 0; e < n; e++) if (here[e] === m) seen = true;
          if (!seen) here[n++] = m;
        }
        for (let p = 1; p < n; p++)
          for (let q = 0; q < p; q++) {
            const d = edges.between(here[p]!, here[q]!).off(pl, pa, pb);
            if (d < least) {
              least = d;
              first = Math.min(here[p]!, here[q]!);
              second = Math.max(here[p]!, here[q]!);
            }
          }
      }
      if (first >= 0 && least <= near) {
        const t = edges.between(first, second).share(pl, pa, pb);
        amounts[first]! += 1 - t;
        amounts[second]! += t;
        relabelled.push(i, t < 0.5 ? first : second);
      } else {
        amounts[k]!++;
        off[i] = Math.max(least, 1e-6);
        relabelled.push(i, -1);
      }
    }
  for (let r = 0; r < relabelled.length; r += 2) {
    const k = relabelled[r + 1]!;
    if (k < 0) continue;
    labels[relabelled[r]!] = k;
    off[relabelled[r]!] = 0;
  }
}

/** Places on four rings about a pixel, nearest first, as steps in a plane. */
function ringSteps(width: number): Int32Array {
  const steps = new Set<number>();
  for (let radius = 1; radius <= reach; radius++)
    for (let k = 0; k < 8; k++) {
      const t = ((k + (radius % 2) / 2) * Math.PI) / 4;
      steps.add(Math.round(radius * Math.sin(t)) * width + Math.round(radius * Math.cos(t)));
    }
  return Int32Array.from(steps);
}
