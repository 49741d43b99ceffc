import type { Answers } from '../rules/answer.ts';
import { answering, capital, ink, listed, number, type Said } from './sentences.ts';

/** What is said of parts of a sheet, of a colour to be chosen, and of what was found. */

/** How many squares of how many, and how large one is, mm: null where that is not known, `assumed` where it was guessed. */
export interface Counted {
  readonly count: number;
  readonly of: number;
  readonly sideMm: number | null;
  readonly assumed: boolean;
}

function inSquares({ count, of, sideMm, assumed }: Counted): string {
  const head = `In ${count} of ${of} squares`;
  if (sideMm === null) return head;
  const mm = `${number(sideMm, 0)} mm`;
  return assumed ? `${head} (each about ${mm}, if the sheet is 12 in)` : `${head} (each ${mm})`;
}

export const squaresAnswer = (counted: Counted, words: readonly Said[]): string =>
  `${inSquares(counted)} ${listed(words.map(ink))} ${words.length > 1 ? 'are' : 'is'} answered and nothing clashes: worth cutting out.`;

export const squaresAlone = (counted: Counted, it: Said): string =>
  `${inSquares(counted)} ${ink(it)} is alone or nearly misses: leave ${counted.count === 1 ? 'it' : 'them'}, or cover the colour.`;

export const allHold = (): string => 'Every part of the sheet holds: cut where you like.';

/** Where none holds: what stands in the way is in every part, or in so many that no part is without any of it. */
export const noneHold = (everywhere: readonly Said[]): string =>
  everywhere.length > 0
    ? `Every part carries some ${listed(everywhere.map(ink))}, so no part holds by itself.`
    : 'Taken by itself, no part holds: what answers the anchor lies beside what does not.';

export const noneAnswer = (): string => 'Taken by itself, no part has a colour that answers the anchor.';

export const colourIt = (word: string, answers: readonly Said[]): string =>
  `${capital(word)} would tie most together: it answers ${listed(answers.map(ink))}.`;

export const colourItNothing = (): string =>
  'No one colour suits both: it would almost match a third, and look like a mistake.';

export const colourItNearest = (plain: string, deltaE00: number, ground: string): string =>
  `Of what you have, ${plain} comes nearest on ${ground} (ΔE₀₀ ${number(deltaE00)}).`;

export const colourItNoneNear = (plain: string, deltaE00: number, ground: string): string =>
  `Nothing you have comes near on ${ground}; the nearest, ${plain}, is ΔE₀₀ ${number(deltaE00)} away.`;

/** What stands between two papers, and how; names may be plural, so nothing is said of them that asks for a verb. */
export const bridge = (name: string, a: readonly ToldAnswer[], b: readonly ToldAnswer[]): string =>
  a.length > 0 && b.length > 0
    ? `${capital(name)}: ${answers(a)} on one side, ${answers(b)} on the other.`
    : `${capital(name)}: quiet, a rest between the two.`;

/** An ink, and how it is answered. */
export interface ToldAnswer {
  readonly it: Said;
  readonly how: Answers;
}

const answers = (all: readonly ToldAnswer[]): string => listed(all.map(({ it, how }) => answering(it, how)));
