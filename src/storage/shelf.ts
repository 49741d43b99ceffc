import type { Notebook } from '../notebook/model.ts';
import { all, allOrNothing } from './all-or-nothing.ts';
import type { Choice } from './choice.ts';
import { type Database, databaseName, openDatabase, type Picture } from './database.ts';
import { notebookVersion } from './migrate.ts';
import { openNotebookFile } from './notebook-file.ts';
import { pictureIdsIn } from './pictures-in.ts';
import { bringOver } from './records/bring-over.ts';
import { baseOf, changesSince } from './records/catch-up.ts';
import { rangeOf, readRaw, readRecords, walkRaw } from './records/read-records.ts';
import type { SetAside } from './records/records.ts';
import { type Base, fitToStore, isStored, type SaveMore, saveRecords } from './records/save-records.ts';
import { changedElsewhere } from './words/notebook-words.ts';
import { StorageTrouble, troubleFrom } from './words/trouble.ts';
import { recordName, type Written } from './written.ts';

/** A notebook as it was found on the shelf. */
export interface Kept {
  readonly notebook: Notebook;
  /** What was written in two tabs at once and is not decided yet. */
  readonly choices: readonly Choice[];
  /** What of it could not be read; it stays kept. */
  readonly setAside: readonly SetAside[];
  readonly revision: number;
  readonly savedAt: string;
  /** By tab: the number of its last change that is in it. */
  readonly stored: Readonly<Record<string, number>>;
  /** The tab that saved last, and since which revision nobody else has; null where that is not known. */
  readonly alone: { readonly tab: string; readonly since: number } | null;
  /** The revision at which each record was stored, by recordName. */
  readonly storedAt: ReadonlyMap<string, number>;
}

/** One line of the list of what is kept. */
export interface KeptSummary {
  readonly id: string;
  /** Null where the notebook can't be read. */
  readonly title: string | null;
  readonly savedAt: string;
  readonly revision: number;
}

export interface Saved {
  readonly revision: number;
  /** Why a part of it could not be stored, as a sentence: its former state stays. Null where all of it is stored. */
  readonly refused: string | null;
}

/** What other tabs stored since this shelf last read or saved a notebook. */
export interface CaughtUp {
  readonly before: Written;
  readonly now: Written;
  readonly revision: number;
}

/** Where notebooks, pictures and settings are kept. Every method rejects with a StorageTrouble and nothing else. */
export interface Shelf {
  /** Null where there is none. Rejects where it is kept but not at all readable; it stays kept. */
  notebook(id: string): Promise<Kept | null>;
  notebooks(): Promise<readonly KeptSummary[]>;
  /**
   * Stores what changed since this shelf last read or saved it, in one transaction: afterwards either all of it is
   * there or what was there before. `known`: the revision that this tab last saw, 0 for a new notebook.
   * Rejects with kind `elsewhere`, and saves nothing, where another tab has saved since.
   */
  save(
    notebook: Notebook,
    known: number,
    more?: Omit<SaveMore, 'savedAt'> & { readonly choices?: readonly Choice[] },
  ): Promise<Saved>;
  /** What other tabs stored meanwhile: only records that changed are read. Null where the notebook is gone. */
  catchUp(id: string): Promise<CaughtUp | null>;
  remove(id: string): Promise<void>;
  /** True where nothing at all is kept in a notebook. */
  isEmpty(id: string): Promise<boolean>;
  /** Ids of all pictures that a notebook names, also in what can't be read of it. */
  picturesNamed(id: string): Promise<ReadonlySet<string>>;
  putPictures(pictures: readonly Picture[]): Promise<void>;
  picture(id: string): Promise<Picture | null>;
  /** Ids of pictures that were added before a moment, an ISO date and time. No picture is read for it. */
  picturesBefore(moment: string): Promise<readonly string[]>;
  removePictures(ids: readonly string[]): Promise<void>;
  setting(key: string): Promise<unknown>;
  setSetting(key: string, value: unknown): Promise<void>;
  close(): Promise<void>;
}

export interface ShelfOptions {
  readonly name?: string;
  readonly now?: () => Date;
}

/** Records that are fetched and looked through in one task: a few ms beside what the hand does. Ours. */
const recordsATask = 50;

/** Notebooks whose stored state is remembered; another is read again before it is saved. */
const mostBases = 3;

