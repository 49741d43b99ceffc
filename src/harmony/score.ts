import { ciede2000At } from '../colour/ciede2000.ts';
import type { Side } from '../sheet/model.ts';
import { degreesPerStep, repeatLimit } from './links.ts';
import {
  farDeltaE,
  kindOf,
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
import { inkLimits, linkLimits, ramps, troubleWeights } from './thresholds.ts';
import { baseQuarrelWeight, brightMutedWeight } from './troubles.ts';
import { ruleFor, verdictOfRule, verdictOrder } from './verdict.ts';
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
 * A judge of many sides against one anchor: the same rules as `compare`, by the same functions, on lines of numbers.
 * The score it returns is written over at the next call.
 */
export function scorerOf(anchor: Side, distance: Distance, strip: boolean): (candidate: Side) => Score {
  const a = linesOf(anchor, emptyLines());
  const b = emptyLines();
  const table = new Table(a, strip ? 'apart' : distance, strip);
  return (candidate) => table.score(linesOf(candidate, b));
}

/** The links of a pair as arrays, row by anchor ink, column by candidate ink; and what is made of them. */
class Table {
  private readonly a: Lines;
  private readonly limit: number;
  private readonly strip: boolean;
  private b: Lines = emptyLines();
  private kinds: LinkKind[] = [];
  private readonly meetings: Meeting[] = [];
  private readonly result: Score = { verdict: 0, worst: 0, answered: 0, intrudes: 0 };
  private readonly stranger: boolean[] = [];
  private repeated = 0;
  private tie = 0;
  private worst = 0;
  private second = 0;

  constructor(anchor: Lines, distance: Distance, strip: boolean) {
    this.a = anchor;
    this.limit = repeatLimit(distance);
    this.strip = strip;
  }

  score(candidate: Lines): Score {
    this.b = candidate;
    this.meet();
    const quiet = this.a.quiet || this.b.quiet;
    this.weigh(quiet);
    const { worst, second, tie } = this;
    const rule = ruleFor({ worst, second, quiet, tie, near: () => this.near() });
    this.result.verdict = verdictOrder.indexOf(verdictOfRule[rule]);
    this.result.worst = worst;
    this.stand();
    return this.result;
  }

  /** Every ink of the anchor with every ink of the candidate. */
  private meet(): void {
    const { a, b, limit, kinds, meetings } = this;
    let n = 0;
    let tie = 0;
    let repeated = 0;
    for (let i = 0; i < a.count; i++) {
      for (let j = 0; j < b.count; j++, n++) {
        const m = (meetings[n] ??= emptyMeeting());
        fill(m, a.data, i * at.width, b.data, j * at.width);
        const kind = kindOf(m, limit);
        kinds[n] = kind;
        if (!m.chromatic) continue;
        if (kind !== 'unrelated' && kind !== 'near miss') tie = Math.max(tie, tieOf(m, kind, limit));
        if (m.deltaE00 < farDeltaE) repeated = Math.max(repeated, samenessOf(m));
      }
    }
    this.tie = tie;
    this.repeated = repeated;
  }

  /** The worst trouble and the second, as in `troubles.ts` and `counted`. */
  private weigh(quiet: boolean): void {
    this.worst = 0;
    this.second = 0;
    let alone = 0;
    for (let n = 0; n < this.a.count * this.b.count; n++) {
      if (this.kinds[n] === 'near miss') this.count(this.nearMiss(n));
    }
    if (!quiet) {
      for (let i = 0; i < this.a.count; i++) alone = Math.max(alone, this.stray(i, true));
      for (let j = 0; j < this.b.count; j++) alone = Math.max(alone, this.stray(j, false));
      this.count(brightMutedWeight(this.b.chroma - this.a.chroma, this.b.saturation - this.a.saturation));
    } else {
      this.markStrangers();
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

  private nearMiss(n: number): number {
    const { a, b, meetings } = this;
    const m = meetings[n]!;
    const i = Math.floor(n / b.count);
    const j = n - i * b.count;
    if (i === 0 && j === 0 && lightNeutral(a.data, 0)) return 0;
    const weight = nearMissOf(m, this.limit);
    if (weight === 0) return 0;
    const behind = this.strip ? troubleWeights.behindStrip.nearMiss : 1;
    return weight * (1 - this.answered(i, j, m.chromatic)) * behind;
  }

  private answered(i: number, j: number, chromatic: boolean): number {
    const { a, b } = this;
    let most = 0;
    for (let k = 0; k < b.count; k++) most = Math.max(most, this.same(i * b.count + k, chromatic));
    for (let k = 0; k < a.count; k++) most = Math.max(most, this.same(k * b.count + j, chromatic));
    return most;
  }

  private same(n: number, chromatic: boolean): number {
    if (chromatic) return samenessOf(this.meetings[n]!);
    return this.kinds[n] === 'repeat' ? 1 : 0;
  }

  /** Weight of an ink as a stray that has no near miss; strays with one are kept for `worst` alone. */
  private stray(at0: number, ofAnchor: boolean): number {
    const { a, b, kinds, meetings } = this;
    const own = ofAnchor ? a : b;
    const other = ofAnchor ? b : a;
    const o = at0 * at.width;
    let away = Number.POSITIVE_INFINITY;
    let misses = false;
    let alone = true;
    for (let k = 0; k < other.count; k++) {
      const n = ofAnchor ? at0 * b.count + k : k * b.count + at0;
      const kind = kinds[n]!;
      if (kind !== 'unrelated' && kind !== 'near miss') {
        alone = false;
        break;
      }
      const m = meetings[n]!;
      if (kind === 'near miss' && m.chromatic) misses = true;
      away = Math.min(away, stepsFromAnswerOf(m, kind, this.limit));
    }
    this.stranger[ofAnchor ? at0 : a.count + at0] = alone;
    const chroma = own.data[o + at.chroma]!;
    const share = own.data[o + at.share]!;
    const strong =
      own.data[o + at.neutral] === 0 && chroma >= inkLimits.strayChroma && share >= inkLimits.strayShare;
    if (!alone || !strong) return 0;
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

  private markStrangers(): void {
    const { a, b, kinds } = this;
    const related = (n: number) => kinds[n] !== 'unrelated' && kinds[n] !== 'near miss';
    for (let i = 0; i < a.count; i++) {
      let alone = true;
      for (let j = 0; j < b.count && alone; j++) alone = !related(i * b.count + j);
      this.stranger[i] = alone;
    }
    for (let j = 0; j < b.count; j++) {
      let alone = true;
      for (let i = 0; i < a.count && alone; i++) alone = !related(i * b.count + j);
      this.stranger[a.count + j] = alone;
    }
  }

  private baseQuarrel(): number {
    const { a, b } = this;
    if (!lightNeutral(a.data, 0) || !lightNeutral(b.data, 0)) return 0;
    const bare = a.count === 1 || b.count === 1;
    return baseQuarrelWeight(b.data[at.b]! - a.data[at.b]!, this.meetings[0]!.deltaE00, bare, this.strip);
  }

  private near(): NearTie {
    let any = 0;
    let same = 0;
    for (let n = 0; n < this.a.count * this.b.count; n++) {
      const m = this.meetings[n]!;
      same = Math.max(same, nearSameOf(m, this.limit));
      any = Math.max(any, nearKinOf(m, this.limit));
    }
    return { any: Math.max(any, same), same };
  }

  private stand(): void {
    const { a, b, stranger, result } = this;
    let area = 0;
    let answered = 0;
    for (let i = a.count > 1 ? 1 : 0; i < a.count; i++) {
      const share = a.data[i * at.width + at.share]!;
      area += share;
      if (!stranger[i]) answered += share;
    }
    let intrudes = 0;
    for (let j = 0; j < b.count; j++) {
      const o = j * at.width;
      if (stranger[a.count + j] && b.data[o + at.neutral] === 0) intrudes += b.data[o + at.share]!;
    }
    result.answered = area > 0 ? answered / area : 1;
    result.intrudes = intrudes;
  }
}

function emptyMeeting(): Meeting {
  return {
    deltaE00: 0,
    hueSteps: 0,
    valueSteps: 0,
    offSteps: 0,
    chromatic: false,
    whites: false,
    size: 0,
    missSize: 0,
    seen: 0,
    tint: 0,
    strong: 0,
  };
}

function fill(m: Meeting, a: Float64Array, i: number, b: Float64Array, j: number): void {
  m.chromatic = a[i + at.neutral] === 0 && b[j + at.neutral] === 0;
  m.deltaE00 = differenceWithin(a, i, b, j);
  m.whites = false;
  m.size = Math.min(a[i + at.size]!, b[j + at.size]!);
  m.missSize = Math.min(a[i + at.missSize]!, b[j + at.missSize]!);
  m.seen = Math.min(a[i + at.seen]!, b[j + at.seen]!);
  if (!m.chromatic) {
    m.whites =
      m.deltaE00 < farDeltaE &&
      lightNeutral(a, i) &&
      lightNeutral(b, j) &&
      Math.abs(b[j + at.b]! - a[i + at.b]!) > linkLimits.whitesDeltaB;
    return;
  }
  const counts = Math.min(a[i + at.counts]!, b[j + at.counts]!);
  m.tint = Math.min(a[i + at.tint]!, b[j + at.tint]!) * counts;
  m.strong = Math.min(a[i + at.strong]!, b[j + at.strong]!) * counts;
  const apart = Math.abs(a[i + at.hue]! - b[j + at.hue]!);
  m.hueSteps = apart > 50 ? 100 - apart : apart;
  m.valueSteps = Math.abs(b[j + at.value]! - a[i + at.value]!);
  m.offSteps =
    Math.min(offDeg(a[i + at.eye]!, b[j + at.eye]!), offDeg(a[i + at.painter]!, b[j + at.painter]!)) /
    degreesPerStep;
}

function offDeg(one: number, other: number): number {
  const apart = Math.abs(one - other);
  return 180 - (apart > 180 ? 360 - apart : apart);
}

/** ΔE₀₀, or Infinity where a bound says that it is above `farDeltaE`. */
function differenceWithin(a: Float64Array, i: number, b: Float64Array, j: number): number {
  const dL = a[i]! - b[j]!;
  // S_L is 1.75 at most, so lightness alone can settle it.
  if (dL > farDeltaE * 1.75 || dL < -farDeltaE * 1.75) return Number.POSITIVE_INFINITY;
  return ciede2000At(a, i, b, j, false);
}

function lightNeutral(lines: Float64Array, o: number): boolean {
  return lines[o + at.neutral] !== 0 && lines[o + at.l]! >= linkLimits.lightNeutralL;
}

function hasComplement(lines: Lines, o: number): boolean {
  const { data, count } = lines;
  for (let k = 0; k < count; k++) {
    const p = k * at.width;
    if (data[p + at.neutral] !== 0 || data[p + at.share]! < data[o + at.share]!) continue;
    if (data[p + at.chroma]! < inkLimits.quietChroma) continue;
    const off = Math.min(
      offDeg(data[o + at.eye]!, data[p + at.eye]!),
      offDeg(data[o + at.painter]!, data[p + at.painter]!),
    );
    if (off <= linkLimits.oppositeWithinSteps * degreesPerStep) return true;
  }
  return false;
}
