import type { Comparison, Link, Verdict } from '../../src/harmony/model.ts';
import type { ExerciseAsk, ExerciseLeaf } from '../../src/notebook/model.ts';
import type { PaperView } from '../study/study-view.ts';

/** An exercise as its leaf shows it. */
export interface ExerciseView {
  readonly leaf: ExerciseLeaf;
  readonly ask: ExerciseAsk;
  /** What is asked, in a sentence. */
  readonly asks: string;
  /** All questions that can be asked of a pair. */
  readonly questions: readonly { readonly ask: ExerciseAsk; readonly title: string }[];
  /** Pairs of the notebook's studies that can be asked about, the present one marked. */
  readonly pairs: readonly { readonly key: string; readonly name: string; readonly on: boolean }[];
  readonly anchor: PaperView;
  readonly candidate: PaperView;
  readonly comparison: Comparison;
  readonly answered: Verdict | null;
  readonly pointed: readonly string[] | null;
  /** Null while it is not answered. */
  readonly marked: { readonly right: boolean; readonly says: string; readonly links: readonly Link[] } | null;
}
