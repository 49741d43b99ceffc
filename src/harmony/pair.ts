import { linksBetween, type Tied } from './links.ts';
import type { MeasuredInk, MeasuredSide } from './measured.ts';
import type { Distance } from './model.ts';

/** Two measured sides held together, with all their links: what every rule and every reason reads. */
export interface Pair {
  readonly anchor: MeasuredSide;
  readonly candidate: MeasuredSide;
  readonly distance: Distance;
  /** True where a neutral strip or mat lies between them. */
  readonly strip: boolean;
  readonly tied: readonly Tied[];
}

/** Holds two measured sides together. Papers with a strip between them lie apart. */
export function pairOf(
  anchor: MeasuredSide,
  candidate: MeasuredSide,
  distance: Distance = 'apart',
  strip = false,
): Pair {
  const at = strip ? 'apart' : distance;
  return { anchor, candidate, distance: at, strip, tied: linksBetween(anchor, candidate, at) };
}

/** The links of one ink to the other side. */
export function linksOf(pair: Pair, ink: MeasuredInk): readonly Tied[] {
  const columns = pair.candidate.inks.length;
  if (ink.of === 'anchor') {
    const row = pair.anchor.inks.indexOf(ink);
    return pair.tied.slice(row * columns, (row + 1) * columns);
  }
  const column = pair.candidate.inks.indexOf(ink);
  return pair.anchor.inks.map((_, row) => pair.tied[row * columns + column]!);
}

/** The side an ink belongs to, and the one it is held against. */
export function sidesOf(pair: Pair, ink: MeasuredInk): { own: MeasuredSide; other: MeasuredSide } {
  return ink.of === 'anchor'
    ? { own: pair.anchor, other: pair.candidate }
    : { own: pair.candidate, other: pair.anchor };
}
