import type { RecordKind } from '../records/records.ts';

/** What is said of notebooks that can't be opened, and of changes that can't be kept. */
export const noNotebook = 'This is not a Quirewise notebook.';

/** `version`: of the file; `newest`: that this page reads. */
export function laterVersion(version: number, newest: number): string {
  return `This notebook was made by a later version of Quirewise (file version ${version}, this one reads up to ${newest}). Open it there, or update this one.`;
}

export function versionNeverUsed(version: number): string {
  return `This notebook has a file version, ${version}, that was never in use.`;
}

export function otherThanItsVersion(version: number): string {
  return `This notebook is not whole: its file version is ${version}, but it does not hold what that version holds.`;
}

export const unreadableFrame = 'This notebook is not whole: what holds it together can’t be read.';
export const tornText = 'This notebook is damaged: its text breaks off or is not readable.';

/** `where`: the field that is amiss, or null where none can be named. */
export function notWhole(where: string | null): string {
  return `This notebook is not whole: something in it is not what it should be${where === null ? '' : ` (at ${where})`}.`;
}

/** Stands in place of a title that could not be read. */
export const titleForUnreadable = 'A notebook whose title could not be read';

export const changedElsewhere = 'This notebook was changed in another tab meanwhile.';

/** Why a thing was set aside as a notebook was opened. */
export const whyAside = {
  drawer: 'The drawer can’t be read.',
  noList: 'This should be a list, and is none.',
  sameName: 'Another one has the same name inside the file.',
  noChoice: 'This is no choice.',
  otherPlace: 'It is not what its place in the store says.',
  tooMany: (most: number) => `There are more than a notebook holds (${most.toLocaleString('en')}).`,
} as const;

/** Why a change is refused. */
export const whyRefused = {
  noPlace: 'That could not be kept: the notebook has no place for it. Nothing was changed.',
  longTitle: 'The title of the notebook is too long. Nothing was changed.',
  sameId: 'That could not be kept: it is in the notebook already. Nothing was changed.',
  full: (what: RecordKind, most: number) =>
    `A notebook holds up to ${most.toLocaleString('en')} ${manyOf[what]}, and this one is full. Nothing was changed.`,
  /** `why`: a sentence. */
  unsound: (why: string) => `That could not be kept. ${why} Nothing was changed.`,
} as const;

const manyOf: Readonly<Record<RecordKind, string>> = {
  leaf: 'leaves',
  sheet: 'sheets of paper',
  plain: 'plain materials',
  part: 'cut pieces',
};
