import type { Base, Ink, Print } from '../model.ts';

/** What to call an ink in a sentence: its trade word where one fits, else its ISCC-NBS name. */
export function inkWord(ink: Ink): string {
  return ink.trade ?? ink.name;
}

/** What a side's base is called after "printed": "on cream", "on a dark ground (navy)". */
export function baseWords(base: Base): string {
  if (base.printed) return `on a printed ground (${inkWord(base)})`;
  switch (base.kind) {
    case 'white':
    case 'cream':
    case 'kraft':
      return `on ${base.kind}`;
    case 'dark':
      return `on a dark ground (${inkWord(base)})`;
    case 'tinted':
      return `on a tinted ground (${inkWord(base)})`;
  }
}

/** How often a print repeats: "76 mm", or "about 76 mm, if the sheet is 12 in" where its size was assumed; null where it is not known. */
export function repeatWords({ repeatMm, assumedSize }: Print): string | null {
  if (repeatMm === null) return null;
  const length = `${Math.round(repeatMm)} mm`;
  return assumedSize ? `about ${length}, if the sheet is 12 in` : length;
}
