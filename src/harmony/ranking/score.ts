import type { Side } from '../../sheet/model.ts';
import { atB, atChroma, atCounts, atNeutral, atShare, lineWidth } from '../measure/fade.ts';
import {
  nearKinOf,
  nearMissOf,
  nearSameOf,
  sizeOf,
  stepsFromAnswerOf,
  vividOf,
} from '../measure/link-kind.ts';
import { repeatLimit } from '../measure/links.ts';
import { ramp } from '../measure/ramp.ts';
import type { Distance } from '../model.ts';
import { baseQuarrelWeight, brightMutedWeight } from '../rules/troubles.ts';
import { ruleFor, verdictOfRule, verdictOrder, type Weighed } from '../rules/verdict.ts';
import type { NearTie } from '../rules/weights.ts';
import { inkLimits, ramps, troubleWeights, verdictLimits } from '../thresholds.ts';
import { emptyLines, type Lines, linesOf } from './score-lines.ts';
import { is, Links } from './score-links.ts';
import { hasComplement, hues, lightNeutral, weights } from './score-pair.ts';

/** What a ranking goes by, without a reason or a sentence. */
export interface Score {
  /** Place of the verdict in `verdictOrder`: 0 holds, 1 needs a bridge, 2 pulls apart. */
  verdict: number;
  worst: number;
  answered: number;
  intrudes: number;
}

/**
 * A judge of many sides against one anchor: the same rules as `compare`, by the same functions, on lines of numbers,
 * asking of each pair of inks no more than can matter. A test holds it to `compare`, bit for bit.
 * The score it returns is written over at the next call. Sides must be whole: see `linesOf`.
 */
export function scorerOf(anchor: Side, distance: Distance, strip: boolean): (candidate: Lines) => Score {
  const judge = new Judge(linesOf(anchor, emptyLines()), strip ? 'apart' : distance, strip);
  return (candidate) => judge.score(candidate);
}

/** What is made of the links of a pair. */
class Judge {
  private readonly links: Links;
  private readonly strip: boolean;
  private readonly result: Score = { verdict: 0, worst: 0, answered: 0, intrudes: 0 };
  private readonly weighed: { -readonly [K in keyof Weighed]: Weighed[K] };
  private worst = 0;
  private second = 0;

  constructor(anchor: Lines, distance: Distance, strip: boolean) {
    this.links = new Links(anchor, repeatLimit(distance));
    this.strip = strip;
    this.weighed = { worst: 0, second: 0, quiet: false, tie: 0, near: () => this.near() };
  }

  score(candidate: Lines): Score {
    const { weighed, links } = this;
    links.meet(candidate);
    weighed.quiet = links.a.quiet || links.b.quiet;
    this.weigh(weighed.quiet);
    weighed.worst = this.worst;
    weighed.second = this.second;
    weighed.tie = links.tie;
    this.result.verdict = verdictOrder.indexOf(verdictOfRule[ruleFor(weighed)]);
    this.result.worst = this.worst;
    this.stand();
    return this.result;
  }

  /** The worst trouble and the second, as `troublesOf` and `counted` have them. */
  private weigh(quiet: boolean): void {
    const { a, b, marks, missed, missedCount, colouredA, colouredB, colouredCount } = this.links;
    this.worst = 0;
    this.second = 0;
    for (let k = 0; k < missedCount; k++) this.count(this.nearMiss(missed[k]!));
    this.count(this.baseQuarrel());
    if (quiet) return;
    this.count(brightMutedWeight(b.chroma - a.chroma, b.saturation - a.saturation));
    let alone = 0;
    for (const i of colouredA) if (!(marks[i]! & is.answered)) alone = Math.max(alone, this.stray(i, true));
    for (let k = 0; k < colouredCount; k++) {
      const j = colouredB[k]!;
      if (!(marks[a.count + j]! & is.answered)) alone = Math.max(alone, this.stray(j, false));
    }
    // An ink alone whose near miss is counted is no second trouble, but may be the worst.
    this.worst = Math.max(this.worst, alone);
  }

  private count(weight: number): void {
    if (weight > this.worst) {
      this.second = this.worst;
      this.worst = weight;
    } else if (weight > this.second) this.second = weight;
  }

