import { deltaEOk } from '../../colour/difference.ts';
import type { OkLab } from '../../colour/model.ts';
import { labFromOklch, oklabFromOklch, oklchFromTuple } from '../../colour/spaces.ts';
import { inkOf } from '../ink.ts';
import { nothing } from '../inks/label-counts.ts';
import type { Base, Ink, Places, Reading, Side } from '../model.ts';
import { baseKind, groundPrinted } from '../print/base.ts';
import { numbers } from '../reading-limits.ts';
import { relabel } from '../relabel.ts';

/** A reading while the hand is at it: its inks, base first, and for each place the number of its ink. */
export interface HandState {
  readonly side: Side;
  readonly inks: readonly Ink[];
  readonly places: Places;
}

export function stateOf({ side, places }: Reading): HandState {
  const { kind: _, printed: __, ...base } = side.base;
  return { side, inks: [base, ...side.inks], places };
}

/** The reading again: shares sum to 1, accents and the kind of base follow the inks, ids go by order, base first. */
export function readingOf({ side, inks, places }: HandState): Reading {
  const total = inks.reduce((sum, ink) => sum + ink.share, 0);
  const even = inks.map((ink, n) => ({
    ...ink,
    share: total > 0 ? ink.share / total : n === 0 ? 1 : 0,
  }));
  const old = new Map([side.base, ...side.inks].map((ink) => [ink.id, ink]));
  const first = even[0]!;
  const rest = even.slice(1).map((ink): Ink => {
    const was = old.get(ink.id);
    const same = was && was.hex === ink.hex && Math.abs(was.share - ink.share) < 1e-12;
    return same ? ink : { ...ink, accent: isAccent(ink, first) };
  });
  const ramps = side.ramps?.filter((ramp) => ramp.inks.every((id) => even.some((ink) => ink.id === id)));
  const { ramps: _, ...others } = side;
  const next: Side = {
    ...others,
    base: baseOf({ ...first, accent: false }, rest, side.base),
    inks: rest,
    ...(ramps && ramps.length > 0 ? { ramps } : {}),
  };
  return { side: relabel(next, side.base.id === 'a' ? 'candidate' : 'anchor'), places };
}

/** Ink numbers on the places changed one by one; what is nothing stays nothing. */
export function renumbered(places: Places, name: (label: number, at: number) => number): Places {
  return { ...places, labels: places.labels.map((k, i) => (k === nothing ? nothing : name(k, i))) };
}

/** An ink taken out: the numbers behind it close up; its places get another number, counted before. */
export function withoutInk(state: HandState, at: number, to: (place: number) => number): HandState {
  const close = (k: number): number => (k !== nothing && k > at ? k - 1 : k);
  return {
    ...state,
    inks: state.inks.filter((_, n) => n !== at),
    places: renumbered(state.places, (k, i) => close(k === at ? to(i) : k)),
  };
}

/** An ink put in at a number; the numbers from there on move up. */
export function withInkAt(state: HandState, at: number, ink: Ink, places: Places = state.places): HandState {
  return {
    ...state,
    inks: state.inks.toSpliced(at, 0, ink),
    places: renumbered(places, (k) => (k >= at ? k + 1 : k)),
  };
}

/** One ink's share set; the others take or give in proportion, or alike where they have none. */
export function withShareAt(state: HandState, at: number, wanted: number): HandState {
  if (state.inks.length < 2) return state;
  const share = Number.isFinite(wanted) ? Math.min(1, Math.max(0, wanted)) : state.inks[at]!.share;
  const others = state.inks.reduce((sum, ink, n) => (n === at ? sum : sum + ink.share), 0);
  const inks = state.inks.map((ink, n) => {
    if (n === at) return { ...ink, share, byHand: true };
    const part = others > 0 ? ink.share / others : 1 / (state.inks.length - 1);
    return { ...ink, share: (1 - share) * part };
  });
  return { ...state, inks };
}

/** An ink with another colour, named anew; what is not its colour stays. */
export function recoloured(ink: Ink, colour: OkLab): Ink {
  const { hex, oklch, name, trade } = inkOf(colour, ink.id, ink.share, ink.accent);
  return { ...ink, hex, oklch, name, trade: trade ?? null, byHand: true };
}

export function okOf(ink: Pick<Ink, 'oklch'>): OkLab {
  return oklabFromOklch(oklchFromTuple(ink.oklch));
}

function isAccent(ink: Ink, base: Ink): boolean {
  return ink.share < numbers.accentShare && deltaEOk(okOf(ink), okOf(base), 2) >= numbers.accentDistance;
}

function baseOf(ink: Ink, rest: readonly Ink[], was: Base): Base {
  if (ink.hex === was.hex) return { ...ink, kind: was.kind, printed: was.printed };
  const labOf = (one: Ink) => labFromOklch(oklchFromTuple(one.oklch));
  const kind = baseKind(labOf(ink));
  const others = rest.map((other) => ({ lab: labOf(other), share: other.share }));
  return { ...ink, kind, printed: groundPrinted(kind, labOf(ink), others) };
}
