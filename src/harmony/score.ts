import type { Side } from '../sheet/model.ts';
import { repeatLimit } from './links.ts';
import {
  farDeltaE,
  type Meeting,
  nearKinOf,
  nearMissOf,
  nearSameOf,
  samenessOf,
  sizeOf,
  stepsFromAnswerOf,
  tieOf,
  vividOf,
} from './meeting.ts';
import type { Distance, LinkKind } from './model.ts';
import { ramp } from './ramp.ts';
import { at, emptyLines, type Lines, linesOf } from './score-lines.ts';
import { emptyMeeting, hasComplement, hues, lightNeutral, relate, weights } from './score-pair.ts';
import { inkLimits, ramps, troubleWeights, verdictLimits } from './thresholds.ts';
import { baseQuarrelWeight, brightMutedWeight } from './troubles.ts';
import { ruleFor, verdictOfRule, verdictOrder, type Weighed } from './verdict.ts';
import type { NearTie } from './weights.ts';

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
  const table = new Table(linesOf(anchor, emptyLines()), strip ? 'apart' : distance, strip);
  return (candidate) => table.score(candidate);
}

/** The links of a pair, row by anchor ink, column by candidate ink; and what is made of them. */
class Table {
  private readonly a: Lines;
  private readonly limit: number;
  private readonly strip: boolean;
  private b: Lines = emptyLines();
  private readonly kinds: LinkKind[] = [];
  /** ΔE₀₀ by place, or Infinity where it is surely large. */
  private far = new Float64Array(0);
  /** By ink, the anchor's first: whether something answers it, how much of it is on the other sheet, and whether it repeats. */
  private answeredInk = new Uint8Array(0);
  private same = new Float64Array(0);
  private repeats = new Uint8Array(0);
  private readonly m: Meeting = emptyMeeting();
  private readonly result: Score = { verdict: 0, worst: 0, answered: 0, intrudes: 0 };
  private readonly weighed: { -readonly [K in keyof Weighed]: Weighed[K] };
  private repeated = 0;
  private tie = 0;
  private worst = 0;
  private second = 0;

  constructor(anchor: Lines, distance: Distance, strip: boolean) {
    this.a = anchor;
    this.limit = repeatLimit(distance);
    this.strip = strip;
    this.weighed = { worst: 0, second: 0, quiet: false, tie: 0, near: () => this.near() };
  }

  score(candidate: Lines): Score {
    this.b = candidate;
    this.meet();
    const { weighed } = this;
    weighed.quiet = this.a.quiet || this.b.quiet;
    this.weigh(weighed.quiet);
    weighed.worst = this.worst;
    weighed.second = this.second;
    weighed.tie = this.tie;
    this.result.verdict = verdictOrder.indexOf(verdictOfRule[ruleFor(weighed)]);
    this.result.worst = this.worst;
    this.stand();
    return this.result;
  }

  /** Every ink of the anchor with every ink of the candidate. */
  private meet(): void {
    const { a, b, limit, kinds, m } = this;
    this.room();
    const { far, answeredInk, same, repeats } = this;
    let n = 0;
    this.tie = 0;
    this.repeated = 0;
    for (let i = 0; i < a.count; i++) {
      const o = i * at.width;
      for (let j = 0; j < b.count; j++, n++) {
        const p = j * at.width;
        const kind = relate(m, limit, a.data, o, b.data, p);
        kinds[n] = kind;
        far[n] = m.deltaE00;
        if (kind === 'unrelated' || (kind === 'near miss' && m.deltaE00 === Number.POSITIVE_INFINITY))
          continue;
        if (kind !== 'near miss') {
          answeredInk[i] = 1;
          answeredInk[a.count + j] = 1;
        }
        if (kind === 'repeat') {
          repeats[i] = 1;
          repeats[a.count + j] = 1;
        }
        if (!m.chromatic) continue;
        const near = m.deltaE00 < farDeltaE;
        // Beyond the limit a tie weighs no more than a tie: the rules ask only whether it is reached.
        if (!near && this.tie >= verdictLimits.tie) continue;
        weights(m, a.data, o, b.data, p);
        if (kind !== 'near miss' && this.tie < verdictLimits.tie)
          this.tie = Math.max(this.tie, tieOf(m, kind, limit));
        if (near) this.note(i, a.count + j, samenessOf(m), same);
      }
    }
  }

  private note(one: number, other: number, sameness: number, same: Float64Array): void {
    if (sameness > same[one]!) same[one] = sameness;
    if (sameness > same[other]!) same[other] = sameness;
    if (sameness > this.repeated) this.repeated = sameness;
  }

  private room(): void {
    const inks = this.a.count + this.b.count;
    const pairs = this.a.count * this.b.count;
    if (this.far.length < pairs) this.far = new Float64Array(pairs * 2);
    if (this.same.length < inks) {
      this.answeredInk = new Uint8Array(inks * 2);
      this.repeats = new Uint8Array(inks * 2);
      this.same = new Float64Array(inks * 2);
    } else {
      this.answeredInk.fill(0);
      this.repeats.fill(0);
      this.same.fill(0);
    }
  }

