import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { takeSide } from '../../../src/harmony/measure/take-side.ts';
import { judgeWhole as judge, verdictAt } from '../../../src/harmony/whole/judge.ts';
import { measuresOf } from '../../../src/harmony/whole/measures.ts';
import type { Judged } from '../../../src/harmony/whole/model.ts';
import { portraitOf } from '../../../src/harmony/whole/portrait.ts';
import { countWeights, verdictLimits } from '../../../src/harmony/whole/whole-thresholds.ts';
import type { Seen } from '../../../src/sheet/model.ts';
import { handMade, looks } from '../../support/judging/families.ts';
import { stepOf } from '../../support/judging/judged.ts';

type Colours = readonly (readonly [hex: string, share: number])[];
const face = (colours: Colours, seen?: Seen) => portraitOf(takeSide(handMade(colours, seen), 'anchor'));
const pair = (one: readonly [Colours, Seen], other: readonly [Colours, Seen]): Judged =>
  judge(face(...one), face(...other));

const kraft: [Colours, Seen] = [[['#b7926a', 1]], looks.still];
const lemons: [Colours, Seen] = [
  [
    ['#d8eeea', 0.56],
    ['#f7f619', 0.42],
    ['#406f1e', 0.02],
  ],
  { ...looks.loose, colour: 23 },
];
const plumCheck: [Colours, Seen] = [
  [
    ['#f8f1ea', 0.5],
    ['#7a4263', 0.5],
  ],
  looks.check,
];
const neon: [Colours, Seen] = [
  [
    ['#ffffff', 0.48],
    ['#ffd800', 0.13],
    ['#00b6d8', 0.13],
    ['#8fd400', 0.13],
    ['#f0218f', 0.13],
  ],
  { ...looks.check, light: 14, colour: 37 },
];
const toile: [Colours, Seen] = [
  [
    ['#f8f3e8', 0.83],
    ['#5584a8', 0.17],
  ],
  { ...looks.loose, light: 10, colour: 5, large: 3 },
];

const hex = fc.integer({ min: 0, max: 0xffffff }).map((n) => `#${n.toString(16).padStart(6, '0')}`);
const side = fc
  .tuple(
    fc.array(fc.tuple(hex, fc.double({ min: 0.01, max: 1, noNaN: true })), { minLength: 1, maxLength: 6 }),
    fc.constantFrom(looks.still, looks.loose, looks.dots, looks.check),
  )
  .map(([colours, seen]): [Colours, Seen] => [colours, seen]);

