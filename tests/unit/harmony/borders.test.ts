import { describe, expect, it } from 'vitest';
import { hueCounts } from '../../../src/harmony/measure/hue-counts.ts';
import { measureSide } from '../../../src/harmony/measure/measured.ts';
import { pairOf } from '../../../src/harmony/measure/pair.ts';
import { takeSide } from '../../../src/harmony/measure/take-side.ts';
import {
  baseQuarrelWeight,
  brightMutedWeight,
  nearMissesOf,
  straysOf,
} from '../../../src/harmony/rules/troubles.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { handSide } from '../../support/sides.ts';
import { colour as c, onWhite } from './trade-colours.ts';

/** On either side of each border that a trouble has, and in the middle of what lies between: all of them are ours. */

const held = (anchor: Side, candidate: Side, strip = false) =>
  pairOf(
    measureSide(takeSide(anchor, 'anchor'), 'anchor'),
    measureSide(takeSide(candidate, 'candidate'), 'candidate'),
    'apart',
    strip,
  );

describe('two light grounds', () => {
  it('quarrel from 4 apart in b*, in full from 10', () => {
    const weight = (deltaB: number) => baseQuarrelWeight(deltaB, 5, false, false);
    expect(weight(4)).toBe(0);
    expect(weight(4.001)).toBeCloseTo(0.2, 3);
    expect(weight(-7)).toBeCloseTo(0.375, 9);
    expect(weight(9.9)).toBeLessThan(0.55);
    expect(weight(10)).toBeCloseTo(0.55, 9);
    expect(weight(14)).toBeCloseTo(0.55, 9);
  });

  it('do not quarrel under ΔE₀₀ 3, and less where one is a plain or a strip lies between', () => {
    expect(baseQuarrelWeight(7, 2.99, false, false)).toBe(0);
    expect(baseQuarrelWeight(7, 3, true, false)).toBeCloseTo(0.375 * 0.6, 9);
    expect(baseQuarrelWeight(7, 3, false, true)).toBeCloseTo(0.375 * 0.6, 9);
    expect(baseQuarrelWeight(7, 3, true, true)).toBeCloseTo(0.375 * 0.36, 9);
  });
});

describe('bright against muted', () => {
  it('weighs from 30 apart in C*ab and 0.3 in saturation, in full from 55 and 0.48', () => {
    expect(brightMutedWeight(30, 0.48)).toBe(0);
    expect(brightMutedWeight(55, 0.3)).toBe(0);
    expect(brightMutedWeight(30.001, 0.48)).toBeCloseTo(0.15, 3);
    expect(brightMutedWeight(55, 0.30001)).toBeCloseTo(0.15, 3);
    expect(brightMutedWeight(42.5, 0.48)).toBeCloseTo(0.315, 9);
    expect(brightMutedWeight(-55, -0.39)).toBeCloseTo(0.315, 9);
    expect(brightMutedWeight(55, 0.48)).toBeCloseTo(0.48, 9);
    expect(brightMutedWeight(80, 0.9)).toBeCloseTo(0.48, 9);
  });

  it('weighs nothing where one number says brighter and the other more muted', () => {
    expect(brightMutedWeight(55, -0.48)).toBe(0);
  });
});

describe('a near miss', () => {
  it('keeps 0.45 of its weight behind a strip', () => {
    const [anchor, candidate] = [handSide(onWhite([c.coral, 0.3])), handSide(onWhite([c.red, 0.3]))];
    const [bare] = nearMissesOf(held(anchor, candidate));
    const [behind] = nearMissesOf(held(anchor, candidate, true));
    expect(bare!.weight).toBeGreaterThan(0.1);
    expect(behind!.weight / bare!.weight).toBeCloseTo(0.45, 9);
  });
});

describe('an ink that nothing answers', () => {
  const anchor = handSide(onWhite([c.navy, 0.3]));
  const plums = (share: number, ...more: readonly (readonly [string, number])[]) =>
    straysOf(held(anchor, handSide(onWhite([c.raspberry, share], ...more)))).find(
      ({ ink }) => ink.id === 'b',
    );

  it('is a stray from a share of 1 %', () => {
    expect(plums(0.0099)).toBeUndefined();
    expect(plums(0.0101)).toBeDefined();
  });

  it('weighs 0.3 of that where it is under 5 % and sits opposite one of its own sheet', () => {
    const opposite = [c.leaf, 0.2] as const;
    const [alone, beside] = [plums(0.04)!, plums(0.04, opposite)!];
    expect(alone.beside).toBeNull();
    expect(beside.beside!.id).toBe('c');
    expect(beside.weight / alone.weight).toBeCloseTo(0.3, 9);
    expect(plums(0.0499, opposite)!.beside).not.toBeNull();
    expect(plums(0.0501, opposite)!.beside).toBeNull();
  });
});

describe('a hue', () => {
  const at = (chroma: number, hue: number) =>
    hueCounts({
      l: 60,
      a: chroma * Math.cos((hue * Math.PI) / 180),
      b: chroma * Math.sin((hue * Math.PI) / 180),
    });

  it('comes to count by thirds, 1.5, 3 and 4.5 ΔE₀₀ away from grey', () => {
    // A grey ends at C*ab 6 here; a step of ΔE₀₀ 1 is 1 + 0.045 C*ab long.
    const thirds = [5.9, 7.8, 8.5, 10, 10.5, 13, 13.5].map((chroma) => Math.round(3 * at(chroma, 200)));
    expect(thirds).toEqual([0, 0, 1, 1, 2, 2, 3]);
  });

  it('counts in full above C*ab 48, and below that only clear of kraft', () => {
    expect(at(47.9, 73)).toBeLessThan(1);
    expect(at(48.1, 73)).toBe(1);
    expect(at(47.9, 140)).toBe(1);
  });
});
