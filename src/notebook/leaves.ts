import type { Leaf, Notebook } from './model.ts';

/** The leaf with this id, or undefined. */
export function leafById(notebook: Notebook, leafId: string): Leaf | undefined {
  return notebook.leaves.find((leaf) => leaf.id === leafId);
}

/** The notebook with one leaf changed; the same object where the leaf is missing or `change` gives it back as it is. */
export function withLeaf(notebook: Notebook, leafId: string, change: (leaf: Leaf) => Leaf): Notebook {
  const at = notebook.leaves.findIndex((leaf) => leaf.id === leafId);
  const before = notebook.leaves[at];
  if (before === undefined) return notebook;
  const after = change(before);
  return after === before ? notebook : { ...notebook, leaves: notebook.leaves.with(at, after) };
}

/** The same for leaves of one kind; others stay as they are. */
export function withLeafOf<K extends Leaf['kind']>(
  notebook: Notebook,
  leafId: string,
  kind: K,
  change: (leaf: Extract<Leaf, { kind: K }>) => Leaf,
): Notebook {
  return withLeaf(notebook, leafId, (leaf) =>
    leaf.kind === kind ? change(leaf as Extract<Leaf, { kind: K }>) : leaf,
  );
}

/** The list with one place moved: `to` is the index it has afterwards, held inside the list. */
export function moved<T>(list: readonly T[], from: number, to: number): readonly T[] {
  const item = list[from];
  if (item === undefined) return list;
  const rest = list.toSpliced(from, 1);
  const place = Math.min(Math.max(Math.trunc(to), 0), rest.length);
  return place === from ? list : rest.toSpliced(place, 0, item);
}
