import { bothChromatic, type Tied } from './links.ts';
import type { Verdict } from './model.ts';
import type { Pair } from './pair.ts';
import { verdictLimits } from './thresholds.ts';
import { type Trouble, troublesOf } from './troubles.ts';
import { nearTieWeight, tieWeight } from './weights.ts';

/**
 * The verdict, by stated rules. It follows from the worst unanswered trouble and the strongest tie of colour,
 * never from a sum of weights. The first rule that holds decides:
 *
 * 1. `apart`: a serious trouble stands, and nothing comes near to tying the two.
 * 2. `trouble`: a trouble stands, serious or not: something must go between, or over it.
 * 3. `quiet`: one of the two has no strong colour, so nothing of it can clash.
 * 4. `tied`: a colour ties them.
 * 5. `untied`: nothing quarrels, and no colour ties them either.
 */
export type Rule = 'apart' | 'trouble' | 'quiet' | 'tied' | 'untied';

/** A link with what it weighs as a tie. */
export interface Tie {
  readonly tied: Tied;
  readonly weight: number;
}

/** What the rules found. */
export interface Judgement {
  readonly verdict: Verdict;
  readonly rule: Rule;
  /** All troubles, weightiest first. */
  readonly troubles: readonly Trouble[];
  /** The strongest tie of colour, whatever it weighs. */
  readonly tie: Tie | null;
}

/** Judges two papers held together. */
export function judge(pair: Pair): Judgement {
  const troubles = troublesOf(pair);
  const tie = strongestTie(pair);
  const rule = ruleFor({
    worst: troubles[0]?.weight ?? 0,
    quiet: pair.anchor.quiet || pair.candidate.quiet,
    tie: tie?.weight ?? 0,
    nearTie: () => Math.max(0, ...pair.tied.map((tied) => nearTieWeight(tied, pair.distance))),
  });
  return { verdict: verdictOfRule[rule], rule, troubles, tie };
}

/** The numbers that the rules turn on. */
export interface Weighed {
  /** Weight of the worst unanswered trouble, 0–1. */
  readonly worst: number;
  /** True where one of the two has no strong colour. */
  readonly quiet: boolean;
  /** Weight of the strongest tie of colour, 0–1. */
  readonly tie: number;
  /** The same with every band widened; asked for only where it can decide. */
  readonly nearTie: () => number;
}

/** The rule that decides. */
export function ruleFor({ worst, quiet, tie, nearTie }: Weighed): Rule {
  if (worst >= verdictLimits.serious && !quiet && nearTie() < verdictLimits.nearTie) return 'apart';
  if (worst >= verdictLimits.trouble) return 'trouble';
  if (quiet) return 'quiet';
  return tie >= verdictLimits.tie ? 'tied' : 'untied';
}

/** What each rule gives. */
export const verdictOfRule: Readonly<Record<Rule, Verdict>> = {
  apart: 'pulls-apart',
  trouble: 'needs-a-bridge',
  untied: 'needs-a-bridge',
  quiet: 'holds-together',
  tied: 'holds-together',
};

/** Verdicts from best to worst. */
export const verdictOrder: readonly Verdict[] = ['holds-together', 'needs-a-bridge', 'pulls-apart'];

/** The strongest tie of colour of a pair; the first of equals. */
export function strongestTie(pair: Pair): Tie | null {
  let best: Tie | null = null;
  for (const tied of pair.tied) {
    if (!bothChromatic(tied.a, tied.b)) continue;
    const weight = tieWeight(tied, pair.distance);
    if (weight > (best?.weight ?? 0)) best = { tied, weight };
  }
  return best;
}
