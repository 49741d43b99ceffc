import { capital, number } from './sentences.ts';

/** What is said of a verdict: the rule that gave it, and the sentence under it. */

export const rules = {
  apart: (trouble: string, weight: number, serious: number) =>
    `A trouble of ${number(weight, 2)} stands (${trouble}; ${number(serious, 2)} is serious), and no colour comes near to tying the two: that pulls apart.`,
  strangers: (first: string, second: string, weight: number, serious: number) =>
    `Two troubles of ${number(weight, 2)} or more stand (${first}, ${second}; ${number(serious, 2)} is serious), and no colour comes near to being on both sheets: that pulls apart.`,
  trouble: (trouble: string, weight: number, limit: number) =>
    `A trouble of ${number(weight, 2)} stands unanswered (${trouble}; the limit is ${number(limit, 2)}): that needs a bridge, whatever else ties them.`,
  quiet: () =>
    'One of the two has no strong colour, so nothing in it can clash by hue, and no trouble reaches the limit: that holds together.',
  tied: (tie: string, weight: number, limit: number) =>
    `A colour ties them (${tie}, weight ${number(weight, 2)}; ${number(limit, 2)} is enough), and no trouble reaches the limit: that holds together.`,
  untied: (limit: number) =>
    `No trouble reaches the limit, but no tie of colour weighs ${number(limit, 2)} or more: that needs a bridge.`,
} as const;

/** Two inks named in a breath. */
export const together = (one: string, other: string): string => `${one} with ${other}`;

export const summaries = {
  held: (ties: string, many: boolean, uneasy: boolean) =>
    `${capital(ties)} ${many ? 'tie' : 'ties'} them, and ${uneasy ? 'what little quarrels does not part them' : 'nothing quarrels'}.`,
  quiet: (sheet: string) => `${capital(sheet)} is quiet: it lets the other speak.`,
  quietUneasy: (sheet: string, trouble: string) =>
    `${capital(sheet)} is quiet and lets the other speak. ${trouble}`,
  bridge: (ties: string, many: boolean, trouble: string) =>
    `${capital(ties)} ${many ? 'tie' : 'ties'} them. ${trouble}`,
  bridgeUntied: (uneasy: boolean) =>
    `${uneasy ? 'Little quarrels' : 'Nothing quarrels'}, but nothing ties them either: carry a colour from one to the other.`,
  bridgeUntiedUneasy: (trouble: string) => `${trouble} And nothing ties the two.`,
  troubleOnly: (trouble: string) => trouble,
  apart: (trouble: string) => `${trouble} And no colour is there to tie them.`,
  strangers: (first: string, second: string) => `${first} ${second} And no colour is on both sheets.`,
} as const;

export const troubleInShort = {
  'near miss': (a: string, b: string) => `The ${a} and the ${b} are what the eye trips over.`,
  stray: (word: string) => `The ${word} finds no partner.`,
  'base quarrel': (a: string, b: string) => `The ${a} and the ${b} grounds do not agree.`,
  'bright against muted': (bright: string, muted: string) => `${capital(bright)} outshouts ${muted}.`,
} as const;
