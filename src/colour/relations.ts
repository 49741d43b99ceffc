import { hueTurnDeg } from './hue.ts';
import type { Wheel } from './model.ts';
import { placeOnWheel } from './wheels.ts';

export type RelationKind = 'complementary' | 'split complementary' | 'analogous' | 'triad' | 'tetrad';

/** A hue that is there, and the id of what bears it. */
export interface HeldHue {
  readonly id: string;
  /** OKLCH hue in degrees. */
  readonly hueDeg: number;
}

/** A figure of the wheel found among hues that are there. */
export interface Relation {
  readonly kind: RelationKind;
  readonly wheel: Wheel;
  /** In the order of the figure; for a split complementary the one that stands alone is first. */
  readonly ids: readonly string[];
  /** How far it is off: the largest difference between an angle in it and the angle it should be, degrees. */
  readonly offDeg: number;
}

/**
 * The figures that some hues already form on one wheel, truest first. It recognises; it proposes nothing.
 * Hues are taken as given: leave neutrals out before.
 * Source: figures: J. Itten, Kunst der Farbe (1961); how far one may be off is ours.
 */
export function relationsAmong(hues: readonly HeldHue[], wheel: Wheel): Relation[] {
  const placed = hues
    .map(({ id, hueDeg }) => ({ id, place: placeOnWheel(hueDeg, wheel) }))
    .sort((a, b) => a.place - b.place);
  const found: Relation[] = [];
  for (const { kind, angles } of figures)
    for (const group of groupsOf(placed, angles.length)) {
      const fit = bestFit(group, angles);
      if (fit.offDeg <= relationLimits[kind]) found.push({ kind, wheel, ...fit });
    }
  return [...found, ...analogousAmong(placed, wheel)].sort((a, b) => a.offDeg - b.offDeg);
}

/** How far a figure may be off and still be named, degrees on its wheel. Ours; 18° is five of Munsell's hundred steps. */
export const relationLimits: Readonly<Record<RelationKind, number>> = {
  complementary: 18,
  'split complementary': 18,
  analogous: 15,
  triad: 18,
  tetrad: 18,
};

/** Widest arc that neighbours span, degrees: two steps of twelve. Common practice, no source. */
export const analogousArcDeg = 60;

interface Placed {
  readonly id: string;
  readonly place: number;
}

/** Each figure as angles from its first member. A tetrad is a square or a rectangle of two complementary pairs. */
const figures: readonly { readonly kind: RelationKind; readonly angles: readonly number[] }[] = [
  { kind: 'complementary', angles: [0, 180] },
  { kind: 'split complementary', angles: [0, 150, 210] },
  { kind: 'triad', angles: [0, 120, 240] },
  { kind: 'tetrad', angles: [0, 90, 180, 270] },
  { kind: 'tetrad', angles: [0, 60, 180, 240] },
];

/** Every choice of `size` members, each in the order of the circle. */
function* groupsOf(placed: readonly Placed[], size: number, from = 0): Generator<Placed[]> {
  if (size === 0) yield [];
  else
    for (let i = from; i <= placed.length - size; i++)
      for (const rest of groupsOf(placed, size - 1, i + 1)) yield [placed[i]!, ...rest];
}

function bestFit(group: readonly Placed[], angles: readonly number[]): { ids: string[]; offDeg: number } {
  let best = { ids: [] as string[], offDeg: Number.POSITIVE_INFINITY };
  for (let turn = 0; turn < group.length; turn++) {
    const turned = [...group.slice(turn), ...group.slice(0, turn)];
    const errors = turned.map(({ place }, i) => hueTurnDeg(turned[0]!.place + angles[i]!, place));
    const offDeg = Math.max(...errors) - Math.min(...errors);
    if (offDeg < best.offDeg) best = { ids: turned.map(({ id }) => id), offDeg };
  }
  return best;
}

/** The largest run of three or more hues within the arc of neighbours, from each hue on; none inside another. */
function analogousAmong(placed: readonly Placed[], wheel: Wheel): Relation[] {
  const limit = analogousArcDeg + relationLimits.analogous;
  const runs = placed.map((start, i) => {
    const around = [...placed.slice(i), ...placed.slice(0, i)];
    const run = around.filter(({ place }) => (place - start.place + 360) % 360 <= limit);
    return { ids: run.map(({ id }) => id), arc: (run.at(-1)!.place - start.place + 360) % 360 };
  });
  return runs
    .filter(
      ({ ids }, i) => ids.length >= 3 && !runs.some((other, j) => j !== i && holds(other.ids, ids, j < i)),
    )
    .map(({ ids, arc }) => ({ kind: 'analogous', wheel, ids, offDeg: Math.max(0, arc - analogousArcDeg) }));
}

/** Whether one list has all of another; of two that are equal the earlier stays. */
function holds(outer: readonly string[], inner: readonly string[], earlier: boolean): boolean {
  if (outer.length < inner.length || (outer.length === inner.length && !earlier)) return false;
  return inner.every((id) => outer.includes(id));
}
