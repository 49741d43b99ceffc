import type { KeptNotebook, SessionState } from '../../../src/workbench/session-types.ts';
import type { KeptLine, UpkeepState } from '../../notebook/qw-upkeep.ts';

/** What the upkeep shows of the session's state; dates in the reader's own way of writing them. */
export function upkeepOf({ undoes, redoes, lastBackup, look, setAside }: SessionState): UpkeepState {
  return {
    undoes,
    redoes,
    lastBackup:
      lastBackup === null ? null : new Date(lastBackup).toLocaleDateString(undefined, { dateStyle: 'long' }),
    theme: look.theme,
    hand: look.hand,
    setAside: setAside.map(({ what, name, why }) => ({ name: name ?? unnamed[what], why })),
  };
}

/** Kept notebooks as the upkeep lists them. */
export function keptLines(kept: readonly KeptNotebook[]): readonly KeptLine[] {
  return kept.map(({ id, title, savedAt }) => ({
    id,
    title: title === null ? 'A notebook that can’t be read' : title || 'A notebook',
    saved: new Date(savedAt).toLocaleString(undefined, { dateStyle: 'long', timeStyle: 'short' }),
    sound: title !== null,
  }));
}

const unnamed = {
  leaf: 'A leaf without a title',
  sheet: 'A paper without a name',
  plain: 'A plain without a name',
  part: 'A part of a sheet without a name',
} as const;
