import { deltaEOk } from '../../colour/difference.ts';
import type { OkLab } from '../../colour/model.ts';
import { linearFromRgb, oklabFromRgb, parseHex, rgbFromOklab } from '../../colour/spaces.ts';
import { inkOf } from '../ink.ts';
import type { Frame, HandChange, HandMade, Ink, PixelImage, Reading, SpecialFinish, Spot } from '../model.ts';
import { refusals } from '../words/refusals.ts';
import { setAside } from './hand-aside.ts';
import { colourAtSpot, coloursOfPlaces, mixedLight } from './hand-colours.ts';
import { splitAt } from './hand-split.ts';
import {
  type HandState,
  okOf,
  readingOf,
  recoloured,
  renumbered,
  stateOf,
  withInkAt,
  withoutInk,
  withShareAt,
} from './hand-state.ts';

/** Thrown where a correction names an ink that the reading does not have; `ink` is its id. */
export class UnknownInk extends Error {
  override readonly name = 'UnknownInk';
  readonly ink: string;

  constructor(ink: string) {
    super(refusals.noInk(ink));
    this.ink = ink;
  }
}

/** Thrown where a correction needs the colour at a spot, and neither the picture nor the colour is there. */
export class NoColourAtSpot extends Error {
  override readonly name = 'NoColourAtSpot';
}

export interface HandOptions {
  /** The part of the picture, in its pixels, that the places cover. Default: all of it. */
  readonly crop?: Frame;
  /** What colour a merged ink has: the one it was merged into, or both in linear light by their shares. Default `kept`. */
  readonly merged?: 'kept' | 'mixed';
}

/** How far an ink may have moved (OKLab) to be known again in another reading. Ours; the notebook uses the same. */
const knownAgain = 0.12;
/** A place is of an added ink where it is at least this near its colour, and nearer than to its own ink's. Ours. */
const ofAdded = 0.06;
/** Share of an added ink of which nothing is known. Ours: a small accent. */
const unknownShare = 0.02;

/**
 * A reading with corrections by hand made on it, oldest first; the same corrections on the same reading give the same.
 * Shares sum to 1 with the base; the places follow; ids go by order after each correction, base first.
 *
 * Which ink is meant: a bare `HandChange` names inks by their ids at the moment it is made, that is after those before
 * it. A `HandMade` also remembers what the inks looked like: where the ink of that id still has the remembered colour it
 * is that one; else it is the ink nearest the remembered colour, if it lies within 0.12 in OKLab. So corrections survive
 * another reading of the sheet.
 *
 * A bare change whose ink is not there throws; a remembered one is left out, since the fresh reading may rightly lack the
 * ink (but what was to be kept comes back).
 *
 * `image` is the picture that was read, its light corrected if the reading's was. Without it, colours at spots are taken
 * from what a `HandMade` remembers, and a split or added ink has no places.
 * @throws UnknownInk, NoColourAtSpot for bare changes only.
 */
export function withHand(
  reading: Reading,
  changes: readonly (HandChange | HandMade)[],
  image?: PixelImage,
  options: HandOptions = {},
): Reading {
  return changes.reduce((before, one) => {
    const made: HandMade = 'change' in one ? one : { change: one, inks: {} };
    try {
      return readingOf(changed(stateOf(before), made, image, options));
    } catch (error) {
      const gone = error instanceof UnknownInk || error instanceof NoColourAtSpot;
      if ('change' in one && gone) return before;
      throw error;
    }
  }, reading);
}

function changed(
  state: HandState,
  made: HandMade,
  image: PixelImage | undefined,
  options: HandOptions,
): HandState {
  const { change } = made;
  const find = (id: string): number => foundAgain(state, id, made.inks[id]);
  switch (change.kind) {
    case 'rename':
      return patched(state, find(change.ink), (ink) => ({ ...ink, trade: change.name, byHand: true }));
    case 'merge':
      return merged(state, find(change.from), find(change.into), options.merged ?? 'kept');
    case 'split': {
      const second = change.spot && colourOf(made, change.spot, image);
      return splitAt(state, find(change.ink), second, image, options.crop);
    }
    case 'keep':
      return kept(state, change.ink, made);
    case 'set-aside':
      return setAside(state, find(change.ink), change.reason);
    case 'set-share':
      return withShareAt(state, find(change.ink), change.share);
    case 'move-spot': {
      const colour = colourOf(made, change.spot, image);
      return patched(state, find(change.ink), (ink) => recoloured(ink, colour));
    }
    case 'add':
      return 'hex' in change
        ? told(state, change.hex, change.special, made.share)
        : spotted(state, colourOf(made, change.spot, image), made.share, image, options.crop);
  }
}

function patched(state: HandState, at: number, patch: (ink: Ink) => Ink): HandState {
  return { ...state, inks: state.inks.map((ink, n) => (n === at ? patch(ink) : ink)) };
}

