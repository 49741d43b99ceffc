import { capital, number, percent } from './sentences.ts';

/** What is said of a paper that repeats an ink: by which of its own, how much of it there is, and how close it comes. */
export function foundColour(word: string, share: number, deltaE00: number): string {
  return `${capital(word)}, ${percent(share)} of it, repeats the ink (ΔE₀₀ ${number(deltaE00)}).`;
}
