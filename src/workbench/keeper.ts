import type { Notebook } from '../notebook/model.ts';
import { usualDelayMs } from '../storage/autosave.ts';
import type { SetAside } from '../storage/records/records.ts';
import type { Unsaved } from '../storage/records/recover.ts';
import type { Shelf } from '../storage/shelf.ts';
import { troubleFrom } from '../storage/words/trouble.ts';
import { openWriteAhead, type SmallStore } from '../storage/write-ahead.ts';
import type { Book } from './book.ts';
import { catchUpOpen } from './keeping/catch-up-open.ts';
import { type Beside, knowNotebooks } from './keeping/known-notebooks.ts';
import { startWriter } from './keeping/notebook-writer.ts';
import { openLast } from './keeping/open-last.ts';
import { askBeforeLeaving, whenPageIsLeft } from './keeping/page-left.ts';
import { watchTyping } from './keeping/typed-texts.ts';
import type { Pictures } from './pictures.ts';
import type { Saving } from './session-types.ts';
import { openTabs } from './tabs.ts';
import { twoTabsSays } from './words/keeping-words.ts';
import { savedSaying, sayingOf } from './words/saving-words.ts';

/** Keeps the open notebook on the shelf: as it changes, when the page is left, and beside other tabs. */
export interface Keeper {
  /** What was open last, after all that closed tabs left was brought in; null on first start. Never rejects. */
  open(): Promise<Notebook | null>;
  /** Stores a notebook in which nothing is the reader's own yet: leaving it costs her nothing. */
  begin(notebook: Notebook): void;
  /** The reader changed the open notebook, or opened this one. */
  changed(notebook: Notebook): void;
  /** One of the choices is made: it goes. */
  choiceMade(choiceId: string): void;
  /** Another notebook from the shelf, so that it can be opened and stored again. @throws StorageTrouble */
  take(id: string): Promise<Notebook | null>;
  /** What of a notebook that is about to be opened from a file could not be read: stored beside it. */
  brought(notebookId: string, setAside: readonly SetAside[]): void;
  flush(): Promise<void>;
  hasOtherTabs(): Promise<boolean>;
  close(): Promise<void>;
}

export interface KeeperOptions {
  readonly shelf: Shelf;
  readonly pictures: Pictures;
  readonly small: SmallStore | null;
  readonly tabId: string;
  readonly onSaving: (saving: Saving) => void;
  readonly say: (kind: 'trouble' | 'note', says: string) => void;
  /** Is read, and handed what another tab stored. It knows nothing of a keeper: whoever opened it tells of its changes. */
  readonly book: Pick<Book, 'notebook' | 'takeFromOtherTab'>;
  /** What is kept beside the open notebook: whenever it changes, or another notebook is opened. */
  readonly onBeside: (beside: Beside) => void;
  readonly delayMs?: number;
  readonly retryMs?: readonly number[];
}

/** A text is being typed for this many waits before saving after its last letter. Ours: about three seconds. */
const typingDelays = 10;

export function startKeeper(options: KeeperOptions): Keeper {
  const { shelf, book, say } = options;
  const known = knowNotebooks(options.onBeside);
  const tabs = openTabs(options.tabId, ({ notebookId, revision }) => void follow(notebookId, revision));
  const writeAhead = openWriteAhead(options.small, tabs.id);
  const typing = watchTyping((options.delayMs ?? usualDelayMs) * typingDelays);
  const asking = askBeforeLeaving();
  let isHers = false;
  let hasSaidTwo = false;

  const tools = {
    ...{ ...options, known, tabs, writeAhead, typing },
    onStatus(status: Parameters<typeof sayingOf>[0], isNoted: boolean) {
      const isAtRisk = status.status === 'failed' || (status.status === 'saving' && !isNoted);
      asking.set(isHers && isAtRisk);
      options.onSaving(sayingOf(status, isNoted));
    },
  };
  const writer = startWriter(tools);
  const stopWatching = whenPageIsLeft(() => {
    if (writer.hasPending()) void writer.flush();
  });

  /** Another tab stored a notebook. */
  async function follow(id: string, revision: number): Promise<void> {
    if (id !== book.notebook.id || revision <= known.of(id).revision) return;
    if (!(await catchUpOpen(tools, id, writer.take).catch(() => false)) || hasSaidTwo) return;
    hasSaidTwo = true;
    say('note', twoTabsSays);
  }

  /** What the shelf can't take goes on from memory, and is tried again. */
  function fromMemory(unsaved: Unsaved): Notebook {
    const { written, kept, left } = unsaved;
    const { id } = written.notebook;
    if (kept !== null) known.keep(kept);
    known.change(id, { written, from: { [left.tabId]: left.notes.at(-1)?.count ?? 0 } });
    isHers = true;
    writer.resume(unsaved);
    known.show(id);
    return written.notebook;
  }

  return {
    async open() {
      try {
        const last = await openLast(tools, await writeAhead.left(tabs.isAlive));
        if (last === null) return null;
        if ('unsaved' in last) return fromMemory(last.unsaved);
        options.onSaving(savedSaying);
        return last.kept;
      } catch (error) {
        options.onSaving({ status: 'failed', says: troubleFrom(error).message });
        return null;
      }
    },
    begin: (notebook) => writer.begin({ notebook, choices: [] }),
    changed(notebook) {
      isHers = true;
      const before = known.of(notebook.id).written;
      const written = { notebook, choices: before.choices };
      typing.changed(before, written);
      writer.take(written);
    },
    choiceMade(choiceId) {
      const { notebook } = book;
      const choices = known.of(notebook.id).written.choices.filter(({ id }) => id !== choiceId);
      writer.take({ notebook, choices });
      known.show(notebook.id);
    },
    async take(id) {
      const kept = await shelf.notebook(id);
      if (kept !== null) known.keep(kept);
      return kept?.notebook ?? null;
    },
    brought: known.brought,
    flush: writer.flush,
    hasOtherTabs: () => tabs.hasOthers().catch(() => true),
    async close() {
      stopWatching();
      await writer.close();
      asking.set(false);
      tabs.close();
    },
  };
}
