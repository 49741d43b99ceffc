import type { Held } from '../../src/drawer/model.ts';
import type { Comparison, DecidingColours, Remedy } from '../../src/harmony/model.ts';
import type { Opinion } from '../../src/notebook/model.ts';
import type { Corners, Places, Side } from '../../src/sheet/model.ts';

/** A held paper as a study shows it. */
export interface PaperView {
  readonly held: Held;
  readonly name: string;
  /** The side with its inks named for its role. */
  readonly side: Side;
  /** Address of its picture, or null. */
  readonly picture: string | null;
  readonly places: Places | null;
  /** What is known of the paper, in a few words each: "side A of two", "220 g/m²". */
  readonly facts: readonly string[];
  /** What stands beside the kind of its base: "b* 13.1, 88 % sure". */
  readonly ground?: string;
  /** True where it was cut out of its photograph unasked. */
  readonly cutOut?: boolean;
  /** Where on its picture the paper may lie, while that is asked. */
  readonly asks?: Corners;
  /** The side that it can be turned to, where it has one. */
  readonly turnsTo: 'A' | 'B' | null;
}

/** A candidate with what was found; views stand best first. */
export interface CandidateView extends PaperView {
  /** Its place among the study's candidates. */
  readonly index: number;
  readonly comparison: Comparison;
  /** The two colours that decide; null where none does. */
  readonly deciding: DecidingColours | null;
  /** What could mend the pair; null until it is known, or where it is not shown. */
  readonly remedies: readonly Remedy[] | null;
  readonly opinion: Opinion;
}

/** True where the reading keeps quiet until the reader has said hers. */
export function keepsQuiet(asksFirst: boolean, candidate: CandidateView): boolean {
  return asksFirst && candidate.opinion.verdict === null;
}