  /** The worst trouble and the second, as `troublesOf` and `counted` have them. */
  private weigh(quiet: boolean): void {
    const { a, b, kinds } = this;
    this.worst = 0;
    this.second = 0;
    let n = 0;
    for (let i = 0; i < a.count; i++) {
      for (let j = 0; j < b.count; j++, n++) if (kinds[n] === 'near miss') this.count(this.nearMiss(i, j, n));
    }
    let alone = 0;
    if (!quiet) {
      for (let i = 0; i < a.count; i++)
        if (!this.answeredInk[i]) alone = Math.max(alone, this.stray(i, true));
      for (let j = 0; j < b.count; j++)
        if (!this.answeredInk[a.count + j]) alone = Math.max(alone, this.stray(j, false));
      this.count(brightMutedWeight(b.chroma - a.chroma, b.saturation - a.saturation));
    }
    this.count(this.baseQuarrel());
    // An ink alone whose near miss is counted is no second trouble, but may be the worst.
    this.worst = Math.max(this.worst, alone);
  }

  private count(weight: number): void {
    if (weight > this.worst) {
      this.second = this.worst;
      this.worst = weight;
    } else if (weight > this.second) this.second = weight;
  }

  private nearMiss(i: number, j: number, n: number): number {
    const { a, m, same, repeats } = this;
    if (n === 0 && lightNeutral(a.data, 0)) return 0;
    this.again(i, j, n);
    const weight = nearMissOf(m, this.limit);
    if (weight === 0) return 0;
    const [one, other] = [i, a.count + j];
    const answered = m.chromatic
      ? Math.max(same[one]!, same[other]!)
      : Math.max(repeats[one]!, repeats[other]!);
    const behind = this.strip ? troubleWeights.behindStrip.nearMiss : 1;
    return weight * (1 - answered) * behind;
  }

  /** Weight of an ink that nothing answers, if it is a stray: returned where it has a near miss, else counted. */
  private stray(place: number, ofAnchor: boolean): number {
    const { a, b, kinds, m } = this;
    const own = ofAnchor ? a : b;
    const other = ofAnchor ? b : a;
    const o = place * at.width;
    const chroma = own.data[o + at.chroma]!;
    const share = own.data[o + at.share]!;
    if (own.data[o + at.neutral] !== 0 || chroma < inkLimits.strayChroma || share < inkLimits.strayShare)
      return 0;
    let away = Number.POSITIVE_INFINITY;
    let misses = false;
    for (let k = 0; k < other.count; k++) {
      const n = ofAnchor ? place * b.count + k : k * b.count + place;
      if (ofAnchor) this.again(place, k, n);
      else this.again(k, place, n);
      if (kinds[n] === 'near miss' && m.chromatic) misses = true;
      away = Math.min(away, stepsFromAnswerOf(m, kinds[n]!, this.limit));
    }
    const weight =
      vividOf(chroma) *
      own.data[o + at.counts]! *
      sizeOf(share) *
      other.presence *
      ramp(away, 0, ramps.straySteps) *
      (1 - troubleWeights.strayTied * this.repeated) *
      (share < inkLimits.accentShare && hasComplement(own, o) ? troubleWeights.strayTolerated : 1);
    if (misses) return weight;
    this.count(weight);
    return 0;
  }

  /** The meeting at a place, once more, with its weights. */
  private again(i: number, j: number, n: number): void {
    const { a, b, m } = this;
    m.chromatic = a.data[i * at.width + at.neutral] === 0 && b.data[j * at.width + at.neutral] === 0;
    m.deltaE00 = this.far[n]!;
    if (m.chromatic) hues(m, a.data, i * at.width, b.data, j * at.width);
    weights(m, a.data, i * at.width, b.data, j * at.width);
  }

  private baseQuarrel(): number {
    const { a, b } = this;
    if (!lightNeutral(a.data, 0) || !lightNeutral(b.data, 0)) return 0;
    const bare = a.plain || b.plain;
    return baseQuarrelWeight(b.data[at.b]! - a.data[at.b]!, this.far[0]!, bare, this.strip);
  }

  /** How near anything comes to tying; left early once no rule can ask for more. */
  private near(): NearTie {
    const { a, b, m, limit } = this;
    const enough = verdictLimits.nearTie;
    let any = 0;
    let same = 0;
    let n = 0;
    for (let i = 0; i < a.count; i++) {
      for (let j = 0; j < b.count; j++, n++) {
        this.again(i, j, n);
        same = Math.max(same, nearSameOf(m, limit));
        any = Math.max(any, same, nearKinOf(m, limit));
        if (any >= enough && (same >= enough || this.second < verdictLimits.serious)) return { any, same };
      }
    }
    return { any, same };
  }

  private stand(): void {
    const { a, b, answeredInk, result } = this;
    let area = 0;
    let answered = 0;
    for (let i = a.count > 1 ? 1 : 0; i < a.count; i++) {
      const share = a.data[i * at.width + at.share]!;
      area += share;
      if (answeredInk[i]) answered += share;
    }
    let intrudes = 0;
    for (let j = 0; j < b.count; j++) {
      const o = j * at.width;
      if (!answeredInk[a.count + j] && b.data[o + at.neutral] === 0) intrudes += b.data[o + at.share]!;
    }
    result.answered = area > 0 ? answered / area : 1;
    result.intrudes = intrudes;
  }
}
