import { openDB } from 'idb';
import { databaseName } from './database.ts';

/**
 * All that the browser's database holds of a notebook but its pictures, as it stands there, by the name of the store:
 * for a file of what can't be opened. Knows nothing of what the stores hold, so that it works whatever is wrong, also
 * with what a later version stored. Empty where there is nothing.
 */
export async function rawNotebook(
  id: string,
  name = databaseName,
): Promise<Readonly<Record<string, readonly unknown[]>>> {
  const database = await openDB(name);
  try {
    const found: Record<string, unknown[]> = {};
    for (const store of [...database.objectStoreNames].filter(
      (one) => one !== 'pictures' && one !== 'settings',
    )) {
      const all: unknown[] = await database.getAll(store);
      const ours = all.filter((value) => isOf(value, id));
      if (ours.length > 0) found[store] = ours;
    }
    return found;
  } finally {
    database.close();
  }
}

/** A notebook's own record has its id; what is stored of it in parts names it. */
function isOf(value: unknown, id: string): boolean {
  const { id: own, notebook } = (value ?? {}) as { readonly id?: unknown; readonly notebook?: unknown };
  return typeof notebook === 'string' ? notebook === id : own === id;
}
