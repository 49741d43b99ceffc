import { sheetById } from '../drawer/by-id.ts';
import { nameOfHeld } from '../drawer/held.ts';
import type { Held } from '../drawer/model.ts';
import { emptyNotebook, isEmptyNotebook } from '../notebook/empty.ts';
import type { Notebook } from '../notebook/model.ts';
import { openShelf, type Shelf } from '../storage/shelf.ts';
import { StorageTrouble, troubleFrom } from '../storage/words/trouble.ts';
import type { SmallStore } from '../storage/write-ahead.ts';
import { startAdvice } from './advice.ts';
import { type Boards, startBoards } from './boards.ts';
import { openBook } from './book.ts';
import type { Bundles } from './bundles.ts';
import { choiceEdit } from './choice-edit.ts';
import { startComparisons } from './comparisons.ts';
import { type Demo, isDemo, makeDemo } from './demo-client.ts';
import { drawnPicture } from './drawn-picture.ts';
import { startHousekeeping } from './housekeeping.ts';
import { startKeeper } from './keeper.ts';
import { newId } from './new-id.ts';
import { askToPersist } from './persist.ts';
import { holdPictures } from './pictures.ts';
import { startPlaceFinder } from './reading/place-finder.ts';
import { type ReadClient, startReadClient } from './reading/read-client.ts';
import { startReadings } from './reading/readings.ts';
import type { SheetWork } from './reading/sheet-work.ts';
import { startSpotReader } from './reading/spot-reader.ts';
import type { PictureTarget, Session as SessionInterface } from './session-types.ts';
import { defaultLook, readSettings } from './settings.ts';
import { holdState } from './state-holder.ts';
import { warmTables } from './warm-tables.ts';
import { boardNotMadeSays, demoNotDrawnSays, noPairForBoardSays } from './words/leaf-words.ts';
import { nothingToSave } from './words/saving-words.ts';
import { tellOfSetAside } from './words/set-aside-words.ts';
import { takenOutWords } from './words/taken-out.ts';

export type Session = SessionInterface;

/** What a session is made of; each has a default, tests hand in their own. */
export interface SessionOptions {
  readonly shelf?: Shelf;
  readonly client?: ReadClient;
  readonly small?: SmallStore | null;
  readonly makeDemo?: (id: string) => Promise<Demo>;
  readonly delayMs?: number;
  readonly retryMs?: readonly number[];
}

/** Wait after opening before the reader is started, in ms, so that it is out of the way of the first page. */
const warmAfterMs = 2_500;