/** The shelf in the browser's database. It opens when first used, and again where the browser closed it. */
export function openShelf(options: ShelfOptions = {}): Shelf {
  const name = options.name ?? databaseName;
  const now = options.now ?? (() => new Date());
  const bases = new Map<string, Base>();
  let opening: Promise<Database> | null = null;
  let before: Promise<unknown> = Promise.resolve();

  const database = (): Promise<Database> => {
    const forget = () => {
      if (opening === mine) opening = null;
    };
    const mine = (opening ??= openDatabase(name, forget));
    mine.catch(forget);
    return mine;
  };
  const use = async <T>(work: (db: Database) => Promise<T>): Promise<T> => {
    try {
      try {
        return await work(await database());
      } catch (error) {
        // The browser may close a connection while a page sleeps; one more try on a fresh one.
        if (!isClosed(error)) throw error;
        opening = null;
        return await work(await database());
      }
    } catch (error) {
      throw troubleFrom(error);
    }
  };
  /** One after the other: what is known to be stored must not change under a save. */
  const inOrder = <T>(work: (db: Database) => Promise<T>): Promise<T> => {
    const mine = before.then(() => use(work));
    before = mine.catch(() => {});
    return mine;
  };
  const know = (id: string, base: Base): void => {
    bases.delete(id);
    bases.set(id, base);
    for (const old of [...bases.keys()].slice(0, -mostBases)) bases.delete(old);
  };

  const read = async (db: Database, id: string): Promise<Kept | null> => {
    const raw = (await readRaw(db, id)) ?? (await bringOver(db, id));
    if (raw === null) return null;
    const { written, setAside } = await readRecords(raw);
    know(id, baseOf(raw, written));
    const { revision, savedAt, stored, alone = null } = raw.head;
    const storedAt = new Map(raw.records.map((one) => [recordName(one.kind, one.id), one.revision]));
    return { ...written, setAside, revision, savedAt, stored, alone, storedAt };
  };

  return {
    notebook: (id) => inOrder((db) => read(db, id)),
    notebooks: () =>
      use(async (db) => {
        const [heads, whole] = await Promise.all([db.getAll('heads'), db.getAll('notebooks')]);
        const lines = heads.map(({ id, title, savedAt, revision, version }) => ({
          id,
          title: version > notebookVersion ? null : title,
          savedAt,
          revision,
        }));
        const known = new Set(lines.map(({ id }) => id));
        const old = whole.map(({ id, savedAt, revision, file }) => ({
          id,
          title: titleOf(file),
          savedAt,
          revision,
        }));
        return [...lines, ...old.filter(({ id }) => !known.has(id))];
      }),
    save: (notebook, known, { choices = [], ...more } = {}) =>
      inOrder(async (db) => {
        const { id } = notebook;
        if (bases.get(id)?.revision !== known) {
          bases.delete(id);
          const there = await read(db, id);
          if ((there?.revision ?? 0) !== known) throw elsewhere();
        }
        const base = bases.get(id) ?? null;
        const { fit, why } = fitToStore(base?.written ?? null, { notebook, choices });
        // What was refused is tried again and again: that need not write anything.
        if (why !== null && isStored(base, fit)) return { revision: base.revision, refused: why };
        const next = await saveRecords(db, base, fit, { ...more, savedAt: now().toISOString() });
        know(id, next);
        return { revision: next.revision, refused: why };
      }),
    catchUp: (id) =>
      inOrder(async (db) => {
        const base = bases.get(id);
        if (base === undefined) {
          const there = await read(db, id);
          return there && { before: there, now: there, revision: there.revision };
        }
        const next = await changesSince(db, id, base);
        if (next === null) {
          bases.delete(id);
          return null;
        }
        know(id, next);
        return { before: base.written, now: next.written, revision: next.revision };
      }),
    remove: (id) =>
      inOrder(async (db) => {
        bases.delete(id);
        const tx = db.transaction(['notebooks', 'heads', 'records', 'setAside'], 'readwrite');
        const aside = tx.objectStore('setAside');
        const keys = await aside.index('notebook').getAllKeys(id);
        await Promise.all([
          tx.objectStore('notebooks').delete(id),
          tx.objectStore('heads').delete(id),
          tx.objectStore('records').delete(rangeOf(id)),
          ...keys.map((key) => aside.delete(key)),
          tx.done,
        ]);
      }),
    isEmpty: (id) =>
      use(async (db) => {
        const [whole, records, aside] = await Promise.all([
          db.count('notebooks', id),
          db.count('records', rangeOf(id)),
          db.countFromIndex('setAside', 'notebook', id),
        ]);
        return whole + records + aside === 0;
      }),
    picturesNamed: (id) =>
      use(async (db) => {
        // A part a task, and none of them kept: ten thousand sheets in hand at once cost the page a long clearing-up.
        const ids = new Set<string>();
        const note = (stored: readonly unknown[]) => {
          for (const one of pictureIdsIn(stored)) ids.add(one);
        };
        const rest = await walkRaw(db, id, recordsATask, note);
        note(rest === null ? [await db.get('notebooks', id)] : rest.aside);
        return ids;
      }),
    putPictures: (pictures) =>
      use(async (db) => {
        const tx = db.transaction('pictures', 'readwrite', { durability: 'strict' });
        await allOrNothing(tx, () => all(pictures.map((picture) => () => tx.store.put(picture))));
      }),
    picture: (id) => use(async (db) => (await db.get('pictures', id)) ?? null),
    picturesBefore: (moment) =>
      use((db) => db.getAllKeysFromIndex('pictures', 'addedAt', IDBKeyRange.upperBound(moment, true))),
    removePictures: (ids) =>
      use(async (db) => {
        const tx = db.transaction('pictures', 'readwrite');
        await Promise.all([...ids.map((id) => tx.store.delete(id)), tx.done]);
      }),
    setting: (key) => use((db) => db.get('settings', key)),
    setSetting: (key, value) =>
      use(async (db) => {
        await db.put('settings', value, key);
      }),
    close: async () => {
      const open = opening;
      opening = null;
      if (open !== null) (await open.catch(() => null))?.close();
    },
  };
}

function elsewhere(): StorageTrouble {
  return new StorageTrouble('elsewhere', changedElsewhere);
}

function isClosed(error: unknown): boolean {
  return error instanceof DOMException && error.name === 'InvalidStateError';
}

function titleOf(file: unknown): string | null {
  try {
    return openNotebookFile(file).notebook.title;
  } catch {
    return null;
  }
}
