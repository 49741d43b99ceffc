import type { Verdict } from '../model.ts';

/** The three verdicts, as they are said in the middle of a sentence. A file of its own: the page wants it at once. */
export const verdictWords: Readonly<Record<Verdict, string>> = {
  'holds-together': 'holds together',
  'needs-a-bridge': 'needs a bridge',
  'pulls-apart': 'pulls apart',
};
