import { isccName } from '../../colour/naming/names.ts';
import { tradeWord } from '../../colour/naming/trade-words.ts';
import { oklchFromTuple } from '../../colour/spaces.ts';
import type { Base } from '../../sheet/model.ts';
import { inkWord } from '../../sheet/words/side-words.ts';
import type { MeasuredInk } from '../measure/measured.ts';
import type { Said } from './sentences.ts';

/** An ink with its word, its id and whose it is, ready for a sentence. */
export function said(ink: MeasuredInk, names: Names): Said {
  return { word: wordOf(ink), id: ink.id, of: names[ink.of], share: ink.share };
}

/** What the two papers are called in sentences. */
export interface Names {
  readonly anchor: string;
  readonly candidate: string;
}

/** The word for an ink: as it was read; for a base that is a neutral, its kind; for an ink without a name, found anew. */
export function wordOf(ink: MeasuredInk): string {
  const known = kept.get(ink);
  if (known !== undefined) return known;
  const word = foundWord(ink);
  kept.set(ink, word);
  return word;
}

const kept = new WeakMap<MeasuredInk, string>();

function foundWord(ink: MeasuredInk): string {
  const kind = ink.isBase ? (ink.ink as Base).kind : undefined;
  if (kind === 'white' || kind === 'cream' || kind === 'kraft') return kind;
  const given = ink.ink.name || ink.ink.trade ? inkWord(ink.ink) : '';
  return given || tradeWord(oklchFromTuple(ink.ink.oklch)) || isccName(ink.lab);
}

/** The words for two inks in one breath; where they are the same, each with its letter: "moss (C)", "moss (b)". */
export function wordsApart(a: MeasuredInk, b: MeasuredInk): [string, string] {
  const words: [string, string] = [wordOf(a), wordOf(b)];
  return words[0] === words[1] ? [`${words[0]} (${a.id})`, `${words[1]} (${b.id})`] : words;
}

/** One word for what two inks nearly share: "red", "blue". By Munsell hue family. */
export function familyOf(ink: MeasuredInk): string {
  const hue = ink.munsellHue;
  if (hue === null) return 'grey';
  return families[Math.floor((hue % 100) / 10)]!;
}

/** The ten Munsell families in plain words, from 0 (10RP) in tens. */
const families = [
  'red',
  'orange',
  'yellow',
  'green',
  'green',
  'blue-green',
  'blue',
  'blue',
  'violet',
  'pink',
];
