import type { Oklch } from '../model.ts';
import { coolColumns } from './trade-words-cool.ts';
import type { Column } from './trade-words-model.ts';
import { warmColumns } from './trade-words-warm.ts';

/** A region of OKLCH and the word that crafters and printers use for it. A word may have several regions; no two overlap. */
export interface TradeWord {
  readonly word: string;
  /** Each range holds its first number and ends before its second. */
  readonly l: readonly [number, number];
  readonly c: readonly [number, number];
  /** Degrees, 0–360. */
  readonly h: readonly [number, number];
}

/**
 * The everyday word for an OKLCH colour, or null for what has too little colour to be called by one: white, grey, black.
 * Above a chroma of 0.05 every colour has a word.
 * Source: `trade-words`.
 */
export function tradeWord({ l, c, h }: Oklch): string | null {
  if (c < charcoal.c[1] && l >= charcoal.l[0] && l < charcoal.l[1]) return charcoal.word;
  if (h === null) return null;
  const column = columns.find(([from, to]) => h >= from && h < to);
  const band = column?.[2].find(([upTo]) => l < upTo) ?? column?.[2].at(-1);
  let word: string | null = null;
  for (let i = 1; band && i < band.length; i += 2) {
    if (c < (band[i] as number)) break;
    word = band[i + 1] as string;
  }
  return word;
}

/** The one word that takes every hue. */
const charcoal: TradeWord = { word: 'charcoal', l: [0.26, 0.42], c: [0, 0.03], h: [0, 360] };

const columns: readonly Column[] = [...warmColumns, ...coolColumns];

/** Every region with its word: L 0–1, OKLCH chroma, hue in degrees. */
export const tradeWords: readonly TradeWord[] = [charcoal, ...columns.flatMap(regionsOf)];

function regionsOf([from, to, bands]: Column): TradeWord[] {
  return bands.flatMap((band, at) => {
    const l = [bands[at - 1]?.[0] ?? 0, band[0]] as const;
    const marks = band.slice(1);
    return marks.flatMap((word, i): TradeWord[] =>
      typeof word === 'string'
        ? [{ word, l, c: [marks[i - 1] as number, (marks[i + 1] as number) ?? 0.4], h: [from, to] }]
        : [],
    );
  });
}
