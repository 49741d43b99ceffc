import { nameOfHeld } from '../drawer/find.ts';
import type { Held } from '../drawer/model.ts';
import type { Edit } from '../notebook/edits.ts';
import type { Leaf, StudyLeaf } from '../notebook/model.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import type { ReadRequest } from '../workers/messages.ts';
import { pictureLimits } from '../workers/picture-limits.ts';
import { keptFrom, ontoStudy, sheetFrom, studyFor } from './add-pictures.ts';
import type { Book } from './book.ts';
import { newId } from './new-id.ts';
import { sheetNames } from './picture-names.ts';
import type { Pictures } from './pictures.ts';
import { type ReadClient, ReadingCancelled, type ReadResult } from './read-client.ts';
import { digestOf, heldOfDigest } from './same-picture.ts';
import type { PictureTarget, ReadingInProgress } from './session-types.ts';
import type { StateHolder } from './state-holder.ts';

export interface Readings {
  add(files: readonly File[], target?: PictureTarget): Promise<readonly Held[]>;
  /** Reads a picture that is there already, shown as underway. Null where it was cancelled or could not be read. */
  readStored(name: string, picture: Blob, wanted: Wanted): Promise<ReadResult | null>;
  cancel(id: string): void;
}

/** What is wanted of a reading. */
export type Wanted = Omit<ReadRequest, 'id' | 'bytes' | 'look'>;

interface Parts {
  readonly holder: StateHolder;
  readonly book: Book;
  readonly pictures: Pictures;
  readonly client: ReadClient;
  /** Called with what a picture showed where its inks lie, so that it need not be worked out again. */
  readonly onPlaces: (pictureId: string, result: ReadResult) => void;
}

