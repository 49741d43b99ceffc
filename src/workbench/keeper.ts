import type { Notebook } from '../notebook/model.ts';
import { type Ahead, type Left, openAhead, type SmallStore } from '../storage/ahead.ts';
import { type SaveStatus, startAutosave } from '../storage/autosave.ts';
import { copyOf, recover } from '../storage/recover.ts';
import type { Kept, Shelf } from '../storage/shelf.ts';
import { StorageTrouble, troubleFrom } from '../storage/trouble.ts';
import type { Pictures } from './pictures.ts';
import type { Saving } from './session-types.ts';
import { openTabs } from './tabs.ts';

/** Keeps the open notebook on the shelf: as it changes, when the page is left, and beside other tabs. */
export interface Keeper {
  /** What was open last, after all that closed tabs left was brought in; null on first start. Never rejects. */
  open(): Promise<Notebook | null>;
  changed(notebook: Notebook): void;
  /** Another notebook from the shelf, so that it can be opened and stored again. @throws StorageTrouble */
  take(id: string): Promise<Notebook | null>;
  flush(): Promise<void>;
  hasOtherTabs(): Promise<boolean>;
  close(): Promise<void>;
}

export interface KeeperOptions {
  readonly shelf: Shelf;
  readonly pictures: Pictures;
  readonly small: SmallStore | null;
  readonly tabId: string;
  readonly newNotebookId: () => string;
  readonly onSaving: (saving: Saving) => void;
  readonly say: (kind: 'trouble' | 'note', says: string) => void;
  /** The open notebook. */
  readonly current: () => Notebook;
  /** Another tab stored a newer state of the open notebook. */
  readonly onNewer: (notebook: Notebook) => void;
  /** Another tab was quicker: this tab goes on with a copy. */
  readonly onCopy: (copy: Notebook) => void;
  readonly delayMs?: number;
  readonly retryMs?: readonly number[];
}

/** Above this many ms for one note, notes are left to the moment the page is hidden. */
const dearMs = 6;

