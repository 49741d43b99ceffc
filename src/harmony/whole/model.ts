import type { Verdict } from '../model.ts';
import type { MeasureName } from './measures.ts';
import type { PaperRole, Portrait } from './portrait.ts';

/** What a finding is about, in the order in which practitioners ask. */
export const findingKinds = [
  'rest',
  'clean or dusty',
  'grounds',
  'comes back',
  'near miss',
  'hues',
  'print scale',
  'busy',
  'tone on tone',
  'light and dark',
  'warm and cool',
  'one world',
] as const;
export type FindingKind = (typeof findingKinds)[number];

/** What a finding looks at: a measure that counts in the verdict, or something that is only told. */
export type FindingName =
  | MeasureName
  | 'tone on tone'
  | 'light-dark step'
  | 'no step'
  | 'warm beside cool'
  | 'grounds differ'
  | 'same motif'
  | 'drawn differently';

/** P published, T common practice of the trade, O our choice. */
export type Backing = 'P' | 'T' | 'O';

/** One finding about the whole pair. */
export interface Finding {
  readonly kind: FindingKind;
  readonly name: FindingName;
  /** Speaks for the pair, against it, or is only worth knowing. */
  readonly speaks: 'for' | 'against' | 'neither';
  /** How far it holds, 0–1. */
  readonly size: number;
  /** What it counts in the balance, −1…1: 0 where it decides nothing. */
  readonly counts: number;
  /** Named numbers; the unit is in the name. Those that end in A are the first side's, in B the second's. */
  readonly numbers: Readonly<Record<string, number>>;
  readonly standing: Backing;
  /** Keys into the list of sources. */
  readonly sourceIds: readonly string[];
  /** Ids of the families that it speaks of: of the first side, of the second. Empty where it speaks of a side as a whole. */
  readonly families: readonly [a: readonly string[], b: readonly string[]];
}

/** A border that the balance lies close to. */
export interface Arguable {
  /** The verdict on the other side of it. */
  readonly instead: Verdict;
  /** How far the balance lies from it, in findings. */
  readonly by: number;
  /** The finding that would carry it over if it did not hold, or null where none alone would. */
  readonly turnedBy: FindingName | null;
}

/** Two sides judged as a whole. */
export interface Judged {
  readonly verdict: Verdict;
  /** Findings for less findings against. It is the sum of what the findings count, and shown only as that list. */
  readonly balance: number;
  /** Null where the verdict is clear. */
  readonly arguable: Arguable | null;
  /** Every one that was looked for, in no order. */
  readonly all: readonly Finding[];
  /** Those that count, whether they are told or not, the largest first. */
  readonly counted: readonly Finding[];
  /** Those that are told, and that lead first; see `inOrder`. */
  readonly findings: readonly Finding[];
  /** The one to three of them that are told before "more", each of another kind. */
  readonly leading: readonly Finding[];
  readonly roles: readonly [a: PaperRole, b: PaperRole];
  readonly portraits: readonly [a: Portrait, b: Portrait];
}
