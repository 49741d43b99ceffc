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
  return { ...laid, [change.of]: changed(side, change) };
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
