import { oklabFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import type { Ink, Places, Side } from '../sheet/model.ts';

/**
 * Places of a fresh reading brought to the inks that are kept: 0 is the kept base, 1… the kept inks in order, 255 nothing.
 * The user's hand may have joined, renamed or set aside inks since; each place goes to the kept ink of the nearest colour.
 */
export function placesForKept(places: Places, fresh: Side, kept: Side): Places {
  const to = [fresh.base, ...fresh.inks].map((ink) => nearestIndex(ink, [kept.base, ...kept.inks]));
  if (to.every((index, i) => index === i)) return places;
  return { ...places, labels: places.labels.map((label) => to[label] ?? 255) };
}

function nearestIndex(ink: Ink, among: readonly Ink[]): number {
  const at = oklabFromOklch(oklchFromTuple(ink.oklch));
  let best = 0;
  let least = Infinity;
  among.forEach((other, i) => {
    const lab = oklabFromOklch(oklchFromTuple(other.oklch));
    const distance = (lab.l - at.l) ** 2 + 4 * (lab.a - at.a) ** 2 + 4 * (lab.b - at.b) ** 2;
    if (distance < least) [best, least] = [i, distance];
  });
  return best;
}
