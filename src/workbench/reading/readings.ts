import { heldKey, nameOfHeld } from '../../drawer/held.ts';
import type { Held } from '../../drawer/model.ts';
import { applyEdit, type Edit } from '../../notebook/edits.ts';
import type { Notebook } from '../../notebook/model.ts';
import type { Book } from '../book.ts';
import { newId } from '../new-id.ts';
import type { Pictures } from '../pictures.ts';
import type { PictureTarget } from '../session-types.ts';
import type { StateHolder } from '../state-holder.ts';
import { alreadyThereSays, inDrawerSays } from '../words/picture-words.ts';
import { gatherNotes, gatherUnread, type ReadingNotes, type UnreadFiles } from '../words/reading-notes.ts';
import { keptFrom, studyFor, titleOf } from './add-pictures.ts';
import { sheetNames } from './picture-names.ts';
import { type Placing, startPlacing, studyOf } from './placing.ts';
import type { ReadClient, ReadResult } from './read-client.ts';
import { type FileToRead, newPicture, type ReadFile, startFileReading, type Wanted } from './read-files.ts';
import { listReadings } from './reading-list.ts';
import { heldOfDigest } from './same-picture.ts';

export interface Readings {
  add(files: readonly File[], target?: PictureTarget): Promise<readonly Held[]>;
  /** Reads a picture that is there already, shown as underway. Null where it was cancelled or could not be read. */
  readStored(name: string, picture: Blob, wanted: Wanted): Promise<ReadResult | null>;
  cancel(id: string): void;
}

interface Tools {
  readonly holder: StateHolder;
  readonly book: Book;
  readonly pictures: Pictures;
  readonly client: ReadClient;
  /** Has ready what a study of the notebook will be drawn from. */
  readonly prepareStudy: (notebook: Notebook, studyId: string) => Promise<void>;
  /** Called with what a picture showed where its inks lie, so that it need not be worked out again. */
  readonly onPlaces: (pictureId: string, result: ReadResult) => void;
}

interface ToAdd extends FileToRead {
  /** Of the sheet. */
  readonly name: string;
}

/** Files that were dropped together, and what came of them so far. */
interface Drop {
  /** All that is done for them is one step of undo. */
  readonly step: string;
  readonly target: PictureTarget | undefined;
  readonly studyId: string | null;
  /** The study that was made for them. */
  readonly madeId: string | null;
  readonly placing: Placing;
  readonly notes: ReadingNotes;
  /** Papers that are new in the drawer, and the storing of their pictures. */
  fresh: number;
  readonly stored: Promise<void>[];
}

/**
 * Reads files, several at the same time, and puts what was read into the notebook in the order of the files, each as
 * soon as it and those before it are there; all is one step of undo.
 */
