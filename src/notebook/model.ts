import type { BoardKind, BoardSize } from '../board/model.ts';
import type { Wheel } from '../colour/model.ts';
import type { Drawer, Held } from '../drawer/model.ts';
import type { Distance, Verdict } from '../harmony/model.ts';
import type { SizeMm } from '../sheet/model.ts';

/** The document: leaves in order, and the drawer they draw from. Pictures are kept beside it by storage. */
export interface Notebook {
  readonly id: string;
  readonly title: string;
  readonly leaves: readonly Leaf[];
  readonly drawer: Drawer;
}

interface LeafBase {
  readonly id: string;
  readonly title: string;
}

export interface NoteLeaf extends LeafBase {
  readonly kind: 'note';
  readonly text: string;
  /** Stands above the text. */
  readonly picture?: NotePicture;
}

/** A picture on a note: its id among the stored pictures, and what it shows, in words. */
export interface NotePicture {
  readonly pictureId: string;
  readonly alt: string;
}

export interface SheetLeaf extends LeafBase {
  readonly kind: 'sheet';
  readonly sheetId: string;
  readonly text: string;
}

export type { Surround } from '../drawing/model.ts';

/** What the reader says of a pair, beside what the engine says; the three judgements stay apart. */
export interface Opinion {
  readonly verdict: Verdict | null;
  readonly likes: boolean | null;
}

/** One anchor, its candidates, and what was found. Named Study in the vocabulary. */
export interface StudyLeaf extends LeafBase {
  readonly kind: 'study';
  readonly text: string;
  readonly anchor: Held | null;
  readonly candidates: readonly Held[];
  /** Index of the candidate drawn in full. */
  readonly shown: number;
  readonly distance: Distance;
  readonly wheel: Wheel;
  /** True where the verdict waits until the reader has said hers. */
  readonly asksFirst: boolean;
  /** By heldKey(candidate). */
  readonly opinions: Readonly<Record<string, Opinion>>;
}

export interface KitLeaf extends LeafBase {
  readonly kind: 'kit';
  readonly text: string;
  readonly pieces: readonly KitPiece[];
}
export interface KitPiece {
  readonly held: Held;
  /** Area on the page, mm². */
  readonly areaMm2: number | null;
  /** A photograph is judged only for how it stands out. Default: a paper or a plain. */
  readonly role?: 'photo';
  /** What is cut of it for the page: size of one, and how many (default 1). */
  readonly sizeMm?: SizeMm;
  readonly count?: number;
  /** A mat under each: of which plain, and how wide its border is. */
  readonly mat?: KitMat;
}
export interface KitMat {
  readonly plainId: string;
  readonly borderMm: number;
}

export interface BoardLeaf extends LeafBase {
  readonly kind: 'board';
  /** The study this board shows, and which candidate. */
  readonly studyId: string;
  readonly candidate: Held | null;
  readonly words: string;
  readonly size: BoardSize;
  /** Default: the pair. */
  readonly shows?: BoardKind;
}

/** Predict, then the reveal: a study's pair with a question. */
export interface ExerciseLeaf extends LeafBase {
  readonly kind: 'exercise';
  readonly text: string;
  readonly studyId: string;
  readonly answered: Verdict | null;
  /** What is asked. Default: the verdict. */
  readonly ask?: ExerciseAsk;
  /** Which candidate of the study; default the one that it shows. */
  readonly candidate?: Held;
  /** The inks that the reader has pointed at, the anchor's first; none where she says that there are none. */
  readonly pointed?: readonly string[];
}

export const exerciseAsks = ['verdict', 'near miss', 'repeat', 'opposite'] as const;
export type ExerciseAsk = (typeof exerciseAsks)[number];

/** Every kind of leaf, by its name: whoever treats kinds apart is held by the compiler to all of these. */
export interface LeafOf {
  readonly note: NoteLeaf;
  readonly sheet: SheetLeaf;
  readonly study: StudyLeaf;
  readonly kit: KitLeaf;
  readonly board: BoardLeaf;
  readonly exercise: ExerciseLeaf;
}
export type LeafKind = keyof LeafOf;
export type Leaf = LeafOf[LeafKind];
