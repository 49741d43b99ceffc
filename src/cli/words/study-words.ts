import type { PaperRole } from '../../harmony/whole/portrait.ts';

/** What the terminal says of a study, as functions of plain values. */

const roleWords: Readonly<Record<PaperRole, string>> = {
  rests: 'Rests',
  'is soft': 'Speaks softly',
  speaks: 'Speaks',
};

export const mendsHeading = 'What could mend it';

/** How a paper looks from where it is held. */
export const seenWords = (role: PaperRole, contrast: number): string =>
  `${roleWords[role]}, contrast ${contrast.toFixed(0)} at arm’s length`;
