import { describe, expect, it } from 'vitest';
import {
  addInk,
  applyChanges,
  coverInk,
  recolourInk,
  trimInk,
} from '../../../src/harmony/remedies/changes.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { handInk, handSide } from '../../support/sides.ts';
import { colour as c } from './trade-colours.ts';

const side = handSide({
  base: 'cream',
  hex: c.cream,
  inks: [
    [c.coral, 0.2],
    [c.navy, 0.1],
    [c.violet, 0.1],
  ],
});
const sum = ({ base, inks }: Side) => base.share + inks.reduce((total, { share }) => total + share, 0);
const shares = ({ base, inks }: Side) =>
  [base.share, ...inks.map(({ share }) => share)].map((v) => Number(v.toFixed(6)));

describe('a change', () => {
  it('covers an ink with another of the sheet, with its ground, or with something new', () => {
    expect(shares(coverInk(side, 'D', side.inks[1]!))).toEqual([0.6, 0.2, 0.2]);
    expect(shares(coverInk(side, 'D', side.base))).toEqual([0.7, 0.2, 0.1]);
    const kraft = coverInk(side, 'D', handInk(c.kraft, 'B', 1));
    expect(shares(kraft)).toEqual([0.6, 0.2, 0.1, 0.1]);
    expect(kraft.inks[2]!.hex).toBe(c.kraft);
    expect(coverInk(side, 'A', side.inks[0]!)).toBe(side);
    expect(coverInk(side, 'Z', side.inks[0]!)).toBe(side);
  });

  it('trims an ink away, or to a share, and lets the rest grow in proportion', () => {
    expect(shares(trimInk(side, 'B', 0))).toEqual([0.75, 0.125, 0.125]);
    expect(shares(trimInk(side, 'B', 0.1))).toEqual([0.675, 0.1, 0.1125, 0.1125]);
    expect(trimInk(side, 'B', 0.3)).toBe(side);
    expect(trimInk(side, 'Z', 0)).toBe(side);
  });

  it('recolours an ink or the ground, and keeps the rest of it', () => {
    const mint = handInk(c.mint, 'x', 1);
    expect(recolourInk(side, 'B', mint).inks[0]).toMatchObject({
      id: 'B',
      hex: c.mint,
      share: 0.2,
      trade: null,
    });
    expect(recolourInk(side, 'A', mint).base).toMatchObject({ id: 'A', hex: c.mint, kind: 'cream' });
  });

  it('adds something of another colour, for which all else gives way', () => {
    const added = addInk(side, handInk(c.mint, 'x', 1), 0.1);
    expect(shares(added)).toEqual([0.54, 0.18, 0.09, 0.09, 0.1]);
    expect(added.inks.at(-1)).toMatchObject({ hex: c.mint, accent: false });
    expect(addInk(side, handInk(c.mint, 'x', 1), 0.02).inks.at(-1)!.accent).toBe(true);
  });

  it('never changes how much paper there is', () => {
    for (const after of [
      coverInk(side, 'D', side.base),
      trimInk(side, 'B', 0.05),
      recolourInk(side, 'B', handInk(c.mint, 'x', 1)),
      addInk(side, handInk(c.mint, 'x', 1), 0.03),
    ]) {
      expect(sum(after)).toBeCloseTo(1, 9);
    }
  });

  it('leaves the side it was given as it was, so that leaving it out undoes it', () => {
    const before = JSON.stringify(side);
    applyChanges(side, side, [
      { kind: 'trim', of: 'anchor', ink: 'B' },
      { kind: 'strip', ink: handInk(c.kraft, 'k', 1) },
      { kind: 'replace', of: 'candidate', side: handSide({ base: 'white', hex: c.white }) },
    ]);
    expect(JSON.stringify(side)).toBe(before);
  });
});
