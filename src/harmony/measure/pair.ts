import type { Distance } from '../model.ts';
import { linksBetween, type Tied } from './links.ts';
import type { MeasuredInk, MeasuredSide } from './measured.ts';

/** Two measured sides held together, with all their links: what every rule and every reason reads. */
export interface Pair {
  readonly anchor: MeasuredSide;
  readonly candidate: MeasuredSide;
  readonly distance: Distance;
  /** True where a neutral strip or mat lies between them. */
  readonly strip: boolean;
  readonly tied: readonly Tied[];
  /** The links of each ink to the other side. */
  readonly byInk: ReadonlyMap<MeasuredInk, readonly Tied[]>;
}

/** Holds two measured sides together. Papers with a strip between them lie apart. */
export function pairOf(
  anchor: MeasuredSide,
  candidate: MeasuredSide,
  distance: Distance = 'apart',
  strip = false,
): Pair {
  const at = strip ? 'apart' : distance;
  const tied = linksBetween(anchor, candidate, at);
  return { anchor, candidate, distance: at, strip, tied, byInk: byInkOf(tied) };
}

/** The links of one ink to the other side. */
export function linksOf(pair: Pair, ink: MeasuredInk): readonly Tied[] {
  return pair.byInk.get(ink)!;
}

/** The side an ink belongs to, and the one it is held against. */
export function sidesOf(pair: Pair, ink: MeasuredInk): { own: MeasuredSide; other: MeasuredSide } {
  return ink.of === 'anchor'
    ? { own: pair.anchor, other: pair.candidate }
    : { own: pair.candidate, other: pair.anchor };
}

function byInkOf(tied: readonly Tied[]): Map<MeasuredInk, Tied[]> {
  const found = new Map<MeasuredInk, Tied[]>();
  for (const one of tied) {
    for (const ink of [one.a, one.b]) {
      const links = found.get(ink);
      if (links) links.push(one);
      else found.set(ink, [one]);
    }
  }
  return found;
}
