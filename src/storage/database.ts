import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { NotebookFile } from './migrate.ts';

/** The browser's database. Picture bytes are ArrayBuffers, because not every browser stores Blobs. */
export interface QuirewiseDb extends DBSchema {
  notebooks: { key: string; value: NotebookRecord };
  pictures: { key: string; value: Picture };
  settings: { key: string; value: unknown };
}

export interface NotebookRecord {
  readonly id: string;
  /** Goes up by one with every save, so that a tab sees that another has saved. */
  readonly revision: number;
  /** ISO date and time. */
  readonly savedAt: string;
  readonly file: NotebookFile;
}

/** A stored picture: encoded anew or stripped, so that nothing but the pixels is in it. */
export interface Picture {
  readonly id: string;
  readonly bytes: ArrayBuffer;
  readonly type: 'image/png' | 'image/jpeg';
  readonly width: number;
  readonly height: number;
  readonly thumb: { readonly bytes: ArrayBuffer; readonly type: string } | null;
  /** ISO date and time. */
  readonly addedAt: string;
}

export type Database = IDBPDatabase<QuirewiseDb>;

export const databaseName = 'quirewise';
/** Goes up when a store is added or changes its keys; what a notebook holds is migrated by migrate.ts. */
export const databaseVersion = 1;

/** Opens the database, making its stores where they are missing. `onGone` is called when this connection can't be used any more. */
export async function openDatabase(name: string, onGone: () => void): Promise<Database> {
  const database = await openDB<QuirewiseDb>(name, databaseVersion, {
    upgrade(db, from) {
      if (from < 1) {
        db.createObjectStore('notebooks', { keyPath: 'id' });
        db.createObjectStore('pictures', { keyPath: 'id' });
        db.createObjectStore('settings');
      }
    },
    // A newer Quirewise in another tab must be able to change the stores.
    blocking() {
      database.close();
      onGone();
    },
    terminated: onGone,
  });
  return database;
}
