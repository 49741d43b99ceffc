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

const both = (a: Said, b: Said): string => `${Ink(a)} and ${ink(b)}`;
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

export function toneOnTone(a: Said, b: Said, lightAndDark: boolean): string {
  return lightAndDark
    ? `${both(a, b)} are one hue, light and dark: tone on tone, the quietest way to belong.`
    : `${both(a, b)} are one hue, one stronger than the other, so they look like a pair and not like a mistake.`;
}

export function neighbours(a: Said, b: Said): string {
  return `${both(a, b)} are neighbours on the wheel: near enough to be kin, far enough to be a choice.`;
}

export type WheelWords = 'on both wheels' | 'on the eye’s wheel' | 'on the painter’s wheel';

/** Where the two wheels come from, short enough for a margin. */
export const bothWheels = 'Ottosson; ours, after Itten and Kelly';

export function opposites(
  a: Said,
  b: Said,
  { wheels, offDeg, edges }: { wheels: WheelWords; offDeg: number; edges: 'shimmer' | 'uneven' | 'even' },
): string {
  const rounded = number(offDeg, 0);
  const how = Number(rounded) < 6 ? 'straight opposite' : `${rounded}° off opposite`;
  const [small] = a.share <= b.share ? [a] : [b];
  const tail = {
    shimmer: 'Both are strong and their edges meet, so the line between them will shimmer: let one lead.',
    uneven: `The smaller, ${small.word}, will glow beside the larger.`,
    even: 'Each makes the other look stronger; let one of them lead.',
  }[edges];
  return `${both(a, b)} lie ${how} ${wheels}. ${tail}`;
}

/* Troubles */

export function nearMiss(a: Said, b: Said, family: string): string {
  return `${both(a, b)} are a near miss: too far apart to be the same ${family}, too close to be a choice. Side by side they will look like a mistake.`;
}

export function nearMissBehindStrip(a: Said, b: Said): string {
  return `${both(a, b)} are a near miss, but with a neutral strip between they never meet, and the eye lets it pass.`;
}

export function nearMissAnswered(a: Said, b: Said, sheet: string): string {
  return `${both(a, b)} are close without matching, yet the two already stand together on ${sheet}: here it looks meant.`;
}

export function nearWhites(a: Said, b: Said, yellower: Said): string {
  return `${both(a, b)} are two whites that nearly agree. Beside the other, ${ink(yellower)} will look yellowed.`;
}

export function stray(it: Said, other: string): string {
  const head = `Nothing on ${other} answers ${ink(it)}: no repeat, no neighbour, no opposite.`;
  if (it.share > 0.95) return `${head} It is all that ${it.of} has.`;
  return `${head} At ${percent(it.share)} of ${it.of} it will look as if it came from another page.`;
}

export function straySmall(it: Said, other: string): string {
  return `Nothing on ${other} answers ${ink(it)}. There is only ${percent(it.share)} of it, but it is strong enough to be seen.`;
}

export function strayWithMiss(it: Said, other: string, miss: Said): string {
  return `Beyond its near miss with ${ink(miss)}, ${ink(it)} finds no partner on ${other}: nothing there repeats it, lies next to it on the wheel or stands opposite.`;
}

export function strayTolerated(it: Said, beside: Said, other: string): string {
  return `${Ink(it)} is alone beside ${other}, but small, and it sits opposite ${ink(beside)} on its own sheet. Leave it: it reads as a spark.`;
}

export function strayTied(it: Said, other: string): string {
  return `${Ink(it)} is alone beside ${other}. The colour that both sheets share draws it in; without that it would be a stranger.`;
}

/* Grounds */

export function basesAgree(a: Said, b: Said, touching: boolean): string {
  const tail = touching
    ? 'Where the edges meet, put something between, or the two prints run into one.'
    : 'Neither will make the other look dirty.';
  return `The grounds agree, ${ink(a)} and ${ink(b)}. ${tail}`;
}

export function basesAlikeInKind(a: Said, b: Said): string {
  return `The grounds differ plainly, ${ink(a)} and ${ink(b)}, and get on: two neutral grounds so far apart look chosen.`;
}

export function basesQuarrel(yellower: Said, whiter: Said): string {
  return `The bases disagree: beside ${ink(whiter)}, ${ink(yellower)} looks dirty, and beside ${ink(yellower)}, ${ink(whiter)} looks cold.`;
}

export function basesQuarrelBehindStrip(yellower: Said, whiter: Said): string {
  return `The bases disagree, ${ink(yellower)} and ${ink(whiter)}, but with a strip between they never touch, and it matters less.`;
}

export const lookAgain =
  'The light of a picture is not known, so lay both in one light before you trust this.';

/* Strength, warmth, light and dark */

