import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/harmony/compare.ts';
import type { CompareOptions, Owned } from '../../../src/harmony/model.ts';
import { bladeCaution } from '../../../src/harmony/remedy-sentences.ts';
import { verdictOrder } from '../../../src/harmony/verdict.ts';
import { whatIf } from '../../../src/harmony/what-if.ts';
import { plainOf } from '../../../src/sheet/plain.ts';
import { chanceOf, chancePair } from '../../support/chance.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c } from './trade-colours.ts';

const onWhite = (...inks: [string, number][]): HandSide => ({ base: 'white', hex: c.white, inks });
const ledger = tradeCases.find(({ name }) => name.startsWith('raspberry dots'))!;
const judged = (a: HandSide, b: HandSide, options: CompareOptions = {}) =>
  compare(handSide(a), handSide(b), options);

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
      const options: CompareOptions = {
        distance: n % 3 === 0 ? 'touching' : 'apart',
        ...(n % 4 === 0 ? { owned } : {}),
      };
      const found = compare(anchor, candidate, options);
      if (found.verdict === 'holds-together') continue;
      expect(found.remedies.length).toBeGreaterThanOrEqual(2);
      for (const { changes, verdictAfter } of found.remedies) {
        tried++;
        expect(whatIf(found.anchor, found.candidate, changes!, options).verdict).toBe(verdictAfter);
      }
    }
    expect(tried).toBeGreaterThan(100);
  });

  it('stand in order of effort, helpful ones only, where there are two that help', () => {
    for (const { anchor, candidate } of tradeCases) {
      const { remedies, verdict } = judged(anchor, candidate, { owned });
      const efforts = remedies.map(({ effort }) => effort);
      expect([...efforts].sort((a, b) => a - b)).toEqual(efforts);
      for (const { verdictAfter, title, says, cost } of remedies) {
        expect(verdictOrder.indexOf(verdictAfter)).toBeLessThanOrEqual(verdictOrder.indexOf(verdict));
        for (const words of [title, says, cost]) expect(words).not.toMatch(/undefined|NaN/);
      }
    }
  });

  it('mend the coral and raspberry ledger with a strip, a cover, a trim or something carried', () => {
    const { remedies } = judged(ledger.anchor, ledger.candidate);
    expect(remedies.map(({ kind }) => kind)).toEqual(
      expect.arrayContaining(['buffer', 'carry', 'trim', 'cover']),
    );
    for (const { verdictAfter } of remedies) expect(verdictAfter).toBe('holds-together');
    const cover = remedies.find(({ kind }) => kind === 'cover')!;
    expect(cover.inks).toEqual(['c', 'b']);
    expect(cover.cost).toBe('a dozen punches');
    const strip = remedies.find(({ kind }) => kind === 'buffer')!;
    expect(strip.title).toBe('Put kraft between');
  });

  it('warn of the blade where a knife is asked for, and only there', () => {
    const { remedies } = judged(ledger.anchor, ledger.candidate, {
      owned,
      otherSide: handSide(ledger.anchor),
    });
    const warns = (kind: string) =>
      remedies.filter((one) => one.kind === kind).map(({ says }) => says.includes(bladeCaution));
    expect(warns('buffer')).toEqual([true]);
    expect(warns('turn')).toEqual([false]);
    expect(warns('swap')).toEqual([false]);
  });

  it('use what is owned: its neutral for the strip, its colours to carry, its sheets to swap, the other side to turn', () => {
    const { remedies } = judged(ledger.anchor, ledger.candidate, {
      owned,
      otherSide: handSide({ base: 'cream', hex: c.oldCream, inks: [[c.navyToo, 0.2]] }),
      names: { anchor: 'the bunting', candidate: 'the ledger' },
    });
    const titles = remedies.map(({ title }) => title);
    expect(titles[0]).toBe('Turn the ledger over');
    expect(titles).toContain('Take Pebble dot instead');
    expect(titles).not.toContain('Take Orchid instead');
    expect(titles).toContain('Put grey cardstock between');
    expect(titles.join()).not.toContain('bare letters');
    const colours = judged(onWhite([c.coral, 0.3]), onWhite([c.raspberry, 0.3]), { owned });
    expect(colours.remedies.map(({ title }) => title).join()).toContain('coral thread');
  });

  it('mount on an owned colour where that ties, with the mat between', () => {
    const found = judged(
      { base: 'cream', hex: c.cream, inks: [[c.navy, 0.2]] },
      { base: 'white', hex: c.coolWhite, inks: [[c.navy, 0.2]] },
      { owned },
    );
    const mats = found.remedies.filter(({ kind }) => kind === 'mount');
    expect(mats.length).toBeGreaterThan(0);
    for (const { changes, cost } of mats) {
      expect(changes!.some(({ kind }) => kind === 'strip')).toBe(true);
      expect(cost).toBe('four cuts');
    }
  });

  it('put touching papers apart with a strip, and say so', () => {
    const ground: HandSide = {
      base: 'cream',
      hex: c.cream,
      inks: [
        [c.coral, 0.2],
        [c.navy, 0.2],
      ],
    };
    const found = judged(
      ground,
      {
        ...ground,
        inks: [
          [c.raspberry, 0.05],
          [c.navy, 0.2],
        ],
      },
      { distance: 'touching' },
    );
    const strip = found.remedies.find(({ kind }) => kind === 'buffer')!;
    expect(strip.says).toContain('where the two meet');
    expect(strip.verdictAfter).toBe('holds-together');
  });

  it('leave a small stray beside its complement alone', () => {
    const plum = tradeCases.find(({ name }) => name.startsWith('a little violet'))!;
    const { remedies } = judged(plum.anchor, plum.candidate);
    expect(remedies).toHaveLength(1);
    expect(remedies[0]).toMatchObject({
      kind: 'leave',
      verdictAfter: 'holds-together',
      effort: 0,
      changes: [],
    });
    expect(remedies[0]!.says).toContain('opposite yellow (c)');
  });

  it('are none where a pair holds, and none where they are not asked for', () => {
    expect(judged(ledger.anchor, ledger.anchor).remedies).toEqual([]);
    expect(judged(ledger.anchor, ledger.candidate, { withoutRemedies: true }).remedies).toEqual([]);
  });

  it('take two ideas together where one is not enough', () => {
    const found = judged(
      {
        base: 'cream',
        hex: c.cream,
        inks: [
          [c.coral, 0.25],
          [c.aqua, 0.1],
        ],
      },
      {
        base: 'white',
        hex: c.coolWhite,
        inks: [
          [c.coral, 0.1],
          [c.violet, 0.25],
        ],
      },
    );
    expect(found.verdict).toBe('needs-a-bridge');
    const both = found.remedies.filter(({ changes }) => changes!.length > 1);
    expect(both.length).toBeGreaterThan(0);
    for (const { verdictAfter, title, cost } of both) {
      expect(verdictAfter).toBe('holds-together');
      expect(title).toMatch(/^Put kraft between, and (cover|cut|carry)/);
      expect(cost).toContain('one cut, and ');
    }
  });
});
