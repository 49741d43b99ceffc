import type { LinkKind } from '../model.ts';
import { inkLimits, linkLimits, ramps, tieWeights, troubleWeights } from '../thresholds.ts';
import { between, ramp } from './ramp.ts';

/**
 * Two inks that meet, as the few numbers that decide how they relate and what that weighs. Weights fade to nothing at the
 * borders of their kind.
 */
export interface LinkNumbers {
  /** CIEDE2000. */
  deltaE00: number;
  /** Munsell hue steps between them, 0–50, or NaN where one has no hue. */
  hueSteps: number;
  /** Munsell value steps between them, without a sign. */
  valueSteps: number;
  /** Hue steps by which they miss being opposites, on the wheel where they come nearest. */
  offSteps: number;
  /** True where neither acts as a neutral. */
  chromatic: boolean;
  /** True for two light neutrals whose b* differ by more than two whites' may. */
  whites: boolean;
  /** What the smaller of the two gives: how large it looks, how large for a near miss, and whether it is seen at all, 0–1. */
  size: number;
  missSize: number;
  seen: number;
  /** What the weaker of the two gives: how far its colour counts, for a tie and for a near miss, 0–1. */
  tint: number;
  strong: number;
}

/** Which link it is: the first test that holds. `limit` is the ΔE₀₀ of a repeat. */
export function kindOf(m: LinkNumbers, limit: number): LinkKind {
  if (m.deltaE00 <= limit) return 'repeat';
  if (m.whites && m.deltaE00 >= linkLimits.whitesDeltaEMin && m.deltaE00 <= linkLimits.whitesDeltaEMax)
    return 'near miss';
  if (!m.chromatic || Number.isNaN(m.hueSteps)) return 'unrelated';
  if (m.hueSteps < linkLimits.nearMissFromSteps) return 'tonal';
  if (m.hueSteps <= linkLimits.nearMissToSteps) {
    if (m.valueSteps >= linkLimits.tonalValueSteps) return 'tonal';
    // So far apart nobody takes the one for the other: they are kin.
    return m.deltaE00 <= linkLimits.nearMissDeltaEMax ? 'near miss' : 'neighbour';
  }
  if (m.hueSteps <= linkLimits.neighbourToSteps) return 'neighbour';
  return m.offSteps <= linkLimits.oppositeWithinSteps ? 'opposite' : 'unrelated';
}

/** What a link weighs as a tie, 0–1; 0 where its kind ties nothing. */
export function tieOf(m: LinkNumbers, kind: LinkKind, limit: number): number {
  switch (kind) {
    case 'repeat': {
      if (!m.chromatic) return (tieWeights.neutral.least + tieWeights.neutral.size * m.size) * m.seen;
      const fade = ramp(m.deltaE00, (ramps.repeatFullDeltaE * limit) / linkLimits.repeatApart, limit);
      const whole = (tieWeights.repeat.least + tieWeights.repeat.size * m.size) * m.seen;
      // A colour that hardly counts as one still ties where it comes back.
      return (
        whole * between(tieWeights.repeat.greyish, 1, m.tint) * between(1, tieWeights.repeat.atLimit, fade)
      );
    }
    case 'tonal':
    case 'neighbour':
    case 'opposite': {
      const { least, size } = tieWeights[kind];
      return (least + size * m.size) * m.seen * m.tint;
    }
    default:
      return 0;
  }
}

/** What a near miss weighs, 0–1, if nothing answers it. */
export function nearMissOf(m: LinkNumbers, limit: number): number {
  if (!m.chromatic) return troubleWeights.nearWhites * m.missSize * m.seen;
  const { full, leastSize } = troubleWeights.nearMiss;
  const { nearMissFromSteps: from, nearMissToSteps: to, tonalValueSteps } = linkLimits;
  const inside =
    ramp(m.deltaE00, limit, limit + ramps.nearMissDeltaE) *
    ramp(m.deltaE00, linkLimits.nearMissDeltaEMax, linkLimits.nearMissDeltaEMax - ramps.nearMissEnds) *
    ramp(m.hueSteps, from, from + ramps.nearMissSteps) *
    ramp(m.hueSteps, to, to - ramps.nearMissSteps) *
    ramp(m.valueSteps, tonalValueSteps, tonalValueSteps - ramps.nearMissValue);
  return full * inside * m.strong * between(leastSize, 1, m.missSize) * m.seen;
}

/** How large a share looks, 0–1: area by its square root, since a small accent counts. */
export function sizeOf(share: number): number {
  return Math.min(1, Math.sqrt(share / inkLimits.largeShare));
}

/** The same for a near miss, where a small ink is enough to trip over. */
export function missSizeOf(share: number): number {
  return Math.min(1, Math.sqrt(share / troubleWeights.nearMiss.sizeFull));
}

/** Whether a share is seen at all, 0–1. */
export function seenOf(share: number): number {
  return ramp(share, inkLimits.speckFrom, inkLimits.speckFull);
}

/** How far a chroma counts as colour, 0–1, for a tie. */
export function tintOf(chroma: number): number {
  return ramp(chroma, inkLimits.tintFrom, inkLimits.tintFull);
}

/** The same for a near miss: two greyish colours may differ. */
export function strongOf(chroma: number): number {
  return ramp(chroma, inkLimits.tintFrom, troubleWeights.nearMiss.chromaFull);
}

/** How vivid a chroma is, 0–1, for a stray. */
export function vividOf(chroma: number): number {
  return between(inkLimits.vividAtStray, 1, ramp(chroma, inkLimits.strayChroma, inkLimits.vividFull));
}
