import { numbers } from './numbers.ts';

const size = numbers.cell;
/** Lightness −0.05…1.15; doubled a and b −0.8…0.8. Colours beyond fall into the last cell. */
const lCells = Math.ceil(1.2 / size);
const abCells = Math.ceil(1.6 / size);

/** Index of the histogram cell that holds a colour (a and b doubled). */
export function cellOf(l: number, a: number, b: number): number {
  let i = ((l + 0.05) / size) | 0;
  let j = ((a + 0.8) / size) | 0;
  let k = ((b + 0.8) / size) | 0;
  if (i < 1) i = 1;
  else if (i > lCells - 2) i = lCells - 2;
  if (j < 1) j = 1;
  else if (j > abCells - 2) j = abCells - 2;
  if (k < 1) k = 1;
  else if (k > abCells - 2) k = abCells - 2;
  return (i * abCells + j) * abCells + k;
}

/** The colour at a cell's middle. */
export function middleOf(cell: number): [l: number, a: number, b: number] {
  const k = cell % abCells;
  const ij = (cell - k) / abCells;
  const j = ij % abCells;
  return [((ij - j) / abCells + 0.5) * size - 0.05, (j + 0.5) * size - 0.8, (k + 0.5) * size - 0.8];
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

/** A sparse histogram of colours: the filled cells in the order they were first met. */
export class ColourCells {
  /** Place of a cell in the lists below plus 1, or 0. */
  readonly place: Int32Array = new Int32Array(cellCount);
  readonly cell: number[] = [];
  readonly votes: number[] = [];
  readonly sumL: number[] = [];
  readonly sumA: number[] = [];
  readonly sumB: number[] = [];
  total = 0;

  add(l: number, a: number, b: number, weight: number): void {
    const cell = cellOf(l, a, b);
    let at = this.place[cell]!;
    if (!at) {
      at = this.cell.push(cell);
      this.place[cell] = at;
      this.votes.push(0);
      this.sumL.push(0);
      this.sumA.push(0);
      this.sumB.push(0);
    }
    this.votes[at - 1]! += weight;
    this.sumL[at - 1]! += l * weight;
    this.sumA[at - 1]! += a * weight;
    this.sumB[at - 1]! += b * weight;
    this.total += weight;
  }
}
