import type { Ink, Side } from '../sheet/model.ts';

/** The side with one ink changed by hand; ids stay. */
export function withInk(side: Side, id: string, change: Partial<Ink>): Side {
  const changed = <T extends Ink>(ink: T): T =>
    ink.id === id ? { ...ink, ...change, id, byHand: true } : ink;
  return { ...side, base: changed(side.base), inks: side.inks.map(changed) };
}

/** One ink's share set, 0–1; the others take or give in proportion. With nothing else on the side, all of it is this ink. */
export function withShare(side: Side, id: string, wanted: number): Side {
  const ink = [side.base, ...side.inks].find((one) => one.id === id);
  if (ink === undefined) return side;
  const others = 1 - ink.share;
  const share = others <= 0 ? ink.share : within(wanted);
  const rest = others <= 0 || share === ink.share ? side : scaledOthers(side, id, (1 - share) / others);
  return withInk(rest, id, { share, accent: share < 0.05 && id !== side.base.id });
}

/** `from` becomes part of `into`, which keeps its colour and gets the share of both. */
export function joined(side: Side, from: string, into: string): Side {
  const gone = side.inks.find((ink) => ink.id === from);
  const kept = [side.base, ...side.inks].find((ink) => ink.id === into);
  if (gone === undefined || kept === undefined) return side;
  const share = kept.share + gone.share;
  const inks = side.inks.filter((ink) => ink !== gone);
  return withInk({ ...side, inks }, into, { share, accent: kept.accent && share < 0.05 });
}

/** All shares in proportion, so that they sum to `total`. */
export function scaled(side: Side, total: number): Side {
  const sum = side.inks.reduce((all, ink) => all + ink.share, side.base.share);
  if (sum <= 0) return { ...side, base: { ...side.base, share: total } };
  return scaledOthers(side, '', total / sum);
}

function scaledOthers(side: Side, id: string, by: number): Side {
  const scale = <T extends Ink>(ink: T): T => (ink.id === id ? ink : { ...ink, share: ink.share * by });
  return { ...side, base: scale(side.base), inks: side.inks.map(scale) };
}

function within(value: number): number {
  return Number.isFinite(value) ? Math.min(Math.max(value, 0), 1) : 0;
}
