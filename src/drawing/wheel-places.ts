import { scaleLinear } from 'd3-scale';
import type { Wheel } from '../colour/model.ts';
import { neutralKind, readsAsNeutral } from '../colour/neutral.ts';
import { labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import { painterFromHue } from '../colour/wheels.ts';
import type { Link, LinkKind } from '../harmony/model.ts';
import type { Ink, Side } from '../sheet/model.ts';
import { halfDiagonal, largestHubRadius, radiusFromShare, smallestRadius } from './marks.ts';
import { spread } from './spread.ts';
import { inksOf } from './words/says.ts';

/** Radius of the outermost ring where there is room for it, in the drawing's units. */
export const usualRing = 140;

/** What is placed, and how large the wheel is. */
export interface WheelInput {
  readonly anchor: Side;
  readonly candidate?: Side | undefined;
  /** Links that will be drawn: their marks keep enough apart for a line between them. */
  readonly links?: readonly Link[];
  /** Default 'eye'. */
  readonly wheel?: Wheel;
  /** Further sides that are drawn as outlines: their chroma counts for the scale. */
  readonly others?: readonly Side[];
  /** Radius of the outermost ring. Default 140. */
  readonly ring?: number;
}

/** An ink on the wheel, measured from the hub's centre, y downward. */
export interface WheelPlace {
  readonly ink: Ink;
  readonly of: 'anchor' | 'candidate';
  /** True for neutrals: they sit in the hub. */
  readonly inHub: boolean;
  /** Where hue and chroma put it. */
  readonly trueX: number;
  readonly trueY: number;
  /** Where it is drawn, parted from its neighbours. */
  readonly x: number;
  readonly y: number;
  /** Radius of the disc of the mark's area. */
  readonly radius: number;
}

export interface WheelLayout {
  readonly places: readonly WheelPlace[];
  /** Radius of the outermost ring. */
  readonly ring: number;
  readonly hubRadius: number;
  /** OKLCH chroma at the outermost ring. */
  readonly largestChroma: number;
  /** Distance from the centre for an OKLCH chroma. */
  readonly radiusFromChroma: (chroma: number) => number;
  /** Radius of the disc that an ink's mark covers as much as, on a wheel of this size. */
  readonly radiusOf: (ink: Ink) => number;
}

/** Counter-clockwise angle on the drawing, degrees, for an OKLCH hue. Yellow is at the top of either wheel, nearly. */
export function wheelAngleDeg(hueDeg: number, wheel: Wheel): number {
  return wheel === 'eye' ? hueDeg : 90 - painterFromHue(hueDeg);
}

/** True where an ink acts as a neutral and sits in the hub: weak chroma, or cream and kraft by what they are. */
export function sitsInHub(ink: Ink): boolean {
  const lab = labFromOklch(oklchFromTuple(ink.oklch));
  return readsAsNeutral(lab) || neutralKind(lab) !== null;
}

/** Where each ink of one or two sides stands on the wheel, parted so that marks and the links between them show. */
export function wheelPlaces(input: WheelInput): WheelLayout {
  const { anchor, candidate, links = [], wheel = 'eye', others = [], ring = usualRing } = input;
  const size = ring / usualRing;
  const wanted = [
    ...inksOf(anchor).map((ink) => wish(ink, 'anchor', size)),
    ...(candidate ? inksOf(candidate).map((ink) => wish(ink, 'candidate', size)) : []),
  ];
  const linked: Linked = new Map(links.map((link) => [`${link.anchorInk}|${link.candidateInk}`, link.kind]));
  const hub = placeHub(
    wanted.filter((w) => w.inHub),
    linked,
    wheel,
    ring,
  );
  const strong = [
    ...wanted,
    ...others.flatMap((side) => inksOf(side).map((ink) => wish(ink, 'candidate', size))),
  ].filter((w) => !w.inHub);
  const largestChroma = Math.max(0.2, ...strong.map((w) => Math.ceil(w.ink.oklch[1] / 0.05 - 1e-9) * 0.05));
  const radiusFromChroma = scaleLinear().domain([0, largestChroma]).range([hub.radius, ring]);
  const outside = wanted.filter((w) => !w.inHub);
  const wants = outside.map((w) => polar(angleOf(w.ink, wheel), radiusFromChroma(w.ink.oklch[1])));
  const points = spread(
    outside.map((w, i) => ({ wantX: wants[i]!.x, wantY: wants[i]!.y, radius: w.reach })),
    { gap: gapBetween(outside, linked), inner: hub.radius + 1.5, outer: ring + 26 },
  );
  const placed = new Map<Wish, WheelPlace>(hub.placed);
  outside.forEach((w, i) => {
    placed.set(w, { ...bare(w), trueX: wants[i]!.x, trueY: wants[i]!.y, ...points[i]! });
  });
  return {
    places: wanted.map((w) => placed.get(w)!),
    ring,
    hubRadius: hub.radius,
    largestChroma,
    radiusFromChroma: (chroma) => radiusFromChroma(chroma),
    radiusOf: (ink) => markRadius(ink, sitsInHub(ink), size),
  };
}

/** A point at a counter-clockwise angle in degrees and a distance, y downward. */
export function polar(deg: number, distance: number): { x: number; y: number } {
  const radians = (deg * Math.PI) / 180;
  return { x: distance * Math.cos(radians), y: -distance * Math.sin(radians) };
}

interface Wish {
  readonly ink: Ink;
  readonly of: 'anchor' | 'candidate';
  readonly inHub: boolean;
  readonly radius: number;
  /** Radius of the circle that holds the mark. */
  readonly reach: number;
}

function wish(ink: Ink, of: 'anchor' | 'candidate', size: number): Wish {
  const inHub = sitsInHub(ink);
  const radius = markRadius(ink, inHub, size);
  // A diamond's corners may come a little nearer than a circle through them would allow.
  return { ink, of, inHub, radius, reach: of === 'anchor' ? radius : halfDiagonal(radius) * 0.94 };
}

function markRadius(ink: Ink, inHub: boolean, size: number): number {
  const radius = inHub ? Math.min(largestHubRadius, radiusFromShare(ink.share)) : radiusFromShare(ink.share);
  return Math.max(smallestRadius, radius * size);
}

function bare({ ink, of, inHub, radius }: Wish): Pick<WheelPlace, 'ink' | 'of' | 'inHub' | 'radius'> {
  return { ink, of, inHub, radius };
}

function angleOf(ink: Ink, wheel: Wheel): number {
  return wheelAngleDeg(ink.oklch[2] ?? 0, wheel);
}

/** Kinds of the drawn links, by the two ids. */
type Linked = ReadonlyMap<string, LinkKind>;

/** Linked marks keep enough apart for their link to be seen between them; a dotted one needs room for its dots. */
function gapBetween(wishes: readonly Wish[], linked: Linked): (i: number, j: number) => number {
  return (i, j) => {
    const a = wishes[i]!;
    const b = wishes[j]!;
    if (a.of === b.of) return 3;
    const key = a.of === 'anchor' ? `${a.ink.id}|${b.ink.id}` : `${b.ink.id}|${a.ink.id}`;
    const kind = linked.get(key);
    return kind === undefined ? 3 : kind === 'near miss' ? 17 : 10;
  };
}

function placeHub(wishes: readonly Wish[], linked: Linked, wheel: Wheel, ring: number) {
  const gap = gapBetween(wishes, linked);
  let radius = 26;
  for (;;) {
    const wants = wishes.map((w) =>
      polar(angleOf(w.ink, wheel), Math.min(1, w.ink.oklch[1] / 0.1) * radius * 0.6),
    );
    const points = spread(
      wishes.map((w, i) => ({ wantX: wants[i]!.x, wantY: wants[i]!.y, radius: w.reach })),
      { gap, inner: 0, outer: radius - 2.5 },
    );
    if (radius >= ring * 0.6 || allApart(wishes, points, gap)) {
      const placed = wishes.map((w, i): [Wish, WheelPlace] => [
        w,
        // In the hub no place is truer than another, so nothing leads back to it.
        { ...bare(w), trueX: points[i]!.x, trueY: points[i]!.y, ...points[i]! },
      ]);
      return { radius, placed };
    }
    radius += 2;
  }
}

function allApart(
  wishes: readonly Wish[],
  points: readonly { x: number; y: number }[],
  gap: (i: number, j: number) => number,
): boolean {
  return points.every((p, i) =>
    points.every(
      (q, j) =>
        j <= i || Math.hypot(p.x - q.x, p.y - q.y) >= wishes[i]!.reach + wishes[j]!.reach + gap(i, j) - 0.6,
    ),
  );
}
