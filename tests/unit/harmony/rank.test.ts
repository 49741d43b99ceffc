import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/harmony/compare.ts';
import { rank, readyPlaces } from '../../../src/harmony/ranking/rank.ts';
import { plainOf, sideOfPlain } from '../../../src/sheet/plain.ts';
import { handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';

const bunting = handSide(tradeCases[0]!.anchor);
const candidates = tradeCases.map(({ candidate }) => handSide(candidate));

describe('a ranking', () => {
  it('keeps equal candidates in the order given', () => {
    const twins = rank(bunting, [candidates[6]!, candidates[0]!, candidates[6]!, candidates[0]!]);
    const [first] = twins.map(({ index }) => index);
    const at = (one: number) => twins.findIndex(({ index }) => index === one);
    expect(at(2)).toBe(at(0) + 1);
    expect(at(3)).toBe(at(1) + 1);
    expect([0, 1]).toContain(first);
  });

  it('is made of plain comparisons: each place says what compare says, spread or serialised', () => {
    for (const options of [{}, { distance: 'touching' as const }, { strip: true }]) {
      for (const place of rank(bunting, candidates.slice(0, 30), options)) {
        const plain = { index: place.index, ...compare(bunting, candidates[place.index]!, options) };
        expect({ ...place }).toEqual(plain);
        expect(JSON.parse(JSON.stringify(place))).toEqual(JSON.parse(JSON.stringify(plain)));
      }
    }
  });

  it('stands in the order of full comparisons: verdict, ties less quarrels, balance, order given', () => {
    const order = ['holds-together', 'needs-a-bridge', 'pulls-apart'];
    for (const distance of ['touching', 'apart'] as const) {
      const full = candidates
        .map((side, index) => ({ index, ...compare(bunting, side, { distance }) }))
        .sort((one, other) => {
          const by = ({ standing }: typeof one) => standing!.ties - standing!.quarrels;
          return (
            order.indexOf(one.verdict) - order.indexOf(other.verdict) ||
            by(other) - by(one) ||
            other.standing!.balance - one.standing!.balance ||
            one.index - other.index
          );
        });
      const ranked = rank(bunting, candidates, { distance });
      expect(ranked.map(({ index }) => index)).toEqual(full.map(({ index }) => index));
      // Bit for bit: what is scored and what is compared are the same numbers.
      expect(ranked.map(({ standing }) => standing)).toEqual(full.map(({ standing }) => standing));
    }
  });

  it('puts a print with the same red before white thread, and a classic before a neon', () => {
    const paper = (base: string, hex: string, ...inks: [string, number][]) =>
      handSide({ base: base as 'white', hex, inks });
    const red = paper('white', '#fbfaf5', ['#c8363c', 0.3]);
    const [first] = rank(red, [
      sideOfPlain(plainOf({ name: 'thread', kind: 'thread', hex: '#fbfaf5' })),
      paper('white', '#fbfaf5', ['#c8363c', 0.15]),
    ]);
    expect(first!.index).toBe(1);
    const navy = paper('cream', '#f3e8ce', ['#22355a', 0.3]);
    const classic = paper('cream', '#f3e8ce', ['#a14a35', 0.3]);
    const neon = paper('white', '#fbfaf5', ['#39ff14', 0.3], ['#ff2bd0', 0.3]);
    expect(rank(navy, [neon, classic]).map(({ index }) => index)).toEqual([1, 0]);
  });

  it('works a place out once, when it is read', () => {
    const [place] = rank(bunting, [candidates[6]!]);
    expect(place!.reasons).toBe(place!.reasons);
  });

  it('takes candidates written by hand', () => {
    const bare = { base: { id: 'a', hex: '#f1e4c6', kind: 'cream' } } as never;
    const [place] = rank(bunting, [bare]);
    expect(place!.verdict).toBe('holds-together');
    expect(place!.candidate.inks).toEqual([]);
  });

  it('has nothing to say of no candidates, and reasons ready for a first screen', () => {
    expect(rank(bunting, [])).toEqual([]);
    expect(readyPlaces).toBe(24);
  });
});
