import type { Held } from '../drawer/model.ts';
import type { Comparison, Distance, Remedy } from '../harmony/model.ts';
import type { Edit } from '../notebook/edit-kinds.ts';
import type { Leaf, Notebook, Surround } from '../notebook/model.ts';
import type {
  Corners,
  Frame,
  LightMark,
  PaperIs,
  Places,
  ReadOptions,
  SizeMm,
  Spot,
} from '../sheet/model.ts';
import type { Choice } from '../storage/choice.ts';
import type { SetAside } from '../storage/records/records.ts';

/** What the page talks to: the one session that is open. All of its state is an immutable snapshot. */
export interface Session {
  /** The newest snapshot; a new object after every change, the same object between changes. */
  readonly state: SessionState;
  /** Calls back after every change of `state`. @returns a function that ends the subscription. */
  subscribe(listener: (state: SessionState) => void): () => void;

  /** Applies one edit, as one step of undo. An edit that changes nothing leaves no step. */
  dispatch(edit: Edit): void;
  /** Applies several edits as one step of undo. */
  dispatchAll(edits: readonly Edit[]): void;
  undo(): void;
  redo(): void;
  /** A fresh id for a leaf, sheet, plain or part. */
  newId(kind: IdKind): string;

  /** Makes a leaf the current one. Not a step of undo. */
  turnTo(leafId: string): void;
  leaf(leafId: string): Leaf | null;
  /** Changes how things are shown; kept in the browser, not in the notebook. */
  prefer(look: Partial<Look>): void;

  /**
   * Two held papers compared, or null where one of them is no longer in the drawer. The same object comes back
   * for the same papers until the drawer changes.
   */
  compare(anchor: Held, candidate: Held, distance: Distance): Comparison | null;
  /**
   * What could mend a pair, least effort first; null until it is known where the inks of both papers lie, because it
   * goes by that. `state` changes when it is.
   */
  remedies(anchor: Held, candidate: Held, distance: Distance): readonly Remedy[] | null;
  /** A study's candidates, best first, each with its index in `candidates`. */
  rank(studyId: string): readonly RankedCandidate[];
  nameOf(held: Held): string;

  /**
   * Reads picture files off the page's thread and puts them into the drawer and onto the current leaf. From the demo on they go
   * into a notebook of the reader's own, which is begun for them.
   * Never rejects: what could not be read is told as a message.
   * @returns what was added, in the order of the files.
   */
  addPictures(files: readonly File[], target?: PictureTarget): Promise<readonly Held[]>;
  /** Reads a stored picture again, with another crop, card or scale. Corrections by hand are made again. */
  readAgain(sheetId: string, side: 'A' | 'B', options: ReadOptions): Promise<void>;
  /**
   * Straightens a side's photograph or undoes its light, always from the photograph as it was taken, and reads it again.
   * From the file itself while the page that read it is open, later from the stored picture.
   * @returns false where it could not be done; a message says why.
   */
  prepareSide(sheetId: string, side: 'A' | 'B', change: SidePreparation): Promise<boolean>;
  /**
   * Settles where a paper lies on its photograph. `cut out`: by the corners that were asked about. `whole`: the whole
   * picture is the paper. `ask`: it was cut out wrongly, and she is asked. Each is one step of undo.
   */
  settlePaper(sheetId: string, side: 'A' | 'B', is: PaperIs): Promise<void>;
  /** Sets how large a sheet is and measures its print again; colours stay. */
  resizeSheet(sheetId: string, sizeMm: SizeMm): Promise<void>;
  /** Cuts a part out of a side's picture and reads it from its own pixels. */
  cutPart(part: PartToCut): Promise<Held | null>;
  /** Looks for the sheet's corners on its photograph, or for blocks on its picture. Finds nothing rather than rejects. */
  lookOn(sheetId: string, side: 'A' | 'B', look: 'corners' | 'blocks'): Promise<FoundOnPicture>;
  /** What lies at a spot of a paper's picture; null where there is no picture. */
  colourAt(held: Held, spot: Spot): Promise<SpotReading | null>;
  cancelReading(id: string): void;
  /**
   * A blob: address of the paper's picture, or null while it is loading or where there is none; `state` changes when
   * it arrives. `thumb` is a small one for the drawer. Default `full`.
   */
  pictureUrl(held: Held, size?: 'full' | 'thumb'): string | null;
  /** The same of a side's photograph as it was taken. */
  takenUrl(sheetId: string, side: 'A' | 'B'): string | null;
  /** Stores a picture that was drawn here, such as what was tried. @returns its id, or null where it can't be opened. */
  keepPicture(picture: Blob): Promise<string | null>;
  /** A blob: address of a stored picture by its id, or null while it is loading or where there is none. */
  storedUrl(pictureId: string): string | null;
  /** Where each ink lies, computed again off the page's thread when first asked; null where there is no picture. */
  places(held: Held): Promise<Places | null>;

