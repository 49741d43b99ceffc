import * as v from 'valibot';
import type { Notebook } from '../notebook/model.ts';
import { migrate, type NotebookFile, notebookFormat, notebookVersion } from './migrate.ts';
import { notebookSchema } from './schema-notebook.ts';
import { StorageTrouble } from './trouble.ts';

/** A notebook as it is kept: the same type, with its format and version around it. */
export function fileFromNotebook(notebook: Notebook): NotebookFile {
  return { format: notebookFormat, version: notebookVersion, notebook };
}

/**
 * The notebook in a kept file, after migration, with every field checked.
 * @throws StorageTrouble with one clear sentence: not a notebook, made by a later version, or not whole.
 */
export function notebookFromFile(file: unknown): Notebook {
  const current = migrate(file);
  const checked = v.safeParse(notebookSchema, current.notebook, { abortEarly: true });
  if (checked.success) return checked.output;
  const where = v.getDotPath(checked.issues[0]);
  throw new StorageTrouble(
    'torn',
    `This notebook is not whole: something in it is not what it should be${where === null ? '' : ` (at ${shortened(where)})`}.`,
  );
}

/** JSON text of a notebook. */
export function serialiseNotebook(notebook: Notebook): string {
  return JSON.stringify(fileFromNotebook(notebook));
}

/** @throws StorageTrouble where the text is not the JSON of a whole notebook. */
export function parseNotebook(text: string): Notebook {
  let file: unknown;
  try {
    file = JSON.parse(text);
  } catch (error) {
    throw new StorageTrouble('torn', 'This notebook is torn: its text breaks off or is not readable.', {
      cause: error,
    });
  }
  return notebookFromFile(file);
}

function shortened(path: string): string {
  const clean = path.replace(/[^\w.:~ -]/g, '');
  return clean.length > 60 ? `…${clean.slice(-60)}` : clean;
}
