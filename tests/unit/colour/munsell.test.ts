import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  formatMunsell,
  labFromMunsell,
  munsellFromLab,
  munsellHueSteps,
  parseMunsell,
} from '../../../src/colour/munsell/munsell.ts';
import { isccName } from '../../../src/colour/naming/names.ts';
import { labFromHex, labFromRgb } from '../../../src/colour/spaces.ts';

const byte = fc.integer({ min: 0, max: 255 }).map((n) => n / 255);

describe('Munsell', () => {
  test('comes back to the same CIELAB from every colour of the screen', () => {
    fc.assert(
      fc.property(byte, byte, byte, (r, g, b) => {
        const lab = labFromRgb({ r, g, b });
        const munsell = munsellFromLab(lab);
        const back = labFromMunsell(munsell);
        expect(Math.hypot(lab.l - back.l, lab.a - back.a, lab.b - back.b)).toBeLessThan(
          munsell.hue === null ? 0.02 : 1e-6,
        );
        expect(munsell.value).toBeGreaterThanOrEqual(0);
        expect(munsell.value).toBeLessThanOrEqual(10);
        if (munsell.hue !== null) {
          expect(munsell.hue).toBeGreaterThanOrEqual(0);
          expect(munsell.hue).toBeLessThan(100);
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('has no hue in a grey, and is N 0 and N 10 at the ends', () => {
    expect(munsellFromLab(labFromHex('#000000'))).toEqual({ hue: null, value: 0, chroma: 0 });
    expect(formatMunsell(munsellFromLab(labFromHex('#ffffff')))).toBe('N 10/');
    expect(munsellFromLab(labFromHex('#808080')).hue).toBeNull();
  });

  test('is written and read as printers write it', () => {
    expect(formatMunsell({ hue: 5, value: 4, chroma: 14 })).toBe('5R 4/14');
    expect(formatMunsell({ hue: 12.53, value: 6.24, chroma: 8.06 })).toBe('2.5YR 6.2/8.1');
    expect(formatMunsell({ hue: 0, value: 5, chroma: 6 })).toBe('10RP 5/6');
    expect(formatMunsell({ hue: 99.98, value: 5, chroma: 6 })).toBe('10RP 5/6');
    expect(formatMunsell({ hue: 10, value: 5, chroma: 6 })).toBe('10R 5/6');
    expect(formatMunsell({ hue: 40, value: 5, chroma: 0.04 })).toBe('N 5/');
    expect(parseMunsell('10RP 5/6')).toEqual({ hue: 0, value: 5, chroma: 6 });
    expect(parseMunsell('2.5 yr 6.2 / 8.1')).toEqual({ hue: 12.5, value: 6.2, chroma: 8.1 });
    expect(parseMunsell('N 5/')).toEqual({ hue: null, value: 5, chroma: 0 });
    expect(parseMunsell('N5')).toEqual({ hue: null, value: 5, chroma: 0 });
    for (const text of ['', '5Q 4/2', '11R 4/2', '5R 11/2', 'N 12/', '5R 4'])
      expect(parseMunsell(text)).toBeUndefined();
  });

  test('reads back what it wrote, to the digits that it wrote', () => {
    const tenths = (max: number) => fc.integer({ min: 1, max: max * 10 }).map((n) => n / 10);
    fc.assert(
      fc.property(tenths(100), tenths(10), tenths(30), (hue, value, chroma) => {
        const read = parseMunsell(formatMunsell({ hue, value, chroma }))!;
        expect(munsellHueSteps(read.hue!, hue)).toBeLessThan(1e-9);
        expect([read.value, read.chroma]).toEqual([value, chroma]);
      }),
    );
  });

  test('counts hue steps the short way round', () => {
    expect(munsellHueSteps(98, 3)).toBe(5);
    expect(munsellHueSteps(5, 55)).toBe(50);
    expect(munsellHueSteps(20, 90)).toBe(30);
  });

  test('goes on beyond the colours of the renotation without a break', () => {
    const inside = labFromMunsell({ hue: 30, value: 8.999, chroma: 4 });
    const outside = labFromMunsell({ hue: 30, value: 9.001, chroma: 4 });
    expect(Math.hypot(inside.l - outside.l, inside.a - outside.a, inside.b - outside.b)).toBeLessThan(0.05);
    const far = labFromMunsell({ hue: 30, value: 5, chroma: 60 });
    expect(Math.hypot(far.a, far.b)).toBeGreaterThan(100);
    expect(labFromMunsell({ hue: 30, value: 0.5, chroma: 1 }).l).toBeLessThan(6);
  });

  test('tells a not-quite raspberry from a coral', () => {
    expect(isccName(labFromHex('#ee6c5b'))).toMatch(/reddish orange|yellowish pink|red/);
    expect(isccName(labFromHex('#b3295a'))).toMatch(/purplish red/);
  });
});
