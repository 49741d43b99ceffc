import { verdictWords as said } from '../../src/drawing/verdict-mark.ts';
import type { Verdict } from '../../src/harmony/model.ts';

export const verdicts = Object.keys(said) as readonly Verdict[];

/** The three verdicts as they are read: at the head of a leaf, on a tab, on a button. */
export const verdictWords = Object.fromEntries(
  verdicts.map((verdict) => [verdict, said[verdict].replace(/^./, (first) => first.toUpperCase())]),
) as Readonly<Record<Verdict, string>>;

/** "holds together", for the middle of a sentence. */
export function verdictInSentence(verdict: Verdict): string {
  return said[verdict];
}
