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

export const tooMany = (most: number, left: number): string =>
  `These are more papers than a page can hold: the first ${most} are judged here, and ${left} ${left > 1 ? 'are' : 'is'} left out.`;

export const missingNeutral = (): string =>
  'There is no neutral to rest on: a strip of white, kraft or grey would calm the page.';

export const placesFigure = (places: number, area: number | null): string =>
  area === null ? `${places} places` : `${places} places · ${percent(area)} of the page`;

export const neutralsFigure = (count: number, area: number | null): string => {
  if (area !== null) return `${percent(area)} of the page`;
  return count === 0 ? 'no neutral' : `${count} ${count > 1 ? 'neutrals' : 'neutral'}`;
};

export const neutrals = (all: readonly Said[]): string =>
  `${capital(inks(all))} ${all.length > 1 ? 'are neutrals that give' : 'is a neutral that gives'} the colours room.`;

export const noNeutral = (): string => 'There is no neutral among these: every piece speaks.';

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

/** Where a third member can lie between two that do not hold. */
export const bridged = (one: string, other: string, by: string): string =>
  `${capital(one)} and ${other} do not hold by themselves, but ${by} goes with both: lay it between them.`;

/** That further pairs of the kit say the same. */
export const ofOthers = (more: number): string =>
  more === 1 ? 'The same is true of one more pair here.' : `The same is true of ${more} more pairs here.`;

export const rules = {
  holds: () =>
    'Every two pieces hold together, or a calm third one goes with both and can lie between them: that holds together.',
  open: () => 'Two pieces do not hold together, and no calm third one goes with both: that needs a bridge.',
  outcast: () => 'One piece pulls apart from all the others: that pulls apart.',
} as const;

export const summaries = {
  single: () => 'One piece alone agrees with itself.',
  holds: (words: readonly string[], uneasy: boolean) => {
    const quiet = uneasy ? 'small clashes are not enough to spoil it' : 'nothing clashes';
    return words.length > 0
      ? `${capital(listed(words))} ${words.length > 1 ? 'run' : 'runs'} through it, and ${quiet}.`
      : `${capital(quiet)}.`;
  },
  open: (one: string, other: string, why: string) =>
    `${capital(one)} and ${other} need something between them. ${why}`,
  outcast: (name: string, two: boolean) =>
    two ? 'The two pull apart.' : `${capital(name)} goes with none of the others.`,
} as const;
