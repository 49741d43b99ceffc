import { partById } from '../../../src/drawer/by-id.ts';
import type { Drawer, Held } from '../../../src/drawer/model.ts';
import type { Leaf, Notebook, StudyLeaf } from '../../../src/notebook/model.ts';

/** Titles of the leaves on which each thing of the drawer lies, by its id; a sheet's with those of its parts. */
export function leavesByThing(notebook: Notebook): ReadonlyMap<string, readonly string[]> {
  const before = known.get(notebook);
  if (before !== undefined) return before;
  const { leaves, drawer } = notebook;
  const found = new Map<string, string[]>();
  for (const leaf of leaves) {
    const ids = new Set(heldOn(leaf).flatMap((held) => idsOf(drawer, held)));
    for (const id of ids) found.set(id, [...(found.get(id) ?? []), leaf.title]);
  }
  known.set(notebook, found);
  return found;
}

const known = new WeakMap<Notebook, ReadonlyMap<string, readonly string[]>>();

/** The studies on which a sheet lies, with either of its sides or a part of it, in the order of the leaves. */
export function studiesWith({ leaves, drawer }: Notebook, sheetId: string): readonly StudyLeaf[] {
  return leaves.filter(
    (leaf): leaf is StudyLeaf =>
      leaf.kind === 'study' && heldOn(leaf).some((held) => idsOf(drawer, held).includes(sheetId)),
  );
}

function heldOn(leaf: Leaf): readonly Held[] {
  switch (leaf.kind) {
    case 'study':
      return leaf.anchor === null ? leaf.candidates : [leaf.anchor, ...leaf.candidates];
    case 'kit':
      return leaf.pieces.map(({ held }) => held);
    case 'board':
      return leaf.candidate === null ? [] : [leaf.candidate];
    case 'sheet':
      return [{ kind: 'sheet', id: leaf.sheetId, side: 'A' }];
    default:
      return [];
  }
}

function idsOf(drawer: Drawer, held: Held): readonly string[] {
  if (held.kind !== 'part') return [held.id];
  const sheetId = partById(drawer, held.id)?.sheetId;
  return sheetId === undefined ? [held.id] : [held.id, sheetId];
}
