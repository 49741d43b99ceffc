import { nothing } from '../inks/label-counts.ts';
import type { AsideReason, Places } from '../model.ts';
import { type HandState, withoutInk } from './hand-state.ts';

/**
 * An ink that is none. What was the table belongs to no ink: its places hold nothing and the rest is the whole. What is
 * not printed is the base. A shadow, a shine or dirt lies on what is around it: its share goes to the ink that it
 * borders on most, else to the base. The base itself is never set aside.
 */
export function setAside(state: HandState, at: number, reason: AsideReason): HandState {
  if (at === 0) return state;
  const gone = state.inks[at]!;
  if (reason === 'table') {
    const rest = withoutInk(state, at, () => nothing);
    const left = rest.inks.reduce((sum, ink) => sum + ink.share, 0);
    return left > 0
      ? rest
      : { ...rest, inks: rest.inks.map((ink, n) => ({ ...ink, share: n === 0 ? 1 : 0 })) };
  }
  const to = reason === 'not printed' ? 0 : around(state.places, at, state.inks.length);
  const inks = state.inks.map((ink, n) => (n === to ? { ...ink, share: ink.share + gone.share } : ink));
  return withoutInk({ ...state, inks }, at, () => to);
}

/** Number of the ink that borders most on this one; 0, the base, where none does. */
function around({ width, height, labels }: Places, label: number, count: number): number {
  const meets = new Float64Array(count);
  const see = (k: number | undefined): void => {
    if (k !== undefined && k !== nothing && k !== label && k < count) meets[k]!++;
  };
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      if (labels[i] !== label) continue;
      if (x > 0) see(labels[i - 1]);
      if (x + 1 < width) see(labels[i + 1]);
      if (y > 0) see(labels[i - width]);
      if (y + 1 < height) see(labels[i + width]);
    }
  return meets.indexOf(Math.max(...meets));
}
