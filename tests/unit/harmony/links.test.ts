import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/harmony/compare.ts';
import { kindOf } from '../../../src/harmony/measure/link-kind.ts';
import { farColours } from '../../support/far-colours.ts';
import { handInk, handSide } from '../../support/sides.ts';
import { colour as c } from './trade-colours.ts';

describe('the kind of a link', () => {
  it('is a near miss from 1.5 to 7 hue steps below 2 value steps, as far as ΔE₀₀ 16, and beyond it kin', () => {
    const near = { ...farColours, deltaE00: 10 };
    for (const hueSteps of [1.5, 4, 7]) {
      expect(kindOf({ ...near, hueSteps, valueSteps: 1.99 }, 5)).toBe('near miss');
      expect(kindOf({ ...near, hueSteps, valueSteps: 1.99, deltaE00: 16.1 }, 5)).toBe('neighbour');
    }
    expect(kindOf({ ...near, hueSteps: 1.49 }, 5)).toBe('tonal');
    expect(kindOf({ ...near, hueSteps: 7.01 }, 5)).toBe('neighbour');
  });

  it('is a repeat up to 5 apart and up to 3 touching, whatever else is true of the two', () => {
    expect(kindOf({ ...farColours, deltaE00: 5 }, 5)).toBe('repeat');
    expect(kindOf({ ...farColours, deltaE00: 5.01 }, 5)).toBe('unrelated');
    expect(kindOf({ ...farColours, deltaE00: 4, chromatic: false }, 5)).toBe('repeat');
    expect(kindOf({ ...farColours, deltaE00: 4, hueSteps: 2 }, 3)).toBe('near miss');
  });

  it('is tonal under 1.5 hue steps, and up to 7 where one is 2 values lighter', () => {
    expect(kindOf({ ...farColours, hueSteps: 0 }, 5)).toBe('tonal');
    expect(kindOf({ ...farColours, hueSteps: 7, valueSteps: 2 }, 5)).toBe('tonal');
    expect(kindOf({ ...farColours, hueSteps: 7.1, valueSteps: 2 }, 5)).toBe('neighbour');
  });

  it('is a neighbour up to 17 hue steps, then an opposite within 5 of half the circle, else unrelated', () => {
    expect(kindOf({ ...farColours, hueSteps: 17 }, 5)).toBe('neighbour');
    expect(kindOf({ ...farColours, hueSteps: 17.1 }, 5)).toBe('unrelated');
    expect(kindOf({ ...farColours, hueSteps: 40, offSteps: 5 }, 5)).toBe('opposite');
    expect(kindOf({ ...farColours, hueSteps: 40, offSteps: 5.01 }, 5)).toBe('unrelated');
  });

  it('is unrelated where either has no hue that counts', () => {
    expect(kindOf({ ...farColours, chromatic: false, hueSteps: 3 }, 5)).toBe('unrelated');
    expect(kindOf({ ...farColours, hueSteps: Number.NaN }, 5)).toBe('unrelated');
  });
});

