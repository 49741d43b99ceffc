import { sheetById } from '../../drawer/by-id.ts';
import { nameOfHeld } from '../../drawer/held.ts';
import type { Held } from '../../drawer/model.ts';
import type { Edit } from '../../notebook/edits.ts';
import type { Notebook } from '../../notebook/model.ts';

/** What is said when an edit took something out, or null where it took nothing. Undo brings all of it back. */
export function takenOutWords(before: Notebook, after: Notebook, edit: Edit): string | null {
  if (before === after) return null;
  if (edit.do === 'remove leaf') {
    const title = before.leaves.find(({ id }) => id === edit.leafId)?.title;
    return `${title ? `“${title}” is taken` : 'Taken'} out. Undo brings it back.`;
  }
  const held = heldBy(edit);
  if (!held) return null;
  const lay = leavesLost(before, after);
  const from = lay === 0 ? '' : `, and off the ${lay === 1 ? 'leaf' : `${lay} leaves`} where it lay`;
  return `“${nameOf(before, held)}” is taken out of the drawer${from}. Undo brings it back.`;
}

function heldBy(edit: Edit): Held | null {
  if (edit.do === 'remove sheet') return { kind: 'sheet', id: edit.sheetId, side: 'A' };
  if (edit.do === 'remove plain') return { kind: 'plain', id: edit.plainId };
  return edit.do === 'remove part' ? { kind: 'part', id: edit.partId } : null;
}

/** A sheet goes with both its sides. */
function nameOf({ drawer }: Notebook, held: Held): string {
  const sheet = held.kind === 'sheet' ? sheetById(drawer, held.id) : undefined;
  return sheet?.name ?? nameOfHeld(drawer, held);
}

function leavesLost(before: Notebook, after: Notebook): number {
  return before.leaves.filter((leaf) => !after.leaves.includes(leaf)).length;
}
