import type { Lab } from '../../colour/model.ts';
import type { Seen } from '../model.ts';
import { familyNumbers } from './family-numbers.ts';

/** Whether a side is one texture: laid, flecked, linen, kraft or embossed stock, of so little contrast that it is one colour. */
export function isOneTexture(
  members: readonly { readonly lab: Lab; readonly share: number }[],
  seen: Seen | null,
): boolean {
  if (members.length === 1) return true;
  if (seen === null) return false;
  if (Math.hypot(contrastOf(seen), seen.large) >= familyNumbers.plainContrast) return false;
  // What runs over a sheet once, as an ombre does, is no texture though an eye sees no pattern in it.
  const [colour, light] = familyNumbers.textureReach;
  return members.every(({ lab: p }) =>
    members.every(({ lab: q }) => Math.hypot(p.a - q.a, p.b - q.b) < colour && Math.abs(p.l - q.l) < light),
  );
}

/** Contrast of a side's pattern as one number, in steps of L*: colour counts half. Ours. */
export function contrastOf({ light, colour }: Pick<Seen, 'light' | 'colour'>): number {
  return Math.hypot(light, colour / 2);
}
