import * as v from 'valibot';
import { laterVersion, noNotebook, otherThanItsVersion, versionNeverUsed } from './words/notebook-words.ts';
import { StorageTrouble } from './words/trouble.ts';

export const notebookFormat = 'quirewise-notebook';
/** Goes up by one with every change that older files do not already satisfy; `steps` then gets a way up from the last. */
export const notebookVersion = 1;

/** What stands in the store and in a bundle. */
export interface NotebookFile {
  readonly format: typeof notebookFormat;
  readonly version: number;
  readonly notebook: unknown;
}

/** From version n to n + 1, by n. */
export type MigrationSteps = Readonly<Record<number, (notebook: unknown) => unknown>>;
const steps: MigrationSteps = {};

const fileSchema = v.object({
  format: v.literal(notebookFormat),
  version: v.pipe(v.number(), v.integer(), v.minValue(1)),
  notebook: v.unknown(),
});

/**
 * The file brought up to the newest version, one step after the other. Its notebook is not checked yet.
 * @throws StorageTrouble where it is no notebook file, is of a later version, or of one that no step leads up from.
 */
export function migrate(file: unknown, by: MigrationSteps = steps, newest = notebookVersion): NotebookFile {
  const parsed = v.safeParse(fileSchema, file);
  if (!parsed.success) throw new StorageTrouble('torn', noNotebook);
  let { version, notebook } = parsed.output;
  if (version > newest) {
    throw new StorageTrouble('later version', laterVersion(version, newest));
  }
  for (; version < newest; version++) {
    const step = by[version];
    if (step === undefined) {
      throw new StorageTrouble('torn', versionNeverUsed(version));
    }
    try {
      notebook = step(notebook);
    } catch (error) {
      throw new StorageTrouble('torn', otherThanItsVersion(version), { cause: error });
    }
  }
  return { format: notebookFormat, version, notebook };
}