export function startKeeper(options: KeeperOptions): Keeper {
  const { shelf, pictures, say } = options;
  const revisions = new Map<string, number>();
  const tabs = openTabs(options.tabId, ({ notebookId, revision }) => void follow(notebookId, revision));
  const ahead: Ahead = openAhead(options.small, options.tabId);
  let lastOpen: string | null = null;
  let noteCost = 0;
  let isFollowing = false;

  const note = (notebook: Notebook) => {
    const from = performance.now();
    ahead.note(notebook, revisions.get(notebook.id) ?? 0);
    noteCost = performance.now() - from;
  };
  const saver = startAutosave({
    save: store,
    onStatus: (status) => options.onSaving(sayingOf(status)),
    noteAhead: (notebook) => noteCost <= dearMs && note(notebook),
    forgetAhead: ahead.forget,
    ...(options.delayMs === undefined ? {} : { delayMs: options.delayMs }),
    ...(options.retryMs === undefined ? {} : { retryMs: options.retryMs }),
  });

  async function store(notebook: Notebook): Promise<void> {
    await pictures.storePending();
    try {
      const revision = await shelf.save(notebook, revisions.get(notebook.id) ?? 0);
      revisions.set(notebook.id, revision);
      tabs.told(notebook.id, revision);
    } catch (error) {
      if (!(error instanceof StorageTrouble) || error.kind !== 'elsewhere') throw error;
      goOnAsCopy(notebook);
      return;
    }
    if (lastOpen !== notebook.id) await shelf.setSetting('last', notebook.id);
    lastOpen = notebook.id;
  }

  function goOnAsCopy(notebook: Notebook): void {
    const copy = copyOf(notebook, options.newNotebookId(), 'copy from another tab');
    options.onCopy(copy);
    say(
      'trouble',
      `This notebook was changed in another tab at the same time. Nothing is lost: what you did here goes on as “${copy.title}”.`,
    );
  }

  /** Shows what another tab stored, unless there is something here that is not stored yet: that becomes a copy when it is. */
  async function follow(notebookId: string, revision: number): Promise<void> {
    const isOurs = () => notebookId === options.current().id && saver.pending() === null;
    if (!isOurs() || revision <= (revisions.get(notebookId) ?? 0)) return;
    const kept = await shelf.notebook(notebookId).catch(() => null);
    if (kept === null || !isOurs() || kept.revision <= (revisions.get(notebookId) ?? 0)) return;
    revisions.set(notebookId, kept.revision);
    // What came from the shelf need not go back to it; two tabs would answer each other for ever.
    isFollowing = true;
    options.onNewer(kept.notebook);
    isFollowing = false;
    say('note', 'This notebook is open in another tab as well. What is done there shows here.');
  }

  /** The notebook with this id or, where it is gone, the one that was stored last. */
  async function openKept(id: string | null): Promise<Notebook | null> {
    try {
      const kept = id === null ? null : await shelf.notebook(id);
      const found = kept ?? (await newest());
      if (found === null) return null;
      revisions.set(found.notebook.id, found.revision);
      lastOpen = id;
      options.onSaving(savedSaying);
      return found.notebook;
    } catch (error) {
      const { kind, message } = troubleFrom(error);
      if (kind !== 'torn' && kind !== 'newer') throw error;
      say('trouble', `${message} It is still kept in this browser, as it was; another notebook was opened.`);
      return null;
    }
  }

  /** Where the shelf can't take what a closed tab left, that goes on from memory and is tried again. */
  function fromMemory(entry: Left | undefined): Notebook | null {
    if (entry === undefined) return null;
    revisions.set(entry.notebook.id, entry.revision);
    saver.changed(entry.notebook);
    return entry.notebook;
  }

  async function newest(): Promise<Kept | null> {
    const lines = (await shelf.notebooks()).filter((line) => line.title !== null);
    const latest = lines.sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1))[0];
    return latest === undefined ? null : shelf.notebook(latest.id);
  }

  const leave = () => {
    const notebook = saver.pending();
    if (notebook === null) return;
    note(notebook);
    void saver.flush();
  };
  const hidden = () => document.visibilityState === 'hidden' && leave();
  if (typeof window !== 'undefined') {
    window.addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hidden);
  }

  return {
    async open() {
      let left: readonly Left[] = [];
      try {
        left = await ahead.left(tabs.isAlive);
        const recovered = await recover(left, shelf, options.newNotebookId);
        for (const title of recovered.copies) {
          say(
            'note',
            `A tab was closed before it had stored everything. What was missing is kept as “${title}”.`,
          );
        }
        // A tab that was closed in mid-save had it open, and may not have come to say so.
        const leftOpen = recovered.notebookId ?? left.at(-1)?.notebook.id ?? null;
        if (leftOpen !== null) await shelf.setSetting('last', leftOpen);
        const last = leftOpen ?? (await shelf.setting('last'));
        return await openKept(typeof last === 'string' ? last : null);
      } catch (error) {
        options.onSaving({ status: 'failed', says: troubleFrom(error).message });
        return fromMemory(left.at(-1));
      }
    },
    changed: (notebook) => {
      if (!isFollowing) saver.changed(notebook);
    },
    async take(id) {
      const kept = await shelf.notebook(id);
      if (kept !== null) revisions.set(id, kept.revision);
      return kept?.notebook ?? null;
    },
    flush: () => saver.flush(),
    hasOtherTabs: () => tabs.hasOthers().catch(() => true),
    async close() {
      if (typeof window !== 'undefined') {
        window.removeEventListener('pagehide', leave);
        document.removeEventListener('visibilitychange', hidden);
      }
      await saver.close();
      tabs.close();
    },
  };
}

const savedSaying: Saving = { status: 'saved', says: 'Saved in this browser.' };

function sayingOf(status: SaveStatus): Saving {
  if (status.status === 'failed') return { status: 'failed', says: status.trouble.message };
  return status.status === 'saved' ? savedSaying : { status: 'saving', says: 'Saving …' };
}
