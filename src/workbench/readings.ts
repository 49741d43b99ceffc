import { heldKey, nameOfHeld } from '../drawer/find.ts';
import type { Held } from '../drawer/model.ts';
import { applyEdit, type Edit } from '../notebook/edits.ts';
import type { Leaf, Notebook, StudyLeaf } from '../notebook/model.ts';
import type { Picture } from '../storage/database.ts';
import { keptFrom, ontoStudy, sheetFrom, studyFor, titleOf } from './add-pictures.ts';
import type { Book } from './book.ts';
import { newId } from './new-id.ts';
import { sheetNames } from './picture-names.ts';
import type { Pictures } from './pictures.ts';
import type { ReadClient, ReadResult } from './read-client.ts';
import { type FileToRead, newPicture, type ReadFile, startFileReading, type Wanted } from './read-files.ts';
import { listReadings } from './reading-list.ts';
import { heldOfDigest } from './same-picture.ts';
import type { PictureTarget } from './session-types.ts';
import type { StateHolder } from './state-holder.ts';
import { gatherNotes, gatherTroubles } from './words/reading-notes.ts';

export interface Readings {
  add(files: readonly File[], target?: PictureTarget): Promise<readonly Held[]>;
  /** Reads a picture that is there already, shown as underway. Null where it was cancelled or could not be read. */
  readStored(name: string, picture: Blob, wanted: Wanted): Promise<ReadResult | null>;
  cancel(id: string): void;
}

interface Parts {
  readonly holder: StateHolder;
  readonly book: Book;
  readonly pictures: Pictures;
  readonly client: ReadClient;
  /** Has ready what a study of the notebook will be drawn from. */
  readonly ahead: (notebook: Notebook, studyId: string) => Promise<void>;
  /** Called with what a picture showed where its inks lie, so that it need not be worked out again. */
  readonly onPlaces: (pictureId: string, result: ReadResult) => void;
}

interface ToAdd extends FileToRead {
  /** Of the sheet. */
  readonly name: string;
}

/**
 * Reads files, several at the same time, and puts what was read into the notebook in the order of the files, each as
 * soon as it and those before it are there; all is one step of undo.
 */
