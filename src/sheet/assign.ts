import { cellCount, cellOf, middleOf } from './cells.ts';
import type { Planes } from './planes.ts';

/** Label of pixels that are not part of the sheet. */
export const nothing = 255;

/** The nearest colour's number at every pixel, or `nothing`. a and b doubled. */
export function assign(planes: Planes, colours: readonly { l: number; a: number; b: number }[]): Uint8Array {
  const { l, a, b, on } = planes;
  const labels = new Uint8Array(l.length).fill(nothing);
  const known = new Uint8Array(cellCount);
  for (let i = 0; i < labels.length; i++) {
    if (!on[i]) continue;
    const cell = cellOf(l[i]!, a[i]!, b[i]!);
    let label = known[cell]!;
    if (!label) {
      const [cl, ca, cb] = middleOf(cell);
      let best = Number.POSITIVE_INFINITY;
      for (let k = 0; k < colours.length; k++) {
        const c = colours[k]!;
        const d = (c.l - cl) ** 2 + (c.a - ca) ** 2 + (c.b - cb) ** 2;
        if (d < best) {
          best = d;
          label = k + 1;
        }
      }
      known[cell] = label;
    }
    labels[i] = label - 1;
  }
  return labels;
}

/** What a label map says of each label. */
export interface LabelCounts {
  /** Pixels of it. */
  readonly area: Float64Array;
  /** Pixels of it whose eight neighbours are of it too. */
  readonly inside: Float64Array;
  /** Pixels of it on the sheet's border. */
  readonly border: Float64Array;
}

/** Area, inside and border of each of `n` labels. */
export function countLabels(labels: Uint8Array, width: number, height: number, n: number): LabelCounts {
  const area = new Float64Array(n);
  const inside = new Float64Array(n);
  const border = new Float64Array(n);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const k = labels[i]!;
      if (k === nothing) continue;
      area[k]!++;
      if (x === 0 || y === 0 || x === width - 1 || y === height - 1) border[k]!++;
      else if (
        labels[i - 1] === k &&
        labels[i + 1] === k &&
        labels[i - width] === k &&
        labels[i + width] === k &&
        labels[i - width - 1] === k &&
        labels[i - width + 1] === k &&
        labels[i + width - 1] === k &&
        labels[i + width + 1] === k
      )
        inside[k]!++;
    }
  return { area, inside, border };
}
