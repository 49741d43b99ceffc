import type { Side } from '../sheet/model.ts';
import { type MeasuredSide, measureSide } from './measure/measured.ts';
import { pairOf } from './measure/pair.ts';
import { takeSide } from './measure/take-side.ts';
import type { CompareOptions, Comparison, FamilySide } from './model.ts';
import { reasonsOf } from './reasons/all.ts';
import type { Told } from './reasons/build.ts';
import { decisionOf } from './reasons/from-findings.ts';
import { judge } from './rules/verdict.ts';
import type { Names } from './words/ink-word.ts';

/** What is found of a candidate beside an anchor that was measured before: each part once, when it is first asked for. */
export class LazyComparison {
  readonly told: Told;
  private saidReasons: Comparison['reasons'] | undefined;
  private saidDecision: Comparison['decision'] | undefined;
  private madeLinks: Comparison['links'] | undefined;

  constructor(anchor: MeasuredSide, candidateSide: Side, options: CompareOptions) {
    const candidate = measureSide(takeSide(candidateSide, 'candidate'), 'candidate');
    const pair = pairOf(anchor, candidate, options.distance, options.strip);
    this.told = { pair, judgement: judge(pair), names: namesIn(options) };
  }

  get candidate(): FamilySide {
    return this.told.pair.candidate.side;
  }

  get reasons(): Comparison['reasons'] {
    return (this.saidReasons ??= reasonsOf(this.told));
  }

  get decision(): Comparison['decision'] {
    return (this.saidDecision ??= decisionOf(this.told, this.reasons));
  }

  get links(): Comparison['links'] {
    return (this.madeLinks ??= this.told.pair.tied.map(({ link }) => link));
  }
}

/** All that reasons and remedies are told from, of a pair that was compared before. */
export function toldOf({ anchor, candidate, distance, strip, names }: Comparison): Told {
  return new LazyComparison(measureSide(anchor, 'anchor'), candidate, { distance, strip, names }).told;
}

/** The names that sentences use. */
export function namesIn({ names }: CompareOptions): Names {
  return { anchor: names?.anchor ?? 'the anchor', candidate: names?.candidate ?? 'the candidate' };
}
