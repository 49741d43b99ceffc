import type { Notebook } from '../../notebook/model.ts';
import { recover, type Unsaved } from '../../storage/records/recover.ts';
import type { Kept, Shelf } from '../../storage/shelf.ts';
import { troubleFrom } from '../../storage/words/trouble.ts';
import type { Left } from '../../storage/write-ahead.ts';
import { otherOpenedSays } from '../words/keeping-words.ts';
import { newChoice } from './catch-up-open.ts';
import type { KnownNotebooks } from './known-notebooks.ts';

interface Tools {
  readonly shelf: Shelf;
  readonly known: KnownNotebooks;
  readonly say: (kind: 'trouble' | 'note', says: string) => void;
}

/** What was open last: as it is on the shelf, or what the shelf could not take; null where there is nothing. */
export type OpenedLast = { readonly kept: Notebook } | { readonly unsaved: Unsaved } | null;

/** Brings in all that closed tabs left, and finds what was open last. @throws StorageTrouble */
export async function openLast(tools: Tools, left: readonly Left[]): Promise<OpenedLast> {
  const { shelf } = tools;
  const { notebookId, unsaved } = await recover(left, shelf, newChoice);
  const last = unsaved.at(-1);
  if (last !== undefined) return { unsaved: last };
  // A tab that was closed in mid-save had it open, and may not have come to say so.
  const leftOpen = notebookId ?? left.at(-1)?.notebookId ?? null;
  if (leftOpen !== null) await shelf.setSetting('last', leftOpen);
  const id = leftOpen ?? (await shelf.setting('last'));
  const kept = await openKept(tools, typeof id === 'string' ? id : null);
  return kept === null ? null : { kept };
}

/** The notebook with this id or, where it is gone, the one that was stored last. */
async function openKept({ shelf, known, say }: Tools, id: string | null): Promise<Notebook | null> {
  try {
    const kept = (id === null ? null : await shelf.notebook(id)) ?? (await storedLast(shelf));
    if (kept === null) return null;
    known.keep(kept);
    known.show(kept.notebook.id);
    return kept.notebook;
  } catch (error) {
    const { kind, message } = troubleFrom(error);
    if (kind !== 'torn' && kind !== 'later version') throw error;
    say('trouble', otherOpenedSays(message));
    return null;
  }
}

async function storedLast(shelf: Shelf): Promise<Kept | null> {
  const lines = (await shelf.notebooks()).filter((line) => line.title !== null);
  const latest = lines.sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1))[0];
  return latest === undefined ? null : shelf.notebook(latest.id);
}
