import { deltaE2000, deltaEOk } from '../colour/difference.ts';
import { oklabFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import type { Ink, Side } from '../sheet/model.ts';
import { said } from './ink-word.ts';
import { bothChromatic, type Tied } from './links.ts';
import { type MeasuredInk, type MeasuredSide, measureColour, measureSide } from './measured.ts';
import type { FoundBridge, FoundColour } from './model.ts';
import * as sentences from './more-sentences.ts';
import { type Pair, pairOf } from './pair.ts';
import { takeSide } from './take-side.ts';
import { inkLimits, linkLimits, verdictLimits } from './thresholds.ts';
import { judge, verdictOrder } from './verdict.ts';
import { tieWeight } from './weights.ts';

/**
 * What have I that repeats this ink? Every side with an ink (or base) within `limit` ΔE₀₀ (default 5, a repeat), nearest
 * first. The nearest ink of a side is found by ΔE OK with a and b doubled and confirmed by ΔE₀₀.
 */
export function findByColour(
  ink: Ink,
  sides: readonly Side[],
  limit: number = linkLimits.repeatApart,
): FoundColour[] {
  const wanted = measureColour(ink).lab;
  const ok = oklabFromOklch(oklchFromTuple(ink.oklch));
  return sides
    .flatMap((side, index): FoundColour[] => {
      const all = [side.base, ...side.inks];
      const [nearest] = all
        .map((one) => ({ one, away: deltaEOk(ok, oklabFromOklch(oklchFromTuple(one.oklch)), 2) }))
        .sort((a, b) => a.away - b.away);
      const deltaE00 = deltaE2000(wanted, measureColour(nearest!.one).lab);
      return deltaE00 <= limit ? [{ index, ink: nearest!.one.id, deltaE00, share: nearest!.one.share }] : [];
    })
    .sort((a, b) => a.deltaE00 - b.deltaE00 || a.index - b.index);
}

/**
 * What have I that could stand between these two? Sides that are tied to both (or quiet) and pull apart from neither;
 * those that hold with both first, then by the weaker of their ties.
 */
export function findBridge(
  anchorSide: Side,
  candidateSide: Side,
  sides: readonly Side[],
  names: readonly string[] = [],
): FoundBridge[] {
  // Both stand as the anchor to what lies between them; their inks keep the letters that they have in the study.
  const ends = [takeSide(anchorSide, 'anchor'), takeSide(candidateSide, 'candidate')].map((side) =>
    measureSide(side, 'anchor'),
  );
  return sides
    .flatMap((side, index) => {
      const middle = measureSide(takeSide(side, 'candidate'), 'candidate');
      return bridgeOf(ends, middle, index, names[index] ?? 'this one') ?? [];
    })
    .sort((a, b) => order(a) - order(b) || b.weaker - a.weaker || a.index - b.index);
}

function bridgeOf(
  ends: readonly MeasuredSide[],
  middle: MeasuredSide,
  index: number,
  name: string,
): FoundBridge | null {
  const [one, other] = ends.map((end) => pairOf(end, middle)) as [Pair, Pair];
  const [a, b] = [judge(one), judge(other)];
  if (a.verdict === 'pulls-apart' || b.verdict === 'pulls-apart') return null;
  const weaker = Math.min(a.tie?.weight ?? 0, b.tie?.weight ?? 0);
  if (weaker < verdictLimits.tie && !middle.quiet) return null;
  const words = (pair: Pair) =>
    [...new Set(tiesOf(pair).map(({ a: ink }) => ink))].slice(0, 2).map((ink) => said(ink, unnamed));
  return {
    index,
    toAnchor: a.verdict,
    toCandidate: b.verdict,
    weaker,
    says: sentences.bridge(name, words(one), words(other)),
  };
}

const unnamed = { anchor: 'the anchor', candidate: 'the candidate' } as const;

function tiesOf(pair: Pair): Tied[] {
  const strong = (ink: MeasuredInk) => ink.share >= inkLimits.strayShare;
  return pair.tied
    .filter(({ a, b }) => bothChromatic(a, b) && strong(a) && strong(b))
    .filter((tied) => tieWeight(tied, pair.distance) >= verdictLimits.tie)
    .sort((x, y) => tieWeight(y, pair.distance) - tieWeight(x, pair.distance));
}

function order({ toAnchor, toCandidate }: FoundBridge): number {
  return verdictOrder.indexOf(toAnchor) + verdictOrder.indexOf(toCandidate);
}