export function startReadings(tools: Tools): Readings {
  const { holder, book, client } = tools;
  const list = listReadings(holder);
  const reading = startFileReading(holder, list, client);
  /** Names that are given already to sheets that are not in the drawer yet. */
  const promised = new Set<string>();

  async function add(files: readonly File[], target?: PictureTarget): Promise<readonly Held[]> {
    if (files.length === 0) return [];
    const names = namesFor(files, book.notebook, promised);
    const { edits, studyId } = studyFor(book.notebook, holder.state.leafId, files.length, target);
    const drop = startDrop(book, target, studyId, edits);
    const all = files.map(
      (file, i): ToAdd => ({ id: list.begin(file.name, studyId), file, name: names[i] ?? file.name }),
    );
    // A new study is there at once, so that it is seen where the pictures go.
    book.dispatchAll(edits, 'add pictures', drop.step);
    if (studyId !== null) book.turnTo(studyId);

    const troubles = gatherUnread();
    const isKnown = (digest: string | null) => heldOfDigest(book.notebook.drawer, digest) !== null;
    const asked = reading.readAll(all, isOtherSide(drop) ? null : isKnown, troubles.add);
    const added: Held[] = [];
    for (const [i, one] of all.entries()) {
      const held = await asked[i]?.then((file) => put(drop, one, file)).catch(() => null);
      list.end(one.id);
      promised.delete(one.name);
      if (held == null) continue;
      added.push(held);
      const retitled = drop.madeId === null ? [] : titled(book.notebook, drop.madeId, added);
      if (retitled.length > 0) book.dispatchAll(retitled, 'add pictures', drop.step);
    }
    sayWhatCame(holder, book, drop, added, troubles);
    if (added.length === 0 && drop.madeId !== null && !book.drop(drop.step)) {
      book.dispatchAll([{ do: 'remove leaf', leafId: drop.madeId }], 'add pictures', drop.step);
    }
    await Promise.all(drop.stored);
    return added;
  }

  /** @returns where it is now, or null where it was cancelled or could not be read or stored. */
  async function put(
    drop: Drop,
    { id, file, name }: ToAdd,
    { digest, result: early, isSame }: ReadFile,
  ): Promise<Held | null> {
    // What was ready may have been cancelled while it waited for its turn.
    if (!list.has(id)) return null;
    const known = isOtherSide(drop) ? null : heldOfDigest(book.notebook.drawer, digest);
    if (known !== null) return putKnown(holder, book, drop, file.name, known);
    // The picture that it was like may have been taken out, or its reading cancelled.
    const result = isSame ? await reading.read(id, file.name, file, newPicture) : early;
    if (result === null) return null;
    drop.notes.add(file.name, result.done.notes);
    const { kept, picture, photograph } = keptFrom(result.done, file.name, digest);
    const { held, edits } = drop.placing.fresh(kept, result, name);
    if (drop.studyId !== null)
      await tools.prepareStudy(edits().reduce(applyEdit, book.notebook), drop.studyId);
    if (!list.has(id)) return null;
    if (picture !== null && photograph !== null) {
      tools.onPlaces(picture.id, result);
      tools.pictures.from(photograph.id, file);
      drop.stored.push(tools.pictures.add(picture === photograph ? [picture] : [picture, photograph]));
      drop.fresh++;
    }
    if (!book.dispatchAll(edits(), 'add pictures', drop.step)) return null;
    drop.placing.done();
    return held;
  }

  return {
    add,
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
}

function startDrop(
  book: Book,
  target: PictureTarget | undefined,
  studyId: string | null,
  edits: readonly Edit[],
): Drop {
  const madeId = edits.flatMap((edit) => (edit.do === 'add leaf' ? [edit.leaf.id] : []))[0] ?? null;
  const placing = startPlacing(book, target, studyId);
  const nothingYet = { notes: gatherNotes(), fresh: 0, stored: [] };
  return { step: newId('step'), target, studyId, madeId, placing, ...nothingYet };
}

/** A name for each file, none of them given to another sheet; all are promised from now on. */
function namesFor(files: readonly File[], { drawer }: Notebook, promised: Set<string>): readonly string[] {
  const taken = new Set([...drawer.sheets.map((sheet) => sheet.name), ...promised]);
  const names = sheetNames(
    files.map((file) => file.name),
    taken,
  );
  for (const name of names) promised.add(name);
  return names;
}

/** The same picture is in the drawer: that paper goes where the file was to go. */
function putKnown(holder: StateHolder, book: Book, drop: Drop, fileName: string, known: Held): Held {
  const there = nameOfHeld(book.notebook.drawer, known);
  holder.say('note', alreadyThereSays(fileName, there), {
    of: 'drop',
    ...offerOf(drop, known),
  });
  book.dispatchAll(drop.placing.onto(known), 'add pictures', drop.step);
  drop.placing.done();
  return known;
}

/** Says what could not be read, what was done to pictures, and where a paper went that is seen nowhere on the leaf. */
function sayWhatCame(
  holder: StateHolder,
  book: Book,
  drop: Drop,
  added: readonly Held[],
  troubles: UnreadFiles,
): void {
  const trouble = troubles.say();
  if (trouble !== null) holder.say('trouble', trouble.says, { of: 'drop', ...trouble.more });
  for (const says of drop.notes.say()) holder.say('note', says, { of: 'drop' });
  for (const held of drop.fresh === 1 ? added : []) {
    const offer = offerOf(drop, held);
    const name = nameOfHeld(book.notebook.drawer, held);
    if (offer) holder.say('note', inDrawerSays(name), { of: 'drop', ...offer });
  }
}

function isOtherSide({ target }: Drop): boolean {
  return target?.to === 'other side';
}

/** What goes only to the drawer is seen nowhere on the leaf, unless it was the drawer that was asked. */
function offerOf({ studyId, target }: Drop, held: Held) {
  return studyId === null && target === undefined ? ({ offers: 'study', key: heldKey(held) } as const) : null;
}

/** A new study is called after what is on it, until she gives it another name. A file that can't be read names nothing. */
function titled({ drawer, leaves }: Notebook, studyId: string, added: readonly Held[]): readonly Edit[] {
  const names = added.map((held) => nameOfHeld(drawer, held));
  const study = studyOf(leaves.find((leaf) => leaf.id === studyId));
  if (study?.title !== titleOf(names.slice(0, -1))) return [];
  return [{ do: 'rename leaf', leafId: studyId, title: titleOf(names) }];
}
