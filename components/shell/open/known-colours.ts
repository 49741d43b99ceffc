import type { Lab } from '../../../src/colour/model.ts';
import { formatMunsell, munsellFromLab } from '../../../src/colour/munsell/munsell.ts';
import { isccName } from '../../../src/colour/naming/names.ts';
import { labFromHex, labFromOklch, oklchFromTuple } from '../../../src/colour/spaces.ts';
import { parseColourText, whyNoColour } from '../../../src/sheet/typed-colour.ts';
import type { ColourOf, KnownColour } from '../../picture/known-colour.ts';

/** What a colour is, in words: its ISCC-NBS name and its Munsell notation. `lab` where it is known more finely than hex. */
export function knownColour(hex: string, lab: Lab = labFromHex(hex)): KnownColour {
  return { hex, says: `${isccName(lab)}, Munsell ${formatMunsell(munsellFromLab(lab))}` };
}

/** What a typed colour is; undefined where it is none. */
export const colourOfText: ColourOf = Object.assign(knownColourOf, { whyNot: whyNoColour });

function knownColourOf(text: string): KnownColour | undefined {
  const typed = parseColourText(text);
  if (!typed) return undefined;
  const known = knownColour(typed.hex, labFromOklch(oklchFromTuple(typed.oklch)));
  return typed.mapped
    ? { ...known, says: `${known.says}; a screen can’t show it as strong as it is` }
    : known;
}
