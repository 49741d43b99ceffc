import { cellStates } from '../harmony/further/judge-parts.ts';
import type { JudgedParts } from '../harmony/model.ts';

/** How thickly a grey veil lies on each cell of judged parts, 0–255: none where it holds, thin where it rests. Ours. */
export function veilOf({ cells }: JudgedParts): Uint8ClampedArray {
  return Uint8ClampedArray.from(cells, (cell) => thickness[cell] ?? thickness[cellStates.nothing]!);
}

const thickness: Readonly<Record<number, number>> = {
  [cellStates.nothing]: 215,
  [cellStates.holds]: 0,
  [cellStates.rests]: 70,
  [cellStates.alone]: 215,
};
