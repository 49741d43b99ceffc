import { all, allOrNothing } from '../all-or-nothing.ts';
import type { Database, Head, StoredRecord } from '../database.ts';
import { notebookVersion } from '../migrate.ts';
import { openNotebookFile } from '../notebook-file.ts';
import { type Item, listsOf, storedKinds } from '../written.ts';
import { type Raw, readRaw } from './read-records.ts';

/**
 * Brings a notebook that is stored whole, as all were once, over into records, and what can't be read of it into the
 * store of what is set aside. It is one transaction, at the end of which the whole one goes: broken off at any moment,
 * either all or nothing of it was done. Null where there is no such notebook.
 * @throws StorageTrouble where nothing of it can be read; it stays as it is.
 */
export async function bringOver(db: Database, id: string): Promise<Raw | null> {
  const whole = await db.get('notebooks', id);
  if (whole === undefined) return null;
  const { notebook, setAside } = openNotebookFile(whole.file);
  const { revision, savedAt } = whole;
  const head: Head = {
    id,
    title: notebook.title,
    revision,
    savedAt,
    version: notebookVersion,
    removedAt: 0,
    stored: {},
  };
  const lists = listsOf({ notebook, choices: [] });
  const records: StoredRecord[] = storedKinds.flatMap((kind) =>
    lists[kind].map((value: Item, at) => ({
      notebook: id,
      kind,
      id: value.id,
      place: at + 1,
      revision,
      value,
    })),
  );
  const tx = db.transaction(['notebooks', 'heads', 'records', 'setAside'], 'readwrite', {
    durability: 'strict',
  });
  const isDone = await allOrNothing(tx, async () => {
    const there = await tx.objectStore('notebooks').get(id);
    if (there === undefined || there.revision !== revision) return false;
    const [store, aside] = [tx.objectStore('records'), tx.objectStore('setAside')];
    await all([
      ...records.map((one) => () => store.put(one)),
      ...setAside.map((found) => () => aside.put({ notebook: id, found })),
      () => tx.objectStore('heads').put(head),
      () => tx.objectStore('notebooks').delete(id),
    ]);
    return true;
  });
  if (isDone) return { head, records, aside: setAside };
  // Another tab was quicker, or stored it anew meanwhile.
  return (await readRaw(db, id)) ?? bringOver(db, id);
}
