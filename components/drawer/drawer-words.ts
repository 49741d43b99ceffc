import type { DrawerPaper } from './drawer-view.ts';

/** What the drawer is headed by where it was asked for something. */
export const wantedWords = {
  anchor: 'Choose the anchor',
  candidate: 'Choose a candidate',
  piece: 'Choose pieces',
} as const;

/** A miniature opens the drawer at its paper; the two sides of a sheet have one name. */
export function shows({ name, about }: DrawerPaper): string {
  return `Show ${name}${about.startsWith('side') ? `, ${about},` : ''} in the drawer`;
}

/** "“Hearts” and 2 more leaves"; a leaf without a title is only counted. */
export function leavesInWords(titles: readonly string[]): string {
  const named = titles.find((title) => title !== '');
  const others = titles.length - (named === undefined ? 0 : 1);
  const counted = (more: string) => `${others}${more} ${others === 1 ? 'leaf' : 'leaves'}`;
  if (named === undefined) return counted('');
  return others === 0 ? `“${named}”` : `“${named}” and ${counted(' more')}`;
}

/** "12 papers of that name". */
export function foundInWords(count: number): string {
  return count === 0 ? 'No paper of that name.' : `${count} ${count === 1 ? 'paper' : 'papers'} of that name`;
}

/** The papers whose name, or what they are, holds what is sought; all where nothing is. */
export function papersNamed(papers: readonly DrawerPaper[], sought: string): readonly DrawerPaper[] {
  const wanted = sought.trim().toLowerCase();
  return wanted === '' ? papers : papers.filter((paper) => textOf(paper).includes(wanted));
}

/** Kept, since it is asked of every paper with every letter that is typed. */
const texts = new WeakMap<DrawerPaper, string>();

function textOf(paper: DrawerPaper): string {
  const before = texts.get(paper);
  if (before !== undefined) return before;
  const text = `${paper.name} ${paper.about}`.toLowerCase();
  texts.set(paper, text);
  return text;
}
