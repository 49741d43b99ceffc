import type { BookEdit, LeafEdit } from './edit-kinds.ts';
import { moved, withLeaf } from './leaves.ts';
import { keptName, keptText, limits } from './limits.ts';
import type { Leaf, Notebook } from './model.ts';

/** The notebook after an edit of its title, of the order of its leaves, or of what every leaf has. */
export function applyBookEdit(notebook: Notebook, edit: BookEdit | LeafEdit): Notebook {
  switch (edit.do) {
    case 'rename notebook': {
      const title = keptName(edit.title);
      return title === notebook.title ? notebook : { ...notebook, title };
    }
    case 'add leaf':
      return addLeaf(notebook, edit.leaf, edit.at);
    case 'remove leaf': {
      const leaves = notebook.leaves.filter((leaf) => leaf.id !== edit.leafId);
      return leaves.length === notebook.leaves.length ? notebook : { ...notebook, leaves };
    }
    case 'move leaf': {
      const from = notebook.leaves.findIndex((leaf) => leaf.id === edit.leafId);
      const leaves = moved(notebook.leaves, from, edit.to);
      return leaves === notebook.leaves ? notebook : { ...notebook, leaves };
    }
    case 'replace notebook':
      return edit.notebook;
    case 'rename leaf': {
      const title = keptName(edit.title);
      return withLeaf(notebook, edit.leafId, (leaf) => (leaf.title === title ? leaf : { ...leaf, title }));
    }
    case 'set text': {
      const text = keptText(edit.text, limits.text);
      return withLeaf(notebook, edit.leafId, (leaf) => withText(leaf, text));
    }
  }
}

function addLeaf(notebook: Notebook, leaf: Leaf, at = notebook.leaves.length): Notebook {
  const taken = notebook.leaves.some((other) => other.id === leaf.id);
  if (taken || notebook.leaves.length >= limits.leaves) return notebook;
  const place = Math.min(Math.max(Math.trunc(at), 0), notebook.leaves.length);
  return { ...notebook, leaves: notebook.leaves.toSpliced(place, 0, leaf) };
}

function withText(leaf: Leaf, text: string): Leaf {
  if (leaf.kind === 'board') return leaf.words === text ? leaf : { ...leaf, words: text };
  return leaf.text === text ? leaf : { ...leaf, text };
}
