import { nothing } from '../../sheet/inks/label-counts.ts';
import type { Places } from '../../sheet/model.ts';
import type { FamilySide } from '../model.ts';

/** Where the families of a side lie: places of its inks as they were read, each brought to its family. 0 is the base's, 255 nothing. */
export function familyPlaces(
  places: Places,
  { families, within }: Pick<FamilySide, 'families' | 'within'>,
): Places {
  const to = within.map(({ id }) => families.findIndex(({ inks }) => inks.includes(id)));
  if (to.every((at, ink) => at === ink)) return places;
  const byInk = Uint8Array.from({ length: 256 }, (_, ink) => to[ink] ?? nothing);
  return { ...places, labels: places.labels.map((ink) => byInk[ink]!) };
}
