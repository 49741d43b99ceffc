import type { Comparison, Verdict } from '../../src/harmony/model.ts';
import type { BaseKind, Ink, Motif, PrintScale } from '../../src/sheet/model.ts';
import type { DrawerPaper } from './drawer-view.ts';

export type FindBy = 'anchor' | 'ink' | 'bridge';

/** What the drawer is looked through by. An empty value is no condition. */
export interface FindFilter {
  readonly kind: '' | 'sheet' | 'plain' | 'part';
  readonly base: '' | BaseKind;
  readonly scale: '' | PrintScale;
  readonly motif: '' | Motif;
  /** At least so many left; 0 is no condition. */
  readonly count: number;
}

export const noFilter: FindFilter = { kind: '', base: '', scale: '', motif: '', count: 0 };

/** The drawer looked through. */
export interface FindView {
  readonly by: FindBy;
  readonly anchorName: string;
  /** The candidate that a bridge would lead to, or null where there is none. */
  readonly candidateName: string | null;
  /** Inks that can be looked for, the anchor's first. */
  readonly inks: readonly Ink[];
  /** Id of the ink that is looked for. */
  readonly ink: string;
  readonly filter: FindFilter;
  readonly choices: {
    readonly bases: readonly BaseKind[];
    readonly scales: readonly PrintScale[];
    readonly motifs: readonly Motif[];
    readonly mostCount: number;
  };
  readonly places: readonly PlaceView[];
  /** How many there are with those that are not shown yet. */
  readonly all: number;
  /** Whether the answer is there, is still looked for, or can't be had; while it is looked for, the last one may stand. */
  readonly state: 'found' | 'looking' | 'stopped';
}

export interface PlaceView {
  readonly paper: DrawerPaper;
  readonly verdict: Verdict | null;
  /** Of a bridge: how it holds with the candidate; null elsewhere. */
  readonly toCandidate: Verdict | null;
  readonly says: string;
  readonly of: Pick<Comparison, 'anchor' | 'candidate'> | null;
  /** True where it is a candidate of the study already. */
  readonly held: boolean;
}
