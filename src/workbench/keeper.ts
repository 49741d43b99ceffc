import { emptyNotebook } from '../notebook/empty.ts';
import type { Notebook } from '../notebook/model.ts';
import { type Ahead, openAhead, type SmallStore } from '../storage/ahead.ts';
import { startAutosave, usualDelayMs } from '../storage/autosave.ts';
import type { Choice } from '../storage/choice.ts';
import { keptTyping, type TextAt, textsChanged } from '../storage/keep-typing.ts';
import { merge } from '../storage/merge.ts';
import type { SetAside } from '../storage/records.ts';
import { recover, type Unsaved } from '../storage/recover.ts';
import type { Kept, Shelf } from '../storage/shelf.ts';
import { StorageTrouble, troubleFrom } from '../storage/words/trouble.ts';
import { isSameWritten, type Written } from '../storage/written.ts';
import { askBeforeLeaving } from './ask-before-leaving.ts';
import { newId } from './new-id.ts';
import type { Pictures } from './pictures.ts';
import type { Saving } from './session-types.ts';
import { openTabs } from './tabs.ts';
import { savedSaying, sayingOf } from './words/saving-words.ts';

/** Keeps the open notebook on the shelf: as it changes, when the page is left, and beside other tabs. */
export interface Keeper {
  /** What was open last, after all that closed tabs left was brought in; null on first start. Never rejects. */
  open(): Promise<Notebook | null>;
  /** Stores a notebook in which nothing is the reader's own yet: leaving it costs her nothing. */
  begin(notebook: Notebook): void;
  changed(notebook: Notebook): void;
  /** One of the choices is made: it goes. */
  settle(choiceId: string): void;
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
  /** The open notebook. */
  readonly current: () => Notebook;
  /** Another tab stored a newer state of the open notebook: what is to be open now, with what was done here. */
  readonly onNewer: (notebook: Notebook) => void;
  /** What is kept beside the open notebook: whenever it changes, or another notebook is opened. */
  readonly onBeside: (beside: Beside) => void;
  readonly delayMs?: number;
  readonly retryMs?: readonly number[];
}

export interface Beside {
  readonly choices: readonly Choice[];
  readonly setAside: readonly SetAside[];
}

/** What is to be stored, and the number of the last change in it. */
interface Pending extends Written {
  readonly count: number;
}

/** What is known of a notebook that was open in this tab. */
interface Known {
  readonly revision: number;
  /** Its state when it was last looked at: what is noted ahead differs from it. */
  readonly written: Written;
  readonly setAside: readonly SetAside[];
  /** Tabs that are gone, and the number of their last change in it. */
  readonly from: Readonly<Record<string, number>>;
}

/** Tries to save beside another tab that saves at the same moment, before it is left for later. */
const mostTries = 5;
/** A text is being typed for this many such waits after its last letter. Ours: about three seconds. */
const typingDelays = 10;

