import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as difference from '../../../src/colour/difference.ts';

const lab = fc.record({
  l: fc.double({ min: 0, max: 100, noNaN: true }),
  a: fc.double({ min: -120, max: 120, noNaN: true }),
  b: fc.double({ min: -120, max: 120, noNaN: true }),
});

describe('every difference', () => {
  test.each([
    ['ΔE₀₀', difference.deltaE2000],
    ['ΔE*ab', difference.deltaE76],
    ['the one without a gap', difference.deltaENoSeparation],
    ['the one across a gap', difference.deltaEApart],
    ['ΔE OK', difference.deltaEOk],
  ] as const)('%s is the same both ways, never negative, and none from a colour to itself', (_, measure) => {
    fc.assert(
      fc.property(lab, lab, (a, b) => {
        const there = measure(a, b);
        expect(there).toBeGreaterThanOrEqual(0);
        expect(measure(b, a)).toBeCloseTo(there, 6);
        expect(measure(a, a)).toBeLessThan(1e-6);
      }),
    );
  });

  test('grows with a and b doubled in OKLab, and not with lightness', () => {
    const a = { l: 0.5, a: 0.1, b: 0 };
    expect(difference.deltaEOk(a, { l: 0.7, a: 0.1, b: 0 }, 2)).toBeCloseTo(0.2, 12);
    expect(difference.deltaEOk(a, { l: 0.5, a: 0.2, b: 0 }, 2)).toBeCloseTo(0.2, 12);
  });
});

describe('CIEDE2000 at its edges', () => {
  test('takes greys, and a grey beside a colour', () => {
    expect(difference.deltaE2000({ l: 50, a: 0, b: 0 }, { l: 50, a: 0, b: 0 })).toBe(0);
    expect(difference.deltaE2000({ l: 50, a: 0, b: 0 }, { l: 50, a: -1, b: 2 })).toBeCloseTo(2.3669, 4);
    expect(difference.deltaE2000({ l: 50, a: -1, b: 2 }, { l: 50, a: 0, b: 0 })).toBeCloseTo(2.3669, 4);
  });

  test('jumps where the hue difference crosses 180°, which is why nothing is ranked by it above 20', () => {
    const red = { l: 50, a: 60, b: 0 };
    const almost = difference.deltaE2000(red, { l: 50, a: -60, b: 0.5 });
    const over = difference.deltaE2000(red, { l: 50, a: -60, b: -0.5 });
    expect(Math.abs(almost - over)).toBeGreaterThan(1);
    expect(Math.min(almost, over)).toBeGreaterThan(20);
  });

  test('is right within a hair of opposite hues, on both sides', () => {
    for (const b of [1e-9, -1e-9, 1e-3, -1e-3])
      expect(difference.deltaE2000({ l: 50, a: 2.5, b: 0 }, { l: 50, a: -2.5, b })).toBeGreaterThan(4);
  });
});
