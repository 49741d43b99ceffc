import { numbers } from '../reading-limits.ts';

const perUnit = 1 / numbers.cell;
/** Where the histogram begins, and how many cells it has: L −0.05…1.15; doubled a −0.65…0.75, b −0.8…0.6. What lies beyond falls into the last cell. */
const from = { l: 0.05 * perUnit, a: 0.65 * perUnit, b: 0.8 * perUnit } as const;
const lCells = Math.round(1.2 * perUnit);
const abCells = Math.round(1.4 * perUnit);
const lTop = lCells - 2;
const abTop = abCells - 2;

/** Index of the histogram cell that holds a colour (a and b doubled). */
export function cellOf(l: number, a: number, b: number): number {
  let i = (l * perUnit + from.l) | 0;
  let j = (a * perUnit + from.a) | 0;
  let k = (b * perUnit + from.b) | 0;
  if (i < 1) i = 1;
  else if (i > lTop) i = lTop;
  if (j < 1) j = 1;
  else if (j > abTop) j = abTop;
  if (k < 1) k = 1;
  else if (k > abTop) k = abTop;
  return (i * abCells + j) * abCells + k;
}

/** The colour at a cell's middle. */
export function middleOf(cell: number): [l: number, a: number, b: number] {
  const k = cell % abCells;
  const ij = (cell - k) / abCells;
  const j = ij % abCells;
  return [
    ((ij - j) / abCells + 0.5 - from.l) / perUnit,
    (j + 0.5 - from.a) / perUnit,
    (k + 0.5 - from.b) / perUnit,
  ];
}

export const cellCount: number = lCells * abCells * abCells;

/** Steps from a cell to its 26 neighbours, with the weight of a binomial kernel relative to the middle's 1. */
export const neighbours: readonly { readonly step: number; readonly weight: number }[] = (() => {
  const out: { step: number; weight: number }[] = [];
  for (let i = -1; i <= 1; i++)
    for (let j = -1; j <= 1; j++)
      for (let k = -1; k <= 1; k++) {
        const off = Math.abs(i) + Math.abs(j) + Math.abs(k);
        if (off) out.push({ step: (i * abCells + j) * abCells + k, weight: 0.5 ** off });
      }
  return out;
})();

/** As many cells as a histogram holds; a picture of pure noise has more, and the rest then do not count. */
const mostCells = 65535;

/** Maps of all cells that were given back, all nought: to make one takes longer than to read a small picture. */
const spare: Uint16Array[] = [];

/** A sparse histogram of colours: the filled cells in the order they were first met. */
export class ColourCells {
  /** Place of a cell in the lists below plus 1, or 0. */
  readonly place: Uint16Array = spare.pop() ?? new Uint16Array(cellCount);
  /** How many cells are filled. */
  filled = 0;
  cell: Int32Array = new Int32Array(4096);
  votes: Float64Array = new Float64Array(4096);
  sumL: Float64Array = new Float64Array(4096);
  sumA: Float64Array = new Float64Array(4096);
  sumB: Float64Array = new Float64Array(4096);
  total = 0;

  add(l: number, a: number, b: number): void {
    const cell = cellOf(l, a, b);
    let at = this.place[cell]! - 1;
    if (at < 0) {
      if (this.filled === mostCells) return;
      at = this.filled++;
      if (at === this.cell.length) this.grow();
      this.cell[at] = cell;
      this.place[cell] = at + 1;
    }
    this.votes[at]!++;
    this.sumL[at]! += l;
    this.sumA[at]! += a;
    this.sumB[at]! += b;
    this.total++;
  }

  /** Gives its map back for the next one; nothing may be asked of this one any more. */
  done(): void {
    for (let n = 0; n < this.filled; n++) this.place[this.cell[n]!] = 0;
    this.filled = 0;
    if (spare.length < 2) spare.push(this.place);
  }

  private grow(): void {
    const twice = <T extends Int32Array | Float64Array>(old: T, fresh: T): T => {
      fresh.set(old);
      return fresh;
    };
    const n = 2 * this.cell.length;
    this.cell = twice(this.cell, new Int32Array(n));
    this.votes = twice(this.votes, new Float64Array(n));
    this.sumL = twice(this.sumL, new Float64Array(n));
    this.sumA = twice(this.sumA, new Float64Array(n));
    this.sumB = twice(this.sumB, new Float64Array(n));
  }
}
