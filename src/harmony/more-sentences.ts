import { capital, ink, listed, number, type Said } from './sentences.ts';

/** What is said of parts of a sheet, of a colour to be chosen, and of what was found. */

const squares = (count: number): string =>
  count === 1 ? 'This square answers' : `These ${count} squares answer`;

export const squaresAnswer = (count: number, words: readonly Said[]): string =>
  `${squares(count)} ${listed(words.map(ink))} and ${count === 1 ? 'quarrels' : 'quarrel'} with nothing: worth cutting out.`;

export const squaresAlone = (count: number, it: Said): string =>
  count === 1
    ? `In one square ${ink(it)} is alone: leave it, or cover it.`
    : `In ${count} squares ${ink(it)} is alone: leave them, or cover it.`;

export const allHold = (): string => 'Every part of the sheet holds: cut where you like.';

export const noneHold = (): string => 'No part of the sheet answers the anchor by itself.';

export const colourIt = (word: string, answers: readonly Said[]): string =>
  `${capital(word)} would tie most together: it answers ${listed(answers.map(ink))}.`;

export const colourItNothing = (): string => 'No one colour answers both without nearly missing another.';

export const colourItNearest = (plain: string, deltaE00: number, ground: string): string =>
  `Of what you have, ${plain} comes nearest on ${ground} (ΔE₀₀ ${number(deltaE00)}).`;

export const bridge = (name: string, a: readonly Said[], b: readonly Said[]): string =>
  a.length > 0 && b.length > 0
    ? `${capital(name)} answers ${listed(a.map(ink))} on one side and ${listed(b.map(ink))} on the other.`
    : `${capital(name)} is quiet and rests between the two.`;
