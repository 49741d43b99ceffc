import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { NotebookFile } from './migrate.ts';
import type { SetAside } from './records/records.ts';
import type { StoredKind } from './written.ts';

/** The browser's database. Picture bytes are ArrayBuffers, because not every browser stores Blobs. */
export interface QuirewiseDb extends DBSchema {
  /** Whole notebooks, as they were stored before there were records: each stands here until it is first opened. */
  notebooks: { key: string; value: NotebookRecord };
  heads: { key: string; value: Head };
  records: { key: RecordKey; value: StoredRecord; indexes: { changes: [string, number] } };
  /** What could not be read of a notebook when it was brought over from `notebooks`. */
  setAside: { key: number; value: KeptAside; indexes: { notebook: string } };
  pictures: { key: string; value: Picture; indexes: { addedAt: string } };
  settings: { key: string; value: unknown };
}

export interface NotebookRecord {
  readonly id: string;
  readonly revision: number;
  /** ISO date and time. */
  readonly savedAt: string;
  readonly file: NotebookFile;
}

/** What is known of a notebook without reading it. */
export interface Head {
  readonly id: string;
  readonly title: string;
  /** Goes up by one with every save, so that a tab sees that another has saved. */
  readonly revision: number;
  /** ISO date and time. */
  readonly savedAt: string;
  /** Version of what its records hold; see migrate.ts. */
  readonly version: number;
  /** Revision of the last save that took a record out. */
  readonly removedAt: number;
  /** By tab: the number of its last change that is stored. Only the tabs that stored last. */
  readonly stored: Readonly<Record<string, number>>;
  /** The tab that saved last, and the first revision from which on nobody else has. */
  readonly alone?: { readonly tab: string; readonly since: number };
}

export type RecordKey = [notebook: string, kind: StoredKind, id: string];

/** A leaf, sheet, plain, part or choice of a notebook. */
export interface StoredRecord {
  readonly notebook: string;
  readonly kind: StoredKind;
  readonly id: string;
  /** Where it stands in its list; see positions.ts. */
  readonly place: number;
  /** The notebook's revision at which it was stored. */
  readonly revision: number;
  readonly value: unknown;
}

export interface KeptAside {
  readonly notebook: string;
  readonly found: SetAside;
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
export const databaseVersion = 2;

/** Opens the database, making its stores where they are missing. `onGone` is called when this connection can't be used any more. */
export async function openDatabase(name: string, onGone: () => void): Promise<Database> {
  const database = await openDB<QuirewiseDb>(name, databaseVersion, {
    upgrade(db, from, _to, tx) {
      if (from < 1) {
        db.createObjectStore('notebooks', { keyPath: 'id' });
        db.createObjectStore('pictures', { keyPath: 'id' });
        db.createObjectStore('settings');
      }
      if (from < 2) {
        db.createObjectStore('heads', { keyPath: 'id' });
        const records = db.createObjectStore('records', { keyPath: ['notebook', 'kind', 'id'] });
        records.createIndex('changes', ['notebook', 'revision']);
        db.createObjectStore('setAside', { autoIncrement: true }).createIndex('notebook', 'notebook');
        tx.objectStore('pictures').createIndex('addedAt', 'addedAt');
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
