import {
  bothChromatic,
  degreesPerStep,
  isLightNeutral,
  offAxisDeg,
  repeatLimit,
  type Tied,
} from './links.ts';
import type { MeasuredInk, MeasuredSide } from './measured.ts';
import type { Distance } from './model.ts';
import { between, ramp } from './ramp.ts';
import { inkLimits, linkLimits, ramps, sameness, tieWeights, troubleWeights } from './thresholds.ts';

/**
 * How much a link weighs, for or against. Weights fade to nothing at the borders of their kind, so that a small
 * change of one ink moves a verdict by one step at most.
 */

/** What a link of its own kind weighs as a tie, 0–1; 0 where its kind ties nothing. */
export function tieWeight({ link, a, b }: Tied, distance: Distance): number {
  const seen = seenness(a, b);
  const size = sizeOf(Math.min(a.share, b.share));
  const neutral = !bothChromatic(a, b);
  const of = ({ least, size: more }: { least: number; size: number }) => (least + more * size) * seen;
  switch (link.kind) {
    case 'repeat':
      if (neutral) return of(tieWeights.neutral);
      return of(tieWeights.repeat) * repeatFade(link.deltaE00, repeatLimit(distance)) * tint(a, b);
    case 'tonal':
      return of(tieWeights.tonal) * tint(a, b);
    case 'neighbour':
      return of(tieWeights.neighbour) * tint(a, b);
    case 'opposite':
      return of(tieWeights.opposite) * tint(a, b);
    default:
      return 0;
  }
}

/** How near a link comes to tying. */
export interface NearTie {
  /** What it would weigh if every band were a little wider. */
  readonly any: number;
  /** The same, of a repeat or tone on tone only: one colour on both sheets. */
  readonly same: number;
}

/** What a link would weigh as a tie of colour if every band were a little wider: how near it comes to tying. */
export function nearTieOf(t: Tied, distance: Distance): NearTie {
  const same = nearSame(t, distance);
  return { same, any: Math.max(same, nearKin(t, distance)) };
}

function nearSame({ link, a, b }: Tied, distance: Distance): number {
  if (!bothChromatic(a, b) || link.hueSteps === null) return 0;
  const { hueSteps, dV, deltaE00 } = link;
  if (deltaE00 <= repeatLimit(distance) + ramps.widenedDeltaE)
    return tieWeight({ a, b, link: { ...link, kind: 'repeat' } }, distance);
  const oneHue = hueSteps < linkLimits.nearMissFromSteps + ramps.widenedSteps;
  const lightAndDark = Math.abs(dV) >= linkLimits.tonalValueSteps - ramps.widenedValue;
  const tonal = oneHue || (lightAndDark && hueSteps <= linkLimits.nearMissToSteps + ramps.widenedSteps);
  return tonal ? tieWeight({ a, b, link: { ...link, kind: 'tonal' } }, distance) : 0;
}

function nearKin({ link, a, b }: Tied, distance: Distance): number {
  if (!bothChromatic(a, b) || link.hueSteps === null) return 0;
  const { hueSteps } = link;
  const w = ramps.widenedSteps;
  const neighbour = hueSteps >= linkLimits.nearMissToSteps - w && hueSteps <= linkLimits.neighbourToSteps + w;
  if (neighbour) return tieWeight({ a, b, link: { ...link, kind: 'neighbour' } }, distance);
  const opposite = stepsOffAxis(a, b) <= linkLimits.oppositeWithinSteps + w;
  return opposite ? tieWeight({ a, b, link: { ...link, kind: 'opposite' } }, distance) : 0;
}

/** What a near miss weighs, 0–1, if nothing answers it. */
export function nearMissWeight({ link, a, b }: Tied, distance: Distance): number {
  const size = sizeWithin(Math.min(a.share, b.share), troubleWeights.nearMiss.sizeFull);
  const seen = seenness(a, b);
  if (!bothChromatic(a, b)) return isLightNeutral(a) ? troubleWeights.nearWhites * size * seen : 0;
  const { full, leastSize, chromaFull } = troubleWeights.nearMiss;
  const limit = repeatLimit(distance);
  const steps = link.hueSteps ?? 0;
  const inside =
    ramp(link.deltaE00, limit, limit + ramps.nearMissDeltaE) *
    ramp(steps, linkLimits.nearMissFromSteps, linkLimits.nearMissFromSteps + ramps.nearMissSteps) *
    ramp(steps, linkLimits.nearMissToSteps, linkLimits.nearMissToSteps - ramps.nearMissSteps) *
    ramp(Math.abs(link.dV), linkLimits.tonalValueSteps, linkLimits.tonalValueSteps - ramps.nearMissValue);
  const strong = ramp(Math.min(a.chroma, b.chroma), inkLimits.tintFrom, chromaFull);
  return full * inside * strong * hueOfBoth(a, b) * between(leastSize, 1, size) * seen;
}

