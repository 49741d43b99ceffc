import type { Lab } from '../../colour/model.ts';
import { labFromOklch, oklchFromTuple } from '../../colour/spaces.ts';
import type { Ink, Side } from '../../sheet/model.ts';
import type { Change } from '../model.ts';

/** Two sides as they would lie after some changes. */
export interface Laid {
  readonly anchor: Side;
  readonly candidate: Side;
  readonly strip: boolean;
}

/** The sides after the changes, in order. Shares of a side go on summing to what they did. */
export function applyChanges(anchor: Side, candidate: Side, changes: readonly Change[], strip = false): Laid {
  return changes.reduce<Laid>(applyOne, { anchor, candidate, strip });
}

function applyOne(laid: Laid, change: Change): Laid {
  if (change.kind === 'strip') return { ...laid, strip: true };
  const side = laid[change.of];
  const after = changed(side, change);
  return { ...laid, [change.of]: change.kind === 'replace' ? after : seenAfter(side, after) };
}

function changed(side: Side, change: Exclude<Change, { kind: 'strip' }>): Side {
  switch (change.kind) {
    case 'cover':
      return coverInk(side, change.ink, change.with);
    case 'trim':
      return trimInk(side, change.ink, change.toShare ?? 0);
    case 'recolour':
      return recolourInk(side, change.ink, change.to);
    case 'add':
      return addInk(side, change.ink, change.share);
    case 'replace':
      return change.side;
  }
}

/** What an eye sees of a side after a change, about: contrast follows how far apart its colours lie, by area. Ours. */
function seenAfter(before: Side, after: Side): Side {
  const { seen } = before;
  if (!seen || before === after) return after;
  const [was, is] = [spreadOf(before), spreadOf(after)];
  const by = (one: number, other: number): number => (one > 0 ? Math.min(mostGrown, other / one) : 1);
  const [light, colour] = [by(was.light, is.light), by(was.colour, is.colour)];
  const large = by(Math.hypot(was.light, was.colour), Math.hypot(is.light, is.colour));
  return {
    ...after,
    seen: { ...seen, light: seen.light * light, colour: seen.colour * colour, large: seen.large * large },
  };
}

/** What is laid on in small pieces adds contrast, but no more than this. */
const mostGrown = 2;

/** Standard deviation of L* and of a*, b* over a side, by area. */
function spreadOf({ base, inks }: Side): { light: number; colour: number } {
  const all = [base, ...inks].map(({ oklch, share }) => ({
    lab: labFromOklch(oklchFromTuple(oklch)),
    share,
  }));
  const whole = all.reduce((sum, { share }) => sum + share, 0) || 1;
  const variance = (of: (lab: Lab) => number): number => {
    const mean = all.reduce((sum, { lab, share }) => sum + of(lab) * share, 0) / whole;
    return all.reduce((sum, { lab, share }) => sum + share * (of(lab) - mean) ** 2, 0) / whole;
  };
  return {
    light: Math.sqrt(variance(({ l }) => l)),
    colour: Math.sqrt(variance(({ a }) => a) + variance(({ b }) => b)),
  };
}

/** The side with one ink hidden under another, which takes over its share. The base cannot be covered. */
export function coverInk(side: Side, id: string, cover: Ink): Side {
  const gone = side.inks.find((ink) => ink.id === id);
  if (!gone) return side;
  const rest = side.inks.filter((ink) => ink !== gone);
  const isCover = (ink: Ink) => ink.id === cover.id && ink.hex === cover.hex;
  if (isCover(side.base))
    return { ...side, base: { ...side.base, share: side.base.share + gone.share }, inks: rest };
  if (rest.some(isCover)) {
    return {
      ...side,
      inks: rest.map((ink) => (isCover(ink) ? { ...ink, share: ink.share + gone.share } : ink)),
    };
  }
  return { ...side, inks: side.inks.map((ink) => (ink === gone ? { ...cover, share: gone.share } : ink)) };
}

/** The side cut down so that an ink keeps only this share of it; what is left grows in proportion. */
export function trimInk(side: Side, id: string, toShare: number): Side {
  const cut = side.inks.find((ink) => ink.id === id);
  if (!cut || cut.share <= toShare) return side;
  const grow = (1 - toShare) / (1 - cut.share);
  const inks = side.inks
    .map((ink) => ({ ...ink, share: ink === cut ? toShare : ink.share * grow }))
    .filter((ink) => ink.share > 0);
  return { ...side, base: { ...side.base, share: side.base.share * grow }, inks };
}

/** The side with one ink (or its base) in another colour. */
export function recolourInk(side: Side, id: string, to: Ink): Side {
  const recoloured = <T extends Ink>(ink: T): T =>
    ink.id === id ? { ...ink, hex: to.hex, oklch: to.oklch, name: to.name, trade: to.trade ?? null } : ink;
  return { ...side, base: recoloured(side.base), inks: side.inks.map(recoloured) };
}

/** The side with something of another colour laid on it; all else gives way in proportion. */
export function addInk(side: Side, ink: Ink, share: number): Side {
  const shrink = 1 - share;
  const give = <T extends Ink>(one: T): T => ({ ...one, share: one.share * shrink });
  const added: Ink = { ...ink, share, accent: share < 0.05 };
  return { ...side, base: give(side.base), inks: [...side.inks.map(give), added] };
}
