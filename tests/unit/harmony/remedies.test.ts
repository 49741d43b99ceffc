import { describe, expect, it } from 'vitest';
import { advise } from '../../../src/harmony/advise.ts';
import type { CompareOptions, MendOptions, Owned } from '../../../src/harmony/model.ts';
import { ideasFor } from '../../../src/harmony/remedies/remedy-ideas.ts';
import { whatIf } from '../../../src/harmony/remedies/what-if.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';
import { plainOf } from '../../../src/sheet/plain.ts';
import { chanceOf, chancePair } from '../../support/chance.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { toldOf } from '../../support/told.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c, onWhite } from './trade-colours.ts';

const ledger = tradeCases.find(({ name }) => name.startsWith('raspberry dots'))!;
const judged = (a: HandSide, b: HandSide, options: CompareOptions & MendOptions = {}) =>
  advise(handSide(a), handSide(b), options);

const owned: Owned = {
  plains: [
    plainOf({ name: 'grey cardstock', kind: 'cardstock', hex: c.grey }),
    plainOf({ name: 'navy cardstock', kind: 'cardstock', hex: c.navy }),
    plainOf({ name: 'coral thread', kind: 'thread', hex: c.coral }),
    { ...plainOf({ name: 'bare letters', kind: 'letters', hex: '#f0ede4' }), takesColour: true },
  ],
  sheets: [
    {
      id: 'a',
      name: 'Pebble dot',
      sides: [handSide({ base: 'cream', hex: c.oldCream, inks: [[c.navy, 0.2]] })],
    },
    { id: 'b', name: 'Orchid', sides: [handSide(onWhite([c.violet, 0.4]))] },
  ],
};

describe('the remedies', () => {
  it('are at least two wherever a pair does not hold, and each keeps its promise when it is tried', () => {
    const chance = chanceOf(3);
    let tried = 0;
    for (let n = 0; n < 160; n++) {
      const pair = chancePair(chance);
      const [anchor, candidate] = pair.of(pair.labs);
      const options: CompareOptions & MendOptions = {
        distance: n % 3 === 0 ? 'touching' : 'apart',
        ...(n % 4 === 0 ? { owned } : {}),
      };
      const found = advise(anchor, candidate, options);
      if (found.verdict === 'holds-together') continue;
      expect(found.remedies.length).toBeGreaterThanOrEqual(2);
      const titles = found.remedies.map(({ title }) => title);
      expect(new Set(titles).size, titles.join()).toBe(titles.length);
      for (const { changes, verdictAfter } of found.remedies) {
        tried++;
        expect(whatIf(found.anchor, found.candidate, changes!, options).verdict).toBe(verdictAfter);
      }
    }
    expect(tried).toBeGreaterThan(100);
  });

  it('stand in order of effort, with another sheet last and once at most', () => {
    let swaps = 0;
    for (const { anchor, candidate } of tradeCases) {
      const { remedies, verdict } = judged(anchor, candidate, { owned });
      const own = remedies.filter(({ kind }) => kind !== 'swap');
      const efforts = own.map(({ effort }) => effort);
      expect([...efforts].sort((a, b) => a - b)).toEqual(efforts);
      expect(remedies.slice(0, own.length)).toEqual(own);
      expect(remedies.length - own.length).toBeLessThan(2);
      swaps += remedies.length - own.length;
      for (const { verdictAfter, title, says, cost } of remedies) {
        expect(verdictOrder.indexOf(verdictAfter)).toBeLessThanOrEqual(verdictOrder.indexOf(verdict));
        for (const words of [title, says, cost]) expect(words).not.toMatch(/undefined|NaN/);
      }
    }
    expect(swaps).toBeGreaterThan(3);
  });

  it('say of what is laid on whether it is a colour of the other sheet or only kin to one', () => {
    const laid = (other: string, hex: string) => {
      const plain = plainOf({ name: 'Leaf tape', kind: 'tape', hex });
      const told = toldOf(handSide(onWhite([other, 0.3])), handSide(onWhite([c.coral, 0.3])));
      const ideas = ideasFor(told, { owned: { plains: [plain], sheets: [] } });
      return ideas.find(({ words: { title } }) => title === 'Lay Leaf tape on the candidate');
    };
    const same = laid(c.leaf, c.leaf)!;
    expect(same.words.says).toContain('on the candidate: the anchor has this very colour, leaf green (B).');
    expect(same.inks).toEqual(['B']);
    expect(laid(c.lime, c.leaf)!.words.says).toMatch(
      /on the candidate: a (neighbour|darker tone) of [a-z ]+ \(B\) on the anchor\./,
    );
    expect(laid(c.royal, c.leaf)).toBeUndefined();
    expect(laid(c.skyBlue, c.navy)!.words.says).toMatch(/: a darker tone of [a-z ]+ \(B\) on the anchor\./);
    for (const { anchor, candidate } of tradeCases)
      for (const { kind, title, inks } of judged(anchor, candidate, { owned }).remedies)
        if (kind === 'carry' && title.startsWith('Lay')) expect(inks).not.toEqual([]);
  });

  it('say the same of a mat', () => {
    const { remedies } = judged(onWhite([c.skyBlue, 0.3]), onWhite([c.raspberry, 0.3]), { owned });
    const mat = remedies.find(({ title }) => title === 'Mount the candidate on navy cardstock')!;
    expect(mat.says).toMatch(/wider all round: a darker tone of [a-z ]+ \(B\) on the anchor\./);
  });

  it('are none where a pair holds', () => {
    expect(judged(ledger.anchor, ledger.anchor).remedies).toEqual([]);
  });
});
