import type { Ink } from '../../src/sheet/model.ts';

/** What an ink is called: its trade word, else its ISCC-NBS name, both as they were read. */
export function inkWords(ink: Ink): string {
  return ink.trade ?? ink.name;
}
