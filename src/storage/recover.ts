import type { Notebook } from '../notebook/model.ts';
import type { Left } from './ahead.ts';
import { serialiseNotebook } from './notebook-file.ts';
import type { Shelf } from './shelf.ts';

/** What came of the entries that closed tabs left. */
export interface Recovered {
  /** The notebook that was brought up to date last, or null. */
  readonly notebookId: string | null;
  /** Titles of notebooks that had to be kept as copies, because the shelf had a newer one. */
  readonly copies: readonly string[];
}

/**
 * Brings what closed tabs did not get stored onto the shelf. Where the shelf has not moved on, it takes the notebook's
 * place; where it has, a copy is kept beside it, so neither is lost. An entry goes only once it is stored.
 */
export async function recover(left: readonly Left[], shelf: Shelf, newId: () => string): Promise<Recovered> {
  let notebookId: string | null = null;
  const copies: string[] = [];
  for (const entry of left) {
    const { notebook, revision } = entry;
    const kept = await shelf.notebook(notebook.id).catch(() => 'unreadable' as const);
    const same = kept !== null && kept !== 'unreadable' && isSame(kept.notebook, notebook);
    if (!same) {
      const stored = kept === null ? 0 : kept === 'unreadable' ? -1 : kept.revision;
      if (stored === revision) {
        await shelf.save(notebook, revision);
        notebookId = notebook.id;
      } else {
        const copy = copyOf(notebook, newId(), 'from a closed tab');
        await shelf.save(copy, 0);
        copies.push(copy.title);
      }
    }
    entry.remove();
  }
  return { notebookId, copies };
}

/** The same notebook under another id, with words after its title that tell where it came from. */
export function copyOf(notebook: Notebook, id: string, words: string): Notebook {
  return { ...notebook, id, title: `${notebook.title} (${words})` };
}

function isSame(a: Notebook, b: Notebook): boolean {
  return serialiseNotebook(a) === serialiseNotebook(b);
}