describe('the links of two sides', () => {
  it('name every pair, bases included, by order: the anchor’s row by row', () => {
    const found = compare(
      handSide({ base: 'cream', hex: c.cream, inks: [[c.navy, 0.2]] }),
      handSide({
        base: 'white',
        hex: c.white,
        inks: [
          [c.coral, 0.2],
          [c.aqua, 0.1],
        ],
      }),
    );
    expect(found.links.map(({ anchorInk, candidateInk }) => anchorInk + candidateInk)).toEqual([
      'Aa',
      'Ab',
      'Ac',
      'Ba',
      'Bb',
      'Bc',
    ]);
  });

  it('call inks by their order, whatever ids they came with', () => {
    const side = handSide({ base: 'white', hex: c.white, inks: [[c.coral, 0.2]] }, true);
    const found = compare({ ...side, inks: [handInk(c.coral, 'a', 0.2)] }, side);
    expect(found.anchor.inks[0]!.id).toBe('B');
    expect(found.candidate.inks[0]!.id).toBe('b');
    expect(found.links.at(-1)).toMatchObject({ anchorInk: 'B', candidateInk: 'b', kind: 'repeat' });
  });

  it('give differences as candidate minus anchor', () => {
    const found = compare(
      handSide({ base: 'white', hex: '#ffffff' }),
      handSide({ base: 'dark', hex: c.navy }),
    );
    const [link] = found.links;
    expect(link!.dL).toBeLessThan(-60);
    expect(link!.dC).toBeGreaterThan(15);
    expect(link!.dV).toBeLessThan(-6);
  });

  it('have no hue angle where one has no hue, even if a library gave the grey one', () => {
    const grey = handSide({ base: 'white', hex: '#ffffff', inks: [['#808080', 0.3]] });
    const spurious = { ...grey, inks: [{ ...grey.inks[0]!, oklch: [0.6, 2e-8, 89.9] as const }] };
    for (const side of [grey, spurious]) {
      const found = compare(handSide({ base: 'white', hex: c.white, inks: [[c.coral, 0.2]] }), side);
      expect(found.links.at(-1)).toMatchObject({ kind: 'unrelated', hueDeg: null, hueSteps: null });
    }
  });

  it('keep cream, kraft, grey and black out of every relation of hue', () => {
    const neutrals = [c.cream, c.kraft, c.grey, c.black, c.charcoal, c.white];
    const anchor = handSide({ base: 'white', hex: c.white, inks: neutrals.map((hex) => [hex, 0.1]) });
    const strong = [c.coral, c.mustard, c.yellow, c.orange, c.navy, c.violet, c.leaf, c.brown];
    const candidate = handSide({ base: 'white', hex: c.white, inks: strong.map((hex) => [hex, 0.1]) });
    const hued = compare(anchor, candidate).links.filter(({ candidateInk }) => candidateInk !== 'a');
    expect(new Set(hued.map(({ kind }) => kind))).toEqual(new Set(['unrelated']));
  });

  it('say on which wheel an opposite holds', () => {
    const pair = (one: string, other: string) =>
      compare(
        handSide({ base: 'white', hex: c.white, inks: [[one, 0.2]] }),
        handSide({ base: 'white', hex: c.white, inks: [[other, 0.2]] }),
      ).links.at(-1)!;
    expect(pair(c.red, c.forest)).toMatchObject({ kind: 'opposite', wheels: ['painter'] });
    expect(pair(c.coral, c.aqua)).toMatchObject({ kind: 'opposite', wheels: ['eye', 'painter'] });
    expect(pair(c.coral, c.mustard).wheels).toBeUndefined();
  });

  it('judge touching more strictly than apart', () => {
    const sides = [c.aqua, '#6cc4bd'].map((hex) =>
      handSide({ base: 'cream', hex: c.cream, inks: [[hex, 0.2]] }),
    );
    const link = (distance: 'apart' | 'touching') =>
      compare(sides[0]!, sides[1]!, { distance }).links.at(-1)!;
    expect(link('apart').kind).toBe('repeat');
    expect(link('touching').kind).not.toBe('repeat');
    expect(link('apart').deltaE00).toBe(link('touching').deltaE00);
  });
});

describe('sides written by hand', () => {
  it('may leave out what the engine can do without', () => {
    const bare = { base: { id: 'a', hex: c.cream, kind: 'cream' } } as never;
    const found = compare(bare, bare);
    expect(found.verdict).toBe('holds-together');
    expect(found.links).toHaveLength(1);
    expect(found.anchor.base).toMatchObject({ id: 'A', name: '', share: 1 });
    expect(found.anchor.light.known).toBe(false);
  });

  it('may give a colour as OKLCH alone', () => {
    const side = { base: { id: 'a', oklch: [0.93, 0.04, 85], share: 1, kind: 'cream' }, inks: [] } as never;
    expect(compare(side, side).anchor.base.hex).toMatch(/^#[0-9a-f]{6}$/);
  });

  it('are refused where an ink has no colour at all', () => {
    const side = { base: { id: 'q', share: 1, kind: 'white' }, inks: [] } as never;
    expect(() => compare(side, side)).toThrow(RangeError);
    expect(() => compare(side, side)).toThrow('Ink q has no colour');
  });

  it('may have shares that do not sum to 1', () => {
    const once = handSide({
      base: 'cream',
      hex: c.cream,
      inks: [
        [c.coral, 0.2],
        [c.navy, 0.1],
      ],
    });
    const side = (k: number) => ({
      ...once,
      base: { ...once.base, share: once.base.share * k },
      inks: once.inks.map((ink) => ({ ...ink, share: ink.share * k })),
    });
    const reasons = (k: number) =>
      compare(side(k), side(k)).reasons.map(({ kind, weighs }) => [kind, weighs.toFixed(9)]);
    expect(reasons(100)).toEqual(reasons(1));
    const none = compare(side(0), side(0));
    expect(none.verdict).toBe('holds-together');
  });
});
