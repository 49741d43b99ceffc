import { idAt } from './ink.ts';
import type { Side } from './model.ts';

/** The side with its ids set by order, base first: A, B, C … for an anchor, a, b, c … for a candidate. */
export function relabel(side: Side, as: 'anchor' | 'candidate'): Side {
  const first = as === 'anchor' ? 'A' : 'a';
  const renamed = new Map<string, string>();
  const name = <T extends { readonly id: string }>(ink: T, place: number): T => {
    const id = idAt(place, first);
    renamed.set(ink.id, id);
    return { ...ink, id };
  };
  const base = name(side.base, 0);
  const inks = side.inks.map((ink, n) => name(ink, n + 1));
  const ramps = side.ramps?.map((ramp) => ({ ...ramp, inks: ramp.inks.map((id) => renamed.get(id) ?? id) }));
  return { ...side, base, inks, ...(ramps ? { ramps } : {}) };
}
