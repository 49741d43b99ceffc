import type { Notebook } from '../notebook/model.ts';
import { type Database, databaseName, openDatabase, type Picture } from './database.ts';
import { fileFromNotebook, openNotebookFile } from './notebook-file.ts';
import type { SetAside } from './records.ts';
import { StorageTrouble, troubleFrom } from './trouble.ts';

/** A notebook as it was found on the shelf. */
export interface Kept {
  readonly notebook: Notebook;
  /** What of it could not be read; it stays kept. */
  readonly setAside: readonly SetAside[];
  readonly revision: number;
  readonly savedAt: string;
}

/** One line of the list of what is kept. */
export interface KeptLine {
  readonly id: string;
  /** Null where the notebook can't be read. */
  readonly title: string | null;
  readonly savedAt: string;
  readonly revision: number;
}

/** Where notebooks, pictures and settings are kept. Every method rejects with a StorageTrouble and nothing else. */
export interface Shelf {
  /** Null where there is none. Rejects where it is kept but not whole; it stays kept. */
  notebook(id: string): Promise<Kept | null>;
  notebooks(): Promise<readonly KeptLine[]>;
  /**
   * Saves in one transaction: afterwards either all of it is there or what was there before.
   * `known`: the revision that this tab last saw, 0 for a new notebook. @returns the new revision.
   * Rejects with kind `elsewhere`, and saves nothing, where another tab has saved since.
   */
  save(notebook: Notebook, known: number): Promise<number>;
  remove(id: string): Promise<void>;
  putPictures(pictures: readonly Picture[]): Promise<void>;
  picture(id: string): Promise<Picture | null>;
  pictureAges(): Promise<ReadonlyMap<string, string>>;
  removePictures(ids: readonly string[]): Promise<void>;
  setting(key: string): Promise<unknown>;
  setSetting(key: string, value: unknown): Promise<void>;
  close(): Promise<void>;
}

export interface ShelfOptions {
  readonly name?: string;
  readonly now?: () => Date;
}

/** The shelf in the browser's database. It opens when first used, and again where the browser closed it. */
export function openShelf(options: ShelfOptions = {}): Shelf {
  const name = options.name ?? databaseName;
  const now = options.now ?? (() => new Date());
  let opening: Promise<Database> | null = null;

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

  return {
    notebook: (id) =>
      use(async (db) => {
        const record = await db.get('notebooks', id);
        if (record === undefined) return null;
        const { revision, savedAt } = record;
        return { ...openNotebookFile(record.file), revision, savedAt };
      }),
    notebooks: () =>
      use(async (db) =>
        (await db.getAll('notebooks')).map(({ id, savedAt, revision, file }) => ({
          id,
          title: titleOf(file),
          savedAt,
          revision,
        })),
      ),
    save: (notebook, known) =>
      use(async (db) => {
        const tx = db.transaction('notebooks', 'readwrite', { durability: 'strict' });
        const done = tx.done;
        // Both promises may reject; the first one to do so is told, the other must not go unheard.
        done.catch(() => {});
        const before = await tx.store.get(notebook.id);
        const revision = before?.revision ?? 0;
        if (revision !== known) {
          throw new StorageTrouble('elsewhere', 'This notebook was changed in another tab meanwhile.');
        }
        const file = fileFromNotebook(notebook);
        await tx.store.put({ id: notebook.id, revision: revision + 1, savedAt: now().toISOString(), file });
        await done;
        return revision + 1;
      }),
    remove: (id) => use((db) => db.delete('notebooks', id)),
    putPictures: (pictures) =>
      use(async (db) => {
        const tx = db.transaction('pictures', 'readwrite');
        const done = tx.done;
        done.catch(() => {});
        await Promise.all(pictures.map((picture) => tx.store.put(picture)));
        await done;
      }),
    picture: (id) => use(async (db) => (await db.get('pictures', id)) ?? null),
    pictureAges: () =>
      use(async (db) => {
        const ages = new Map<string, string>();
        for (let at = await db.transaction('pictures').store.openCursor(); at; at = await at.continue()) {
          ages.set(at.value.id, at.value.addedAt);
        }
        return ages;
      }),
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