export const Session = {
  /**
   * Opens what was open last or, on first start, the demo. Never rejects: where the browser stores nothing, the
   * session works from memory and its state says so.
   */
  async open(options: SessionOptions = {}): Promise<SessionInterface> {
    const shelf = options.shelf ?? openShelf();
    const client = options.client ?? startReadClient();
    const holder = holdState({
      notebook: emptyNotebook(newId('notebook')),
      leafId: null,
      saving: nothingToSave,
      readings: [],
      messages: [],
      canUndo: false,
      canRedo: false,
      undoes: null,
      redoes: null,
      lastBackup: null,
      look: defaultLook,
      isDemo: false,
      isUnnamed: false,
      pictures: 0,
      choices: [],
      setAside: [],
    });
    const settings = await readSettings(shelf);
    /** The notebook that was begun for pictures and has no name of hers yet. */
    let unnamed: string | null = null;
    holder.set({ look: settings.look });

    const book = openBook(
      holder,
      (notebook, by) => {
        holder.set({
          isDemo: isDemo(notebook),
          isUnnamed: notebook.id === unnamed,
          lastBackup: settings.backups[notebook.id] ?? null,
        });
        holder.dismissOffers();
        // What another tab stored, or what was opened, is not to be stored again.
        if (by === 'reader') keeper.changed(notebook);
      },
      (why) => holder.say('trouble', why, { of: 'edit' }),
    );
    const pictures = holdPictures(shelf, () => holder.set({ pictures: holder.state.pictures + 1 }));
    const keeper = startKeeper({
      shelf,
      pictures,
      small: options.small === undefined ? smallStore() : options.small,
      tabId: newId('tab'),
      onSaving(saving) {
        holder.set({ saving });
        holder.sayUnsaved(saving.status === 'failed' ? saving.says : null, saving.status === 'saved');
      },
      say: holder.say,
      book,
      onBeside: (beside) => holder.set(beside),
      ...(options.delayMs === undefined ? {} : { delayMs: options.delayMs }),
      ...(options.retryMs === undefined ? {} : { retryMs: options.retryMs }),
    });
    tellOfSetAside(holder);
    const places = startPlaceFinder(pictures, client);
    const comparisons = startComparisons();
    const advice = startAdvice(comparisons, places.of, () =>
      holder.set({ pictures: holder.state.pictures + 1 }),
    );
    const prepareStudy = async ({ drawer, leaves }: Notebook, leafId: string | null) => {
      const study = leaves.find((leaf) => leaf.id === leafId);
      if (study?.kind === 'study') await comparisons.prepare(drawer, study).catch(() => {});
    };
    const readings = startReadings({ holder, book, pictures, client, prepareStudy, onPlaces: places.known });
    // These two are fetched when first asked for, which most visits never do.
    const work = later(
      (): Promise<SheetWork> =>
        import('./reading/sheet-work.ts').then(({ startSheetWork }) =>
          startSheetWork({ book, pictures, places, client, readings }),
        ),
    );
    const spots = startSpotReader(pictures);
    const boards: Boards = startBoards(comparisons, advice, pictures, () => holder.state.look.surround);
    const bundles = later(
      (): Promise<Bundles> =>
        import('./bundles.ts').then(({ startBundles }) =>
          startBundles({
            holder,
            book,
            pictures,
            shelf,
            settings,
            take: keeper.take,
            brought: keeper.brought,
          }),
        ),
    );

    const beginOwn = (notebook = emptyNotebook(newId('notebook'))) => {
      book.dispatchAll([{ do: 'replace notebook', notebook }], 'clear the notebook');
    };
    /** The demo stays as it is: her first pictures open a notebook of their own; where none of them can be read, none is begun. */
    const beginWith = async (files: readonly File[], target?: PictureTarget) => {
      unnamed = newId('notebook');
      beginOwn(emptyNotebook(unnamed));
      const added = await readings.add(files, target?.to === 'drawer' ? target : { to: 'new study' });
      if (added.length === 0 && isEmptyNotebook(book.notebook)) book.undo();
      return added;
    };

    const closing = new AbortController();
    const demo = async (): Promise<Notebook> => {
      const made = await (options.makeDemo ?? makeDemo)(newId('demo'));
      void made.draw((picture) => pictures.arrived(picture), closing.signal);
      return made.notebook;
    };

    const last = await keeper.open();
    const first = last ?? (await demo().catch(() => null));
    if (first !== null) {
      await prepareStudy(first, settings.leafId ?? first.leaves[0]?.id ?? null);
      book.start(first, settings.leafId);
    }
    if (last === null && first !== null) keeper.begin(first);
    const warming = setTimeout(() => {
      client.warm();
      void warmTables();
    }, warmAfterMs);
    const housekeeping = startHousekeeping(shelf, () => book.notebook, keeper.hasOtherTabs);

    return {
      get state() {
        return holder.state;
      },
      subscribe: holder.subscribe,
      dispatch(edit) {
        const before = book.notebook;
        book.dispatchAll([edit]);
        const says = takenOutWords(before, book.notebook, edit);
        if (says !== null) holder.say('note', says, { offers: 'undo' });
      },
      dispatchAll: (edits) => book.dispatchAll(edits),
      undo: book.undo,
      redo: book.redo,
      newId,
      turnTo(leafId) {
        // A note is of what was just done; who turns the leaf has gone on.
        if (leafId !== holder.state.leafId) holder.dismissNotes();
        book.turnTo(leafId);
        settings.setLeaf(leafId);
      },
      leaf: (leafId) => book.notebook.leaves.find((leaf) => leaf.id === leafId) ?? null,
      prefer(look) {
        const next = { ...holder.state.look, ...look };
        holder.set({ look: next });
        settings.setLook(next);
      },
      compare: (anchor, candidate, distance) =>
        comparisons.of(book.notebook.drawer, anchor, candidate, distance),
      remedies: (anchor, candidate, distance) => advice.now(book.notebook, { anchor, candidate, distance }),
      rank(studyId) {
        const study = book.notebook.leaves.find((leaf) => leaf.id === studyId);
        return study?.kind === 'study' ? comparisons.ranked(book.notebook.drawer, study) : [];
      },
      nameOf: (held: Held) => nameOfHeld(book.notebook.drawer, held),
      async addPictures(files, target) {
        const bundle = files.find((file) => file.name.toLowerCase().endsWith('.quire'));
        holder.dismissDrops();
        if (bundle !== undefined) {
          await (await bundles()).open(bundle);
          return [];
        }
        askToPersist();
        return holder.state.isDemo ? beginWith(files, target) : readings.add(files, target);
      },
      readAgain: async (sheetId, side, options) => (await work()).again(sheetId, side, options),
      prepareSide: async (sheetId, side, change) => (await work()).prepare(sheetId, side, change),
      settlePaper: async (sheetId, side, is) => (await work()).settle(sheetId, side, is),
      resizeSheet: async (sheetId, sizeMm) => (await work()).resize(sheetId, sizeMm),
      cutPart: async (part) => (await work()).cut(part),
      lookOn: async (sheetId, side, look) => (await work()).look(sheetId, side, look),
      colourAt: (held, spot) => spots.at(book.notebook, held, spot).catch(() => null),
      cancelReading: readings.cancel,
      pictureUrl: (held, size = 'full') => pictures.url(book.notebook, held, size),
      takenUrl(sheetId, side) {
        const kept = sheetById(book.notebook.drawer, sheetId)?.sides[side];
        const id = kept?.taken?.pictureId ?? kept?.pictureId ?? null;
        return id === null ? null : pictures.urlOf(id);
      },
      async keepPicture(picture) {
        const kept = await drawnPicture(picture, newId('picture')).catch(() => null);
        if (kept !== null) await pictures.add([kept]);
        return kept?.id ?? null;
      },
      storedUrl: pictures.urlOf,
      places: (held) => places.of(book.notebook, held),
      clear: () => beginOwn(),
      named() {
        unnamed = null;
        holder.set({ isUnnamed: false });
      },
      async openDemo() {
        try {
          book.dispatchAll([{ do: 'replace notebook', notebook: await demo() }], 'open the demo');
        } catch {
          holder.say('trouble', demoNotDrawnSays);
        }
      },
      boardSvg: (leafId) => boards.svg(book.notebook, leafId),
      async exportBoard(leafId, as) {
        try {
          const file = await boards.file(book.notebook, leafId, as);
          if (file === null) holder.say('trouble', noPairForBoardSays);
          return file;
        } catch (error) {
          holder.say('trouble', error instanceof StorageTrouble ? error.message : boardNotMadeSays);
          return null;
        }
      },
      saveBundle: async () => (await bundles()).save(),
      openBundle: async (file) => (await bundles()).open(file),
      keptNotebooks: async () => (await bundles()).kept(),
      openKept: async (id) => (await bundles()).openKept(id),
      removeKept: async (id) => (await bundles()).removeKept(id),
      async saveSetAside() {
        const { notebook, setAside } = holder.state;
        if (setAside.length === 0) return null;
        const { setAsideFile } = await import('./trouble-files.ts');
        return setAsideFile(notebook, setAside, new Date());
      },
      async saveKept(id) {
        const { rawFile } = await import('./trouble-files.ts');
        return rawFile(id, new Date()).catch((error: unknown) => {
          holder.say('trouble', troubleFrom(error).message);
          return null;
        });
      },
      choose(choiceId, keep) {
        const choice = holder.state.choices.find(({ id }) => id === choiceId);
        const leaf = book.notebook.leaves.find(({ id }) => id === choice?.leafId);
        if (choice === undefined) return;
        if (leaf !== undefined && keep !== 'this') book.dispatchAll([choiceEdit(leaf, choice, keep)]);
        keeper.choiceMade(choiceId);
      },
      dismiss: holder.dismiss,
      saveNow: keeper.flush,
      async close() {
        closing.abort();
        clearTimeout(warming);
        housekeeping.stop();
        client.close();
        await keeper.close();
        pictures.close();
        await shelf.close();
      },
    };
  },
};

function smallStore(): SmallStore | null {
  try {
    return localStorage;
  } catch {
    return null;
  }
}

/** What `make` gives, made once, when first asked for. */
function later<T>(make: () => Promise<T>): () => Promise<T> {
  let made: Promise<T> | null = null;
  return () => (made ??= make());
}
