import type { SizeMm } from '../../sheet/model.ts';
import { capital, listed } from './sentences.ts';

/** What a cut list says. */

export const matName = (piece: string): string => `mat for ${piece}`;

export function fromSheet(it: {
  readonly stock: string;
  readonly names: readonly string[];
  readonly stopped: boolean;
  readonly left: SizeMm | null;
}): string {
  const how = it.stopped
    ? ' Some cuts must stop inside the sheet: a knife and a rule, not a trimmer.'
    : ' Every cut runs from edge to edge.';
  const rest = it.left ? ` The largest piece left is ${sizeWords(it.left)}.` : ' Nothing is left.';
  return `From ${it.stock}: ${listed(it.names)}.${how}${rest}`;
}

export const noRoom = (names: readonly string[]): string => `There is no paper left for ${listed(names)}.`;

export const tooLarge = (names: readonly string[], stock: string, sizeMm: SizeMm): string =>
  `Larger than the sheet to cut from, ${stock} of ${sizeWords(sizeMm)}: ${listed(names)}.`;

export const leftOut = (names: readonly string[]): string => `Left out, without a size: ${listed(names)}.`;

export const mountThin = (names: readonly string[], gsm: number): string =>
  `${capital(listed(names))} ${names.length > 1 ? 'are' : 'is'} under ${gsm} g/m² and will buckle: mount on cardstock, trimmed a little smaller.`;

/** "305 × 152 mm (12 × 6 in)": whole millimetres, and inches to the nearest eighth, as rules are marked. */
export const sizeWords = ({ width, height }: SizeMm): string =>
  `${Math.round(width)} × ${Math.round(height)} mm (${inches(width)} × ${inches(height)} in)`;

function inches(mm: number): string {
  const eighths = Math.round((mm / 25.4) * 8);
  if (eighths === 0) return 'under ⅛';
  const [whole, part] = [Math.floor(eighths / 8), fractions[eighths % 8]!];
  return whole === 0 ? part : `${whole}${part}`;
}

const fractions = ['', '⅛', '¼', '⅜', '½', '⅝', '¾', '⅞'] as const;

export const tooMany = (count: number, most: number): string =>
  `That is ${count.toLocaleString('en')} pieces to cut, with their mats. A cut list is worked out for up to ${most}: choose fewer, or spread them over several kits.`;