export function startKeeper(options: KeeperOptions): Keeper {
  const { shelf, pictures, say, tabId } = options;
  const all = new Map<string, Known>();
  const tabs = openTabs(tabId, ({ notebookId, revision }) => void follow(notebookId, revision));
  const ahead: Ahead = openAhead(options.small, tabId);
  const asking = askBeforeLeaving();
  /** Notebooks that were replaced before their last change was stored. */
  const parting = new Map<string, Pending>();
  const noted: Unsaved[] = [];
  /** What came in files and is not stored yet, by notebook. */
  const brought = new Map<string, readonly SetAside[]>();
  const typed = new Map<string, TextAt & { readonly at: number }>();
  let openId: string | null = null;
  let isFollowing = false;
  let isNoted = true;
  let isHers = false;
  let hasSaidTwo = false;

  const known = (id: string): Known =>
    all.get(id) ?? {
      revision: 0,
      written: { notebook: emptyNotebook(id, ''), choices: [] },
      setAside: brought.get(id) ?? [],
      from: {},
    };
  const know = (id: string, change: Partial<Known>): void => void all.set(id, { ...known(id), ...change });
  const show = (id: string): void => {
    openId = id;
    const { written, setAside } = known(id);
    options.onBeside({ choices: written.choices, setAside });
  };
  const keep = ({ notebook, choices, revision, setAside }: Kept): void =>
    know(notebook.id, { revision, setAside, written: { notebook, choices } });

  const saver = startAutosave<Pending>({
    save: store,
    onStatus(status) {
      if (status.status === 'saved') isNoted = true;
      const risk = status.status === 'failed' || (status.status === 'saving' && !isNoted);
      asking.set(isHers && risk);
      options.onSaving(sayingOf(status, isNoted));
    },
    onStored({ notebook, count }) {
      ahead.forget(notebook.id, count);
      for (const { left } of noted.splice(0)) left.remove();
    },
    ...(options.delayMs === undefined ? {} : { delayMs: options.delayMs }),
    ...(options.retryMs === undefined ? {} : { retryMs: options.retryMs }),
  });

  /** Takes up a state of the open notebook: noted at once, stored soon. */
  function take(written: Written): void {
    const { id } = written.notebook;
    const { revision, written: before } = known(id);
    const isWhole = ahead.note(revision === 0 && !all.has(id) ? null : before, written, revision);
    isNoted &&= isWhole;
    know(id, { written });
    const pending = saver.pending();
    if (pending !== null && pending.notebook.id !== id) parting.set(pending.notebook.id, pending);
    parting.delete(id);
    saver.changed({ ...written, count: ahead.count });
    // What is nowhere but in memory is stored without waiting for more.
    if (!isWhole) void saver.flush();
    if (openId !== id) show(id);
  }

  async function store(pending: Pending): Promise<void> {
    await pictures.storePending();
    for (const [id, old] of [...parting]) {
      await put(old, false);
      if (parting.get(id) === old) parting.delete(id);
      ahead.forget(id, old.count);
    }
    await put(pending, true);
  }

  async function put(pending: Pending, isOpen: boolean): Promise<void> {
    const { id } = pending.notebook;
    let { notebook, choices }: Written = pending;
    for (let tries = 1; ; tries++) {
      const { revision, from, written } = known(id);
      // What another tab stored may have come in since this was to be stored: at its revision only the two together fit.
      if (id === options.current().id) ({ notebook, choices } = written);
      try {
        const stored = { ...from, [tabId]: pending.count };
        const aside = brought.get(id) ?? [];
        const saved = await shelf.save(notebook, revision, { choices, stored, isOpen, by: tabId, aside });
        if (saved.revision !== revision) brought.delete(id);
        know(id, { revision: saved.revision });
        tabs.told(id, saved.revision);
        if (saved.refused === null) return;
        throw new StorageTrouble(
          'unfit',
          `The latest change can’t be stored, and what was there before it stays stored. ${saved.refused} Undo it, or save a backup file now.`,
        );
      } catch (error) {
        if (!(error instanceof StorageTrouble) || error.kind !== 'elsewhere' || tries >= mostTries)
          throw error;
      }
      // What is open has gone on meanwhile: that is put together with what is there, and stored next.
      if (id === options.current().id) {
        if (await catchUp(id)) return;
        continue;
      }
      const step = await shelf.catchUp(id);
      know(id, { revision: step?.revision ?? 0 });
      if (step !== null)
        ({ notebook, choices } = merge(step.before, { notebook, choices }, step.now, newChoice).written);
    }
  }

  /** Texts that are being typed here: no other tab's text takes their place on the leaf. */
  function typedNow(): readonly TextAt[] {
    const since = performance.now() - (options.delayMs ?? usualDelayMs) * typingDelays;
    for (const [key, { at }] of typed) if (at < since) typed.delete(key);
    return [...typed.values()];
  }

  /** Brings what other tabs stored into the open notebook. @returns false where it is no longer there. */
  async function catchUp(id: string): Promise<boolean> {
    const step = await shelf.catchUp(id);
    know(id, { revision: step?.revision ?? 0 });
    if (step === null || id !== options.current().id) return step !== null;
    const mine: Written = { notebook: options.current(), choices: known(id).written.choices };
    const { written: merged, otherTitle } = merge(step.before, mine, step.now, newChoice);
    const written = keptTyping(merged, mine, typedNow(), newChoice);
    // What came from the shelf need not go back to it; two tabs would answer each other for ever.
    isFollowing = true;
    if (!isSameWritten(written, mine)) options.onNewer(written.notebook);
    isFollowing = false;
    know(id, { written: { notebook: step.now.notebook, choices: step.now.choices } });
    const isOurs = !isSameWritten(written, step.now);
    if (isOurs) take({ notebook: options.current(), choices: written.choices });
    else know(id, { written });
    show(id);
    if (otherTitle !== null)
      say('trouble', `In another tab this notebook was named “${otherTitle}” at the same time.`);
    return true;
  }

  async function follow(id: string, revision: number): Promise<void> {
    if (id !== options.current().id || revision <= known(id).revision) return;
    if (!(await catchUp(id).catch(() => false)) || hasSaidTwo) return;
    hasSaidTwo = true;
    say('note', 'This notebook is open in another tab as well. What is done there shows here.');
  }

  /** The notebook with this id or, where it is gone, the one that was stored last. */
  async function openKept(id: string | null): Promise<Notebook | null> {
    try {
      const found = (id === null ? null : await shelf.notebook(id)) ?? (await newest());
      if (found === null) return null;
      keep(found);
      show(found.notebook.id);
      options.onSaving(savedSaying);
      return found.notebook;
    } catch (error) {
      const { kind, message } = troubleFrom(error);
      if (kind !== 'torn' && kind !== 'newer') throw error;
      say('trouble', `${message} It is still kept in this browser, as it was; another notebook was opened.`);
      return null;
    }
  }

  /** What the shelf can't take goes on from memory, and is tried again. */
  function fromMemory(unsaved: Unsaved): Notebook {
    const { written, kept, left } = unsaved;
    const { id } = written.notebook;
    if (kept !== null) keep(kept);
    know(id, { written, from: { [left.tabId]: left.notes.at(-1)?.count ?? 0 } });
    noted.push(unsaved);
    isHers = true;
    saver.changed({ ...written, count: ahead.count });
    void saver.flush();
    show(id);
    return written.notebook;
  }

  async function newest(): Promise<Kept | null> {
    const lines = (await shelf.notebooks()).filter((line) => line.title !== null);
    const latest = lines.sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1))[0];
    return latest === undefined ? null : shelf.notebook(latest.id);
  }

  const leave = () => {
    if (saver.pending() !== null) void saver.flush();
  };
  const hidden = () => document.visibilityState === 'hidden' && leave();
  if (typeof window !== 'undefined') {
    window.addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hidden);
  }

  return {
    async open() {
      try {
        const left = await ahead.left(tabs.isAlive);
        const { notebookId, unsaved } = await recover(left, shelf, newChoice);
        const last = unsaved.at(-1);
        if (last !== undefined) return fromMemory(last);
        // A tab that was closed in mid-save had it open, and may not have come to say so.
        const leftOpen = notebookId ?? left.at(-1)?.notebookId ?? null;
        if (leftOpen !== null) await shelf.setSetting('last', leftOpen);
        const id = leftOpen ?? (await shelf.setting('last'));
        return await openKept(typeof id === 'string' ? id : null);
      } catch (error) {
        options.onSaving({ status: 'failed', says: troubleFrom(error).message });
        return null;
      }
    },
    begin(notebook) {
      const { id } = notebook;
      know(id, { written: { notebook, choices: [] } });
      saver.changed({ notebook, choices: [], count: ahead.count });
      show(id);
    },
    changed(notebook) {
      if (isFollowing) return;
      isHers = true;
      const before = known(notebook.id).written;
      const written = { notebook, choices: before.choices };
      const at = performance.now();
      for (const text of textsChanged(before, written))
        typed.set(`${text.of} ${text.leafId}`, { ...text, at });
      take(written);
    },
    settle(choiceId) {
      const notebook = options.current();
      const choices = known(notebook.id).written.choices.filter(({ id }) => id !== choiceId);
      take({ notebook, choices });
      show(notebook.id);
    },
    async take(id) {
      const kept = await shelf.notebook(id);
      if (kept !== null) keep(kept);
      return kept?.notebook ?? null;
    },
    brought: (id, setAside) => void (setAside.length > 0 && brought.set(id, setAside)),
    flush: () => saver.flush(),
    hasOtherTabs: () => tabs.hasOthers().catch(() => true),
    async close() {
      if (typeof window !== 'undefined') {
        window.removeEventListener('pagehide', leave);
        document.removeEventListener('visibilitychange', hidden);
      }
      await saver.close();
      asking.set(false);
      tabs.close();
    },
  };
}

const newChoice = () => newId('choice');
