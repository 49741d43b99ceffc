import { deltaE2000 } from '../../colour/difference.ts';
import type { Wheel } from '../../colour/model.ts';
import { munsellHueSteps } from '../../colour/munsell/munsell.ts';
import { hueDistanceDeg } from '../../colour/spaces.ts';
import type { Distance, Link } from '../model.ts';
import { linkLimits } from '../thresholds.ts';
import { kindOf, type LinkNumbers, missSizeOf, seenOf, sizeOf, strongOf, tintOf } from './link-kind.ts';
import type { MeasuredInk, MeasuredSide } from './measured.ts';

/** A link with the two measured inks at its ends. */
export interface Tied {
  readonly link: Link;
  readonly a: MeasuredInk;
  readonly b: MeasuredInk;
  readonly linkNumbers: LinkNumbers;
}

/** How every ink of one side (bases included) relates to every ink of the other: the anchor's order, then the candidate's. */
export function linksBetween(anchor: MeasuredSide, candidate: MeasuredSide, distance: Distance): Tied[] {
  return anchor.inks.flatMap((a) => candidate.inks.map((b) => tiedOf(a, b, distance)));
}

/** How two inks relate. Differences are the second minus the first. */
export function tiedOf(a: MeasuredInk, b: MeasuredInk, distance: Distance): Tied {
  const linkNumbers = linkNumbersOf(a, b);
  const kind = kindOf(linkNumbers, repeatLimit(distance));
  const link: Link = {
    kind,
    anchorInk: a.id,
    candidateInk: b.id,
    deltaE00: linkNumbers.deltaE00,
    hueDeg: a.hueDeg === null || b.hueDeg === null ? null : hueDistanceDeg(a.hueDeg, b.hueDeg),
    dL: b.lab.l - a.lab.l,
    dC: b.chroma - a.chroma,
    hueSteps: Number.isNaN(linkNumbers.hueSteps) ? null : linkNumbers.hueSteps,
    dV: b.munsellValue - a.munsellValue,
  };
  // Only opposites have wheels, and a pair of papers has a hundred links that are none.
  const whole = kind === 'opposite' ? { ...link, wheels: oppositeOn(a, b) } : link;
  return { link: whole, a, b, linkNumbers };
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
  const one = wheel === 'eye' ? a.hueDeg : a.painterDeg;
  const other = wheel === 'eye' ? b.hueDeg : b.painterDeg;
  return one === null || other === null ? null : 180 - hueDistanceDeg(one, other);
}

/** The limit of a repeat at a distance, ΔE₀₀. */
export function repeatLimit(distance: Distance): number {
  return distance === 'touching' ? linkLimits.repeatTouching : linkLimits.repeatApart;
}

/** One hue step of 100, in degrees. */
export const degreesPerStep = 3.6;

function oppositeOn(a: MeasuredInk, b: MeasuredInk): Wheel[] {
  return (['eye', 'painter'] as const).filter((wheel) => {
    const off = offAxisDeg(a, b, wheel);
    return off !== null && off / degreesPerStep <= linkLimits.oppositeWithinSteps;
  });
}

function linkNumbersOf(a: MeasuredInk, b: MeasuredInk): LinkNumbers {
  const share = Math.min(a.share, b.share);
  const counts = Math.min(a.counts, b.counts);
  const chroma = Math.min(a.chroma, b.chroma);
  const off = Math.min(offAxisDeg(a, b, 'eye') ?? 180, offAxisDeg(a, b, 'painter') ?? 180);
  return {
    deltaE00: deltaE2000(a.lab, b.lab),
    hueSteps:
      a.munsellHue === null || b.munsellHue === null
        ? Number.NaN
        : munsellHueSteps(a.munsellHue, b.munsellHue),
    valueSteps: Math.abs(b.munsellValue - a.munsellValue),
    offSteps: off / degreesPerStep,
    chromatic: bothChromatic(a, b),
    whites: isLightNeutral(a) && isLightNeutral(b) && Math.abs(b.lab.b - a.lab.b) > linkLimits.whitesDeltaB,
    size: sizeOf(share),
    missSize: missSizeOf(share),
    seen: seenOf(share),
    tint: tintOf(chroma) * counts,
    strong: strongOf(chroma) * counts,
  };
}
