import { atNeutral, lineWidth } from './line.ts';
import { farDeltaE, type Meeting, samenessOf, tieOf } from './meeting.ts';
import { emptyLines, type Lines } from './score-lines.ts';
import { emptyMeeting, relate, surelyUnrelated, weights } from './score-pair.ts';
import { verdictLimits } from './thresholds.ts';

/** What an ink is marked as: something answers it, it repeats, it nearly misses another colour. */
export const is = { answered: 1, repeat: 2, missed: 4 } as const;

/** The links of an anchor with one candidate after another, kept as numbers: what is found is written over at the next. */
export class Links {
  readonly a: Lines;
  readonly limit: number;
  b: Lines = emptyLines();
  /** ΔE₀₀ by place (anchor ink × candidate's count + candidate ink), or Infinity where it is surely large. Only what can matter is written. */
  far = new Float64Array(0);
  /** Places of near misses. */
  missed = new Int32Array(0);
  missedCount = 0;
  /** By ink, the anchor's first: `is` marks, and how much of it is on the other sheet. */
  marks = new Uint8Array(0);
  same = new Float64Array(0);
  /** The inks of the anchor that act as neutrals, and those that do not; then those of the candidate. */
  readonly neutralsA: number[] = [];
  readonly colouredA: number[] = [];
  neutralsB = new Int32Array(0);
  colouredB = new Int32Array(0);
  neutralCount = 0;
  colouredCount = 0;
  /** The most that any ink is on both sheets, and the weightiest tie; beyond the limit of a tie, no more than that. */
  repeated = 0;
  tie = 0;
  /** The meeting that was looked at last. */
  readonly m: Meeting = emptyMeeting();

  constructor(anchor: Lines, limit: number) {
    this.a = anchor;
    this.limit = limit;
    for (let i = 0; i < anchor.count; i++)
      (anchor.data[i * lineWidth + atNeutral] === 0 ? this.colouredA : this.neutralsA).push(i);
  }

  /** Every ink of the anchor with every ink of the candidate. */
  meet(candidate: Lines): void {
    this.b = candidate;
    const { a, b } = this;
    this.room();
    const { neutralsA, neutralsB, colouredA, colouredB, neutralCount, colouredCount } = this;
    this.missedCount = 0;
    this.tie = 0;
    this.repeated = 0;
    this.far[0] = Number.POSITIVE_INFINITY;
    // Kind by kind of pair, so that the many that are surely unrelated are passed over at one look.
    for (const i of neutralsA) {
      const o = i * lineWidth;
      for (let k = 0; k < neutralCount; k++) {
        const j = neutralsB[k]!;
        const p = b.start + j * lineWidth;
        if (!surelyUnrelated(a.data, o, b.data, p, true)) this.relate(i, j, o, p);
      }
      for (let k = 0; k < colouredCount; k++) {
        const j = colouredB[k]!;
        const p = b.start + j * lineWidth;
        if (!surelyUnrelated(a.data, o, b.data, p, false)) this.relate(i, j, o, p);
      }
    }
    for (const i of colouredA) {
      const o = i * lineWidth;
      for (let k = 0; k < neutralCount; k++) {
        const j = neutralsB[k]!;
        const p = b.start + j * lineWidth;
        if (!surelyUnrelated(a.data, o, b.data, p, false)) this.relate(i, j, o, p);
      }
      for (let k = 0; k < colouredCount; k++)
        this.relate(i, colouredB[k]!, o, b.start + colouredB[k]! * lineWidth);
    }
  }

  private relate(i: number, j: number, o: number, p: number): void {
    const { a, b, limit, m, marks } = this;
    const kind = relate(m, limit, a.data, o, b.data, p);
    const n = i * b.count + j;
    this.far[n] = m.deltaE00;
    if (kind === 'unrelated') return;
    const [one, other] = [i, a.count + j];
    if (kind === 'near miss') {
      this.missed[this.missedCount++] = n;
      const mark = m.chromatic ? is.missed : 0;
      marks[one]! |= mark;
      marks[other]! |= mark;
      if (m.deltaE00 === Number.POSITIVE_INFINITY) return;
    } else {
      const mark = kind === 'repeat' ? is.answered | is.repeat : is.answered;
      marks[one]! |= mark;
      marks[other]! |= mark;
    }
    if (!m.chromatic) return;
    const near = m.deltaE00 < farDeltaE;
    // Beyond the limit a tie weighs no more than a tie: the rules ask only whether it is reached.
    if (!near && this.tie >= verdictLimits.tie) return;
    weights(m, a.data, o, b.data, p);
    if (kind !== 'near miss' && this.tie < verdictLimits.tie)
      this.tie = Math.max(this.tie, tieOf(m, kind, limit));
    if (near) this.note(one, other, samenessOf(m));
  }

  private note(one: number, other: number, sameness: number): void {
    const { same } = this;
    if (sameness > same[one]!) same[one] = sameness;
    if (sameness > same[other]!) same[other] = sameness;
    if (sameness > this.repeated) this.repeated = sameness;
  }

  /** Makes room for the candidate, clears what the last one left, and tells its neutrals from its colours. */
  private room(): void {
    const { a, b } = this;
    const inks = a.count + b.count;
    if (this.same.length < inks) {
      const room = 2 * inks;
      this.far = new Float64Array(a.count * room);
      this.missed = new Int32Array(a.count * room);
      this.marks = new Uint8Array(room);
      this.same = new Float64Array(room);
      this.neutralsB = new Int32Array(room);
      this.colouredB = new Int32Array(room);
    }
    const { marks, same, neutralsB, colouredB } = this;
    for (let k = 0; k < inks; k++) {
      marks[k] = 0;
      same[k] = 0;
    }
    let neutrals = 0;
    let coloured = 0;
    for (let j = 0, p = b.start + atNeutral; j < b.count; j++, p += lineWidth) {
      // Both lists are written and one of them counted: quicker than a guess at which it will be.
      const neutral = b.data[p] === 0 ? 0 : 1;
      neutralsB[neutrals] = j;
      colouredB[coloured] = j;
      neutrals += neutral;
      coloured += 1 - neutral;
    }
    this.neutralCount = neutrals;
    this.colouredCount = coloured;
  }
}
