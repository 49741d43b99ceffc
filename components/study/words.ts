import { verdictWords as said } from '../../src/drawing/verdict-mark.ts';
import type { Verdict } from '../../src/harmony/model.ts';
import type { StudyLeaf } from '../../src/notebook/model.ts';

export const verdicts = Object.keys(said) as readonly Verdict[];

/** The three verdicts as they are read: at the head of a leaf, on a tab, on a button. */
export const verdictWords = Object.fromEntries(
  verdicts.map((verdict) => [verdict, said[verdict].replace(/^./, (first) => first.toUpperCase())]),
) as Readonly<Record<Verdict, string>>;

/** "holds together", for the middle of a sentence. */
export function verdictInSentence(verdict: Verdict): string {
  return said[verdict];
}

/** The line under a study's title: what is held against what, how far apart, on which wheel. */
export function ledeOf(leaf: StudyLeaf, candidates: number, place: number): string {
  const far = leaf.distance === 'apart' ? 'apart on the page' : 'with their edges touching';
  const wheel = leaf.wheel === 'eye' ? 'the eye’s wheel' : 'the painter’s wheel';
  if (!leaf.anchor) return 'No anchor yet.';
  if (candidates === 0) return `One anchor, no candidate yet, seen on ${wheel}.`;
  return `Candidate ${place} of ${candidates}, ${far}, seen on ${wheel}.`;
}
