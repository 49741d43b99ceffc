import type { BoardKind, BoardSize } from '../board/model.ts';
import type { Wheel } from '../colour/model.ts';
import type { Held } from '../drawer/model.ts';
import type { Distance, Verdict } from '../harmony/model.ts';
import type { HandMade, KeptSide, Part, Plain, Sheet } from '../sheet/model.ts';
import type { ExerciseLeaf, KitPiece, Leaf, Notebook, Opinion } from './model.ts';

/** Everything that can be done to a notebook. Plain values, so they can be kept, sent and told. */
export type Edit = BookEdit | LeafEdit | StudyEdit | PageEdit | DrawerEdit | HandEdit;

/** The notebook and the order of its leaves. */
export type BookEdit =
  | { readonly do: 'rename notebook'; readonly title: string }
  /** `at`: index among the leaves; default the end. */
  | { readonly do: 'add leaf'; readonly leaf: Leaf; readonly at?: number }
  | { readonly do: 'remove leaf'; readonly leafId: string }
  /** `to`: the index that the leaf has afterwards. */
  | { readonly do: 'move leaf'; readonly leafId: string; readonly to: number }
  /** Puts another whole notebook in place: clear, demo, bundle. */
  | { readonly do: 'replace notebook'; readonly notebook: Notebook };

/** What every leaf has. */
export type LeafEdit =
  | { readonly do: 'rename leaf'; readonly leafId: string; readonly title: string }
  /** On a board this sets its words. */
  | { readonly do: 'set text'; readonly leafId: string; readonly text: string };

export type StudyEdit =
  | { readonly do: 'set anchor'; readonly leafId: string; readonly anchor: Held | null }
  /** `show` true draws it in full. Default true. */
  | {
      readonly do: 'add candidate';
      readonly leafId: string;
      readonly candidate: Held;
      readonly show?: boolean;
    }
  | { readonly do: 'remove candidate'; readonly leafId: string; readonly index: number }
  | { readonly do: 'show candidate'; readonly leafId: string; readonly index: number }
  | { readonly do: 'set distance'; readonly leafId: string; readonly distance: Distance }
  | { readonly do: 'set wheel'; readonly leafId: string; readonly wheel: Wheel }
  | { readonly do: 'set asks first'; readonly leafId: string; readonly asksFirst: boolean }
  /** What the reader says; her verdict also reveals the engine's where the study asks first. */
  | {
      readonly do: 'say';
      readonly leafId: string;
      readonly candidate: Held;
      readonly opinion: Partial<Opinion>;
    };

/** Kits, boards and exercises. */
export type PageEdit =
  | { readonly do: 'add piece'; readonly leafId: string; readonly piece: KitPiece }
  | { readonly do: 'update piece'; readonly leafId: string; readonly index: number; readonly piece: KitPiece }
  | { readonly do: 'remove piece'; readonly leafId: string; readonly index: number }
  | {
      readonly do: 'set board study';
      readonly leafId: string;
      readonly studyId: string;
      readonly candidate: Held | null;
    }
  | { readonly do: 'set board size'; readonly leafId: string; readonly size: BoardSize }
  | { readonly do: 'set board kind'; readonly leafId: string; readonly shows: BoardKind }
  | { readonly do: 'answer'; readonly leafId: string; readonly verdict: Verdict | null }
  /** Inks by id, none where there are none of the kind; null takes the answer back. */
  | { readonly do: 'point at inks'; readonly leafId: string; readonly inks: readonly string[] | null }
  /** Another question or another pair takes the answer back. */
  | {
      readonly do: 'set exercise';
      readonly leafId: string;
      readonly change: Partial<Pick<ExerciseLeaf, 'ask' | 'studyId' | 'candidate' | 'title'>>;
    };

export type DrawerEdit =
  | { readonly do: 'add sheet'; readonly sheet: Sheet }
  | { readonly do: 'update sheet'; readonly sheetId: string; readonly change: SheetChange }
  /** Takes the sheet and its parts out of the drawer, studies and kits. */
  | { readonly do: 'remove sheet'; readonly sheetId: string }
  | {
      readonly do: 'set side';
      readonly sheetId: string;
      readonly side: 'A' | 'B';
      readonly kept: KeptSide | null;
    }
  | { readonly do: 'add plain'; readonly plain: Plain }
  | { readonly do: 'update plain'; readonly plainId: string; readonly change: Partial<Omit<Plain, 'id'>> }
  | { readonly do: 'remove plain'; readonly plainId: string }
  | { readonly do: 'add part'; readonly part: Part }
  | {
      readonly do: 'update part';
      readonly partId: string;
      readonly change: Partial<Omit<Part, 'id' | 'sheetId'>>;
    }
  | { readonly do: 'remove part'; readonly partId: string };

export type SheetChange = Partial<Pick<Sheet, 'name' | 'sizeMm' | 'weight' | 'count' | 'note'>>;

/** The user's hand on what was read of a sheet's side or a part. */
export type HandEdit =
  | { readonly do: 'correct'; readonly of: Held; readonly made: HandMade }
  /** Takes one correction back: `index` into those that are kept. The others are made again without it. */
  | { readonly do: 'take back'; readonly of: Held; readonly index: number };