  /** Puts an empty notebook in place of this one, in one step that can be undone. */
  clear(): void;
  /** The notebook that was begun for pictures keeps the name that it has. */
  named(): void;
  /** Opens a fresh copy of the demo notebook in place of this one, in one step that can be undone. */
  openDemo(): Promise<void>;

  /** An SVG string of the leaf's board (a study leaf gives the board of the candidate it shows), or null where it has no pair. */
  boardSvg(leafId: string): Promise<string | null>;
  /** Makes a file of the leaf's board. @returns null where it could not be made; a message says why. */
  exportBoard(leafId: string, as: BoardFileKind): Promise<ReadyFile | null>;

  /** The whole notebook with its pictures as one file; the date of the last backup is set. */
  saveBundle(): Promise<ReadyFile | null>;
  /** Opens a bundle in place of this notebook, in one step that can be undone. Nothing changes unless the whole of it is sound. */
  openBundle(file: File): Promise<boolean>;

  /** Other notebooks that are kept in this browser, newest first: those that were replaced, and copies from other tabs. */
  keptNotebooks(): Promise<readonly KeptNotebook[]>;
  /** Opens one of them in place of this one, in one step that can be undone. */
  openKept(id: string): Promise<boolean>;
  /** Takes one of them out of this browser for good. */
  removeKept(id: string): Promise<void>;

  /** What of this notebook could not be read, as a file. Null where all of it could. */
  saveSetAside(): Promise<ReadyFile | null>;
  /** What is stored of another notebook, as it stands there: also where it can't be opened. Null where it is gone. */
  saveKept(id: string): Promise<ReadyFile | null>;

  /**
   * Decides on a text that was written in two tabs at once: this one, that which stands on the leaf, stays; that one,
   * the other, takes its place; or both are kept, one after the other. What is put on the leaf is one step of undo.
   */
  choose(choiceId: string, keep: 'this' | 'that' | 'both'): void;

  dismiss(messageId: string): void;
  /** Tries at once to store what could not be stored. */
  saveNow(): Promise<void>;
  /** Stores what is pending, stops the worker and lets go of pictures. */
  close(): Promise<void>;
}

export interface SessionState {
  readonly notebook: Notebook;
  /** The leaf that is being looked at, or null in a notebook without leaves. */
  readonly leafId: string | null;
  readonly saving: Saving;
  readonly readings: readonly ReadingInProgress[];
  readonly messages: readonly Message[];
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** What would be undone or redone, as a few words: "add a candidate"; null where there is nothing. */
  readonly undoes: string | null;
  readonly redoes: string | null;
  /** When the last bundle was saved: an ISO date and time, or null for never. */
  readonly lastBackup: string | null;
  readonly look: Look;
  /** True while the notebook is the demo and holds no paper of the reader's own. */
  readonly isDemo: boolean;
  /** True while a notebook that was begun for pictures dropped on the demo waits for a name of her own. */
  readonly isUnnamed: boolean;
  /** Grows when a picture arrives, or it is known where its inks lie: `pictureUrl` and `remedies` are worth asking again. */
  readonly pictures: number;
  /** Texts of this notebook that were written in two tabs at once, and are not decided yet. */
  readonly choices: readonly Choice[];
  /** What of this notebook could not be read; it stays kept. */
  readonly setAside: readonly SetAside[];
}