/** Reads files and puts what was read into the notebook, each as soon as it is there, all as one step of undo. */
export function startReadings({ holder, book, pictures, client, onPlaces }: Parts): Readings {
  const show = (id: string, change: Partial<ReadingInProgress> | null) => {
    const readings = holder.state.readings.flatMap((one) =>
      one.id !== id ? [one] : change === null ? [] : [{ ...one, ...change }],
    );
    holder.set({ readings });
  };
  /** Names that are given already to sheets that are not in the drawer yet. */
  const promised = new Set<string>();
  const begin = (fileName: string, studyId: string | null = null): string => {
    const id = newId('reading');
    const forStudy = studyId === null ? {} : { studyId };
    const reading: ReadingInProgress = { id, fileName, stage: 'waiting', fraction: 0, ...forStudy };
    holder.set({ readings: [...holder.state.readings, reading] });
    return id;
  };

  /** Null where it was cancelled or could not be read; a message has said so. */
  async function read(id: string, name: string, file: Blob, wanted: Wanted): Promise<ReadResult | null> {
    try {
      if (file.size > pictureLimits.file) {
        throw new UnreadableImage(
          'This file is too large to open (over 400 megabytes). Save a smaller copy and drop that.',
        );
      }
      const bytes = await bytesOf(file);
      if (!holder.state.readings.some((one) => one.id === id)) return null;
      return await client.read({ ...wanted, id, bytes }, ({ stage, fraction }) =>
        show(id, { stage, fraction }),
      );
    } catch (error) {
      if (!(error instanceof ReadingCancelled)) {
        const says = error instanceof Error ? error.message : 'This picture could not be read.';
        holder.say('trouble', `“${name}”: ${says}`);
      }
      return null;
    }
  }

  async function addOne({ id, file, name, digest }: ToAdd, place: Place, step: string): Promise<Held | null> {
    const result = await read(id, file.name, file, {
      options: {},
      withPicture: true,
      isNew: true,
    });
    if (result === null) return null;
    for (const note of result.done.notes) holder.say('note', `“${file.name}”: ${note}`);
    if (result.done.onTable) holder.say('note', tableNote);
    const { kept, picture } = keptFrom(result.done, file.name, digest);
    if (picture !== null) {
      onPlaces(picture.id, result);
      pictures.from(picture.id, file);
      await pictures.add([picture]);
    }
    const { edits, held } = place(kept, result, name);
    book.dispatchAll(edits, 'add pictures', step);
    return held;
  }

  interface ToAdd {
    readonly id: string;
    readonly file: File;
    /** Of the sheet. */
    readonly name: string;
    readonly digest: string | null;
  }

  type Place = (
    kept: ReturnType<typeof keptFrom>['kept'],
    result: ReadResult,
    name: string,
  ) => { edits: readonly Edit[]; held: Held };

  return {
    async add(files, target) {
      if (files.length === 0) return [];
      const step = newId('step');
      const taken = new Set([...book.notebook.drawer.sheets.map((sheet) => sheet.name), ...promised]);
      const names = sheetNames(
        files.map((file) => file.name),
        taken,
      );
      for (const name of names) promised.add(name);
      const { edits, studyId } = studyFor(book.notebook, holder.state.leafId, names, target);
      // On a study that has a pair already, what is dropped is what she wants to see.
      const showsNew =
        (studyOf(book.notebook.leaves.find((leaf) => leaf.id === studyId))?.candidates.length ?? 0) > 0;
      let as = target?.to === 'study' ? target.as : null;
      const place: Place = (kept, result, name) => {
        if (target?.to === 'other side') {
          const held: Held = { kind: 'sheet', id: target.sheetId, side: 'B' };
          return { held, edits: [{ do: 'set side', sheetId: target.sheetId, side: 'B', kept }] };
        }
        const sheet = sheetFrom(kept, result.done, name);
        const held: Held = { kind: 'sheet', id: sheet.id, side: 'A' };
        return { held, edits: [{ do: 'add sheet', sheet }, ...onto(held)] };
      };
      const onto = (held: Held): readonly Edit[] => {
        const study = studyOf(book.notebook.leaves.find((leaf) => leaf.id === studyId));
        const put = ontoStudy(study, held, as, showsNew);
        // One anchor a study: further pictures for it are candidates.
        if (as === 'anchor') as = 'candidate';
        return put;
      };
      const ids = files.map((file) => begin(file.name, studyId));
      // A new study is there at once, so that it is seen where the pictures go.
      book.dispatchAll(edits, 'add pictures', step);
      if (studyId !== null) book.turnTo(studyId);
      const added: Held[] = [];
      for (const [i, file] of files.entries()) {
        const id = ids[i] ?? '';
        const name = names[i] ?? file.name;
        const digest = await digestOf(file);
        const known = target?.to === 'other side' ? null : heldOfDigest(book.notebook.drawer, digest);
        if (known !== null) {
          holder.say(
            'note',
            `“${file.name}” is already in your drawer, as ${nameOfHeld(book.notebook.drawer, known)}.`,
          );
          book.dispatchAll(onto(known), 'add pictures', step);
        }
        const held = known ?? (await addOne({ id, file, name, digest }, place, step).catch(() => null));
        show(id, null);
        promised.delete(name);
        if (held === null) continue;
        added.push(held);
      }
      const made = edits.flatMap((edit) => (edit.do === 'add leaf' ? [edit.leaf.id] : []))[0];
      if (added.length === 0 && made !== undefined && !book.drop(step)) {
        book.dispatchAll([{ do: 'remove leaf', leafId: made }], 'add pictures', step);
      }
      return added;
    },
    async readStored(name, picture, wanted) {
      const id = begin(name);
      const result = await read(id, name, picture, wanted);
      show(id, null);
      return result;
    },
    cancel(id) {
      show(id, null);
      client.cancel(id);
    },
  };
}

/** The same for every picture, so that it is said once. */
const tableNote =
  'In a picture the paper lies on a table, and the table is read with it. Look closer at the paper to straighten and crop it.';

function studyOf(leaf: Leaf | undefined): StudyLeaf | null {
  return leaf?.kind === 'study' ? leaf : null;
}

async function bytesOf(file: Blob): Promise<ArrayBuffer> {
  try {
    return await file.arrayBuffer();
  } catch {
    throw new UnreadableImage(
      'The file could not be opened: it may have been moved or changed. Choose it again.',
    );
  }
}
