import type { Held } from '../drawer/model.ts';
import { withoutCandidate } from './apply-study.ts';
import type { Leaf, Notebook } from './model.ts';

/** The notebook with everything taken out of its leaves that `isGone` says is no longer in the drawer. */
export function withoutHeld(notebook: Notebook, isGone: (held: Held) => boolean): Notebook {
  const kept = new Set(notebook.drawer.sheets.map((sheet) => sheet.id));
  const leaves = notebook.leaves
    .filter((leaf) => leaf.kind !== 'sheet' || kept.has(leaf.sheetId))
    .map((leaf) => cleaned(leaf, isGone));
  const same =
    leaves.length === notebook.leaves.length && leaves.every((leaf, i) => leaf === notebook.leaves[i]);
  return same ? notebook : { ...notebook, leaves };
}

function cleaned(leaf: Leaf, isGone: (held: Held) => boolean): Leaf {
  switch (leaf.kind) {
    case 'study': {
      let study = leaf.anchor !== null && isGone(leaf.anchor) ? { ...leaf, anchor: null } : leaf;
      for (let i = leaf.candidates.length - 1; i >= 0; i--) {
        const held = leaf.candidates[i];
        if (held !== undefined && isGone(held)) study = withoutCandidate(study, i);
      }
      return study;
    }
    case 'kit':
      return leaf.pieces.some((piece) => isGone(piece.held))
        ? { ...leaf, pieces: leaf.pieces.filter((piece) => !isGone(piece.held)) }
        : leaf;
    case 'board':
      return leaf.candidate !== null && isGone(leaf.candidate) ? { ...leaf, candidate: null } : leaf;
    default:
      return leaf;
  }
}
