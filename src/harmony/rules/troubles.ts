import { sizeOf } from '../measure/link-kind.ts';
import { bothChromatic, degreesPerStep, isLightNeutral, offAxisDeg, type Tied } from '../measure/links.ts';
import type { MeasuredInk, MeasuredSide } from '../measure/measured.ts';
import { linksOf, type Pair, sidesOf } from '../measure/pair.ts';
import { between, ramp } from '../measure/ramp.ts';
import { inkLimits, linkLimits, ramps, troubleWeights } from '../thresholds.ts';
import { nearMissWeight, presence, stepsFromAnswer, vividness } from './weights.ts';

/** What speaks against two papers, and can turn the verdict. Weights are 0–1, after all that answers them. */

/** Two inks that are nearly the same. */
export interface NearMiss {
  readonly kind: 'near miss';
  readonly tied: Tied;
  readonly weight: number;
  /** 0–1: how much the pair already stands on one sheet, and so looks meant. */
  readonly answered: number;
}

/** A strong ink that nothing answers. */
export interface Stray {
  readonly kind: 'stray';
  readonly ink: MeasuredInk;
  readonly weight: number;
  /** The ink of its own side that it sits opposite to, where that makes it tolerable. */
  readonly beside: MeasuredInk | null;
  /** Its near miss on the other side, if it has one. */
  readonly misses: Tied | null;
}

/** Two light grounds that disagree. */
export interface BaseQuarrel {
  readonly kind: 'base quarrel';
  readonly weight: number;
  readonly tied: Tied;
}

/** One sheet's colours are bright, the other's muted. */
export interface BrightMuted {
  readonly kind: 'bright against muted';
  readonly weight: number;
  readonly anchor: Intensity;
  readonly candidate: Intensity;
}

/** Share-weighted means over the inks of a side that have a hue. */
export interface Intensity {
  readonly chroma: number;
  readonly saturation: number;
  /** The ink that does most of it. */
  readonly lead: MeasuredInk;
}

export type Trouble = NearMiss | Stray | BaseQuarrel | BrightMuted;

/** Every trouble of a pair, weightiest first; equal ones in the order in which they are found. */
export function troublesOf(pair: Pair): Trouble[] {
  const found: Trouble[] = [...nearMissesOf(pair), ...straysOf(pair)];
  const base = baseQuarrelOf(pair);
  if (base) found.push(base);
  const bright = brightMutedOf(pair);
  if (bright) found.push(bright);
  return found.sort((one, other) => other.weight - one.weight);
}

/** Near misses between inks; two grounds that nearly agree are a base quarrel instead. */
export function nearMissesOf(pair: Pair): NearMiss[] {
  return pair.tied
    .filter(({ link, a, b }) => link.kind === 'near miss' && !(a.isBase && b.isBase && isLightNeutral(a)))
    .map((tied) => {
      const answered = bothChromatic(tied.a, tied.b)
        ? answeredBySameness(pair, tied)
        : whiteIsShared(pair, tied);
      const behind = pair.strip ? troubleWeights.behindStrip.nearMiss : 1;
      const weight = nearMissWeight(tied, pair.distance) * (1 - answered) * behind;
      return { kind: 'near miss', tied, weight, answered };
    });
}

/** Strong inks of either side whose links are all unrelated or near misses. */
export function straysOf(pair: Pair): Stray[] {
  if (pair.anchor.quiet || pair.candidate.quiet) return [];
  return [...pair.anchor.inks, ...pair.candidate.inks]
    .filter((ink) => isStray(pair, ink))
    .map((ink) => strayOf(pair, ink));
}

/** The quarrel of two light grounds, or null where they agree or were never alike. */
export function baseQuarrelOf(pair: Pair): BaseQuarrel | null {
  const tied = pair.tied[0]!;
  const { a, b, link } = tied;
  if (!isLightNeutral(a) || !isLightNeutral(b)) return null;
  const bare = pair.anchor.plain || pair.candidate.plain;
  const weight = baseQuarrelWeight(b.lab.b - a.lab.b, link.deltaE00, bare, pair.strip);
  return weight > 0 ? { kind: 'base quarrel', tied, weight } : null;
}

/** What it weighs that two light grounds differ by so much in b*; 0 where they agree. */
export function baseQuarrelWeight(deltaB: number, deltaE00: number, bare: boolean, strip: boolean): number {
  const { least, full, fromDeltaB, fullDeltaB, barePlain } = troubleWeights.baseQuarrel;
  const apart = Math.abs(deltaB);
  if (apart <= fromDeltaB || deltaE00 < linkLimits.whitesDeltaEMin) return 0;
  const behind = strip ? troubleWeights.behindStrip.baseQuarrel : 1;
  return between(least, full, ramp(apart, fromDeltaB, fullDeltaB)) * (bare ? barePlain : 1) * behind;
}

