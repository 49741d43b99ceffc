import { hexFromOklch } from '../colour/gamut.ts';
import { isccName } from '../colour/naming/names.ts';
import { tradeWord } from '../colour/naming/trade-words.ts';
import { labFromOklch, oklchFromHex, oklchFromTuple, tupleFromOklch } from '../colour/spaces.ts';
import type { Ink, Plain, PlainKind, Side } from './model.ts';
import { baseKind } from './print/base.ts';
import { lightWords } from './words/light-words.ts';

/** A plain's one colour as a side: nothing but its base. */
export function sideOfPlain(plain: Plain): Side {
  const lab = labFromOklch(oklchFromTuple(plain.ink.oklch));
  const kind = baseKind(lab);
  // A plain is what it is: dyed or printed, its ground is its colour.
  return {
    base: { ...plain.ink, id: 'A', share: 1, accent: false, kind, printed: false },
    inks: [],
    print: { busyness: 0, repeatMm: null, scale: null },
    light: { known: true, note: lightWords.given },
  };
}

/**
 * An ink of a hex colour, named.
 * @throws RangeError where the text is no hex colour.
 */
export function inkFromHex(hex: string, id = 'A', share = 1): Ink {
  const oklch = oklchFromHex(hex);
  return {
    id,
    hex: hexFromOklch(oklch),
    oklch: tupleFromOklch(oklch),
    name: isccName(labFromOklch(oklch)),
    trade: tradeWord(oklch),
    share,
    accent: share < 0.05,
  };
}

/**
 * A plain of a typed colour. Its id is made of kind and name.
 * @throws RangeError where the text is no hex colour.
 */
export function plainOf({ name, kind, hex }: { name: string; kind: PlainKind; hex: string }): Plain {
  const slug = `${kind} ${name}`.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  return { id: slug, name, kind, ink: inkFromHex(hex) };
}
