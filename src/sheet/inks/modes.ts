import { numbers } from '../reading-limits.ts';
import { type ColourCells, neighbours } from './cells.ts';

/** A colour that many flat places agree on. a and b are doubled. */
export interface Mode {
  l: number;
  a: number;
  b: number;
  /** Votes of the hill it tops. */
  votes: number;
}

/** The hills of a histogram, highest vote first. Hills without a real valley between them are one. */
export function modesOf(cells: ColourCells): Mode[] {
  const n = cells.filled;
  const density = smoothed(cells);
  const order = Array.from({ length: n }, (_, i) => i).sort(
    (p, q) => density[q]! - density[p]! || cells.cell[p]! - cells.cell[q]!,
  );
  const root = new Int32Array(n).fill(-1);
  const find = (i: number): number => {
    let r = i;
    while (root[r] !== r) r = root[r]!;
    for (let s = i; root[s] !== r; ) {
      const next = root[s]!;
      root[s] = r;
      s = next;
    }
    return r;
  };
  for (const i of order) {
    root[i] = i;
    // From the top down: the first cell of a hill is its top, and a cell that touches two hills is the pass between them.
    let best = -1;
    for (const { step } of neighbours) {
      const j = cells.place[cells.cell[i]! + step]! - 1;
      if (j < 0 || root[j] === -1) continue;
      const top = find(j);
      if (best === -1) {
        best = top;
        continue;
      }
      if (top === best) continue;
      const [high, low] = density[top]! > density[best]! ? [top, best] : [best, top];
      if (
        density[i]! > numbers.passUnderTop * density[low]! ||
        density[low]! - density[i]! < 3 * Math.sqrt(density[low]!)
      ) {
        root[low] = high;
        best = high;
      } else best = density[top]! > density[best]! ? top : best;
    }
    if (best !== -1) root[i] = best;
  }
  return gather(cells, density, find);
}

function smoothed(cells: ColourCells): Float64Array {
  const out = new Float64Array(cells.filled);
  for (let i = 0; i < out.length; i++) {
    let sum = cells.votes[i]!;
    const cell = cells.cell[i]!;
    for (const { step, weight } of neighbours) {
      const j = cells.place[cell + step]!;
      if (j) sum += weight * cells.votes[j - 1]!;
    }
    out[i] = sum;
  }
  return out;
}

function gather(cells: ColourCells, density: Float64Array, find: (i: number) => number): Mode[] {
  const modes = new Map<number, Mode & { core: number }>();
  for (let i = 0; i < density.length; i++) {
    const top = find(i);
    let mode = modes.get(top);
    if (!mode) {
      mode = { l: 0, a: 0, b: 0, votes: 0, core: 0 };
      modes.set(top, mode);
    }
    mode.votes += cells.votes[i]!;
    // Only the hill's upper part says its colour: the foot holds shading, ringing and bleed.
    if (density[i]! < 0.3 * density[top]!) continue;
    mode.core += cells.votes[i]!;
    mode.l += cells.sumL[i]!;
    mode.a += cells.sumA[i]!;
    mode.b += cells.sumB[i]!;
  }
  return [...modes.values()]
    .map(({ l, a, b, votes, core }) => ({ l: l / core, a: a / core, b: b / core, votes }))
    .sort((p, q) => q.votes - p.votes);
}
