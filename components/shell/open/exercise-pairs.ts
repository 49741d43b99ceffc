import { heldKey } from '../../../src/drawer/held.ts';
import type { Held } from '../../../src/drawer/model.ts';
import type { Notebook, StudyLeaf } from '../../../src/notebook/model.ts';

/** Every pair on a study of the notebook, with a key that names it. */
export function pairsOf(notebook: Notebook): readonly ExercisePair[] {
  return notebook.leaves.flatMap((leaf) =>
    leaf.kind === 'study' && leaf.anchor
      ? leaf.candidates.map((candidate) => ({
          key: `${leaf.id} ${heldKey(candidate)}`,
          study: leaf,
          anchor: leaf.anchor!,
          candidate,
        }))
      : [],
  );
}

export interface ExercisePair {
  readonly key: string;
  readonly study: StudyLeaf;
  readonly anchor: Held;
  readonly candidate: Held;
}