describe('two papers as a whole', () => {
  it('says what all three viewers said of such papers', () => {
    // tests/judged-papers/pairs.json: the plum check beside neon triangles (p18, p19) and beside lemons (p02, p18) fight; a plain card
    // goes with a print in two colours (p12, p20).
    expect(pair(plumCheck, neon).verdict).toBe('pulls-apart');
    expect(pair(lemons, plumCheck).verdict).not.toBe('holds-together');
    expect(pair(kraft, toile).verdict).toBe('holds-together');
  });

  it('reaches all three verdicts', () => {
    const { holdsFrom, bridgeFrom } = verdictLimits;
    expect([holdsFrom + 0.1, (holdsFrom + bridgeFrom) / 2, bridgeFrom - 0.1].map(verdictAt)).toEqual([
      'holds-together',
      'needs-a-bridge',
      'pulls-apart',
    ]);
  });

  it('says the same when the two change places', () => {
    fc.assert(
      fc.property(side, side, (one, other) => {
        const [there, back] = [pair(one, other), pair(other, one)];
        expect(back.balance).toBeCloseTo(there.balance, 9);
        expect(back.verdict).toBe(there.verdict);
        expect(back.roles).toEqual([...there.roles].reverse());
        expect(back.leading.map(({ name }) => name)).toEqual(there.leading.map(({ name }) => name));
      }),
      { numRuns: 100 },
    );
  });

  it('says the same when all shares of a side are scaled', () => {
    fc.assert(
      fc.property(side, side, ([colours, seen], other) => {
        const scaled = colours.map(([colour, share]) => [colour, share / 3] as const);
        expect(pair([scaled, seen], other).balance).toBeCloseTo(pair([colours, seen], other).balance, 9);
      }),
      { numRuns: 50 },
    );
  });

  it('is the sum of what its findings count, each one at most, and those that are only told count nothing', () => {
    fc.assert(
      fc.property(side, side, (one, other) => {
        const measures = measuresOf(face(...one), face(...other));
        const sum = Object.entries(measures).reduce(
          (total, [name, { size }]) => total + size * countWeights[name as keyof typeof measures],
          0,
        );
        expect(pair(one, other).balance).toBeCloseTo(sum, 9);
        for (const { size } of Object.values(measures)) {
          expect(size).toBeGreaterThanOrEqual(0);
          expect(size).toBeLessThanOrEqual(1);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('never moves by two steps under a small change', () => {
    fc.assert(
      fc.property(side, side, fc.integer({ min: -3, max: 3 }), ([colours, seen], other, by) => {
        const changed = colours.map(
          ([colour, share]) => [lighter(colour, by), share * (1 + by / 60)] as const,
        );
        const before = stepOf(pair([colours, seen], other).verdict);
        expect(Math.abs(stepOf(pair([changed, seen], other).verdict) - before)).toBeLessThan(2);
      }),
      { numRuns: 200 },
    );
  });

  it('rests more the less contrast an eye sees, and holds no worse with a paper at rest than with the same one speaking', () => {
    const contrasts = [2, 5, 8, 12].map((light) =>
      face(toile[0], { ...looks.loose, light, colour: 2, large: 1 }),
    );
    const rests = contrasts.map(({ rest }) => rest);
    expect([...rests].sort((p, q) => q - p)).toEqual(rests);
    const balances = contrasts.map((one) => judge(one, face(...lemons)).balance);
    expect([...balances].sort((p, q) => q - p)).toEqual(balances);
  });

  it('takes small dots on one ground for soft, and a bold check for speaking', () => {
    const navy = face(
      [
        ['#26375c', 0.88],
        ['#fcfbf6', 0.12],
      ],
      looks.dots,
    );
    expect(navy.role).toBe('is soft');
    expect(face(...plumCheck).role).toBe('speaks');
    expect(face(...kraft).role).toBe('rests');
  });

  it('ends a near miss by ΔE₀₀ 16, needs two colours that lead, and lets a gradation answer it', () => {
    const near = (other: string, share = 0.3, more: Colours = []): number =>
      measuresOf(
        face(
          [
            ['#ffffff', 0.7],
            ['#c8503c', 0.3],
          ],
          looks.loose,
        ),
        face([['#ffffff', 1 - share], [other, share], ...more], looks.loose),
      )['near miss'].size;
    expect(near('#c8405a')).toBeGreaterThan(0.3);
    expect(near('#d98a2b')).toBe(0);
    expect(near('#c8405a', 0.008)).toBe(0);
    const graded = near('#c8405a', 0.3, [['#c8503c', 0.2]]);
    expect(graded).toBeLessThan(near('#c8405a'));
  });

  it('calls orange warm beside blue cool, as Ou, Luo, Woodcock & Wright 2004 do', () => {
    const told = pair(
      [
        [
          ['#fff8f0', 0.3],
          ['#ec652d', 0.7],
        ],
        looks.loose,
      ],
      [
        [
          ['#f0f4ff', 0.3],
          ['#2b5fb8', 0.7],
        ],
        looks.loose,
      ],
    ).findings.find(({ name }) => name === 'warm beside cool');
    expect(told!.numbers.warmthA).toBeGreaterThan(0);
    expect(told!.numbers.warmthB).toBeLessThan(0);
    expect(told!.counts).toBe(0);
  });

  it('leads with three findings at most, each of another kind, the first on the side of the verdict', () => {
    fc.assert(
      fc.property(side, side, (one, other) => {
        const { leading, verdict, findings } = pair(one, other);
        expect(leading.length).toBeLessThanOrEqual(3);
        expect(new Set(leading.map(({ kind }) => kind)).size).toBe(leading.length);
        const carries = verdict === 'holds-together' ? 'for' : 'against';
        if (findings.some(({ speaks }) => speaks === carries)) expect(leading[0]!.speaks).toBe(carries);
      }),
      { numRuns: 100 },
    );
  });

  it('can be argued exactly where the balance lies close to a limit', () => {
    fc.assert(
      fc.property(side, side, (one, other) => {
        const { arguable, balance, verdict } = pair(one, other);
        const { holdsFrom, bridgeFrom, close } = verdictLimits;
        const by = Math.min(Math.abs(balance - holdsFrom), Math.abs(balance - bridgeFrom));
        expect(arguable !== null).toBe(by <= close);
        if (arguable) expect(Math.abs(stepOf(arguable.instead) - stepOf(verdict))).toBe(1);
      }),
      { numRuns: 200 },
    );
  });
});

function lighter(colour: string, by: number): string {
  return `#${[1, 3, 5]
    .map((i) => Math.max(0, Math.min(255, Number.parseInt(colour.slice(i, i + 2), 16) + by)))
    .map((v) => v.toString(16).padStart(2, '0'))
    .join('')}`;
}
