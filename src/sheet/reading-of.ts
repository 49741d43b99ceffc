import { labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import { steadyExp } from '../colour/steady.ts';
import { idAt, inkOf } from './ink.ts';
import type { Found } from './inks/find-inks.ts';
import { countLabels } from './inks/label-counts.ts';
import { placesOf } from './inks/places.ts';
import { apart } from './inks/settled-inks.ts';
import type { Base, Ink, Light, Reading, Seen } from './model.ts';
import type { Planes } from './planes.ts';
import { baseKind, groundOf, groundPrinted } from './print/base.ts';
import { motifOf } from './print/motif.ts';
import { printOf } from './print/print.ts';
import { numbers } from './reading-limits.ts';

/** The side and its places, from the inks that were found. */
export function readingOf(
  planes: Planes,
  { colours, labels, amounts, ramps }: Found,
  mmPerPixel: number,
  light: Light,
  seen: Seen,
): Reading {
  const counts = countLabels(labels, planes.width, planes.height, colours.length);
  const ground = groundOf(
    labels,
    planes.width,
    planes.height,
    counts,
    colours.map((c) => c.l),
  );
  const order = colours
    .map((_, k) => k)
    .filter((k) => k !== ground)
    .sort((p, q) => amounts[q]! - amounts[p]! || p - q);
  order.unshift(ground);
  const shares = sharesOf(order.map((k) => amounts[k]!));
  const inks = order.map((k, n): Ink => {
    const { l, a, b } = colours[k]!;
    const share = shares[n]!;
    const accent =
      n > 0 && share < numbers.accentShare && apart(colours[k]!, colours[ground]!) >= numbers.accentDistance;
    const ink = inkOf({ l, a: a / 2, b: b / 2 }, idAt(n), share, accent);
    return {
      ...ink,
      sure: sureOf(amounts[k]!, counts.inside[k]! / Math.max(1, counts.area[k]!), light.known),
    };
  });
  const name: number[] = [];
  order.forEach((k, n) => {
    name[k] = n;
  });
  const places = placesOf(labels, planes.width, planes.height, name);
  const lightness = order.map((k) => colours[k]!.l);
  const mmPerPlace = (mmPerPixel * planes.block * planes.width) / places.width;
  const [first, ...rest] = inks;
  const print = printOf(places, lightness, mmPerPlace);
  const washes = ramps
    .filter((ramp) => ramp.length > 1)
    .map((ramp) => ({ inks: ramp.map((k) => idAt(name[k]!)) }));
  return {
    side: {
      base: baseOf(first!, rest),
      inks: rest,
      print,
      light,
      motif: motifOf(planes),
      seen,
      ...(washes.length ? { ramps: washes } : {}),
    },
    places,
  };
}

/**
 * How sure an ink's colour is, 0–1: less where few pixels show it, where hardly any lies away from its edges, and where nothing
 * tells the light. Our choice.
 */
function sureOf(pixels: number, inside: number, lightKnown: boolean): number {
  const seen = 1 - steadyExp(-pixels / 300);
  const solid = 0.5 + 0.5 * Math.min(1, inside / 0.5);
  return Math.round(100 * 0.98 * seen * solid * (lightKnown ? 1 : 0.85)) / 100;
}

function baseOf(ink: Ink, rest: readonly Ink[]): Base {
  const lab = labOf(ink);
  const kind = baseKind(lab);
  const others = rest.map((other) => ({ lab: labOf(other), share: other.share }));
  return { ...ink, kind, printed: groundPrinted(kind, lab, others) };
}

function labOf(ink: Ink): { l: number; a: number; b: number } {
  return labFromOklch(oklchFromTuple(ink.oklch));
}

/** Shares in steps of 1/8192, which sum to exactly 1 in floating point too: the first takes what rounding leaves. */
function sharesOf(areas: readonly number[]): number[] {
  const total = areas.reduce((s, n) => s + n, 0);
  const shares = areas.map((n) => Math.round((n / total) * 8192) / 8192);
  shares[0] = 1 - shares.slice(1).reduce((s, n) => s + n, 0);
  return shares;
}
