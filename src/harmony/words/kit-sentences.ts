import { capital, ink, listed, number, percent, type Said } from './sentences.ts';

/** What is said of a kit as a whole, as functions of plain values. */

const inks = (all: readonly Said[]): string => listed(all.map(ink));

export const inPlaces = (word: string, all: readonly Said[]): string =>
  all.length > 2
    ? `${capital(word)} is in ${all.length} places, ${inks(all)}: they make a triangle, and the eye goes round.`
    : `${capital(word)} is in two places, ${inks(all)}; a third would make a triangle.`;

export const missing = (it: Said): string =>
  `Nothing here answers ${ink(it)} of ${it.of}: a letter, a thread or a scrap in ${it.word} would.`;

/** `placed` is where the colour lies now. */
export const missingThird = (word: string, placed: readonly Said[]): string =>
  `A third place for ${word}, now ${listed(placed.map((it) => `${ink(it)} of ${it.of}`))}, would make a triangle.`;

export const missingTie = (name: string): string =>
  `No colour ties ${name} to the rest: carry one of its colours to another piece.`;

export const tooMany = (most: number, left: number): string =>
  `These are more papers than a page can hold: the first ${most} are judged here, and ${left} ${left > 1 ? 'are' : 'is'} left out.`;

export const missingNeutral = (): string =>
  'There is no neutral to rest on: a strip of white, kraft or grey would calm the page.';

export const basesAgree = (all: readonly Said[]): string =>
  `The grounds agree, ${inks(all)}. None will make another look dirty.`;

/** Where more than two grounds are in it: every yellower one quarrels with every whiter one. */
export function basesDisagree(yellower: readonly Said[], whiter: readonly Said[]): string {
  const looks = (all: readonly Said[]) => `${inks(all)} ${all.length > 1 ? 'look' : 'looks'}`;
  return `The bases disagree: beside ${inks(whiter)}, ${looks(yellower)} dirty, and beside ${inks(yellower)}, ${looks(whiter)} cold.`;
}

/** The same where some lie between: yellowest first. */
export const basesInSteps = (all: readonly Said[]): string =>
  `The bases disagree, from the yellowest to the whitest ${inks(all)}: side by side, the yellower will look dirty and the whiter cold.`;

export const placesFigure = (places: number, area: number | null): string =>
  area === null ? `${places} places` : `${places} places · ${percent(area)} of the page`;

export const neutralsFigure = (count: number, area: number | null): string => {
  if (area !== null) return `${percent(area)} of the page`;
  return count === 0 ? 'no neutral' : `${count} ${count > 1 ? 'neutrals' : 'neutral'}`;
};

export const neutrals = (all: readonly Said[]): string =>
  `${capital(inks(all))} ${all.length > 1 ? 'are neutrals that give' : 'is a neutral that gives'} the colours room.`;

export const noNeutral = (): string => 'There is no neutral among these: every piece speaks.';

export const scalesAlike = (scale: string): string =>
  `All prints are ${scale} in scale: the eye finds nothing to rest on and nothing to lead it.`;

/** Where others are of another scale. */
export const someScalesAlike = (names: readonly string[], scale: string): string =>
  `${capital(listed(names))} are of one scale, ${scale}: beside each other they give the eye nothing to rest on.`;

export const scalesApart = (scales: readonly string[]): string =>
  `The prints are of different scales, ${listed(scales)}: they keep out of each other’s way.`;

export const manyBusy = (names: readonly string[]): string =>
  `${capital(listed(names))} are busy. One such print is plenty for a page: use the others in small pieces.`;

export const oneBusy = (name: string): string =>
  `${capital(name)} is the one busy print, and the rest let it be.`;

export const lean = (value: number): string =>
  value > 0 ? 'The kit as a whole leans warm.' : 'The kit as a whole leans cool.';

export const leans = (
  warm: readonly string[],
  cool: readonly string[],
  total: number,
  sized: boolean,
): string =>
  `${capital(listed(warm))} ${warm.length > 1 ? 'lean' : 'leans'} warm and ${listed(cool)} ${cool.length > 1 ? 'lean' : 'leans'} cool; ${sized ? 'by area' : 'laid out alike,'} the page comes out ${total > 0 ? 'warm' : total < 0 ? 'cool' : 'even'}.`;

export const photoSinks = (photo: string, photoL: number, paper: string, paperL: number): string =>
  `${capital(photo)} is about as light as ${paper} (L* ${number(photoL, 0)} and ${number(paperL, 0)}) and will sink into it: put a mat of a plain, lighter or darker, under it.`;

export const photoStands = (photo: string, photoL: number, paper: string, paperL: number): string =>
  `${capital(photo)} stands out from ${paper} by lightness (L* ${number(photoL, 0)} and ${number(paperL, 0)}).`;

export const largest = (name: string, share: number): string =>
  `${capital(name)} takes ${percent(share)} of the page: one piece leads, as 60–30–10 would have it.`;

export const noneLargest = (name: string, share: number): string =>
  `No piece leads: the largest, ${name}, takes ${percent(share)}. The rule of thumb is 60–30–10.`;

/** What troubles a kit, in short: the verdict's line; the reason says it at length. */
export const troubleInShort = {
  'near miss': (a: Said, b: Said) =>
    `The ${a.word} of ${a.of} and the ${b.word} of ${b.of} are what the eye trips over.`,
  stray: (it: Said) => `The ${it.word} of ${it.of} finds no partner.`,
  'base quarrel': (a: Said, b: Said) =>
    `The ${a.word} ground of ${a.of} and the ${b.word} one of ${b.of} do not agree.`,
  'bright against muted': (bright: Said, muted: Said) => `${capital(bright.of)} outshouts ${muted.of}.`,
} as const;

export const ruleHolds = (limit: number): string =>
  `Every piece that has a strong colour is tied to another by ${number(limit, 2)} or more, or is alone in having one, and no trouble reaches the limit: that holds together.`;

export const summaries = {
  single: () => 'One piece alone agrees with itself.',
  holds: (words: readonly string[], uneasy: boolean) => {
    const quiet = uneasy ? 'what little quarrels does not part it' : 'nothing quarrels';
    return words.length > 0
      ? `${capital(listed(words))} ${words.length > 1 ? 'run' : 'runs'} through it, and ${quiet}.`
      : `${capital(quiet)}.`;
  },
  untied: (name: string) => `Nothing ties ${name} to the rest.`,
} as const;
