import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { hueDistanceDeg, oklchFromHex } from '../../../src/colour/spaces.ts';
import {
  hueFromPainter,
  painterFromHue,
  painterSteps,
  placeOnWheel,
  wheelDistanceDeg,
} from '../../../src/colour/wheels.ts';

const degrees = fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true });
const hueOf = (hex: string) => oklchFromHex(hex).h!;

describe('the painter’s wheel', () => {
  test('comes back from every hue and every place within a hundredth of a degree', () => {
    fc.assert(
      fc.property(degrees, (d) => {
        expect(hueDistanceDeg(hueFromPainter(painterFromHue(d)), d)).toBeLessThan(0.01);
        expect(hueDistanceDeg(painterFromHue(hueFromPainter(d)), d)).toBeLessThan(0.01);
      }),
      { numRuns: 2000 },
    );
  });

  test('goes round once, always the same way', () => {
    let turned = 0;
    for (let p = 0; p < 360; p += 0.25) {
      const step = (hueFromPainter(p) - hueFromPainter(p + 0.25) + 360) % 360;
      expect(step).toBeGreaterThan(0);
      expect(step).toBeLessThan(2);
      turned += step;
    }
    expect(turned).toBeCloseTo(360, 6);
  });

  test('puts its twelve steps thirty degrees apart, yellow first', () => {
    expect(painterSteps.map(({ name }) => name)).toEqual(
      'yellow,yellow-orange,orange,red-orange,red,red-violet,violet,blue-violet,blue,blue-green,green,yellow-green'.split(
        ',',
      ),
    );
    for (const { hueDeg, painterDeg } of painterSteps) {
      expect(hueDistanceDeg(painterFromHue(hueDeg), painterDeg)).toBeLessThan(1e-6);
      expect(hueFromPainter(painterDeg)).toBeCloseTo(hueDeg, 9);
    }
  });

  // Common practice, no source: the complements that colour is taught with.
  test.each([
    ['red and green', '#d7263d', '#2e7d32'],
    ['orange and blue', '#f28500', '#1f4e9c'],
    ['yellow and violet', '#f7d038', '#6f3fa8'],
  ])('sets %s opposite, where the eye’s wheel does not', (_, a, b) => {
    const painter = wheelDistanceDeg(hueOf(a), hueOf(b), 'painter');
    expect(painter).toBeGreaterThan(180 - 18);
    expect(wheelDistanceDeg(hueOf(a), hueOf(b), 'eye')).toBeLessThan(painter);
  });

  test('leaves the eye’s wheel as it is', () => {
    expect(placeOnWheel(370, 'eye')).toBe(10);
    expect(placeOnWheel(18.6, 'painter')).toBeCloseTo(120, 9);
  });
});
