import type { PaperChange } from '../../../src/drawing/tried/changed-paper.ts';
import type { Distance, Verdict } from '../../../src/harmony/model.ts';
import type { Ink, Places, Side } from '../../../src/sheet/model.ts';

/** A paper as it is drawn in a trial. */
export interface TriedPaper {
  readonly name: string;
  /** Address of its picture, or null: then its colours stand in, by their shares. */
  readonly picture: string | null;
  /** Null until it is known where its colours lie: until then nothing is drawn on it but pieces. */
  readonly places: Places | null;
  readonly side: Side;
  readonly inside: ReadonlyMap<string, readonly Ink[]>;
  readonly changes: readonly PaperChange[];
}

export interface TriedPair {
  readonly anchor: TriedPaper;
  readonly candidate: TriedPaper;
  /** What lies between the two or under the candidate. */
  readonly between: { readonly as: 'strip' | 'mat'; readonly hex: string } | null;
  readonly distance: Distance;
  readonly verdict: Verdict;
  /** The one sentence under the verdict. */
  readonly summary: string;
}

/** A pair as it is and as it would be. */
export interface TriedView {
  readonly before: TriedPair;
  readonly after: TriedPair;
  /** What is done, one clause a change. */
  readonly clauses: readonly string[];
  /** What stood against the two and no longer does, in a few words each. */
  readonly lifts: readonly string[];
}
