import type { Wheel } from '../../colour/model.ts';
import type { Answers } from '../rules/answer.ts';

export { verdictWords } from './verdict-words.ts';

/**
 * Every sentence that this room says, as functions of plain values: to translate the room, translate this file
 * and those whose names end in `-sentences.ts`. An ink stands as its word followed by its id in brackets: "coral (C)".
 */

/** An ink, ready to be said. */
export interface Said {
  readonly word: string;
  readonly id: string;
  /** Whose it is, by name: "the bunting". */
  readonly of: string;
  /** Share of that side, 0–1. */
  readonly share: number;
}

export const ink = ({ word, id }: Said): string => `${word} (${id})`;
export const Ink = (said: Said): string => capital(ink(said));
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
export const percent = (share: number): string => {
  const of100 = share * 100;
  return `${of100 < 1 ? 'under 1' : Math.round(of100)} %`;
};
/** One decimal, with a true minus. */
export const number = (value: number, digits = 1): string => {
  const text = Math.abs(value).toFixed(digits);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
};

/** A colour by what it is to an ink: "a darker tone of lime (b)". */
export const answering = (it: Said, how: Answers): string => `${answerWords[how]} ${ink(it)}`;

const answerWords: Readonly<Record<Answers, string>> = {
  repeat: 'a repeat of',
  lighter: 'a lighter tone of',
  darker: 'a darker tone of',
  stronger: 'a stronger tone of',
  paler: 'a paler tone of',
  neighbour: 'a neighbour of',
  opposite: 'the opposite of',
};

/** Two inks, ready to begin a sentence; of one word, each with its paper. */
const both = (a: Said, b: Said): string =>
  oneWord(a, b) ? `${Ink(a)} of ${a.of} and ${ink(b)} of ${b.of}` : `${Ink(a)} and ${ink(b)}`;
const oneWord = (a: Said, b: Said): boolean => a.word === b.word;

/* Ties */

export type RepeatSize = 'specks' | 'uneven' | 'large' | 'even';

const repeatTails: Readonly<Record<RepeatSize, (small: Said, large: Said) => string>> = {
  specks: () => 'Only specks of it on either sheet, and they are enough to tie the two.',
  uneven: (small, large) =>
    `A little of it on ${small.of} points to ${percent(large.share)} of it on ${large.of}.`,
  large: () => 'There is plenty of it on both: it will carry the page.',
  even: () => 'The eye will go from one to the other.',
};

export function repeat(a: Said, b: Said, size: RepeatSize): string {
  const head = oneWord(a, b)
    ? `${Ink(a)} on ${a.of} comes back as ${ink(b)} on ${b.of}.`
    : `${both(a, b)} read as one colour.`;
  const [small, large] = a.share <= b.share ? [a, b] : [b, a];
  return `${head} ${repeatTails[size](small, large)}`;
}

export function repeatsMore(inks: readonly Said[]): string {
  const list = inks.map(ink).join(', ');
  return `Further colours are on both sheets too: ${list}.`;
}

export function repeatedNeutral(a: Said, b: Said): string {
  return oneWord(a, b)
    ? `${Ink(a)} comes back as ${ink(b)}: a neutral on both sheets steadies whatever stands on it.`
    : `${both(a, b)} are one neutral to the eye: it steadies whatever stands on it.`;
}

export function neighbours(a: Said, b: Said): string {
  return `${both(a, b)} are neighbours on the wheel: near enough to be kin, far enough to be a choice.`;
}

const onWheels = (wheels: readonly Wheel[]): string => {
  if (wheels.length > 1) return 'on both wheels';
  return wheels[0] === 'eye' ? 'on the eye’s wheel' : 'on the painter’s wheel';
};

/** How far two hues are from opposite on each wheel, in degrees, for a margin. */
export const offOnBothWheels = (eye: number, painter: number): string =>
  `${number(eye, 0)}° off on the eye’s wheel · ${number(painter, 0)}° on the painter’s`;

/** Where the two wheels come from, short enough for a margin. */
export const bothWheels = 'Ottosson; ours, after Itten and Kelly';

