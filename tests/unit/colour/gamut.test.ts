import { clampChroma } from 'culori';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hexFromOklch, isInSrgb, mapToSrgb, maxChroma } from '../../../src/colour/gamut.ts';
import { hueDistanceDeg, oklchFromHex, oklchFromRgb } from '../../../src/colour/spaces.ts';

const oklch = fc.record({
  l: fc.double({ min: -0.1, max: 1.1, noNaN: true }),
  c: fc.double({ min: 0, max: 0.5, noNaN: true }),
  h: fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true }),
});

describe('mapping into sRGB', () => {
  test('ends inside, keeps lightness and hue, and only ever lowers chroma', () => {
    fc.assert(
      fc.property(oklch, (colour) => {
        const { rgb } = mapToSrgb(colour);
        for (const v of Object.values(rgb)) {
          expect(v).toBeGreaterThanOrEqual(0);
          expect(v).toBeLessThanOrEqual(1);
        }
        const back = oklchFromRgb(rgb);
        expect(back.c).toBeLessThanOrEqual(colour.c + 1e-3);
        if (colour.l > 0 && colour.l < 1) {
          expect(Math.abs(back.l - colour.l)).toBeLessThan(2e-3);
          if (back.c > 0.02 && colour.l > 0.05) expect(hueDistanceDeg(back.h!, colour.h)).toBeLessThan(0.5);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('leaves every colour of the screen as it is and says so', () => {
    for (let n = 0; n < 1 << 24; n += 4099) {
      const hex = `#${n.toString(16).padStart(6, '0')}`;
      expect(mapToSrgb(oklchFromHex(hex))).toMatchObject({ hex, mapped: false });
    }
  });

  test.each(['#ffffff', '#000000', '#ff0000', '#00ff00', '#0000ff', '#ffff00', '#ff00ff', '#00ffff'])(
    'leaves the corner %s as it is',
    (hex) => expect(mapToSrgb(oklchFromHex(hex))).toMatchObject({ hex, mapped: false }),
  );

  test('says when chroma was given up', () => {
    expect(mapToSrgb({ l: 0.7, c: 0.35, h: 150 }).mapped).toBe(true);
    expect(isInSrgb({ l: 0.7, c: 0.35, h: 150 })).toBe(false);
    expect(isInSrgb({ l: 0.7, c: 0.1, h: 150 })).toBe(true);
    expect(hexFromOklch({ l: 0.7, c: 0.1, h: 150 })).toMatch(/^#[0-9a-f]{6}$/);
  });

  test('makes white above and black below, and greys of a colour without hue', () => {
    expect(mapToSrgb({ l: 1.2, c: 0.1, h: 20 })).toMatchObject({ hex: '#ffffff', mapped: true });
    expect(mapToSrgb({ l: 1, c: 0, h: null })).toMatchObject({ hex: '#ffffff', mapped: false });
    expect(mapToSrgb({ l: -0.1, c: 0.1, h: 20 })).toMatchObject({ hex: '#000000', mapped: true });
    expect(mapToSrgb({ l: 0, c: 0, h: null })).toMatchObject({ hex: '#000000', mapped: false });
    expect(mapToSrgb({ l: 0.5998708, c: 0, h: null })).toMatchObject({ hex: '#808080', mapped: false });
  });

  test('finds at least the chroma that an independent bisection finds, on every hue', () => {
    for (let h = 0; h < 360; h += 3)
      for (const l of [0.2, 0.4, 0.6, 0.8, 0.95]) {
        const theirs = clampChroma({ mode: 'oklch', l, c: 0.4, h }, 'oklch', 'rgb') as { c: number };
        expect(maxChroma(l, h)).toBeGreaterThan(theirs.c - 2e-3);
      }
  });
});

describe('around sRGB blue, near 264°, where the gamut is hollow', () => {
  test('reaches blue itself, though part of the way to it lies outside', () => {
    const blue = oklchFromHex('#0000ff');
    expect(mapToSrgb({ ...blue, c: 0.4 }).hex).toBe('#0000ff');
    expect(maxChroma(blue.l, blue.h!)).toBeCloseTo(blue.c, 3);
  });

  test.each([258, 260, 262, 263, 263.5, 264, 264.5, 265, 266, 268, 270])(
    'keeps hue %s° at every lightness',
    (h) => {
      for (let l = 0.1; l < 0.99; l += 0.02) {
        const { rgb } = mapToSrgb({ l, c: 0.4, h });
        const back = oklchFromRgb(rgb);
        expect(Math.abs(back.l - l)).toBeLessThan(2e-3);
        expect(hueDistanceDeg(back.h!, h)).toBeLessThan(0.3);
        expect(back.c).toBeGreaterThan(0.005);
      }
    },
  );
});

test('the largest chroma is none at white and black', () => {
  expect(maxChroma(0, 30)).toBe(0);
  expect(maxChroma(1, 30)).toBe(0);
  expect(maxChroma(Number.NaN, 30)).toBe(0);
});
