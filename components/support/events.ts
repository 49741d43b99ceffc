import type { BoardKind, BoardSize } from '../../src/board/model.ts';
import type { Wheel } from '../../src/colour/model.ts';
import type { Held } from '../../src/drawer/model.ts';
import type { Change, Distance, Verdict } from '../../src/harmony/model.ts';
import type { ExerciseAsk, Opinion, Surround } from '../../src/notebook/model.ts';
import type { Frame, PaperIs, SizeMm } from '../../src/sheet/model.ts';
import type { FindBy, FindFilter } from '../drawer/find-view.ts';
import type { TakeAs } from '../drawer/qw-drawer.ts';
import type { PieceChange } from '../kit/kit-view.ts';
import type { HandDetail, SpotWish } from '../picture/qw-ink-hand.ts';
import type { CardDetail } from '../picture/qw-light.ts';
import type { PartDetail } from '../picture/qw-part.ts';
import type { PlainDetail } from '../picture/qw-plain-form.ts';
import type { SheetDetails } from '../picture/qw-sheet-form.ts';
import type { CornersDetail } from '../picture/qw-straighten.ts';
import type { TypedColourDetail } from '../picture/qw-typed-colour.ts';
import type { GivenWeight } from '../picture/qw-weight.ts';
import type { FrameDetail } from '../picture/stage/qw-framing.ts';
import type { SpotDetail } from '../picture/stage/qw-spotting.ts';
import type { PointDetail } from './point.ts';

type Nothing = Record<never, never>;
type Role = 'anchor' | 'candidate';
type Wanted = Role | 'piece';

/**
 * Everything that elements say, by name, with what each carries. An event that is not here can't be sent, and what
 * hears one is held to what it carries.
 */
export interface QwEvents {
  // Small controls; whoever holds one passes its choice on under a name of its own.
  'qw-choose': { readonly value: string };
  'qw-pick': { readonly value: string };
  /** `settled` false while it is dragged. */
  'qw-slide': { readonly value: number; readonly settled: boolean };
  'qw-retitle': { readonly title: string };
  'qw-write': { readonly text: string };
  /** Of a text that was written in two tabs at once. */
  'qw-choose-text': { readonly id: string; readonly keep: 'this' | 'that' | 'both' };
  'qw-point': PointDetail;

  // The notebook.
  'qw-add-leaf': { readonly kind: string };
  /** `to`: the index that it has afterwards. */
  'qw-move-leaf': { readonly id: string; readonly to: number };
  'qw-remove-leaf': { readonly id: string };
  'qw-undo': Nothing;
  'qw-redo': Nothing;
  'qw-clear': Nothing;
  'qw-open-demo': Nothing;
  'qw-save-backup': Nothing;
  'qw-open-backup': Nothing;
  'qw-ask-kept': Nothing;
  'qw-open-kept': { readonly id: string };
  'qw-remove-kept': { readonly id: string };
  'qw-save-kept': { readonly id: string };
  'qw-save-set-aside': Nothing;
  'qw-ask-licence': Nothing;
  'qw-dismiss': { readonly id: string };
  'qw-reload': Nothing;
  'qw-stop-reading': { readonly id: string };
  'qw-prefer': { readonly theme?: 'system' | 'light' | 'dark'; readonly hand?: 'left' | 'right' };

  // The drawer.
  'qw-drawer': { readonly open: boolean };
  'qw-take': { readonly key: string; readonly as: TakeAs };
  'qw-put-out': { readonly key: string };
  'qw-choose-paper': { readonly as: Wanted };
  'qw-drop-paper': { readonly key: string; readonly as: Wanted };
  'qw-add-pictures': { readonly as: Wanted | null };
  'qw-find-by': { readonly value: FindBy };
  'qw-find-ink': { readonly value: string };
  'qw-find-filter': { readonly filter: FindFilter };
  'qw-find-more': Nothing;
  'qw-plain': PlainDetail;

  // A study.
  'qw-set-distance': { readonly value: Distance };
  'qw-set-wheel': { readonly value: Wheel };
  'qw-set-surround': { readonly value: Surround };
  'qw-set-asks-first': { readonly value: boolean };
  'qw-show-candidate': { readonly index: number };
  'qw-remove-candidate': { readonly index: number };
  /** `index`: of the candidate; the study adds it on the way up. */
  'qw-say': { readonly opinion: Partial<Opinion>; readonly index?: number };
  /** `index`: of the candidate. */
  'qw-turn-over': { readonly as: Role; readonly index: number; readonly side: 'A' | 'B' };
  'qw-rename-paper': { readonly held: Held; readonly name: string };
  /** `tool`: the one that is open then. */
  'qw-look-closer': { readonly held: Held; readonly tool?: 'inks' | 'light' | 'straighten' | 'parts' };
  'qw-done-looking': Nothing;
  'qw-paper-is': { readonly held: Held; readonly is: PaperIs };
  'qw-look-further': { readonly way: string };
  'qw-make-board': Nothing;
  'qw-try': { readonly changes: readonly Change[] };
  'qw-try-change': { readonly change: Change; readonly settled: boolean };
  'qw-suppose': { readonly changes: readonly Change[]; readonly settled: boolean };
  'qw-step-back': Nothing;
  'qw-leave-it': Nothing;
  'qw-keep-supposed': { readonly picture: Blob | null };
  'qw-colour-what': { readonly value: string };
  'qw-keep-part': { readonly frame: Frame; readonly name: string };

  // A sheet's page.
  'qw-corners': CornersDetail;
  'qw-leave-straight': Nothing;
  'qw-card': CardDetail;
  'qw-card-undo': Nothing;
  'qw-frame': FrameDetail;
  'qw-look-for': { readonly what: 'corners' | 'blocks' };
  'qw-part': PartDetail;
  'qw-remove-part': { readonly key: string };
  'qw-hand': HandDetail;
  'qw-spot': SpotDetail;
  'qw-spot-wish': SpotWish;
  'qw-colour': TypedColourDetail;
  'qw-sheet-details': { readonly change: SheetDetails };
  /** Null where one of its sides was emptied. */
  'qw-size': { readonly sizeMm: SizeMm | null };
  'qw-weight': { readonly given: GivenWeight | null };
  'qw-other-side': Nothing;

  // A kit, a board, an exercise.
  'qw-change-piece': { readonly index: number; readonly change: PieceChange };
  'qw-remove-piece': { readonly index: number };
  'qw-kit-size': PieceChange;
  'qw-add-photographs': Nothing;
  'qw-set-size': { readonly value: BoardSize };
  'qw-set-kind': { readonly value: BoardKind };
  'qw-save-board': { readonly as: 'png' | 'svg' | 'pdf' };
  'qw-answer': { readonly verdict: Verdict | null };
  'qw-point-at-inks': { readonly inks: readonly string[] | null };
  'qw-set-ask': { readonly value: ExerciseAsk };
  'qw-set-pair': { readonly key: string };
}

export type QwEventName = keyof QwEvents;
/** The event of a name, as whoever listens gets it. */
export type QwEvent<Name extends QwEventName> = CustomEvent<QwEvents[Name]>;