export function opposites(
  a: Said,
  b: Said,
  {
    wheels,
    offDeg,
    edges,
  }: { wheels: readonly Wheel[]; offDeg: number; edges: 'shimmer' | 'uneven' | 'even' },
): string {
  const how = Number(number(offDeg, 0)) < 6 ? 'opposite' : 'almost opposite';
  const [small] = a.share <= b.share ? [a] : [b];
  const tail = {
    shimmer: 'Both are strong and their edges meet, so the line between them will shimmer: let one lead.',
    uneven: `The smaller, ${small.word}, will glow beside the larger.`,
    even: 'Each makes the other look stronger; let one of them lead.',
  }[edges];
  return `${both(a, b)} are ${how} ${onWheels(wheels)}. ${tail}`;
}

/* Troubles */

export function photoGap(dark: Said, light: Said): string {
  return `Neither paper has a tone between ${ink(dark)} and ${ink(light)}, so a photograph of such tones will stand out.`;
}

export function fullRange(dark: Said, light: Said): string {
  return `From ${ink(dark)} to ${ink(light)} the two together have every step from dark to light: a photograph will need a mat to stand out.`;
}

export function flatRange(dark: Said, light: Said): string {
  return `From ${ink(dark)} to ${ink(light)} is a short way: together they look flat, and want something darker or lighter.`;
}

/* Areas */

export function dominant(it: Said, share: number): string {
  return `With both sheets laid out alike, ${ink(it)} and what matches it take ${percent(share)}: one colour leads, as the 60–30–10 rule of thumb would have it.`;
}

export function noneDominant(it: Said, share: number): string {
  return `With both sheets laid out alike, no colour leads: the largest, ${ink(it)}, takes ${percent(share)}. The rule of thumb is 60–30–10; show more of one sheet than of the other.`;
}

/** Where the two largest colours are too near each other for one to lead. */
export function tiedDominant(a: Said, b: Said, shareA: number, shareB: number): string {
  const [one, other] = [percent(shareA), percent(shareB)];
  const take = one === other ? `take ${one} each, a dead tie` : `take ${one} and ${other}`;
  return `With both sheets laid out alike, no colour leads: ${ink(a)} and ${ink(b)} ${take}. The rule of thumb is 60–30–10; show more of one sheet than of the other.`;
}

export function overDominant(it: Said, share: number): string {
  return `With both sheets laid out alike, ${ink(it)} and what matches it take ${percent(share)}: more than the usual 60 %, so let small colours add interest.`;
}

export function extension(a: Said, b: Said, ideal: string, actual: string): string {
  return `As opposites, ${ink(a)} and ${ink(b)} would balance at areas of ${ideal}; here they stand at ${actual}. It is a teaching rule for pure hues: a guide to which to show less of.`;
}

/* Print, finish, paper */

export const thin = (sheet: string, gsm: number): string =>
  `${capital(sheet)} is thin, ${Math.round(gsm)} g/m², and buckles under glue: mount it on cardstock, trimmed a little smaller than its mat.`;

/* Other voices */

export function modelAgainstWheel(a: Said, b: Said, link: string): string {
  return `A published formula rates ${ink(a)} with ${ink(b)} low, although by hue they are ${link}. It was made for plain patches that touch, so it says little about a patterned page.`;
}

export function modelForAgainstWheel(a: Said, b: Said, link: string): string {
  return `A published formula rates ${ink(a)} with ${ink(b)} high, although by hue they are ${link}. It was made for plain patches that touch, so it says little about a patterned page.`;
}

export function modelAgrees(a: Said, b: Said, how: 'high' | 'low'): string {
  return `A published formula, made for plain patches that touch, rates ${ink(a)} with ${ink(b)} ${how}. On this the wheel agrees with it.`;
}

const seenWeakly = {
  protan: 'red',
  deutan: 'green',
  tritan: 'blue',
} as const;

export function otherEyes(a: Said, b: Said, kind: keyof typeof seenWeakly): string {
  return `People who see ${seenWeakly[kind]} weakly may not tell ${ink(a)} and ${ink(b)} apart. Use shape, or light and dark, as well.`;
}

/** Stands in the margin beside it. */
export const noCardFigure = 'no card in the picture';

export function lightUnknown(sheets: readonly string[]): string {
  return `${capital(sheets.join(' and '))} ${sheets.length > 1 ? 'were' : 'was'} read without a white or grey card in the picture: what is said of the base, and of warm and cool, may be the lamp’s doing.`;
}

/** "cream", "cream and navy", "cream, navy and aqua". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