export interface Saving {
  readonly status: 'saved' | 'saving' | 'failed';
  /** One sentence to show: "Saved in this browser." or what went wrong and what to do. */
  readonly says: string;
}

export interface ReadingInProgress {
  readonly id: string;
  readonly fileName: string;
  readonly stage: ReadingStage;
  /** The study that it is read for, where it is. */
  readonly studyId?: string;
  /** 0–1 over all stages. */
  readonly fraction: number;
}

export type ReadingStage = 'waiting' | 'opening' | 'reading' | 'keeping';

export interface Message {
  readonly id: string;
  /** `trouble` is announced at once and stays until dismissed, unless it is of a drop; `note` may go by itself. */
  readonly kind: 'trouble' | 'note';
  /** One or two clear sentences. */
  readonly says: string;
  /** What it is about, one line each, where that is more than one thing. */
  readonly list?: readonly string[];
  /** What can be done about it beside putting it away; the message goes once something else is done. */
  readonly offers?: 'undo' | 'study' | 'backup';
  /** What a study is offered with: a key of the drawer. */
  readonly key?: string;
  /**
   * Set where it is of files that were dropped: it goes when others are, or when the leaf is turned; or of an edit that
   * could not be made: it goes with the next one.
   */
  readonly of?: 'drop' | 'edit';
  /** Name of the picture that could not be read: it goes when that one is read again. */
  readonly about?: string;
}

export interface Look {
  /** What surrounds the papers; the same three in either theme. */
  readonly surround: Surround;
  /** `system` follows the device. */
  readonly theme: 'system' | 'light' | 'dark';
  /** The side on which the drawer slides in. */
  readonly hand: 'left' | 'right';
}

export interface RankedCandidate {
  readonly index: number;
  readonly held: Held;
  readonly comparison: Comparison;
}

export type IdKind = 'leaf' | 'sheet' | 'plain' | 'part' | 'notebook';

/**
 * Where dropped pictures go. Default: the current leaf. On a study without an anchor the first becomes the anchor and
 * the rest candidates; on a study with one, all become candidates; elsewhere two or more make a new study and one
 * only goes to the drawer (in a notebook without a study, one makes a study with an anchor).
 */
export type PictureTarget =
  | { readonly to: 'study'; readonly studyId: string; readonly as: 'anchor' | 'candidate' }
  | { readonly to: 'new study' }
  | { readonly to: 'other side'; readonly sheetId: string }
  | { readonly to: 'drawer' };

/** What changes of what is done to a photograph: left out stays as it is, null is taken back. In fractions of the photograph. */
export interface SidePreparation {
  readonly corners?: Corners | null;
  readonly light?: LightMark | null;
  readonly sizeMm?: SizeMm;
  /** Corners that are asked about afterwards. */
  readonly asks?: Corners;
}

export interface PartToCut {
  readonly sheetId: string;
  readonly side: 'A' | 'B';
  readonly name: string;
  /** Fractions 0–1 of the side's picture. */
  readonly frame: Frame;
  /** Corners of its shape, in fractions of the frame; default the whole frame. */
  readonly outline?: readonly Spot[];
  readonly sizeMm: SizeMm;
}

/** In fractions of the picture that was looked on. */
export interface FoundOnPicture {
  readonly corners: Corners | null;
  readonly blocks: readonly Frame[];
  /** Width over height of that picture. */
  readonly ratio: number;
}

export interface SpotReading {
  /** `#rrggbb`. */
  readonly hex: string;
  /** Share of the picture near that colour, 0–1. */
  readonly share: number;
}

export interface KeptNotebook {
  readonly id: string;
  /** Null where it can't be read any more; it stays kept as it is. */
  readonly title: string | null;
  /** ISO date and time. */
  readonly savedAt: string;
}

export type BoardFileKind = 'png' | 'svg' | 'pdf';

/** A file that is ready to be handed to the browser's download. */
export interface ReadyFile {
  readonly name: string;
  readonly blob: Blob;
}
