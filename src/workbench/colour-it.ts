import type { Drawer } from '../drawer/model.ts';
import { colourIt } from '../harmony/further/colour-it.ts';
import type { ColourIt, Comparison } from '../harmony/model.ts';
import type { Ink } from '../sheet/model.ts';
import { inkFromHex } from '../sheet/plain.ts';

/** Something that can be coloured: a plain of the drawer that takes any colour, or white cardstock. */
export interface Colourable {
  readonly id: string;
  readonly name: string;
  readonly base: Ink;
}

/** What of the drawer takes any colour; a plain white is always there. */
export function colourablesIn(drawer: Drawer): readonly Colourable[] {
  const own = drawer.plains
    .filter(({ takesColour }) => takesColour === true)
    .map(({ id, name, ink }) => ({ id, name, base: ink }));
  return [...own, { id: '', name: 'White cardstock', base: inkFromHex('#ffffff', 'ground', 1) }];
}

/** Which colour would tie the pair most, on the ground of what is coloured. */
export function findColourIt(drawer: Drawer, { anchor, candidate }: Comparison, on: Colourable): ColourIt {
  return colourIt(anchor, candidate, { plains: drawer.plains, base: on.base });
}
