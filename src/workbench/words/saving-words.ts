import type { SaveStatus } from '../../storage/autosave.ts';
import type { Saving } from '../session-types.ts';

/** How saving stands, as it is shown. `isNoted`: what is not stored yet would be found again all the same. */
export function sayingOf(status: SaveStatus, isNoted: boolean): Saving {
  if (status.status === 'failed') return { status: 'failed', says: status.trouble.message };
  if (status.status === 'saved') return savedSaying;
  return {
    status: 'saving',
    says: isNoted ? 'Saving …' : 'Saving … Keep this page open until it is done.',
  };
}

export const savedSaying: Saving = { status: 'saved', says: 'Saved in this browser.' };

export const nothingToSave: Saving = { status: 'saved', says: 'Nothing to save yet.' };
