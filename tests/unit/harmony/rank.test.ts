import { describe, expect, it } from 'vitest';
import { ciede2000At } from '../../../src/colour/ciede2000.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { lineWidth } from '../../../src/harmony/measure/fade.ts';
import { farDeltaE } from '../../../src/harmony/measure/link-kind.ts';
import { takeSide } from '../../../src/harmony/measure/take-side.ts';
import { byStanding, rank, readyPlaces } from '../../../src/harmony/ranking/rank.ts';
import { scorerOf } from '../../../src/harmony/ranking/score.ts';
import { emptyLines, linesOf, linesOfAll } from '../../../src/harmony/ranking/score-lines.ts';
import { surelyBeyond } from '../../../src/harmony/ranking/score-pair.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';
import { linkLimits } from '../../../src/harmony/thresholds.ts';
import { chanceLab, chanceOf, chancePair, labSide } from '../../support/chance.ts';
import { handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';

const bunting = handSide(tradeCases[0]!.anchor);
const candidates = tradeCases.map(({ candidate }) => handSide(candidate));

describe('a ranking', () => {
  it('decides by the very numbers of a comparison, bit for bit', () => {
    const chance = chanceOf(7);
    for (let n = 0; n < 1500; n++) {
      const pair = chancePair(chance, 6);
      const [anchor, candidate] = pair.of(pair.labs);
      const distance = chance() < 0.4 ? 'touching' : 'apart';
      const strip = chance() < 0.2;
      const { verdict, standing } = compare(anchor, candidate, { distance, strip });
      const score = scorerOf(takeSide(anchor, 'anchor'), distance, strip)(linesOf(candidate, emptyLines()));
      expect({ ...score, verdict: verdictOrder[score.verdict] }).toEqual({ verdict, ...standing });
    }
  });

  it('does so for a paper of more inks than it has bits for', () => {
    const chance = chanceOf(8);
    const many = (count: number) =>
      labSide(
        Array.from({ length: count }, () => chanceLab(chance)),
        Array.from({ length: count }, () => 0.5 / count),
        Math.floor(chance() * 5),
      );
    for (let n = 0; n < 12; n++) {
      const [anchor, candidate] = [many(30 + n), many(4)];
      const { verdict, standing } = compare(anchor, candidate);
      const score = scorerOf(takeSide(anchor, 'anchor'), 'apart', false)(linesOf(candidate, emptyLines()));
      expect({ ...score, verdict: verdictOrder[score.verdict] }).toEqual({ verdict, ...standing });
    }
  });

  it('passes over no two inks that differ by less than what is asked', () => {
    const chance = chanceOf(21);
    const [one, other] = [new Float64Array(lineWidth), new Float64Array(lineWidth)];
    const put = (line: Float64Array, l: number, a: number, b: number) => {
      line.set([l, a, b, Math.hypot(a, b)]);
    };
    let [passed, near] = [0, 0];
    for (let n = 0; n < 200_000; n++) {
      const turn = chance() * 2 * Math.PI;
      const [l, c] = [100 * chance(), 120 * chance()];
      const [x, y] = [c * Math.cos(turn), c * Math.sin(turn)];
      const step = () => (chance() - 0.5) * (4 + 0.6 * c);
      put(one, l, x, y);
      put(other, Math.min(100, Math.max(0, l + step())), x + step(), y + step());
      const deltaE = ciede2000At(one, 0, other, 0, false);
      for (const both of [true, false]) {
        const most = both ? farDeltaE : linkLimits.repeatApart;
        const beyond = surelyBeyond(one, 0, other, 0, most);
        if (beyond && deltaE <= most) expect.fail(`${one.slice(0, 3)} and ${other.slice(0, 3)}: ${deltaE}`);
        if (beyond) passed++;
        else if (deltaE > most) near++;
      }
    }
    // And it is worth asking: most of those that lie beyond are seen to.
    expect(passed).toBeGreaterThan(2 * near);
  });

  it('stands in the written order: verdict, worst trouble, anchor answered, candidate intruding, order given', () => {
    const ranked = rank(bunting, candidates);
    expect(ranked).toHaveLength(candidates.length);
    expect(new Set(ranked.map(({ index }) => index)).size).toBe(candidates.length);
    const key = ({ verdict, standing, index }: (typeof ranked)[number]) =>
      [
        verdictOrder.indexOf(verdict),
        standing!.worst,
        -standing!.answered,
        standing!.intrudes,
        index,
      ] as const;
    for (let i = 1; i < ranked.length; i++) {
      const [before, after] = [key(ranked[i - 1]!), key(ranked[i]!)];
      const at = before.findIndex((value, k) => value !== after[k]);
      expect(before[at]).toBeLessThan(after[at]!);
    }
  });

  it('decides each step of that order by the step before it being equal', () => {
    const place = (
      verdict: (typeof verdictOrder)[number],
      worst: number,
      answered: number,
      intrudes: number,
      index: number,
    ) => ({
      verdict,
      index,
      standing: { worst, answered, intrudes },
    });
    const best = place('holds-together', 0.1, 0.9, 0.1, 5);
    expect(byStanding(best, place('needs-a-bridge', 0, 1, 0, 0))).toBeLessThan(0);
    expect(byStanding(best, place('holds-together', 0.2, 1, 0, 0))).toBeLessThan(0);
    expect(byStanding(best, place('holds-together', 0.1, 0.8, 0, 0))).toBeLessThan(0);
    expect(byStanding(best, place('holds-together', 0.1, 0.9, 0.2, 0))).toBeLessThan(0);
    expect(byStanding(best, place('holds-together', 0.1, 0.9, 0.1, 6))).toBeLessThan(0);
    expect(byStanding(best, best)).toBe(0);
  });

  it('keeps equal candidates in the order given', () => {
    const twins = rank(bunting, [candidates[6]!, candidates[0]!, candidates[6]!, candidates[0]!]);
    expect(twins.map(({ index }) => index)).toEqual([1, 3, 0, 2]);
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

  it('works a place out once, when it is read', () => {
    const [place] = rank(bunting, [candidates[6]!]);
    expect(place!.reasons).toBe(place!.reasons);
  });

  it('measures a list of sides once, and again where one of them has been changed for another', () => {
    const list = [...candidates];
    const first = linesOfAll(list);
    expect(linesOfAll(list)).toBe(first);
    list[0] = candidates[6]!;
    expect(linesOfAll(list)).not.toBe(first);
    expect(rank(bunting, list).findIndex(({ index }) => index === 0)).toBeGreaterThan(0);
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
