import type { Notebook } from '../notebook/model.ts';
import { parseNotebook, serialiseNotebook } from './notebook-file.ts';

/**
 * The write-ahead: what a tab is about to store stands in a small synchronous store first, so that closing the tab in
 * mid-save loses nothing. One entry a tab; it goes when the save is through.
 */
export interface Ahead {
  note(notebook: Notebook, revision: number): void;
  forget(): void;
  /** Entries of tabs that are gone, oldest first. Entries that are torn are skipped and removed. */
  left(isAlive: (tabId: string) => Promise<boolean>): Promise<readonly Left[]>;
}

export interface Left {
  readonly notebook: Notebook;
  /** The revision on the shelf that the tab had last seen. */
  readonly revision: number;
  remove(): void;
}

/** The part of localStorage that is used. */
export type SmallStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const prefix = 'quirewise-ahead:';
/** Small stores hold about 5 million characters; above this many the entry is left out and the database alone counts. */
const most = 2_000_000;

/** @param store - null where the browser has none; nothing is noted then. */
export function openAhead(store: SmallStore | null, tabId: string, now = () => Date.now()): Ahead {
  const key = prefix + tabId;
  return {
    note(notebook, revision) {
      const text = serialiseNotebook(notebook);
      if (store === null) return;
      try {
        if (text.length > most) store.removeItem(key);
        else store.setItem(key, `${revision} ${now()} ${text}`);
      } catch {
        // Full or forbidden: the database alone counts. An older entry must not stand for the newer notebook.
        remove(store, key);
      }
    },
    forget() {
      if (store !== null) remove(store, key);
    },
    async left(isAlive) {
      if (store === null) return [];
      const found: (Left & { at: number })[] = [];
      for (const other of keysOf(store)) {
        if (other === key || (await isAlive(other.slice(prefix.length)))) continue;
        const entry = parsed(store.getItem(other));
        if (entry === null) remove(store, other);
        else found.push({ ...entry, remove: () => remove(store, other) });
      }
      return found.sort((a, b) => a.at - b.at);
    },
  };
}

function keysOf(store: SmallStore): readonly string[] {
  const keys: string[] = [];
  for (let i = 0; i < store.length; i++) {
    const key = store.key(i);
    if (key?.startsWith(prefix)) keys.push(key);
  }
  return keys;
}

function parsed(text: string | null): { notebook: Notebook; revision: number; at: number } | null {
  const parts = /^(\d+) (\d+) (.*)$/s.exec(text ?? '');
  if (parts === null) return null;
  try {
    return { revision: Number(parts[1]), at: Number(parts[2]), notebook: parseNotebook(parts[3] ?? '') };
  } catch {
    return null;
  }
}

function remove(store: SmallStore, key: string): void {
  try {
    store.removeItem(key);
  } catch {
    // Nothing can be done, and nothing depends on it.
  }
}
