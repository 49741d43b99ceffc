import type { SizeMm } from '../sheet/model.ts';
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
  const rest = it.left ? ` The largest piece left is ${millimetres(it.left)}.` : ' Nothing is left.';
  return `From ${it.stock}: ${listed(it.names)}.${how}${rest}`;
}

export const noRoom = (names: readonly string[]): string => `There is no paper left for ${listed(names)}.`;

export const mountThin = (names: readonly string[], gsm: number): string =>
  `${capital(listed(names))} ${names.length > 1 ? 'are' : 'is'} under ${gsm} g/m² and will buckle: mount on cardstock, trimmed a little smaller.`;

export const millimetres = ({ width, height }: SizeMm): string =>
  `${Math.round(width)} × ${Math.round(height)} mm`;
