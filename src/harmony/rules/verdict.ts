import { bothChromatic, type Tied } from '../measure/links.ts';
import type { MeasuredInk } from '../measure/measured.ts';
import type { Pair } from '../measure/pair.ts';
import { type Verdict, verdicts } from '../model.ts';
import { judgeWhole } from '../whole/judge.ts';
import type { FindingName, Judged } from '../whole/model.ts';
import { portraitOf } from '../whole/portrait.ts';
import { tieWeight } from './weights.ts';

/** A link with what it weighs as a tie. */
export interface Tie {
  readonly tied: Tied;
  readonly weight: number;
}

/** A finding that counts against a pair. */
export interface Trouble {
  readonly kind: FindingName;
  /** What it counts, 0–1. */
  readonly weight: number;
  /** The families that it speaks of; empty where it speaks of whole sides. */
  readonly inks: readonly MeasuredInk[];
}

/** What was found of two papers held together. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly whole: Judged;
  /** Whatever counts against the pair, weightiest first. */
  readonly troubles: readonly Trouble[];
  /** The strongest tie of colour, whatever it weighs: evidence for what is offered, and none for the verdict. */
  readonly tie: Tie | null;
}

/** Judges two papers held together: as wholes, by what is found of both. */
export function judge(pair: Pair): Judgement {
  const whole = judgeWhole(portraitOf(pair.anchor.side), portraitOf(pair.candidate.side), pair);
  return { verdict: whole.verdict, whole, troubles: troublesOf(pair, whole), tie: strongestTie(pair) };
}

function troublesOf(pair: Pair, { counted }: Judged): Trouble[] {
  return counted
    .filter(({ counts }) => counts < 0)
    .map(({ name, counts, families: [a, b] }) => ({
      kind: name,
      weight: -counts,
      inks: [
        ...pair.anchor.inks.filter(({ id }) => a.includes(id)),
        ...pair.candidate.inks.filter(({ id }) => b.includes(id)),
      ],
    }));
}

/** The strongest tie of colour of a pair; neutrals tie nothing by themselves. */
export function strongestTie(pair: Pair): Tie | null {
  let best: Tie | null = null;
  for (const tied of pair.tied) {
    if (!bothChromatic(tied.a, tied.b)) continue;
    const weight = tieWeight(tied, pair.distance);
    if (best === null || weight > best.weight) best = { tied, weight };
  }
  return best;
}

/** The verdicts from best to worst. */
export const verdictOrder: readonly Verdict[] = verdicts;
