import type { SessionState } from '../../src/workbench/session-types.ts';
import type { UpkeepState } from '../notebook/qw-upkeep.ts';

/** What the upkeep shows of the session's state; dates in the reader's own way of writing them. */
export function upkeepOf({ undoes, redoes, lastBackup, look }: SessionState): UpkeepState {
  return {
    undoes,
    redoes,
    lastBackup:
      lastBackup === null ? null : new Date(lastBackup).toLocaleDateString(undefined, { dateStyle: 'long' }),
    theme: look.theme,
    hand: look.hand,
  };
}
