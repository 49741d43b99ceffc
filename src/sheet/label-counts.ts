/** Label of pixels that are not part of the sheet. */
export const nothing = 255;

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
