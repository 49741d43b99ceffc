import type { Notebook } from '../notebook/model.ts';
import { fileName } from '../storage/file-names.ts';
import { rawNotebook } from '../storage/raw-notebook.ts';
import type { SetAside } from '../storage/records/records.ts';
import type { ReadyFile } from './session-types.ts';

/** What of a notebook could not be read, as a file of JSON: each thing as it was found, with its name and why. */
export function setAsideFile(notebook: Notebook, setAside: readonly SetAside[], now: Date): ReadyFile {
  const what = {
    format: 'quirewise-set-aside',
    version: 1,
    notebook: { id: notebook.id, title: notebook.title },
    setAside,
  };
  return jsonFile(`${notebook.title} set aside`, what, now);
}

/** What the browser holds of a notebook that can't be opened, as a file of JSON; null where it holds nothing of it. */
export async function rawFile(id: string, now: Date, database?: string): Promise<ReadyFile | null> {
  const stored = await rawNotebook(id, database);
  if (Object.keys(stored).length === 0) return null;
  return jsonFile('notebook as stored', { format: 'quirewise-as-stored', version: 1, id, stored }, now);
}

function jsonFile(title: string, what: unknown, now: Date): ReadyFile {
  const blob = new Blob([JSON.stringify(what, null, 1)], { type: 'application/json' });
  return { name: fileName(title, 'json', now), blob };
}
