import { describe, expect, it } from 'vitest';
import { lightValueOf } from '../../../src/harmony/measure/extension.ts';

// Source: Goethe's light values as J. Itten teaches them (Kunst der Farbe, 1961): yellow 9, orange 8, red 6, violet 3,
// blue 4, green 6; areas that balance: yellow to violet 1 : 3, orange to blue 1 : 2, red to green 1 : 1.
describe('the contrast of extension', () => {
  const [yellow, orange, red, violet, blue, green] = [0, 60, 120, 180, 240, 300] as const;

  it('gives the six hues of the painter’s wheel their light values', () => {
    expect([yellow, orange, red, violet, blue, green].map(lightValueOf)).toEqual([9, 8, 6, 3, 4, 6]);
  });

  it('balances opposites as taught', () => {
    expect(lightValueOf(violet) / lightValueOf(yellow)).toBeCloseTo(1 / 3, 12);
    expect(lightValueOf(blue) / lightValueOf(orange)).toBeCloseTo(1 / 2, 12);
    expect(lightValueOf(green) / lightValueOf(red)).toBeCloseTo(1, 12);
  });

  it('runs straight between the six, all the way round', () => {
    expect(lightValueOf(30)).toBeCloseTo(8.5, 12);
    expect(lightValueOf(330)).toBeCloseTo(7.5, 12);
    expect(lightValueOf(-30)).toBeCloseTo(7.5, 12);
    expect(lightValueOf(390)).toBeCloseTo(8.5, 12);
  });
});
