import { deltaE2000 } from '../colour/difference.ts';
import type { Wheel } from '../colour/model.ts';
import { munsellHueSteps } from '../colour/munsell.ts';
import { hueDistanceDeg } from '../colour/spaces.ts';
import type { MeasuredInk, MeasuredSide } from './measured.ts';
import type { Distance, Link, LinkKind } from './model.ts';
import { linkLimits } from './thresholds.ts';

/** A link with the two measured inks at its ends. */
export interface Tied {
  readonly link: Link;
  readonly a: MeasuredInk;
  readonly b: MeasuredInk;
}

/** How every ink of one side (bases included) relates to every ink of the other: the anchor's order, then the candidate's. */
export function linksBetween(anchor: MeasuredSide, candidate: MeasuredSide, distance: Distance): Tied[] {
  return anchor.inks.flatMap((a) => candidate.inks.map((b) => ({ link: linkOf(a, b, distance), a, b })));
}

/** How two inks relate. Differences are the second minus the first. */
export function linkOf(a: MeasuredInk, b: MeasuredInk, distance: Distance): Link {
  const deltaE00 = deltaE2000(a.lab, b.lab);
  const hueSteps =
    a.munsell.hue === null || b.munsell.hue === null ? null : munsellHueSteps(a.munsell.hue, b.munsell.hue);
  const dV = b.munsell.value - a.munsell.value;
  const wheels = oppositeOn(a, b);
  const kind = linkKind({ a, b, deltaE00, hueSteps, dV, opposite: wheels.length > 0 }, distance);
  return {
    kind,
    anchorInk: a.id,
    candidateInk: b.id,
    deltaE00,
    hueDeg: a.hueDeg === null || b.hueDeg === null ? null : hueDistanceDeg(a.hueDeg, b.hueDeg),
    dL: b.lab.l - a.lab.l,
    dC: b.chroma - a.chroma,
    hueSteps,
    dV,
    ...(kind === 'opposite' ? { wheels } : {}),
  };
}

/** True where both have a hue that counts: neither acts as a neutral. */
export function bothChromatic(a: MeasuredInk, b: MeasuredInk): boolean {
  return a.actsAs === null && b.actsAs === null;
}

/** True for a white or a cream light enough to be one of two whites. */
export function isLightNeutral(ink: MeasuredInk): boolean {
  return ink.actsAs !== null && ink.lab.l >= linkLimits.lightNeutralL;
}

/** Degrees by which two hues miss half the circle on a wheel, 0–180, or null. */
export function offAxisDeg(a: MeasuredInk, b: MeasuredInk, wheel: Wheel): number | null {
  const [one, other] = wheel === 'eye' ? [a.hueDeg, b.hueDeg] : [a.painterDeg, b.painterDeg];
  return one === null || other === null ? null : 180 - hueDistanceDeg(one, other);
}

/** The limit of a repeat at a distance, ΔE₀₀. */
export function repeatLimit(distance: Distance): number {
  return distance === 'touching' ? linkLimits.repeatTouching : linkLimits.repeatApart;
}

/** One hue step of 100, in degrees. */
export const degreesPerStep = 3.6;

function oppositeOn(a: MeasuredInk, b: MeasuredInk): Wheel[] {
  const within = linkLimits.oppositeWithinSteps * degreesPerStep;
  return (['eye', 'painter'] as const).filter((wheel) => {
    const off = offAxisDeg(a, b, wheel);
    return off !== null && off <= within;
  });
}

interface Found {
  readonly a: MeasuredInk;
  readonly b: MeasuredInk;
  readonly deltaE00: number;
  readonly hueSteps: number | null;
  readonly dV: number;
  readonly opposite: boolean;
}

function linkKind({ a, b, deltaE00, hueSteps, dV, opposite }: Found, distance: Distance): LinkKind {
  if (deltaE00 <= repeatLimit(distance)) return 'repeat';
  if (nearWhites(a, b, deltaE00)) return 'near miss';
  if (!bothChromatic(a, b) || hueSteps === null) return 'unrelated';
  const lightAndDark = Math.abs(dV) >= linkLimits.tonalValueSteps;
  if (hueSteps < linkLimits.nearMissFromSteps) return 'tonal';
  if (hueSteps <= linkLimits.nearMissToSteps) return lightAndDark ? 'tonal' : 'near miss';
  if (hueSteps <= linkLimits.neighbourToSteps) return 'neighbour';
  return opposite ? 'opposite' : 'unrelated';
}

function nearWhites(a: MeasuredInk, b: MeasuredInk, deltaE00: number): boolean {
  return (
    isLightNeutral(a) &&
    isLightNeutral(b) &&
    deltaE00 >= linkLimits.whitesDeltaEMin &&
    deltaE00 <= linkLimits.whitesDeltaEMax &&
    Math.abs(b.lab.b - a.lab.b) > linkLimits.whitesDeltaB
  );
}
