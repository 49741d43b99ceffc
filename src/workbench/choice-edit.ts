import type { Edit } from '../notebook/edits.ts';
import type { Leaf } from '../notebook/model.ts';
import type { Choice } from '../storage/choice.ts';
import { textOf } from '../storage/records/merge.ts';

/** What puts the other text of a choice onto its leaf: in place of what stands there, or after it. */
export function choiceEdit(leaf: Leaf, { of, other }: Choice, keep: 'that' | 'both'): Edit {
  const here = textOf(leaf, of);
  const leafId = leaf.id;
  if (of === 'title') {
    return { do: 'rename leaf', leafId, title: keep === 'that' ? other : `${here} – ${other}` };
  }
  return { do: 'set text', leafId, text: keep === 'that' ? other : `${here}\n\n${other}` };
}
