import { munsellFromLab } from '../colour/munsell.ts';
import { labFromHex } from '../colour/spaces.ts';
import { compare } from '../harmony/compare.ts';
import { rank } from '../harmony/rank.ts';
import { plainOf, sideOfPlain } from '../sheet/plain.ts';

/**
 * Has ready what a first comparison would have to make first: tables of colour that are built when they are first
 * needed, tens of milliseconds in all. One thing a task, so that the hand never waits for it.
 */
export async function warmTables(): Promise<void> {
  const side = (hex: string) => sideOfPlain(plainOf({ name: hex, kind: 'cardstock', hex }));
  const steps = [
    () => munsellFromLab(labFromHex('#e2725b')),
    () => rank(side('#f4e8cd'), [side('#1f3a5f')]),
    () => compare(side('#f4e8cd'), side('#e2725b'), { withoutRemedies: true }).reasons.length,
  ];
  for (const step of steps) {
    await new Promise((next) => setTimeout(next, 50));
    step();
  }
}
