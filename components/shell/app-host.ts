import type { LitElement } from 'lit';
import type { KeptNotebook, PictureTarget, Session } from '../../src/workbench/session-types.ts';
import type { Supposing } from './open/supposing.ts';
import type { FocusKeeper } from './page/keep-focus.ts';
import type { Route } from './page/route.ts';

/** What is open beside the leaf; on a phone it covers it. */
export type Opened = 'leaves' | 'drawer' | null;

/** What the page lends to those that act for it. */
export interface AppHost extends LitElement {
  readonly session: Session | null;
  readonly route: Route;
  readonly opened: Opened;
  readonly supposing: Supposing;
  readonly keyboard: FocusKeeper;
  /** The side that a sheet opens on next, by the sheet's id. */
  readonly faces: Map<string, 'A' | 'B'>;
  /** The sheet that is looked at over the open leaf, and with which tool. */
  near: { readonly sheetId: string; readonly tool: string } | null;
  /** Ways to look further that are open under the study. */
  further: readonly string[];
  /** What a study or a kit has asked a paper for; the drawer shows it. */
  wanted: 'anchor' | 'candidate' | 'piece' | null;
  /** Other notebooks that are kept in this browser, as they were when last asked for. */
  kept: readonly KeptNotebook[];
  /** Opens one of them, shuts it where it is open already; null shuts both. */
  open(what: Opened): void;
  /** Reads pictures onto the open leaf, or to where they were asked for. */
  read(files: readonly File[], target?: PictureTarget): void;
}
