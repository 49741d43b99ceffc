import { labFromHex } from '../../../src/colour/spaces.ts';
import { idAt } from '../../../src/sheet/ink.ts';
import type { Seen, Side } from '../../../src/sheet/model.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { baseKind } from '../../../src/sheet/print/base.ts';

/** A side of these colours and shares, the base first, without pixels; with what an eye would see of it, where that is given. */
export function handMade(colours: readonly (readonly [hex: string, share: number])[], seen?: Seen): Side {
  const [base, ...inks] = colours.map(([hex, share], place) => inkFromHex(hex, idAt(place), share));
  return {
    base: { ...base!, accent: false, kind: baseKind(labFromHex(base!.hex)), printed: null },
    inks,
    print: { busyness: colours.length > 1 ? 0.3 : 0, repeatMm: null, scale: null },
    light: { known: true, note: '' },
    ...(seen ? { seen } : {}),
  };
}

/** What an eye sees of plain stock, of a loose print of much contrast, of small dots in rows, of a bold check. */
export const looks = {
  still: { light: 2, colour: 1, large: 0.3, fine: 0.5, regular: 0, repeatMm: null },
  loose: { light: 13, colour: 14, large: 6, fine: 0.1, regular: 0, repeatMm: null },
  dots: { light: 20, colour: 5, large: 0, fine: 0.2, regular: 1, repeatMm: 9 },
  check: { light: 26, colour: 10, large: 0.2, fine: 0.1, regular: 1, repeatMm: 16 },
} as const satisfies Record<string, Seen>;