export function startReadings({ holder, book, pictures, client, ahead, onPlaces }: Parts): Readings {
  const list = listReadings(holder);
  const reading = startFileReading(holder, list, client);
  /** Names that are given already to sheets that are not in the drawer yet. */
  const promised = new Set<string>();
  const knownOf = (digest: string | null) => heldOfDigest(book.notebook.drawer, digest);

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
      const { edits, studyId } = studyFor(book.notebook, holder.state.leafId, files.length, target);
      const put = placing(target, studyId);
      const all = files.map(
        (file, i): ToAdd => ({ id: list.begin(file.name, studyId), file, name: names[i] ?? file.name }),
      );
      // A new study is there at once, so that it is seen where the pictures go.
      book.dispatchAll(edits, 'add pictures', step);
      if (studyId !== null) book.turnTo(studyId);

      const isOther = target?.to === 'other side';
      // What goes only to the drawer is seen nowhere on the leaf, unless it was the drawer that was asked.
      const offerOf = (held: Held) =>
        studyId === null && target === undefined ? ({ offers: 'study', key: heldKey(held) } as const) : null;
      const notes = gatherNotes();
      const stored: Promise<void>[] = [];
      const fresh: Picture[] = [];
      const place = async (one: ToAdd, { digest, result: early, isSame }: ReadFile): Promise<Held | null> => {
        const { id, file, name } = one;
        // What was ready may have been cancelled while it waited for its turn.
        if (!list.has(id)) return null;
        const known = isOther ? null : knownOf(digest);
        if (known !== null) {
          const there = nameOfHeld(book.notebook.drawer, known);
          holder.say('note', `“${file.name}” is already in your drawer, as ${there}.`, {
            of: 'drop',
            ...offerOf(known),
          });
          book.dispatchAll(put.onto(known), 'add pictures', step);
          put.done();
          return known;
        }
        // The picture that it was like may have been taken out, or its reading cancelled.
        const result = isSame ? await reading.read(id, file.name, file, newPicture) : early;
        if (result === null) return null;
        notes.add(file.name, result.done.notes);
        const { kept, picture } = keptFrom(result.done, file.name, digest);
        const { held, edits: toPut } = put.fresh(kept, result, name);
        if (studyId !== null) await ahead(toPut().reduce(applyEdit, book.notebook), studyId);
        if (!list.has(id)) return null;
        if (picture !== null) {
          onPlaces(picture.id, result);
          pictures.from(picture.id, file);
          stored.push(pictures.add([picture]));
          fresh.push(picture);
        }
        if (!book.dispatchAll(toPut(), 'add pictures', step)) return null;
        put.done();
        return held;
      };

      const made = edits.flatMap((edit) => (edit.do === 'add leaf' ? [edit.leaf.id] : []))[0] ?? null;
      const troubles = gatherTroubles();
      const asked = reading.readAll(all, isOther ? null : (digest) => knownOf(digest) !== null, troubles.add);
      const added: Held[] = [];
      for (const [i, one] of all.entries()) {
        const held = await asked[i]?.then((file) => place(one, file)).catch(() => null);
        list.end(one.id);
        promised.delete(one.name);
        if (held == null) continue;
        added.push(held);
        const retitled = made === null ? [] : titled(made, added);
        if (retitled.length > 0) book.dispatchAll(retitled, 'add pictures', step);
      }
      const trouble = troubles.say();
      if (trouble !== null) holder.say('trouble', trouble.says, { of: 'drop', ...trouble.more });
      for (const says of notes.say()) holder.say('note', says, { of: 'drop' });
      for (const held of fresh.length === 1 ? added : []) {
        const offer = offerOf(held);
        const name = nameOfHeld(book.notebook.drawer, held);
        if (offer) holder.say('note', `“${name}” is in the drawer.`, { of: 'drop', ...offer });
      }
      if (added.length === 0 && made !== null && !book.drop(step)) {
        book.dispatchAll([{ do: 'remove leaf', leafId: made }], 'add pictures', step);
      }
      void findTables(fresh, studyId === null).catch(() => {});
      await Promise.all(stored);
      return added;
    },
    async readStored(name, picture, wanted) {
      holder.dismissTroubleWith(name);
      const id = list.begin(name);
      const result = await reading.read(id, name, picture, wanted);
      list.end(id);
      return result;
    },
    cancel(id) {
      list.end(id);
      client.cancel(id);
    },
  };

  /** Edits that put papers where they are to go, one after the other. */
  function placing(target: PictureTarget | undefined, studyId: string | null) {
    const study = () => studyOf(book.notebook.leaves.find((leaf) => leaf.id === studyId));
    // On a study that has a pair already, what is dropped is what she wants to see.
    const showsNew = (study()?.candidates.length ?? 0) > 0;
    let as = target?.to === 'study' ? target.as : null;
    const onto = (held: Held) => ontoStudy(study(), held, as, showsNew);
    const fresh = (
      kept: ReturnType<typeof keptFrom>['kept'],
      { done }: ReadResult,
      name: string,
    ): { readonly held: Held; readonly edits: () => readonly Edit[] } => {
      if (target?.to === 'other side') {
        const { sheetId } = target;
        const held: Held = { kind: 'sheet', id: sheetId, side: 'B' };
        return { held, edits: () => [{ do: 'set side', sheetId, side: 'B', kept }] };
      }
      const sheet = sheetFrom(kept, done, name);
      const held: Held = { kind: 'sheet', id: sheet.id, side: 'A' };
      return { held, edits: () => [{ do: 'add sheet', sheet }, ...onto(held)] };
    };
    // One anchor a study: further pictures for it are candidates.
    const done = () => {
      if (as === 'anchor') as = 'candidate';
    };
    return { onto, fresh, done };
  }

  /** A new study is called after what is on it, until she gives it another name. A file that can't be read names nothing. */
  function titled(studyId: string, added: readonly Held[]): readonly Edit[] {
    const names = added.map((held) => nameOfHeld(book.notebook.drawer, held));
    const study = studyOf(book.notebook.leaves.find((leaf) => leaf.id === studyId));
    if (study?.title !== titleOf(names.slice(0, -1))) return [];
    return [{ do: 'rename leaf', leafId: studyId, title: titleOf(names) }];
  }

  /** Looked for when all is read, so that no palette waits for it. `says`: told once, where no study shows it beside the paper. */
  async function findTables(fresh: readonly Picture[], says: boolean): Promise<void> {
    let isSaid = !says;
    for (const { id, bytes } of fresh) {
      const { onTable } = await client.look(newId('look'), bytes.slice(0), 'table');
      if (onTable !== true) continue;
      holder.set({ onTable: [...holder.state.onTable, id] });
      if (!isSaid) holder.say('note', tableNote, { of: 'drop' });
      isSaid = true;
    }
  }
}

const tableNote =
  'In a picture the paper lies on a table, and the table is read with it. Look closer at the paper to straighten and crop it.';

function studyOf(leaf: Leaf | undefined): StudyLeaf | null {
  return leaf?.kind === 'study' ? leaf : null;
}
