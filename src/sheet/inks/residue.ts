import type { Planes } from '../planes.ts';
import { ColourCells } from './cells.ts';
import type { Explained } from './explain.ts';
import { type Mode, modesOf } from './modes.ts';

/**
 * Colours that neither an ink nor an edge between inks explains: thin lines, tiny accents. Only the heart of such a place speaks, for its rim is itself a mixture. Most hearts first.
 */
export function residualModes(planes: Planes, { off, open }: Explained): Mode[] {
  const votes = heartVotes(planes, off, open);
  const modes = modesOf(votes);
  votes.done();
  return modes;
}

function heartVotes({ width, l, a, b }: Planes, off: Uint8Array, open: Int32Array): ColourCells {
  const cells = new ColourCells();
  // Sums over 3 × 3 pixels: in the middle of a place they are highest.
  const soft = new Uint16Array(off.length);
  const first = 3 * width;
  const last = off.length - first;
  for (const i of open) {
    if (i < first || i >= last) continue;
    let sum = 0;
    for (let dy = -width; dy <= width; dy += width) sum += off[i + dy - 1]! + off[i + dy]! + off[i + dy + 1]!;
    soft[i] = sum;
  }
  for (const i of open) {
    const x = i % width;
    if (!soft[i] || x < 3 || x >= width - 3) continue;
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
    if (sn > 1) cells.add(sl / sn, sa / sn, sb / sn);
  }
  return cells;
}

/** Whether no place within two pixels is more than a tenth further off. */
function isTop(soft: Uint16Array, i: number, width: number): boolean {
  const limit = soft[i]! / 0.9;
  for (let dy = -2; dy <= 2; dy++) {
    const row = i + dy * width;
    for (let j = row - 2; j <= row + 2; j++) if (soft[j]! > limit) return false;
  }
  return true;
}