/** `from` becomes part of `into`. The base stays the base, whichever way round. */
function merged(state: HandState, from: number, into: number, colour: 'kept' | 'mixed'): HandState {
  if (from === into) return state;
  const [gone, stays] = [state.inks[from]!, state.inks[into]!];
  const light = (ink: Ink) => linearFromRgb(rgbFromOklab(okOf(ink)));
  const look =
    colour === 'mixed'
      ? recoloured(stays, mixedLight([light(gone), light(stays)], [gone.share, stays.share]))
      : stays;
  const joint: Ink = { ...look, share: gone.share + stays.share, byHand: true };
  const inks = state.inks.with(into, joint);
  if (from > 0) return withoutInk({ ...state, inks }, from, () => into);
  const swapped = { ...state, inks: inks.with(0, { ...joint, id: gone.id }) };
  return withoutInk(swapped, into, () => 0);
}

function kept(state: HandState, id: string, made: HandMade): HandState {
  const was = made.inks[id];
  const at = was ? knownAt(state, id, was) : foundAgain(state, id, undefined);
  if (!was) return patched(state, at, (ink) => ({ ...ink, byHand: true }));
  const { share, ...look } = plainInk(was);
  if (at < 0) return appended(state, { ...look, share, id: 'kept', byHand: true });
  const same = patched(state, at, (ink) => ({ ...ink, ...look, id: ink.id, byHand: true }));
  return withShareAt(same, at, share);
}

function told(
  state: HandState,
  hex: string,
  special: SpecialFinish | undefined,
  share = unknownShare,
): HandState {
  const rgb = parseHex(hex);
  if (!rgb) throw new NoColourAtSpot(refusals.noColour(hex));
  const ink = { ...inkOf(oklabFromRgb(rgb), 'told', share, false), byHand: true };
  return appended(state, special ? { ...ink, special } : ink);
}

/** An ink that was missed: it takes the places that are nearer its colour than that of the ink they were given to. */
function spotted(
  state: HandState,
  colour: OkLab,
  share: number | undefined,
  image: PixelImage | undefined,
  crop: Frame | undefined,
): HandState {
  const fresh: Ink = { ...inkOf(colour, 'added', 0, false), byHand: true };
  const taken = state.inks.map(() => 0);
  const counts = state.inks.map(() => 0);
  const last = state.inks.length;
  let places = state.places;
  if (image) {
    const colours = coloursOfPlaces(image, places, crop);
    const own = state.inks.map(okOf);
    places = renumbered(places, (k, i) => {
      counts[k]!++;
      const here = colours.ok(i);
      const far = deltaEOk(here, colour);
      if (far > ofAdded || far >= deltaEOk(here, own[k]!)) return k;
      taken[k]!++;
      return last;
    });
  }
  if (taken.every((n) => n === 0)) return appended(state, { ...fresh, share: share ?? unknownShare });
  const inks = state.inks.map((ink, n) => ({
    ...ink,
    share: ink.share * (1 - taken[n]! / Math.max(1, counts[n]!)),
  }));
  const got = state.inks.reduce((sum, ink, n) => sum + ink.share - inks[n]!.share, 0);
  return { ...state, inks: [...inks, { ...fresh, share: got }], places };
}

/** An ink at the end; what it covers is taken from all others in proportion. It has no places. */
function appended(state: HandState, ink: Ink): HandState {
  const at = state.inks.length;
  return withShareAt(withInkAt(state, at, { ...ink, share: 0 }), at, Math.min(0.99, ink.share));
}

function colourOf(made: HandMade, spot: Spot, image: PixelImage | undefined): OkLab {
  if (image) return colourAtSpot(image, spot);
  const rgb = made.hex === undefined ? undefined : parseHex(made.hex);
  if (!rgb) throw new NoColourAtSpot(refusals.noPicture);
  return oklabFromRgb(rgb);
}

function foundAgain(state: HandState, id: string, was: Ink | undefined): number {
  const at = was ? knownAt(state, id, was) : state.inks.findIndex((ink) => ink.id === id);
  if (at < 0) throw new UnknownInk(id);
  return at;
}

function knownAt({ inks }: HandState, id: string, was: Ink): number {
  const same = inks.findIndex((ink) => ink.id === id && ink.hex === was.hex);
  if (same >= 0) return same;
  const far = inks.map((ink) => deltaEOk(okOf(ink), okOf(was)));
  const nearest = far.indexOf(Math.min(...far));
  return far[nearest]! <= knownAgain ? nearest : -1;
}

/** A base that comes back as an ink loses what only a base has. */
function plainInk(ink: Ink & { readonly kind?: unknown; readonly printed?: unknown }): Ink {
  const { kind: _, printed: __, ...plain } = ink;
  return plain;
}