/** How much two inks are one colour to the eye, 0–1, for saying that one answers for the other. */
export function samenessOf({ link, a, b }: Tied): number {
  if (!bothChromatic(a, b)) return 0;
  return ramp(link.deltaE00, sameness.none, sameness.full) * tint(a, b) * seenness(a, b);
}

/** How vivid a strong ink is, 0–1. */
export function vividness(ink: MeasuredInk): number {
  const along = ramp(ink.chroma, inkLimits.strayChroma, inkLimits.vividFull);
  return between(inkLimits.vividAtStray, 1, along) * ink.counts;
}

/** How large a share looks, 0–1: area by its square root, since a small accent counts. */
export function sizeOf(share: number): number {
  return sizeWithin(share, inkLimits.largeShare);
}

/** How strongly coloured the strongest visible ink of a side is, 0 (quiet) to 1. */
export function presence(side: MeasuredSide): number {
  const strong = side.inks
    .filter((ink) => ink.actsAs === null && ink.share >= inkLimits.strayShare)
    .map((ink) => ramp(ink.chroma, inkLimits.quietChroma, inkLimits.strayChroma) * ink.counts);
  return Math.max(0, ...strong);
}

/** How far a link lies outside the nearest band that would answer, in hue steps; 0 inside one. */
export function stepsFromAnswer({ link, a, b }: Tied, distance: Distance): number {
  if (!bothChromatic(a, b) || link.hueSteps === null) return Number.POSITIVE_INFINITY;
  if (link.kind !== 'unrelated' && link.kind !== 'near miss') return 0;
  const { hueSteps, dV, deltaE00 } = link;
  const fromRepeat = ((deltaE00 - repeatLimit(distance)) / ramps.nearMissDeltaE) * ramps.straySteps;
  const fromTonal = hueSteps - linkLimits.nearMissFromSteps;
  const fromNeighbour =
    hueSteps <= linkLimits.nearMissToSteps
      ? linkLimits.nearMissToSteps - hueSteps
      : hueSteps - linkLimits.neighbourToSteps;
  const fromLightAndDark =
    hueSteps <= linkLimits.nearMissToSteps
      ? ((linkLimits.tonalValueSteps - Math.abs(dV)) / ramps.widenedValue) * ramps.straySteps
      : Number.POSITIVE_INFINITY;
  const fromOpposite = stepsOffAxis(a, b) - linkLimits.oppositeWithinSteps;
  return Math.max(0, Math.min(fromRepeat, fromTonal, fromNeighbour, fromLightAndDark, fromOpposite));
}

/** Hue steps by which two inks miss being opposites, on the wheel where they come nearest. */
export function stepsOffAxis(a: MeasuredInk, b: MeasuredInk): number {
  const off = (['eye', 'painter'] as const).map((wheel) => offAxisDeg(a, b, wheel) ?? 180);
  return Math.min(...off) / degreesPerStep;
}

function repeatFade(deltaE00: number, limit: number): number {
  return between(1, tieWeights.repeat.atLimit, ramp(deltaE00, sameness.full * (limit / 5), limit));
}

function seenness(a: MeasuredInk, b: MeasuredInk): number {
  return ramp(Math.min(a.share, b.share), inkLimits.speckFrom, inkLimits.speckFull);
}

function tint(a: MeasuredInk, b: MeasuredInk): number {
  return ramp(Math.min(a.chroma, b.chroma), inkLimits.tintFrom, inkLimits.tintFull) * hueOfBoth(a, b);
}

function hueOfBoth(a: MeasuredInk, b: MeasuredInk): number {
  return Math.min(a.counts, b.counts);
}

function sizeWithin(share: number, full: number): number {
  return Math.min(1, Math.sqrt(share / full));
}
