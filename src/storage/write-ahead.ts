import { isObject } from './is-object.ts';
import { openNotebookFile } from './notebook-file.ts';
import { type Difference, differences, listsOf, storedKinds, type Written } from './written.ts';

/**
 * The write-ahead: what a tab is about to store stands in a small synchronous store first, record by record, so that
 * closing the tab in mid-save loses nothing. What is stored goes from it again.
 */
export interface WriteAhead {
  /**
   * Notes what differs between two states. `revision`: that on the shelf which the tab last saw.
   * @returns false where not all of it could be noted: there is no room, or it is more than a note is for
   */
  note(before: Written | null, after: Written, revision: number): boolean;
  /** The number of the last change; the first is 1. */
  readonly count: number;
  /** All changes of a notebook up to this number are stored. */
  forget(notebookId: string, count: number): void;
  /** What tabs that are gone have left, oldest first. Entries that are torn are left out, and removed with the others. */
  left(isAlive: (tabId: string) => Promise<boolean>): Promise<readonly Left[]>;
}

/** What one tab left of one notebook. */
export interface Left {
  readonly tabId: string;
  readonly notebookId: string;
  /** In the order in which they were noted. */
  readonly notes: readonly Note[];
  remove(): void;
}

export interface Note {
  readonly kind: Difference['kind'] | 'title';
  /** '' for the title. */
  readonly id: string;
  /** As it was noted, not checked; null where it was taken out. */
  readonly value: unknown;
  /** Where it stood in its list. */
  readonly at: number;
  /** Number of the change; a tab that has stored it has said so on the shelf. */
  readonly count: number;
  /** The notebook's revision on the shelf that the tab had seen. */
  readonly revision: number;
}

/** The part of localStorage that is used. */
export type SmallStore = Pick<Storage, 'getItem' | 'setItem' | 'removeItem' | 'key' | 'length'>;

const prefix = 'quirewise-ahead:';
/** Records in one note. More come from a backup or another notebook that is opened, which are stored at once. Ours. */
const most = 200;

/** @param store - null where the browser has none; nothing is noted then. */
export function openWriteAhead(store: SmallStore | null, tabId: string, now = () => Date.now()): WriteAhead {
  const mine = new Map<string, number>();
  let count = 0;

  const write = (notebookId: string, note: Omit<Note, 'count'>): boolean => {
    const key = [prefix + tabId, notebookId, note.kind, note.id].join('|');
    try {
      const { value, at, revision } = note;
      // An older note of the same record stays where this one finds no room: old words are better than none.
      store?.setItem(key, JSON.stringify({ count, at, revision, value, when: now() }));
    } catch {
      return false;
    }
    mine.set(key, count);
    return store !== null;
  };

  return {
    get count() {
      return count;
    },
    note(before, after, revision) {
      count++;
      const { id, title } = after.notebook;
      const found = differences(before, after);
      if (found.length > most) return false;
      const isTold = title === before?.notebook.title;
      return [...(isTold ? [] : [{ kind: 'title' as const, id: '', value: title, at: 0 }]), ...found].every(
        (one) => write(id, { ...one, revision }),
      );
    },
    forget(notebookId, upTo) {
      for (const [key, noted] of mine) {
        if (noted > upTo || key.split('|')[1] !== notebookId) continue;
        mine.delete(key);
        if (store !== null) remove(store, key);
      }
    },
    async left(isAlive) {
      if (store === null) return [];
      const tabs = new Map<string, { left: Left & { notes: Note[] }; when: number }>();
      for (const key of keysOf(store)) {
        const whole = key.includes('|') ? null : leftWhole(store, key);
        if (whole !== null) {
          if (!(await isAlive(whole.left.tabId))) tabs.set(key, whole);
          continue;
        }
        if (!key.includes('|')) continue;
        const [tab = '', notebookId = '', kind = '', id = ''] = key.slice(prefix.length).split('|');
        if (tab === tabId || (await isAlive(tab))) continue;
        const name = `${tab}|${notebookId}`;
        const entry = tabs.get(name) ?? { left: leftOf(store, tab, notebookId), when: 0 };
        tabs.set(name, entry);
        const parsed = parsedNote(kind, id, store.getItem(key));
        if (parsed === null) continue;
        entry.left.notes.push(parsed.note);
        entry.when = Math.max(entry.when, parsed.when);
      }
      return [...tabs.values()]
        .sort((a, b) => a.when - b.when)
        .map(({ left }) => ({ ...left, notes: left.notes.sort((a, b) => a.count - b.count || a.at - b.at) }));
    },
  };
}

function leftOf(store: SmallStore, tabId: string, notebookId: string): Left & { notes: Note[] } {
  const start = `${prefix}${tabId}|${notebookId}|`;
  return {
    tabId,
    notebookId,
    notes: [],
    remove() {
      for (const key of keysOf(store)) if (key.startsWith(start)) remove(store, key);
    },
  };
}

/** As it was noted once: the notebook whole. Null where it is torn. */
function leftWhole(store: SmallStore, key: string): { left: Left & { notes: Note[] }; when: number } | null {
  const parts = /^(\d+) (\d+) (.*)$/s.exec(store.getItem(key) ?? '');
  if (parts === null) return null;
  try {
    const { notebook } = openNotebookFile(JSON.parse(parts[3] ?? ''));
    const lists = listsOf({ notebook, choices: [] });
    const common = { count: 1, revision: Number(parts[1]) };
    const records = storedKinds.flatMap((kind) =>
      lists[kind].map((value, at) => ({ kind, id: value.id, value, at, ...common })),
    );
    const title = { kind: 'title' as const, id: '', value: notebook.title, at: 0, ...common };
    const left = { tabId: key.slice(prefix.length), notebookId: notebook.id, notes: [title, ...records] };
    return { left: { ...left, remove: () => remove(store, key) }, when: Number(parts[2]) };
  } catch {
    return null;
  }
}

function keysOf(store: SmallStore): readonly string[] {
  const keys: string[] = [];
  for (let i = 0; i < store.length; i++) {
    const key = store.key(i);
    if (key?.startsWith(prefix)) keys.push(key);
  }
  return keys;
}

function parsedNote(kind: string, id: string, text: string | null): { note: Note; when: number } | null {
  const known = ['title', ...storedKinds].find((one) => one === kind) as Note['kind'] | undefined;
  try {
    const parsed: unknown = JSON.parse(text ?? '');
    if (known === undefined || !isObject(parsed)) return null;
    const { count, at, revision, value, when } = parsed;
    if (typeof count !== 'number' || typeof at !== 'number' || typeof revision !== 'number') return null;
    return { note: { kind: known, id, value, at, count, revision }, when: Number(when) || 0 };
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
