import type { Held } from '../../../src/drawer/model.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import type { QwEventName, QwEvents } from '../../support/events.ts';
import type { AppHost } from '../app-host.ts';

/** What a command acts on. */
export interface Scene {
  readonly app: AppHost;
  readonly session: Session;
  /** The open leaf's id; '' in a notebook without leaves. */
  readonly leafId: string;
  /** The open leaf where it is a study. */
  readonly study: StudyLeaf | null;
  /** Puts a paper onto the open study. */
  readonly hold: (held: Held, as: 'anchor' | 'candidate') => void;
}

/** What events do on the page, by their names. */
export type CommandMap = { readonly [Name in QwEventName]?: (scene: Scene, detail: QwEvents[Name]) => void };
