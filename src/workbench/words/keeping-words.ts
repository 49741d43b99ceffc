/** What is said of keeping the open notebook. */
export const twoTabsSays = 'This notebook is open in another tab as well. What is done there shows here.';

export function otherTitleSays(title: string): string {
  return `In another tab this notebook was named “${title}” at the same time.`;
}

/** `refused`: why, as one sentence. */
export function unfitSays(refused: string): string {
  return `The latest change can’t be stored, and what was there before it stays stored. ${refused} Undo it, or save a backup file now.`;
}

/** `why`: what is wrong with the notebook that was open last, as one sentence. */
export function otherOpenedSays(why: string): string {
  return `${why} It is still kept in this browser, as it was; another notebook was opened.`;
}
