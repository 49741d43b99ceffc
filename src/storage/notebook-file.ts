import * as v from 'valibot';
import { limits } from '../notebook/limits.ts';
import type { Notebook } from '../notebook/model.ts';
import { migrate, type NotebookFile, notebookFormat, notebookVersion } from './migrate.ts';
import { type RecordKind, type RecordOf, recordFrom, type SetAside, setAside } from './records/records.ts';
import { idSchema, nameSchema } from './schema/schema-ink.ts';
import { notebookSchema } from './schema/schema-notebook.ts';
import { notWhole, titleForUnreadable, tornText, unreadableFrame, whyAside } from './words/notebook-words.ts';
import { StorageTrouble } from './words/trouble.ts';
import { shortened } from './words/why-not.ts';

/** A notebook as it is kept: the same type, with its format and version around it. */
export function fileFromNotebook(notebook: Notebook): NotebookFile {
  return { format: notebookFormat, version: notebookVersion, notebook };
}

/** A notebook that was opened, and what of it could not be read. */
export interface Opened {
  readonly notebook: Notebook;
  /** In the order in which it was found; empty where all could be read. */
  readonly setAside: readonly SetAside[];
}

/**
 * The notebook in a kept file, after migration. Every field is checked; a leaf, sheet, plain or part that is not whole
 * is set aside as it is, and the rest opens.
 * @throws StorageTrouble where there is no notebook at all in it, or one of a later version.
 */
export function openNotebookFile(file: unknown): Opened {
  const { notebook } = migrate(file);
  const frame = v.safeParse(frameSchema, notebook);
  if (!frame.success || (!Array.isArray(frame.output.leaves) && !isObject(frame.output.drawer))) {
    throw new StorageTrouble('torn', unreadableFrame);
  }
  const { id, title, leaves, drawer } = frame.output;
  const aside: SetAside[] = [];
  if (!isObject(drawer)) aside.push(setAside('sheet', drawer, whyAside.drawer));
  const lists: Readonly<Record<string, unknown>> = isObject(drawer) ? drawer : {};
  const read = <K extends RecordKind>(what: K, list: unknown, most: number) =>
    readList(what, list, most, aside);
  return {
    notebook: {
      id,
      title: v.is(nameSchema, title) ? v.parse(nameSchema, title) : titleForUnreadable,
      leaves: read('leaf', leaves, limits.leaves),
      drawer: {
        sheets: read('sheet', lists.sheets, limits.sheets),
        plains: read('plain', lists.plains, limits.plains),
        parts: read('part', lists.parts, limits.parts),
      },
    },
    setAside: aside,
  };
}

/**
 * The same, where nothing at all may be amiss.
 * @throws StorageTrouble with one clear sentence: not a notebook, made by a later version, or not whole.
 */
export function notebookFromFile(file: unknown): Notebook {
  const current = migrate(file);
  const checked = v.safeParse(notebookSchema, current.notebook, { abortEarly: true });
  if (checked.success) return checked.output;
  const where = v.getDotPath(checked.issues[0]);
  throw new StorageTrouble('torn', notWhole(where === null ? null : shortened(where)));
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
    throw new StorageTrouble('torn', tornText, {
      cause: error,
    });
  }
  return notebookFromFile(file);
}

const frameSchema = v.object({
  id: idSchema,
  title: v.optional(v.unknown()),
  leaves: v.optional(v.unknown()),
  drawer: v.optional(v.unknown()),
});

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

function readList<K extends RecordKind>(
  what: K,
  list: unknown,
  most: number,
  aside: SetAside[],
): readonly RecordOf[K][] {
  if (!Array.isArray(list)) {
    if (list !== undefined) aside.push(setAside(what, list, whyAside.noList));
    return [];
  }
  const sound: RecordOf[K][] = [];
  const ids = new Set<string>();
  for (const value of list as readonly unknown[]) {
    const checked = recordFrom(what, value);
    const why = !checked.ok
      ? checked.why
      : ids.has(checked.value.id)
        ? whyAside.sameName
        : sound.length >= most
          ? whyAside.tooMany(most)
          : null;
    if (checked.ok && why === null) {
      ids.add(checked.value.id);
      sound.push(checked.value);
    } else aside.push(setAside(what, value, why ?? ''));
  }
  return sound;
}
