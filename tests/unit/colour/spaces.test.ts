import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { angleDeg, hueDistanceDeg, hueTurnDeg, wrapDeg } from '../../../src/colour/hue.ts';
import { linearFromOklab, oklabFromLinear } from '../../../src/colour/oklab-linear.ts';
import * as spaces from '../../../src/colour/spaces.ts';

const channel = fc.integer({ min: 0, max: 1023 }).map((n) => n / 1023);
const rgb = fc.record({ r: channel, g: channel, b: channel });
const degrees = fc.double({ min: -1e4, max: 1e4, noNaN: true });

describe('hex', () => {
  test('reads three and six digits, with or without the sign, in either case', () => {
    expect(spaces.parseHex('#fff')).toEqual({ r: 1, g: 1, b: 1 });
    expect(spaces.parseHex(' D7263D ')).toEqual(spaces.parseHex('#d7263d'));
    expect(spaces.parseHex('#08f')).toEqual(spaces.parseHex('#0088ff'));
  });

  test.each(['', '#', '#ff', '#ffff', '#12345g', 'red', '#1234567'])('does not read "%s"', (text) => {
    expect(spaces.parseHex(text)).toBeUndefined();
    expect(() => spaces.rgbFromHex(text)).toThrow(`"${text}"`);
  });

  test('comes back as it went in', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 0xffffff }), (n) => {
        const hex = `#${n.toString(16).padStart(6, '0')}`;
        expect(spaces.hexFromRgb(spaces.rgbFromHex(hex))).toBe(hex);
      }),
    );
  });

  test('clamps what lies outside', () => {
    expect(spaces.hexFromRgb({ r: -0.2, g: 1.7, b: 0.5 })).toBe('#00ff80');
  });
});

describe('round trips', () => {
  const near = (a: object, b: object, within: number) => {
    for (const [name, v] of Object.entries(a))
      expect(Math.abs(v - (b as Record<string, number>)[name]!)).toBeLessThan(within);
  };

  test('linear light to OKLab and back is the way through gamma-encoded sRGB, cut short', () => {
    fc.assert(
      fc.property(rgb, (colour) => {
        const linear = spaces.linearFromRgb(colour);
        const lab = oklabFromLinear(linear.r, linear.g, linear.b);
        near(lab, spaces.oklabFromRgb(colour), 1e-7);
        const [r, g, b] = linearFromOklab(lab.l, lab.a, lab.b);
        near({ r, g, b }, linear, 1e-12);
      }),
    );
  });

  test('through XYZ, CIELAB, OKLab, OKLCH and linear light end where they began', () => {
    fc.assert(
      fc.property(rgb, (colour) => {
        near(colour, spaces.rgbFromXyz(spaces.xyzFromRgb(colour)), 1e-9);
        near(colour, spaces.rgbFromLab(spaces.labFromRgb(colour)), 1e-9);
        near(colour, spaces.rgbFromOklab(spaces.oklabFromRgb(colour)), 1e-9);
        near(colour, spaces.rgbFromOklch(spaces.oklchFromRgb(colour)), 1e-5);
        near(colour, spaces.rgbFromLinear(spaces.linearFromRgb(colour)), 1e-12);
        const lab = spaces.labFromRgb(colour);
        near(lab, spaces.labFromXyz(spaces.xyzFromLab(lab)), 1e-9);
        near(lab, spaces.labFromOklch(spaces.oklchFromLab(lab)), 1e-2);
        near(spaces.oklabFromRgb(colour), spaces.oklabFromLab(lab), 1e-9);
        near(spaces.oklabFromRgb(colour), spaces.oklabFromXyz(spaces.xyzFromRgb(colour)), 1e-9);
      }),
    );
  });

  test('of a transfer curve hold below zero and above one', () => {
    fc.assert(
      fc.property(fc.double({ min: -2, max: 3, noNaN: true }), (v) => {
        expect(spaces.encodedFromLinear(spaces.linearFromEncoded(v))).toBeCloseTo(v, 6);
      }),
    );
  });
});

describe('hue', () => {
  test('is null for every grey, and for nothing that has a colour', () => {
    for (let n = 0; n < 256; n++) {
      const hex = `#${n.toString(16).padStart(2, '0').repeat(3)}`;
      expect(spaces.oklchFromHex(hex).h).toBeNull();
    }
    expect(spaces.oklchFromHex('#808081').h).not.toBeNull();
    expect(spaces.oklchFromOklab({ l: 0.5, a: 4e-6, b: 0 }).h).toBeNull();
    expect(spaces.oklchFromOklab({ l: 0.5, a: 5e-6, b: 0 }).h).toBe(0);
  });

  test('lies in [0, 360), and a turn of the circle changes nothing', () => {
    fc.assert(
      fc.property(degrees, degrees, (a, b) => {
        expect(wrapDeg(a)).toBeGreaterThanOrEqual(0);
        expect(wrapDeg(a)).toBeLessThan(360);
        const apart = hueDistanceDeg(a, b);
        expect(apart).toBeGreaterThanOrEqual(0);
        expect(apart).toBeLessThanOrEqual(180);
        expect(hueDistanceDeg(b, a)).toBeCloseTo(apart, 9);
        expect(hueDistanceDeg(a + 360, b)).toBeCloseTo(apart, 6);
        expect(Math.abs(hueTurnDeg(a, b))).toBeCloseTo(apart, 6);
      }),
    );
    expect(wrapDeg(-1e-18)).toBe(0);
    expect(hueTurnDeg(350, 10)).toBe(20);
    expect(hueTurnDeg(10, 350)).toBe(-20);
    expect(angleDeg(0, -1)).toBe(270);
  });

  test('keeps its tuple', () => {
    const oklch = spaces.oklchFromHex('#ee6c5b');
    expect(spaces.oklchFromTuple(spaces.tupleFromOklch(oklch))).toEqual(oklch);
    expect(spaces.oklabFromOklch({ l: 0.5, c: 0, h: null })).toEqual({ l: 0.5, a: 0, b: 0 });
  });
});

test('CIELAB chroma and hue are those of the plane', () => {
  expect(spaces.chromaAb({ l: 50, a: 3, b: -4 })).toBe(5);
  expect(spaces.hueAbDeg({ l: 50, a: 0, b: 7 })).toBe(90);
});
