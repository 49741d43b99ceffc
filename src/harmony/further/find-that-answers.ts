import { deltaE2000, deltaEOk } from '../../colour/difference.ts';
import { oklabFromOklch, oklchFromTuple } from '../../colour/spaces.ts';
import type { Ink, Side } from '../../sheet/model.ts';
import { bothChromatic } from '../measure/links.ts';
import { type MeasuredInk, type MeasuredSide, measureColour, measureSide } from '../measure/measured.ts';
import { type Pair, pairOf } from '../measure/pair.ts';
import { takeSide } from '../measure/take-side.ts';
import type { FoundBridge, FoundColour } from '../model.ts';
import { type Answered, answersOf } from '../rules/answer.ts';
import { judge } from '../rules/verdict.ts';
import { tieWeight } from '../rules/weights.ts';
import { answerLimits, inkLimits, linkLimits } from '../thresholds.ts';
import { said } from '../words/ink-word.ts';
import * as sentences from '../words/study-sentences.ts';

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
 * What have I that could stand between these two? Sides that hold with both and answer a colour of each (or are quiet),
 * by the weaker of their ties. An opposite answers nothing here: it sets off, and does not lead across.
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
    .sort((a, b) => b.weaker - a.weaker || a.index - b.index);
}

function bridgeOf(
  ends: readonly MeasuredSide[],
  middle: MeasuredSide,
  index: number,
  name: string,
): FoundBridge | null {
  const [one, other] = ends.map((end) => pairOf(end, middle)) as [Pair, Pair];
  const [a, b] = [judge(one), judge(other)];
  if (a.verdict !== 'holds-together' || b.verdict !== 'holds-together') return null;
  const [ties, others] = [tiesOf(one), tiesOf(other)];
  const weaker = Math.min(ties[0]?.weight ?? 0, others[0]?.weight ?? 0);
  if (weaker < answerLimits.tie && !middle.quiet) return null;
  const told = (found: readonly Answer[]) =>
    found.slice(0, 2).map(({ ink, how }) => ({ it: said(ink, unnamed), how }));
  return {
    index,
    toAnchor: a.verdict,
    toCandidate: b.verdict,
    weaker,
    says: sentences.bridge(name, told(ties), told(others)),
  };
}

const unnamed = { anchor: 'the anchor', candidate: 'the candidate' } as const;

interface Answer extends Answered {
  readonly weight: number;
}

/** The strong inks of the first side that the second repeats, or has a tone or a neighbour of, strongest first. */
function tiesOf(pair: Pair): Answer[] {
  const strong = (ink: MeasuredInk) => ink.share >= inkLimits.strayShare;
  const found = pair.tied
    .filter(({ a, b }) => bothChromatic(a, b) && strong(a) && strong(b))
    .flatMap((tied): Answer[] => {
      const how = answersOf(tied);
      const weight = tieWeight(tied, pair.distance);
      return how === null || how === 'opposite' || weight < answerLimits.tie
        ? []
        : [{ ink: tied.a, how, weight }];
    })
    .sort((x, y) => y.weight - x.weight);
  return found.filter(({ ink }, at) => found.findIndex((one) => one.ink === ink) === at);
}
