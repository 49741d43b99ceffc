import { paperLimits } from '../sheet/limits.ts';

/** How much a notebook holds. Generous for paper crafts; they stop a hostile or a torn file from filling the memory. */
export const limits = {
  ...paperLimits,
  /** Characters in a name or a title. */
  name: 300,
  /** Characters in a text. */
  text: 200_000,
  leaves: 2_000,
  sheets: 10_000,
  plains: 10_000,
  parts: 20_000,
  candidates: 200,
  pieces: 500,
  /** How many are cut of one piece of a kit. */
  pieceCount: 500,
  /** Area of a kit's piece on the page, mm². */
  areaMm2: 1e9,
  /** Opinions that one study keeps, of papers that are on it and of those that were. */
  opinions: 5_000,
} as const;

/** Text as it is kept: control characters and marks that turn the reading direction are left out, and it is cut at `most` characters. */
export function keptText(text: string, most: number): string {
  const clean = text.replace(unwanted, (mark) => (mark === '\n' || mark === '\t' ? mark : ''));
  return clean.length > most ? clean.slice(0, most).replace(/[\uD800-\uDBFF]$/, '') : clean;
}

/** A name as it is kept: one line, without spaces at its ends. */
export function keptName(text: string): string {
  const line = keptText(text, limits.text).replace(/\s+/g, ' ').trim();
  return keptText(line, limits.name).trim();
}

const unwanted = /[\p{Cc}\u202A-\u202E\u2066-\u2069\uFFFE\uFFFF]/gu;
