import { atNeutral, lineWidth } from '../measure/fade.ts';
import { farDeltaE, type Meeting, samenessOf, tieOf } from '../measure/link-kind.ts';
import { verdictLimits } from '../thresholds.ts';
import { emptyLines, type Lines } from './score-lines.ts';
import { bits, Near } from './score-near.ts';
import { emptyMeeting, relate, weights } from './score-pair.ts';

/** What an ink is marked as: something answers it, it repeats, it nearly misses another colour. */
export const is = { answered: 1, repeat: 2, missed: 4 } as const;

/** The links of an anchor with one candidate after another, kept as numbers: what is found is written over at the next. */
export class Links {
  readonly a: Lines;
  readonly limit: number;
  private readonly near: Near;
  b: Lines = emptyLines();
  /** ΔE₀₀ by place (anchor ink × candidate's count + candidate ink), or Infinity where it is too large to matter. */
  far = new Float64Array(0);
  /** Places of near misses. */
  missed = new Int32Array(0);
  missedCount = 0;
  /** By ink, the anchor's first: `is` marks, and how much of it is on the other sheet. */
  marks = new Uint8Array(0);
  same = new Float64Array(0);
  /** The inks of the anchor that do not act as neutrals, and those of the candidate. */
  readonly colouredA: number[] = [];
  colouredB = new Int32Array(0);
  colouredCount = 0;
  /** The most that any ink is on both sheets, and the weightiest tie; beyond the limit of a tie, no more than that. */
  repeated = 0;
  tie = 0;
  /** The meeting that was looked at last. */
  readonly m: Meeting = emptyMeeting();

  constructor(anchor: Lines, limit: number) {
    this.a = anchor;
    this.limit = limit;
    this.near = new Near(anchor);
    for (let i = 0; i < anchor.count; i++)
      if (anchor.data[i * lineWidth + atNeutral] === 0) this.colouredA.push(i);
  }

  /** Every ink of the anchor with every ink of the candidate. */
  meet(candidate: Lines): void {
    this.b = candidate;
    const { a, b } = this;
    this.room();
    this.missedCount = 0;
    this.tie = 0;
    this.repeated = 0;
    const { near, marks } = this;
    let answered = 0;
    for (let j = 0, p = b.start; j < b.count; j++, p += lineWidth) {
      let left = near.of(b.data, p);
      // What is surely kin answers; what it weighs is asked no more once a tie is reached.
      if (near.kin !== 0 && this.tie >= verdictLimits.tie) {
        answered |= near.kin;
        marks[a.count + j]! |= is.answered;
        left &= ~near.kin;
      }
      for (; left !== 0; left &= left - 1) {
        const i = 31 - Math.clz32(left & -left);
        if (i < a.count) this.relate(i, j, i * lineWidth, p);
      }
      for (let i = bits; i < a.count; i++) this.relate(i, j, i * lineWidth, p);
    }
    for (; answered !== 0; answered &= answered - 1)
      marks[31 - Math.clz32(answered & -answered)]! |= is.answered;
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

  /** Makes room for the candidate, clears what the last one left, and lists its colours. */
  private room(): void {
    const { a, b } = this;
    const inks = a.count + b.count;
    if (this.same.length < inks) {
      const room = 2 * inks;
      this.far = new Float64Array(a.count * room);
      this.missed = new Int32Array(a.count * room);
      this.marks = new Uint8Array(room);
      this.same = new Float64Array(room);
      this.colouredB = new Int32Array(room);
    }
    const { marks, same, far, colouredB } = this;
    const pairs = a.count * b.count;
    for (let n = 0; n < pairs; n++) far[n] = Number.POSITIVE_INFINITY;
    for (let k = 0; k < inks; k++) {
      marks[k] = 0;
      same[k] = 0;
    }
    let coloured = 0;
    for (let j = 0, p = b.start + atNeutral; j < b.count; j++, p += lineWidth) {
      // Written and then counted or not: quicker than a guess at which it will be.
      colouredB[coloured] = j;
      coloured += b.data[p] === 0 ? 1 : 0;
    }
    this.colouredCount = coloured;
  }
}
