import { describe, expect, it } from 'vitest';
import type { OwnedSheet } from '../../../src/harmony/model.ts';
import { likelySwaps } from '../../../src/harmony/ranking/likely-swaps.ts';
import { verdictAfter } from '../../../src/harmony/remedies/remedies.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';
import { chanceLab, chanceOf, labSide } from '../../support/chance.ts';
import { toldOf } from '../../support/told.ts';

const chance = chanceOf(5);
const side = () =>
  labSide(
    Array.from({ length: 4 }, () => chanceLab(chance)),
    [0.2, 0.1, 0.06, 0.02],
    Math.floor(5 * chance()),
  );
const sheets = Array.from(
  { length: 240 },
  (_, n): OwnedSheet => ({ id: `${n}`, name: `Sheet ${n}`, sides: n % 8 ? [side()] : [side(), side()] }),
);

describe('sheets worth trying in a candidate’s place', () => {
  it('are a dozen of a large drawer, and the best of all is among them: trying every one finds none better', () => {
    for (let n = 0; n < 12; n++) {
      const told = toldOf(side(), side());
      const likely = likelySwaps(told, sheets);
      expect(likely.size).toBe(12);
      const tried = sheets
        .flatMap(({ sides }) => sides)
        .map((one) => ({ one, ...verdictAfter(told, [{ kind: 'replace', of: 'candidate', side: one }]) }))
        .sort(
          (a, b) => verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) || a.worst - b.worst,
        );
      const [best] = tried;
      const [bestLikely] = tried.filter(({ one }) => likely.has(one));
      expect([bestLikely?.verdict, bestLikely?.worst]).toEqual([best?.verdict, best?.worst]);
    }
  });

  it('are all of a small drawer', () => {
    const few = sheets.slice(0, 9);
    expect([...likelySwaps(toldOf(side(), side()), few)]).toEqual(few.flatMap(({ sides }) => sides));
  });
});
