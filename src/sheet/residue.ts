import { ColourCells } from './cells.ts';
import { type Mode, modesOf } from './modes.ts';
import type { Planes } from './planes.ts';

/**
 * Colours that neither an ink nor an edge between inks explains: thin lines, tiny accents. `off` is how far each pixel lies from
 * its explanation. Only the heart of such a place speaks, for its rim is itself a mixture. Most hearts first.
 */
export function residualModes(planes: Planes, off: Float32Array): Mode[] {
  return modesOf(heartVotes(planes, off));
}

function heartVotes({ width, height, l, a, b }: Planes, off: Float32Array): ColourCells {
  const cells = new ColourCells();
  const places: number[] = [];
  const soft = new Float32Array(off.length);
  for (let y = 3; y < height - 3; y++)
    for (let x = 3; x < width - 3; x++) {
      const i = y * width + x;
      if (!off[i]) continue;
      let sum = 0;
      for (let dy = -width; dy <= width; dy += width)
        sum += off[i + dy - 1]! + off[i + dy]! + off[i + dy + 1]!;
      soft[i] = sum / 9;
      places.push(i);
    }
  for (const i of places) {
    if (!isTop(soft, i, width)) continue;
    let sl = 0;
    let sa = 0;
    let sb = 0;
    let sn = 0;
    const least = 0.75 * off[i]!;
    for (let dy = -width; dy <= width; dy += width)
      for (let j = i + dy - 1; j <= i + dy + 1; j++)
        if (off[j]! >= least) {
          sl += l[j]!;
          sa += a[j]!;
          sb += b[j]!;
          sn++;
        }
    if (sn > 1) cells.add(sl / sn, sa / sn, sb / sn, 1);
  }
  return cells;
}

/** Whether no place within two pixels is more than a tenth further off. */
function isTop(soft: Float32Array, i: number, width: number): boolean {
  const limit = soft[i]! / 0.9;
  for (let dy = -2; dy <= 2; dy++) {
    const row = i + dy * width;
    for (let j = row - 2; j <= row + 2; j++) if (soft[j]! > limit) return false;
  }
  return true;
}
