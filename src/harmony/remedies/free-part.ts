import { nothing } from '../../sheet/inks/label-counts.ts';
import type { Places } from '../../sheet/model.ts';

/**
 * How large a square of the sheet is free of an ink: the side of the largest one, as a part 0–1 of the sheet's longer
 * side. `label` is the ink's number in the places. What was not read counts as not free.
 */
export function freePartOf({ width, height, labels }: Places, label: number): number {
  // Each entry is the side of the largest free square whose last corner lies there.
  let above = new Uint16Array(width + 1);
  let largest = 0;
  for (let y = 0; y < height; y++) {
    const row = new Uint16Array(width + 1);
    for (let x = 0; x < width; x++) {
      const here = labels[y * width + x]!;
      if (here === label || here === nothing) continue;
      const side = 1 + Math.min(row[x]!, above[x]!, above[x + 1]!);
      row[x + 1] = side;
      if (side > largest) largest = side;
    }
    above = row;
  }
  return largest / Math.max(width, height);
}
