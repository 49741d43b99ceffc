import type { OkLab } from '../../colour/model.ts';
import type { Frame, Ink, PixelImage, Places } from '../model.ts';
import { coloursOfPlaces, mixedLight, partedInTwo } from './hand-colours.ts';
import { type HandState, okOf, recoloured, withInkAt } from './hand-state.ts';

/**
 * One ink that is two. With the picture, its places are parted by their colours and each part has their mean in linear
 * light (the second the colour that was pointed at, if one was); the larger part stays first. Without it, or where all
 * its places are alike, each gets half of the share: how much is which, only the hand can tell.
 */
export function splitAt(
  state: HandState,
  at: number,
  second: OkLab | undefined,
  image: PixelImage | undefined,
  crop: Frame | undefined,
): HandState {
  const ink = state.inks[at]!;
  const own = placesOfInk(state.places, at);
  const colours = image && coloursOfPlaces(image, state.places, crop);
  const parts = partedInTwo(colours ? own.map(colours.ok) : [], okOf(ink), second);
  const count = parts.reduce((sum, part) => sum + part, 0);
  if (!colours || count === 0 || count === parts.length) {
    const half = ink.share / 2;
    const twin: Ink = { ...ink, id: 'split', share: half, byHand: true };
    const inks = state.inks.with(at, { ...ink, share: half, byHand: true });
    return withInkAt({ ...state, inks }, at + 1, second ? recoloured(twin, second) : twin);
  }
  // The larger part keeps the name and the place in the order, unless the second was pointed at.
  const firstPart = !second && count * 2 > parts.length ? 1 : 0;
  const meanOf = (part: number): OkLab =>
    mixedLight(own.filter((_, i) => parts[i] === part).map(colours.light));
  const ratio = (firstPart === 1 ? parts.length - count : count) / parts.length;
  const first = recoloured({ ...ink, share: ink.share * (1 - ratio) }, meanOf(firstPart));
  const other = recoloured(
    { ...ink, id: 'split', share: ink.share * ratio },
    second ?? meanOf(1 - firstPart),
  );
  const put = withInkAt({ ...state, inks: state.inks.with(at, first) }, at + 1, other);
  const labels = put.places.labels.slice();
  own.forEach((place, i) => {
    if (parts[i] !== firstPart) labels[place] = at + 1;
  });
  return { ...put, places: { ...put.places, labels } };
}

function placesOfInk({ labels }: Places, label: number): number[] {
  const out: number[] = [];
  labels.forEach((k, i) => {
    if (k === label) out.push(i);
  });
  return out;
}