  private nearMiss(n: number): number {
    const { a, b, m, same, marks, limit } = this.links;
    if (n === 0 && lightNeutral(a.data, 0)) return 0;
    const j = n % b.count;
    const i = (n - j) / b.count;
    this.again(i, j, n);
    const weight = nearMissOf(m, limit);
    if (weight === 0) return 0;
    const [one, other] = [i, a.count + j];
    const answered = m.chromatic
      ? Math.max(same[one]!, same[other]!)
      : Math.sign((marks[one]! | marks[other]!) & is.repeat);
    const behind = this.strip ? troubleWeights.behindStrip.nearMiss : 1;
    return weight * (1 - answered) * behind;
  }

  /** Weight of an ink that nothing answers, if it is a stray: returned where it has a near miss, else counted. */
  private stray(place: number, ofAnchor: boolean): number {
    const { a, b, m, far, limit, marks, repeated } = this.links;
    const own = ofAnchor ? a : b;
    const other = ofAnchor ? b : a;
    const others = ofAnchor ? this.links.colouredB : this.links.colouredA;
    const count = ofAnchor ? this.links.colouredCount : this.links.colouredA.length;
    const o = own.start + place * lineWidth;
    const chroma = own.data[o + atChroma]!;
    const share = own.data[o + atShare]!;
    if (chroma < inkLimits.strayChroma || share < inkLimits.strayShare) return 0;
    const most = vividOf(chroma) * own.data[o + atCounts]! * sizeOf(share) * other.presence;
    // The rest only lowers it, and below the second trouble it changes nothing.
    if (most <= this.second) return 0;
    let away = Number.POSITIVE_INFINITY;
    m.chromatic = true;
    for (let k = 0; k < count; k++) {
      const to = others[k]!;
      m.deltaE00 = far[ofAnchor ? place * b.count + to : to * b.count + place]!;
      hues(m, own.data, o, other.data, other.start + to * lineWidth);
      away = Math.min(away, stepsFromAnswerOf(m, 'unrelated', limit));
      if (most * ramp(away, 0, ramps.straySteps) <= this.second) return 0;
    }
    const weight =
      most *
      ramp(away, 0, ramps.straySteps) *
      (1 - troubleWeights.strayTied * repeated) *
      (share < inkLimits.accentShare && hasComplement(own, o) ? troubleWeights.strayTolerated : 1);
    if (marks[ofAnchor ? place : a.count + place]! & is.missed) return weight;
    this.count(weight);
    return 0;
  }

  /** The meeting at a place, once more, with its weights. */
  private again(i: number, j: number, n: number): void {
    const { a, b, m, far } = this.links;
    const o = i * lineWidth;
    const p = b.start + j * lineWidth;
    m.chromatic = a.data[o + atNeutral] === 0 && b.data[p + atNeutral] === 0;
    m.deltaE00 = far[n]!;
    if (m.chromatic) hues(m, a.data, o, b.data, p);
    weights(m, a.data, o, b.data, p);
  }

  private baseQuarrel(): number {
    const { a, b, far } = this.links;
    if (!lightNeutral(a.data, 0) || !lightNeutral(b.data, b.start)) return 0;
    const bare = a.plain || b.plain;
    return baseQuarrelWeight(b.data[b.start + atB]! - a.data[atB]!, far[0]!, bare, this.strip);
  }

  /** How near anything comes to tying; left early once no rule can ask for more. */
  private near(): NearTie {
    const { b, m, limit, colouredA, colouredB, colouredCount } = this.links;
    const enough = verdictLimits.nearTie;
    let any = 0;
    let same = 0;
    // A neutral ties nothing by its hue.
    for (const i of colouredA) {
      for (let k = 0; k < colouredCount; k++) {
        const j = colouredB[k]!;
        this.again(i, j, i * b.count + j);
        same = Math.max(same, nearSameOf(m, limit));
        any = Math.max(any, same, nearKinOf(m, limit));
        if (any >= enough && (same >= enough || this.second < verdictLimits.serious)) return { any, same };
      }
    }
    return { any, same };
  }

  private stand(): void {
    const { result } = this;
    const { a, b, marks } = this.links;
    let area = 0;
    let answered = 0;
    for (let i = a.count > 1 ? 1 : 0; i < a.count; i++) {
      const share = a.data[i * lineWidth + atShare]!;
      area += share;
      if (marks[i]! & is.answered) answered += share;
    }
    let intrudes = 0;
    for (let j = 0, o = b.start; j < b.count; j++, o += lineWidth) {
      if (!(marks[a.count + j]! & is.answered) && b.data[o + atNeutral] === 0)
        intrudes += b.data[o + atShare]!;
    }
    result.answered = area > 0 ? answered / area : 1;
    result.intrudes = intrudes;
  }
}
