import { oklabFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import { nothing } from '../sheet/inks/label-counts.ts';
import type { Ink, Places, Side, Spot } from '../sheet/model.ts';

/**
 * Places of a fresh reading brought to the inks that are kept: 0 is the kept base, 1… the kept inks in order, 255 nothing.
 * The user's hand may have joined, renamed or set aside inks since; each place goes to the kept ink of the nearest colour.
 */
export function placesForKept(places: Places, fresh: Side, kept: Side): Places {
  const to = [fresh.base, ...fresh.inks].map((ink) => nearestIndex(ink, [kept.base, ...kept.inks]));
  if (to.every((index, i) => index === i)) return places;
  return { ...places, labels: places.labels.map((label) => to[label] ?? nothing) };
}

/** A spot well inside each ink's places, by its label; undefined for an ink that has none. */
export function spotsInside({ width, height, labels }: Places, inks: number): readonly (Spot | undefined)[] {
  const spots: (Spot | undefined)[] = Array.from({ length: inks }, () => undefined);
  // As far inside as there is room for.
  for (let reach = 3; reach >= 0; reach--) {
    for (let y = reach; y < height - reach; y += 2) {
      for (let x = reach; x < width - reach; x += 2) {
        const label = labels[y * width + x] ?? nothing;
        if (label >= inks || spots[label] !== undefined) continue;
        const alike = [-reach, 0, reach].every((dy) =>
          [-reach, 0, reach].every((dx) => labels[(y + dy) * width + x + dx] === label),
        );
        if (alike) spots[label] = { x: (x + 0.5) / width, y: (y + 0.5) / height };
      }
    }
  }
  return spots;
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
