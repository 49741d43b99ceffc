import { describe, expect, it } from 'vitest';
import { oklchFromHex } from '../../../src/colour/spaces.ts';
import { advise } from '../../../src/harmony/advise.ts';
import { colourIt } from '../../../src/harmony/further/colour-it.ts';
import type { Remedy } from '../../../src/harmony/model.ts';
import { plainOf } from '../../../src/sheet/plain.ts';
import { chanceOf, chancePair } from '../../support/chance.ts';
import { handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c, onWhite } from './trade-colours.ts';

/** What each remedy costs and how much of a sheet it takes, on pairs by chance: all of it is our own choice. */
const owned = {
  plains: [
    plainOf({ name: 'navy cardstock', kind: 'cardstock', hex: c.navy }),
    plainOf({ name: 'coral cardstock', kind: 'cardstock', hex: c.coral }),
    plainOf({ name: 'leaf thread', kind: 'thread', hex: c.leaf }),
  ],
  sheets: [
    {
      id: 'confetti',
      name: 'Confetti',
      sides: [handSide(onWhite([c.coral, 0.1], [c.violet, 0.1], [c.leaf, 0.1]))],
    },
  ],
};

const found = [
  ...chanced(120),
  ...tradeCases.map(({ anchor, candidate }) => advise(handSide(anchor), handSide(candidate))),
];

function chanced(count: number) {
  const chance = chanceOf(17);
  return Array.from({ length: count }, (_, n) => {
    const pair = chancePair(chance);
    const [anchor, candidate] = pair.of(pair.labs);
    return advise(anchor, candidate, n % 2 ? { owned, otherSide: anchor } : {});
  });
}

const alone = found.flatMap(({ remedies }) => remedies).filter(({ title }) => !title.includes(', and '));

/** Effort as it was written down, in cuts: what cuts into the anchor costs 1.5 more. */
function effortOf({ kind, title, cost, inks }: Remedy): number {
  const onAnchor = /^[A-Z]/.test(inks[0] ?? '') ? 1.5 : 0;
  switch (kind) {
    case 'turn':
      return 0.2;
    case 'swap':
      return 0.5;
    case 'buffer':
      return 1;
    case 'carry':
      return title.startsWith('Lay') ? 1.8 : 2;
    case 'trim':
      return 2.5 + onAnchor;
    case 'cover':
      return (cost.includes('punches') ? 3 : 5) + onAnchor;
    case 'mount':
      return 4;
    case 'leave':
      return 0;
  }
}

describe('a remedy', () => {
  it('costs what its kind costs', () => {
    for (const remedy of alone) expect(remedy.effort, remedy.title).toBeCloseTo(effortOf(remedy), 9);
    const kinds = new Set(alone.map(({ kind }) => kind));
    for (const kind of ['turn', 'swap', 'buffer', 'carry', 'cover', 'mount', 'trim'] as const)
      expect(kinds).toContain(kind);
  });

  it('stands among six at most, and beside another where the pair does not hold', () => {
    expect(Math.max(...found.map(({ remedies }) => remedies.length))).toBe(6);
    const few = found.filter(({ verdict, remedies }) => verdict !== 'holds-together' && remedies.length < 2);
    expect(few).toEqual([]);
  });

  it('lays a mat where it says so, and a strip where it says that', () => {
    const laid = alone.flatMap(({ kind, changes }) =>
      (changes ?? []).flatMap((change) =>
        change.kind === 'strip' ? [`${kind} ${change.as ?? 'strip'}`] : [],
      ),
    );
    expect(new Set(laid)).toEqual(new Set(['buffer strip', 'mount mat']));
  });

  it('adds 3 % of small pieces, and 5 % of a mat', () => {
    const added = alone.flatMap(({ kind, changes }) =>
      (changes ?? []).flatMap((change) => (change.kind === 'add' ? [`${kind} ${change.share}`] : [])),
    );
    expect(new Set(added)).toEqual(new Set(['carry 0.03', 'mount 0.05']));
  });
});

describe('a colour for a thing that takes any', () => {
  const chance = chanceOf(5);
  const regions = Array.from({ length: 60 }, () => {
    const pair = chancePair(chance, 3);
    return colourIt(...pair.of(pair.labs));
  });

  it('is looked for every 6° of hue, at four strengths and six lightnesses', () => {
    const steps = (values: readonly number[]) =>
      [...new Set(values.map((v) => Math.round(v * 1000) / 1000))].sort();
    const all = regions.flatMap((one) => one.regions);
    for (const { hueDeg } of all) expect((hueDeg[1] - hueDeg[0] + 360) % 6).toBeCloseTo(0, 9);
    const strengths = steps(all.flatMap(({ chroma }) => [chroma[0] + 0.02, chroma[1] - 0.02]));
    expect(strengths).toEqual([0.06, 0.1, 0.14, 0.18]);
    const best = regions.flatMap((one) => (one.best ? [oklchFromHex(one.best.hex).l] : []));
    const lightnesses = [0.32, 0.42, 0.52, 0.62, 0.72, 0.82];
    const nearest = best.map((l) => lightnesses.find((one) => Math.abs(one - l) < 0.006));
    expect(nearest).not.toContain(undefined);
    expect(new Set(nearest).size).toBe(6);
  });
});
