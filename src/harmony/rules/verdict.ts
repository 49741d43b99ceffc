import { bothChromatic, type Tied } from '../measure/links.ts';
import type { Pair } from '../measure/pair.ts';
import type { Verdict } from '../model.ts';
import { verdictLimits } from '../thresholds.ts';
import { type Trouble, troublesOf } from './troubles.ts';
import { type NearTie, nearTieOf, tieWeight } from './weights.ts';

/**
 * The verdict, by stated rules. It follows from the worst unanswered trouble and the strongest tie of colour,
 * never from a sum of weights. The first rule that holds decides:
 *
 * 1. `apart`: a serious trouble stands, and nothing comes near to tying the two.
 *    `strangers`: two serious troubles stand, and no colour comes near to being on both sheets.
 * 2. `trouble`: a trouble stands, serious or not: something must go between, or over it.
 * 3. `quiet`: one of the two has no strong colour, so nothing of it can clash.
 * 4. `tied`: a colour ties them.
 * 5. `untied`: nothing quarrels, and no colour ties them either.
 */
export type Rule = 'apart' | 'strangers' | 'trouble' | 'quiet' | 'tied' | 'untied';

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
    second: counted(troubles)[1]?.weight ?? 0,
    near: () => nearest(pair),
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
  /** Weight of the second trouble, not counting an ink's being alone where its near miss is counted. */
  readonly second: number;
  /** The strongest ties with every band widened; asked for only where they can decide. */
  readonly near: () => NearTie;
}

/** The rule that decides. */
export function ruleFor({ worst, second, quiet, tie, near }: Weighed): Rule {
  if (worst >= verdictLimits.serious && !quiet) {
    const { any, same } = near();
    if (any < verdictLimits.nearTie) return 'apart';
    if (second >= verdictLimits.serious && same < verdictLimits.nearTie) return 'strangers';
  }
  if (worst >= verdictLimits.trouble) return 'trouble';
  if (quiet) return 'quiet';
  return tie >= verdictLimits.tie ? 'tied' : 'untied';
}

/** What each rule gives. */
export const verdictOfRule: Readonly<Record<Rule, Verdict>> = {
  apart: 'pulls-apart',
  strangers: 'pulls-apart',
  trouble: 'needs-a-bridge',
  untied: 'needs-a-bridge',
  quiet: 'holds-together',
  tied: 'holds-together',
};

/** Verdicts from best to worst. */
export const verdictOrder: readonly Verdict[] = ['holds-together', 'needs-a-bridge', 'pulls-apart'];

/** The strongest tie of colour of a pair, be it nothing; the first of equals; null where no two colours meet. */
export function strongestTie(pair: Pair): Tie | null {
  let best: Tie | null = null;
  for (const tied of pair.tied) {
    if (!bothChromatic(tied.a, tied.b)) continue;
    const weight = tieWeight(tied, pair.distance);
    if (!best || weight > best.weight) best = { tied, weight };
  }
  return best;
}

function nearest(pair: Pair): NearTie {
  return pair.tied
    .map((tied) => nearTieOf(tied, pair.distance))
    .reduce((one, other) => ({
      any: Math.max(one.any, other.any),
      same: Math.max(one.same, other.same),
    }));
}

/** The troubles that count one by one: an ink's being alone is not a second one where its near miss is the first. */
export function counted(troubles: readonly Trouble[]): readonly Trouble[] {
  return troubles.filter((trouble) => trouble.kind !== 'stray' || trouble.misses === null);
}
