import { verdictWords as said } from '../../src/drawing/verdict-mark.ts';
import type { Reason, Verdict } from '../../src/harmony/model.ts';
import type { StudyLeaf } from '../../src/notebook/model.ts';

export const verdicts: readonly Verdict[] = ['holds-together', 'needs-a-bridge', 'pulls-apart'];

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

/** What turned a verdict, in words for the margin, each kind once: "a colour alone, twice". */
export function turnedWords(reasons: readonly Pick<Reason, 'kind'>[]): readonly string[] {
  const kinds = reasons.map(({ kind }) => kind);
  return [...new Set(kinds)].map((kind) => {
    const times = kinds.filter((one) => one === kind).length;
    const words = kindWords[kind];
    return times > 1 ? `${words}, ${times === 2 ? 'twice' : `${times} times`}` : words;
  });
}

/** What a reason of each kind is about, in plain words. */
export const kindWords: Readonly<Record<Reason['kind'], string>> = {
  repeat: 'a colour that comes back',
  'repeated neutral': 'a neutral that comes back',
  'tone on tone': 'one hue, light and dark',
  neighbours: 'neighbouring hues',
  opposites: 'opposite hues',
  'near miss': 'colours close but not the same',
  stray: 'a colour alone',
  'base agreement': 'grounds that agree',
  'base quarrel': 'two whites that quarrel',
  'bright against muted': 'bright against muted',
  'warm and cool': 'warm against cool',
  'lightness range': 'light and dark',
  dominance: 'how much each colour takes',
  'print scale': 'the size of the prints',
  busyness: 'how busy the prints are',
  finish: 'how the papers are finished',
  motif: 'what is pictured',
  weight: 'how heavy the papers are',
  'two-colour model': 'a published model of two colours',
  'other eyes': 'how other eyes see it',
  'light unknown': 'a light that is not known',
};
