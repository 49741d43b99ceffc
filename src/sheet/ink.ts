import { hexFromOklch } from '../colour/gamut.ts';
import type { OkLab } from '../colour/model.ts';
import { isccName } from '../colour/naming/names.ts';
import { tradeWord } from '../colour/naming/trade-words.ts';
import { labFromOklch, oklchFromOklab, tupleFromOklch } from '../colour/spaces.ts';
import type { Ink } from './model.ts';

/** Base first: A, B, C … Z, then A2, B2 … */
export function idAt(place: number, first: 'A' | 'a' = 'A'): string {
  const letter = String.fromCharCode(first.charCodeAt(0) + (place % 26));
  return place < 26 ? letter : `${letter}${Math.floor(place / 26) + 1}`;
}

/** An ink of an OKLab colour (unmapped), named. */
export function inkOf(ok: OkLab, id: string, share: number, accent: boolean): Ink {
  const oklch = oklchFromOklab(ok);
  return {
    id,
    hex: hexFromOklch(oklch),
    oklch: tupleFromOklch(oklch),
    name: isccName(labFromOklch(oklch)),
    trade: tradeWord(oklch),
    share,
    accent,
  };
}
