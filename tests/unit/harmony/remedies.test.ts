import { describe, expect, it } from 'vitest';
import { advise } from '../../../src/harmony/advise.ts';
import type { CompareOptions, MendOptions, Owned } from '../../../src/harmony/model.ts';
import { ideasFor } from '../../../src/harmony/remedies/remedy-ideas.ts';
import { whatIf } from '../../../src/harmony/remedies/what-if.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';
import { bladeCaution } from '../../../src/harmony/words/remedy-sentences.ts';
import type { Places, Side } from '../../../src/sheet/model.ts';
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
    for (const { says } of remedies) expect(says).not.toContain(bladeCaution);
    const warns = (kind: string) =>
      remedies.filter((one) => one.kind === kind).map(({ caution }) => caution === bladeCaution);
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

  it('are still two, and true, on sides written with the least there is and nothing owned', () => {
    const hexes = [c.coral, c.raspberry, c.violet, c.leaf, c.royal, c.orange, c.navy, c.neonPink];
    const bare = (base: string, ...inks: string[]) =>
      ({
        base: { id: 'x', hex: base, share: 1 - 0.3 * inks.length, kind: 'white' },
        inks: inks.map((hex, i) => ({ id: `y${i}`, hex, share: 0.3 })),
      }) as unknown as Side;
    let tried = 0;
    for (const one of hexes)
      for (const other of hexes)
        for (const [anchor, candidate] of [
          [bare(c.white, one), bare(c.white, other)],
          [bare(one), bare(other)],
          [bare(c.white, one, c.sage), bare(c.cream, other, c.plum)],
        ] as const) {
          const found = advise(anchor, candidate);
          if (found.verdict === 'holds-together') continue;
          tried++;
          expect(found.remedies.length, `${one} ${other}`).toBeGreaterThanOrEqual(2);
          for (const { kind, changes, verdictAfter } of found.remedies) {
            expect(whatIf(found.anchor, found.candidate, changes!).verdict).toBe(verdictAfter);
            // A colour on a third of the sheet may lie anywhere: it is not known to leave a part free.
            expect(kind).not.toBe('trim');
          }
        }
    expect(tried).toBeGreaterThan(30);
  });

  it('cut a colour away only where enough of the sheet is without it', () => {
    const [anchor, candidate] = [
      handSide(onWhite([c.coral, 0.3])),
      handSide(onWhite([c.raspberry, 0.3], [c.coral, 0.2])),
    ];
    const drawn = (rows: readonly string[]): Places => ({
      width: rows[0]!.length,
      height: rows.length,
      labels: Uint8Array.from(rows.join(''), Number),
    });
    const trims = (candidatePlaces?: Places) =>
      advise(anchor, handSide(onWhite([c.violet, 0.3], [c.coral, 0.2])), {
        ...(candidatePlaces ? { places: { candidate: candidatePlaces } } : {}),
      }).remedies.flatMap(({ changes }) => changes!.filter(({ kind }) => kind === 'trim'));
    expect(advise(anchor, candidate).remedies.some(({ kind }) => kind === 'trim')).toBe(false);
    expect(trims()).toEqual([]);
    expect(trims(drawn(['10101012', '01010121', '10101012', '01010121', '10101012', '01010121']))).toEqual(
      [],
    );
    expect(trims(drawn(['11110000', '11110022', '11110022', '11110000'])).length).toBeGreaterThan(0);
  });

  it('name the side where a sheet in the drawer has two, and take one of them', () => {
    const side = handSide({ base: 'cream', hex: c.oldCream, inks: [[c.navy, 0.2]] });
    const { remedies } = judged(ledger.anchor, ledger.candidate, {
      owned: { plains: [], sheets: [{ id: 'a', name: 'Pebble dot', sides: [side, side] }] },
    });
    expect(remedies.filter(({ kind }) => kind === 'swap').map(({ title }) => title)).toEqual([
      'Take side A of Pebble dot instead',
    ]);
  });

  it('speak of no drawer, since a board of them goes to others', () => {
    const { remedies } = judged(ledger.anchor, ledger.candidate, { owned });
    expect(remedies.at(-1)!.says).toBe('Lay Pebble dot beside the anchor, in place of the candidate.');
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

  it('are said to help only where a trouble weighs less after them', () => {
    const said = { eases: 0, begins: 0 };
    const inks = Object.values(c);
    const pairs = inks.flatMap((one) => inks.map((other) => [one, other] as const));
    for (const [one, other] of pairs) {
      const found = judged(onWhite([one, 0.3]), { base: 'tinted', hex: other, inks: [[one, 0.012]] });
      for (const { says, changes } of found.remedies) {
        const eases = says.includes('It helps, but does not mend');
        if (!eases && !says.includes('By itself it does not mend')) continue;
        const after = whatIf(found.anchor, found.candidate, changes!);
        expect(after.standing!.worst < found.standing!.worst).toBe(eases);
        said[eases ? 'eases' : 'begins']++;
      }
    }
    expect(said.eases).toBeGreaterThan(0);
    expect(said.begins).toBeGreaterThan(0);
  });

  it('never cover or cut away all that is printed, alone or together', () => {
    const only = judged(onWhite([c.coral, 0.3]), onWhite([c.raspberry, 0.03]));
    expect(only.remedies.length).toBeGreaterThanOrEqual(2);
    expect(only.remedies.filter(({ kind }) => kind === 'cover' || kind === 'trim')).toEqual([]);
    // Each covered alone helps here, and both together would leave bare paper.
    const two = judged(onWhite([c.coral, 0.3]), onWhite([c.blush, 0.2], [c.leaf, 0.2]));
    const bare = two.remedies.filter(
      ({ changes }) => changes!.filter(({ kind }) => kind === 'cover').length > 1,
    );
    expect(bare).toEqual([]);
    let taken = 0;
    const chance = chanceOf(29);
    const chanced = Array.from({ length: 200 }, () => chancePair(chance)).map((pair) => pair.of(pair.labs));
    const written = tradeCases.map(
      ({ anchor, candidate }) => [handSide(anchor), handSide(candidate)] as const,
    );
    for (const [anchor, candidate] of [...chanced, ...written]) {
      const found = advise(anchor, candidate, { owned });
      for (const { changes } of found.remedies) {
        for (const of of ['anchor', 'candidate'] as const) {
          const gone = changes!.flatMap((one) =>
            (one.kind === 'cover' || one.kind === 'trim') && one.of === of ? [one.ink] : [],
          );
          if (gone.length === 0) continue;
          taken++;
          const left = found[of].inks.filter(({ id, share }) => !gone.includes(id) && share >= 0.01);
          expect(left.length).toBeGreaterThan(0);
        }
      }
    }
    expect(taken).toBeGreaterThan(10);
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

  it('are none where a pair holds', () => {
    expect(judged(ledger.anchor, ledger.anchor).remedies).toEqual([]);
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

  it('cut a colour away together with something else, where there is room and neither is enough', () => {
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
      { places: { candidate: { width: 4, height: 4, labels: Uint8Array.from('0022012200220122', Number) } } },
    );
    expect(found.verdict).toBe('needs-a-bridge');
    const both = found.remedies.filter(
      ({ changes }) => changes!.map(({ kind }) => kind).join() === 'strip,trim',
    );
    expect(both).toHaveLength(1);
    expect(both[0]).toMatchObject({ verdictAfter: 'holds-together', caution: bladeCaution });
  });
});
