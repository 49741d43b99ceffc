import { munsellFromLab } from '../colour/munsell/munsell.ts';
import { valueCount } from '../colour/munsell/munsell-table.ts';
import { labFromHex } from '../colour/spaces.ts';
import { compare } from '../harmony/compare.ts';
import { quickPainter } from '../harmony/measure/quick-colour.ts';
import { quickMunsellHue, quickMunsellValue } from '../harmony/measure/quick-munsell.ts';
import { rank } from '../harmony/ranking/rank.ts';
import { plainOf, sideOfPlain } from '../sheet/plain.ts';

/**
 * Has ready what a first comparison would have to make first: tables of colour that are built when they are first
 * needed, a hundred milliseconds in all. One thing a task, so that the hand never waits for it.
 */
export async function warmTables(): Promise<void> {
  const side = (hex: string) => sideOfPlain(plainOf({ name: hex, kind: 'cardstock', hex }));
  const hexes = ['#f4e8cd', '#1f3a5f', '#e2725b'];
  const steps = [
    () => munsellFromLab(labFromHex('#e2725b')),
    () => quickMunsellValue(0.5),
    () => quickPainter(30),
    // One Munsell value a task: each has a table of its own.
    ...Array.from({ length: valueCount }, (_, i) => () => quickMunsellHue(10, 10, i + 1)),
    () => hexes.map(side),
    () => rank(side('#f4e8cd'), [side('#1f3a5f')]),
    () => compare(side('#f4e8cd'), side('#e2725b')).reasons.length,
  ];
  for (const step of steps) {
    await new Promise((next) => setTimeout(next, 20));
    step();
  }
}
