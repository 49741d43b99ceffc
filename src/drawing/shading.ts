import { shades } from '../harmony/further/other-shade.ts';
import type { Shading } from '../harmony/model.ts';

/** How thickly a grey veil lies on each cell of a shading, 0–255: none where it holds, thin where it rests. Ours. */
export function veilOf({ cells }: Shading): Uint8ClampedArray {
  return Uint8ClampedArray.from(cells, (cell) => thickness[cell] ?? thickness[shades.nothing]!);
}

const thickness: Readonly<Record<number, number>> = {
  [shades.nothing]: 215,
  [shades.holds]: 0,
  [shades.rests]: 70,
  [shades.alone]: 215,
};
