import { merge } from '../../storage/records/merge.ts';
import { StorageTrouble } from '../../storage/words/trouble.ts';
import type { Written } from '../../storage/written.ts';
import type { Tabs } from '../tabs.ts';
import { unfitSays } from '../words/keeping-words.ts';
import { type CatchUpTools, newChoice } from './catch-up-open.ts';

/** What is to be stored, and the number of the last change in it. */
export interface Pending extends Written {
  readonly count: number;
}

export interface PutTools extends Pick<CatchUpTools, 'shelf' | 'book' | 'known'> {
  readonly tabs: Tabs;
}

/** Tries to save beside another tab that saves at the same moment, before it is left for later. */
const mostTries = 5;

/**
 * Stores a notebook, together with what another tab stored of it meanwhile. `catchUp` brings that into the open one.
 * @throws StorageTrouble
 */
export async function putOnShelf(
  { shelf, book, known, tabs }: PutTools,
  pending: Pending,
  isOpen: boolean,
  catchUp: (id: string) => Promise<boolean>,
): Promise<void> {
  const { id } = pending.notebook;
  let { notebook, choices }: Written = pending;
  for (let tries = 1; ; tries++) {
    const { revision, from, written } = known.of(id);
    // What another tab stored may have come in since this was to be stored: at its revision only the two together fit.
    if (id === book.notebook.id) ({ notebook, choices } = written);
    try {
      const stored = { ...from, [tabs.id]: pending.count };
      const aside = known.broughtWith(id);
      const saved = await shelf.save(notebook, revision, { choices, stored, isOpen, by: tabs.id, aside });
      if (saved.revision !== revision) known.storedBrought(id);
      known.change(id, { revision: saved.revision });
      tabs.told(id, saved.revision);
      if (saved.refused === null) return;
      throw new StorageTrouble('unfit', unfitSays(saved.refused));
    } catch (error) {
      if (!(error instanceof StorageTrouble) || error.kind !== 'elsewhere' || tries >= mostTries) throw error;
    }
    // What is open has gone on meanwhile: that is put together with what is there, and stored next.
    if (id === book.notebook.id) {
      if (await catchUp(id)) return;
      continue;
    }
    const step = await shelf.catchUp(id);
    known.change(id, { revision: step?.revision ?? 0 });
    if (step !== null)
      ({ notebook, choices } = merge(step.before, { notebook, choices }, step.now, newChoice).written);
  }
}
