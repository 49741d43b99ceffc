import type { Verdict } from '../../src/harmony/model.ts';
import type { StudyLeaf } from '../../src/notebook/model.ts';

/** The three verdicts as they are read: at the head of a leaf, on a tab, on a button. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  'holds-together': 'Holds together',
  'needs-a-bridge': 'Needs a bridge',
  'pulls-apart': 'Pulls apart',
};

export const verdicts: readonly Verdict[] = ['holds-together', 'needs-a-bridge', 'pulls-apart'];

/** "holds together", for the middle of a sentence. */
export function verdictInSentence(verdict: Verdict): string {
  return verdictWords[verdict].toLowerCase();
}

/** The line under a study's title: what is held against what, how far apart, on which wheel. */
export function ledeOf(leaf: StudyLeaf, candidates: number, place: number): string {
  const far = leaf.distance === 'apart' ? 'apart on the page' : 'with their edges touching';
  const wheel = leaf.wheel === 'eye' ? 'the eye’s wheel' : 'the painter’s wheel';
  if (!leaf.anchor) return 'No anchor yet.';
  if (candidates === 0) return `One anchor, no candidate yet, seen on ${wheel}.`;
  return `Anchor against candidate ${place} of ${candidates}, ${far}, seen on ${wheel}.`;
}
