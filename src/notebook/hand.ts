import { deltaEOk } from '../colour/difference.ts';
import { oklabFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import type { Base, HandMade, Ink, Side } from '../sheet/model.ts';
import { inkFromHex } from '../sheet/plain.ts';
import { relabel } from '../sheet/relabel.ts';
import { joined, scaled, withInk, withShare } from './hand-shares.ts';
import { limits } from './limits.ts';

/** How far an ink may have moved in OKLab to be known again in another reading. Ours: past it, another ink is nearer. */
const knownAgain = 0.12;

/** Share of an added ink of which nothing is known. Ours: a small accent. */
const unknownShare = 0.02;

/**
 * A reading with corrections made on it, oldest first. Inks that a correction names are found by id where they are as
 * they were, else by colour; a correction whose ink is not there any more is left out, but what was to be kept comes
 * back. Ids go by order afterwards, base first; shares sum to 1. The same object where nothing changes.
 */
export function madeByHand(side: Side, hand: readonly HandMade[]): Side {
  return hand.reduce((reading, made) => {
    const after = madeOne(reading, made);
    return after === reading ? reading : relabel(after, 'anchor');
  }, side);
}

function madeOne(side: Side, made: HandMade): Side {
  const { change } = made;
  const find = (id: string): Ink | undefined => foundAgain(side, id, made.inks[id]);
  switch (change.kind) {
    case 'add':
      return added(side, made);
    case 'merge': {
      const from = find(change.from);
      const into = find(change.into);
      return from && into && from !== into ? joined(side, from.id, into.id) : side;
    }
    case 'keep': {
      const was = made.inks[change.ink];
      const ink = find(change.ink);
      if (was === undefined) return side;
      if (ink === undefined) return appended(side, was);
      const { share, ...look } = colourOf(was);
      return withShare(withInk(side, ink.id, look), ink.id, share);
    }
    case 'set-aside': {
      const ink = find(change.ink);
      const inks = side.inks.filter((one) => one !== ink);
      return inks.length === side.inks.length ? side : scaled({ ...side, inks }, 1);
    }
    case 'rename': {
      const ink = find(change.ink);
      return ink ? withInk(side, ink.id, { trade: change.name }) : side;
    }
    case 'set-share': {
      const ink = find(change.ink);
      return ink ? withShare(side, ink.id, change.share) : side;
    }
    case 'move-spot': {
      const ink = find(change.ink);
      return ink && made.hex !== undefined ? withInk(side, ink.id, freshColour(made.hex)) : side;
    }
    case 'split':
      return split(side, find(change.ink), made);
  }
}

function added(side: Side, made: HandMade): Side {
  const { change } = made;
  if (change.kind !== 'add') return side;
  const hex = 'hex' in change ? change.hex : made.hex;
  if (hex === undefined) return side;
  const special = 'special' in change && change.special !== undefined ? { special: change.special } : {};
  return appended(side, { ...inkFromHex(hex), ...special, share: made.share ?? unknownShare });
}

/** An ink at the end; what it covers is taken from all others in proportion. */
function appended(side: Side, ink: Ink): Side {
  if (side.inks.length >= limits.inks) return side;
  const share = Math.min(Math.max(ink.share, 0), 0.99);
  const rest = scaled(side, 1 - share);
  const fresh: Ink = { ...colourOf(ink), id: 'new', share, accent: share < 0.05, byHand: true };
  return { ...rest, inks: [...rest.inks, fresh] };
}

/** Half of the ink's area to each: how much is which, only the hand can tell. */
function split(side: Side, ink: Ink | undefined, made: HandMade): Side {
  if (ink === undefined || side.inks.length >= limits.inks) return side;
  const share = ink.share / 2;
  const colour = made.hex === undefined ? colourOf(ink) : inkFromHex(made.hex);
  const second: Ink = { ...colour, id: 'new', share, accent: share < 0.05, byHand: true };
  const rest = withInk(side, ink.id, { share, accent: share < 0.05 && ink.id !== side.base.id });
  const at = rest.inks.findIndex((one) => one.id === ink.id);
  return { ...rest, inks: rest.inks.toSpliced(at + 1, 0, second) };
}

function foundAgain(side: Side, id: string, was: Ink | undefined): Ink | undefined {
  const inks = [side.base, ...side.inks];
  const same = inks.find((ink) => ink.id === id);
  if (was === undefined || (same !== undefined && same.hex === was.hex)) return same;
  const at = oklabFromOklch(oklchFromTuple(was.oklch));
  const far = (ink: Ink) => deltaEOk(oklabFromOklch(oklchFromTuple(ink.oklch)), at);
  const nearest = inks.reduce((best, ink) => (far(ink) < far(best) ? ink : best));
  return far(nearest) <= knownAgain ? nearest : undefined;
}

/** A base that is set as an ink loses what only a base has. */
function colourOf(ink: Ink | Base): Ink {
  if (!('kind' in ink)) return ink;
  const { kind: _, printed: __, ...plain } = ink;
  return plain;
}

function freshColour(hex: string): Partial<Ink> {
  const { hex: shown, oklch, name, trade } = inkFromHex(hex);
  return { hex: shown, oklch, name, trade: trade ?? null };
}
