import type { Answers } from '../rules/answer.ts';
import type { FindingName } from '../whole/model.ts';
import { findingWords } from './finding-sentences.ts';
import { answering, capital, ink, listed, percent, type Said } from './sentences.ts';

/** What a remedy says, as functions of plain values; the second file to translate. */

export interface RemedyWords {
  readonly title: string;
  readonly says: string;
  readonly cost: string;
  /** True where it asks for a cut or a punch. */
  readonly blade?: boolean;
}

/** The caution of every remedy that asks for a cut; said once under all of them. */
export const bladeCaution = 'Cutting? Use a cutting mat and a metal ruler, and keep fingers behind the edge.';

/** What a remedy takes away. */
export const liftsSaid = (lifts: readonly FindingName[]): string =>
  `Takes away: ${listed(lifts.slice(0, 2).map((name) => findingWords[name].title))}.`;

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
const the = (word: string): string => `the ${word}`;

export function cover(it: Said, by: Said, few: boolean): RemedyWords {
  const how = few ? `Dots or leaves punched from ${by.word} paper` : `Pieces of ${by.word} paper`;
  return {
    title: `Cover ${the(it.word)}`,
    says: `Glue ${lower(how)} over ${ink(it)}, wherever you still see it beside the photograph.`,
    cost: few ? 'a dozen punches' : 'a few pieces to cut and glue',
    blade: true,
  };
}

export function trim(it: Said): RemedyWords {
  return {
    title: `Cut ${the(it.word)} away`,
    says: `Use only parts of ${it.of} without ${ink(it)}, which takes ${percent(it.share)} of it.`,
    cost: 'two or three cuts',
    blade: true,
  };
}

export function carry(it: Said, to: string): RemedyWords {
  return {
    title: `Carry ${the(it.word)} across`,
    says: `Put ${ink(it)} on ${to} in three small places: a letter, a thread, a scrap of ${it.of}.`,
    cost: 'three small pieces',
    blade: true,
  };
}

/** A plain in small pieces on one sheet, for an ink of the other that it answers. */
export function carryPlain(plain: string, to: string, it: Said, how: Answers): RemedyWords {
  return {
    title: `Lay ${plain} on ${to}`,
    says: `Three small pieces of ${plain} on ${to}: ${answerTold(it, how)}.`,
    cost: 'three small pieces',
    blade: true,
  };
}

const answerTold = (it: Said, how: Answers): string =>
  how === 'repeat' ? `${it.of} has this very colour, ${ink(it)}` : `${answering(it, how)} on ${it.of}`;

export function strip(neutral: string, touching: boolean): RemedyWords {
  return {
    title: `Put ${neutral} between`,
    says: touching
      ? `A 10 mm strip of ${neutral} where the two meet keeps their edges apart.`
      : `A 10 mm strip of ${neutral} between the two gives the eye a place to rest.`,
    cost: 'one cut',
    blade: true,
  };
}

/** A mat under one sheet, for an ink of the other that it answers. */
export function mount(plain: string, of: string, it: Said, how: Answers): RemedyWords {
  return {
    title: `Mount ${of} on ${plain}`,
    says: `A mat of ${plain} under ${of}, 3 to 5 mm wider all round: ${answerTold(it, how)}.`,
    cost: 'four cuts',
    blade: true,
  };
}

export function mountNeutral(neutral: string, of: string): RemedyWords {
  return {
    title: `Mount ${of} on ${neutral}`,
    says: `A mat of ${neutral} under ${of}, 3 to 5 mm wider all round, so that the two bases never touch.`,
    cost: 'four cuts',
    blade: true,
  };
}

export function turn(of: string): RemedyWords {
  return { title: `Turn ${of} over`, says: `The other side of ${of} takes its place.`, cost: 'no cutting' };
}

/** Stands on boards that others get: it speaks of no drawer. */
export function swap(of: string, name: string, beside: string): RemedyWords {
  return {
    title: `Take ${name} instead`,
    says: `Lay ${name} beside ${beside}, in place of ${of}.`,
    cost: 'no cutting',
  };
}

export function leave(it: Said, beside: Said): RemedyWords {
  return {
    title: `Leave ${the(it.word)} be`,
    says: `${capital(ink(it))} is alone, but small and opposite ${ink(beside)}: it does no harm.`,
    cost: 'nothing to do',
  };
}

/** Two remedies taken together. */
export function together(first: RemedyWords, second: RemedyWords): RemedyWords {
  return {
    title: `${first.title}, and ${lower(second.title)}`,
    says: `${first.says} ${second.says}`,
    cost: `${first.cost}, and ${second.cost}`,
    blade: first.blade === true || second.blade === true,
  };
}

/** What is added where a remedy helps without mending, and where it only makes a beginning. */
export const notEnoughAlone = 'It helps, but does not mend the pair by itself.';
export const onlyABeginning = 'By itself it does not mend the pair.';