/** Bright colours against muted ones, or null where either side is quiet or they are much alike. */
export function brightMutedOf(pair: Pair): BrightMuted | null {
  if (pair.anchor.quiet || pair.candidate.quiet) return null;
  const anchor = intensityOf(pair.anchor);
  const candidate = intensityOf(pair.candidate);
  const weight = brightMutedWeight(
    candidate.chroma - anchor.chroma,
    candidate.saturation - anchor.saturation,
  );
  return weight > 0 ? { kind: 'bright against muted', weight, anchor, candidate } : null;
}

/** What it weighs that two sides differ by so much in mean chroma and saturation; 0 where that says nothing. */
export function brightMutedWeight(dChroma: number, dSaturation: number): number {
  const { least, full, fromChroma, fullChroma, fromSaturation, fullSaturation } = troubleWeights.brightMuted;
  const along = Math.min(
    ramp(Math.abs(dChroma), fromChroma, fullChroma),
    ramp(Math.abs(dSaturation), fromSaturation, fullSaturation),
  );
  // A tint is paler and a shade darker without being muted: only where both numbers say so is one side muted.
  return Math.sign(dChroma) !== Math.sign(dSaturation) || along === 0 ? 0 : between(least, full, along);
}

/** How bright the coloured inks of a side are, taken together. The side must not be quiet. */
export function intensityOf(side: MeasuredSide): Intensity {
  const inks = side.inks.filter((ink) => ink.actsAs === null);
  const area = inks.reduce((sum, ink) => sum + ink.share, 0);
  const mean = (of: (ink: MeasuredInk) => number) =>
    inks.reduce((sum, ink) => sum + of(ink) * ink.share, 0) / area;
  const lead = inks.reduce((best, ink) => (ink.chroma * ink.share > best.chroma * best.share ? ink : best));
  return { chroma: mean((ink) => ink.chroma), saturation: mean((ink) => ink.saturation), lead };
}

function answeredBySameness(pair: Pair, { a, b }: Tied): number {
  // If either ink is on both sheets, then the two already stand side by side on one of them, and look meant.
  const of = (ink: MeasuredInk) => linksOf(pair, ink).map(({ same }) => same);
  return Math.max(...of(a), ...of(b));
}

function whiteIsShared(pair: Pair, { a, b }: Tied): number {
  const shared = (ink: MeasuredInk) => linksOf(pair, ink).some(({ link }) => link.kind === 'repeat');
  return shared(a) || shared(b) ? 1 : 0;
}

function isStray(pair: Pair, ink: MeasuredInk): boolean {
  return (
    ink.actsAs === null &&
    ink.chroma >= inkLimits.strayChroma &&
    ink.share >= inkLimits.strayShare &&
    linksOf(pair, ink).every(({ link }) => link.kind === 'unrelated' || link.kind === 'near miss')
  );
}

function strayOf(pair: Pair, ink: MeasuredInk): Stray {
  const { own, other } = sidesOf(pair, ink);
  const links = linksOf(pair, ink);
  const away = Math.min(...links.map((tied) => stepsFromAnswer(tied, pair.distance)));
  const beside = ink.share < inkLimits.accentShare ? complementOn(own, ink) : null;
  const weight =
    vividness(ink) *
    sizeOf(ink.share) *
    presence(other) *
    ramp(away, 0, ramps.straySteps) *
    (1 - troubleWeights.strayTied * pair.repeated) *
    (beside ? troubleWeights.strayTolerated : 1);
  const misses = links.find(({ link, a, b }) => link.kind === 'near miss' && bothChromatic(a, b)) ?? null;
  return { kind: 'stray', ink, weight, beside, misses };
}

/** The largest ink of a side that lies opposite to one of its own. */
function complementOn(side: MeasuredSide, ink: MeasuredInk): MeasuredInk | null {
  const within = linkLimits.oppositeWithinSteps * degreesPerStep;
  const opposite = side.inks.filter(
    (other) =>
      other.actsAs === null &&
      other.share >= ink.share &&
      other.chroma >= inkLimits.quietChroma &&
      (['eye', 'painter'] as const).some((wheel) => (offAxisDeg(ink, other, wheel) ?? 180) <= within),
  );
  return opposite.reduce<MeasuredInk | null>(
    (best, one) => (best && best.share >= one.share ? best : one),
    null,
  );
}