export function brightAgainstMuted(bright: Said, muted: Said): string {
  return `${capital(bright.of)} is bright, ${ink(bright)} above all; ${muted.of} is muted, ${ink(muted)} for one. The bright sheet will make the muted one look faded.`;
}

export function intensityAlike(a: Said, b: Said, how: 'bright' | 'muted'): string {
  return how === 'bright'
    ? `Both sheets are bright, ${ink(a)} here and ${ink(b)} there: neither drowns the other.`
    : `Both sheets are muted, ${ink(a)} here and ${ink(b)} there: the same veil lies over both.`;
}

export function warmBoth(anchor: string, candidate: string, lean: 'warm' | 'cool'): string {
  return `Both ${anchor} and ${candidate} lean ${lean}: the page will be ${lean} all through.`;
}

export function warmAndCool(warm: string, cool: string): string {
  return `${capital(warm)} leans warm and ${cool} leans cool. That can be lively; let one of the two take most of the page.`;
}

export function photoGap(from: number, to: number): string {
  return `Neither sheet has anything between L* ${Math.round(from)} and ${Math.round(to)}: a photograph of that lightness will stand out here.`;
}

export function fullRange(dark: Said, light: Said): string {
  return `From ${ink(dark)} to ${ink(light)} the two cover light and dark without a hole: a photograph will need a mat to stand out.`;
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
  return `With both sheets laid out alike, ${ink(it)} and what matches it take ${percent(share)}: more than the 60 of 60–30–10, so the small colours must do the talking.`;
}

export function extension(a: Said, b: Said, ideal: string, actual: string): string {
  return `As opposites, ${ink(a)} and ${ink(b)} would balance at areas of ${ideal}; here they stand at ${actual}. It is a teaching rule for pure hues: a guide to which to show less of.`;
}

/* Print, finish, paper */

export function scaleAlike(scale: string): string {
  return `Both prints are of one scale, ${scale}: the eye finds nothing to rest on. Cut one of them small.`;
}

export function scaleApart(larger: string, smaller: string): string {
  return `The print of ${larger} is larger than that of ${smaller}: different scales keep out of each other’s way.`;
}

export const bothBusy = (anchor: string, candidate: string): string =>
  `${capital(anchor)} and ${candidate} are both busy. Give the eye a plain to rest on, or use one of them in small pieces.`;

export const busyAndCalm = (busy: string, calm: string): string =>
  `${capital(busy)} is busy and ${calm} is calm: one talks while the other listens.`;

export const finishAlike = (finish: string): string =>
  `Both are ${finish} in finish: as if one hand had made them.`;

export const finishApart = (a: string, b: string): string =>
  `One is ${a} and the other ${b} in finish. Where they lie close, that shows more than the colours do.`;

export const motifAlike = (motif: string): string => `Both show the same kind of thing: ${motif}.`;

export const motifApart = (a: string, b: string): string =>
  `They show different things, ${a} and ${b}; a motif cut from one and laid on the other makes them meet.`;

export const thin = (sheet: string, gsm: number): string =>
  `${capital(sheet)} is thin, ${Math.round(gsm)} g/m², and buckles under glue: mount it on cardstock, trimmed a little smaller than its mat.`;

/* Other voices */

export function modelAgainstWheel(a: Said, b: Said, link: string): string {
  return `A two-colour model gives ${ink(a)} with ${ink(b)} a low mark, although by hue they are ${link}. It was made from touching plain patches, where like hues and light colours please most and opposites least; the wheel speaks of a whole page.`;
}

export function modelForAgainstWheel(a: Said, b: Said, link: string): string {
  return `A two-colour model gives ${ink(a)} with ${ink(b)} a high mark, although by hue they are ${link}. It was made from touching plain patches, where lightness counts for much; the wheel looks at hue alone.`;
}

export function modelAgrees(a: Said, b: Said, how: 'high' | 'low'): string {
  return `A two-colour model, made from touching plain patches, gives ${ink(a)} with ${ink(b)} a ${how} mark. On this the wheel and the model agree.`;
}

const eyes = {
  protan: 'eyes with weak red cones',
  deutan: 'eyes with weak green cones',
  tritan: 'eyes with weak blue cones',
} as const;

export function otherEyes(a: Said, b: Said, kind: keyof typeof eyes): string {
  return `To ${eyes[kind]}, ${ink(a)} and ${ink(b)} look nearly the same. If they must be told apart, let form or lightness do it.`;
}

export function lightUnknown(sheets: readonly string[]): string {
  return `${capital(sheets.join(' and '))} ${sheets.length > 1 ? 'were' : 'was'} read without a white or grey card in the picture: what is said of the base, and of warm and cool, may be the lamp’s doing.`;
}

/** "cream", "cream and navy", "cream, navy and aqua". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? (words[0] ?? '') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
