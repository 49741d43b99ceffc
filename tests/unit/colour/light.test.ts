import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { adaptationMatrix, adaptXyz } from '../../../src/colour/adaptation.ts';
import { deltaE2000 } from '../../../src/colour/difference.ts';
import { whites } from '../../../src/colour/illuminants.ts';
import { leastSquares } from '../../../src/colour/least-squares.ts';
import { chartLabs, correctLight, lightFromCard, lightFromChart } from '../../../src/colour/light.ts';
import { inverse, product, times } from '../../../src/colour/matrix.ts';
import type { Rgb } from '../../../src/colour/model.ts';
import { labFromRgb, linearFromRgb, rgbFromLab, rgbFromLinear } from '../../../src/colour/spaces.ts';

const chart = chartLabs().map(({ lab }) => linearFromRgb(rgbFromLab(lab)));
/** A lamp: the chart under a light that is redder and dimmer, as the camera's linear numbers. */
const underLamp = ({ r, g, b }: Rgb): Rgb => ({
  r: 0.9 * r + 0.05 * g,
  g: 0.6 * g + 0.02 * r,
  b: 0.35 * b + 0.03 * g,
});

describe('adaptation', () => {
  test('turns one white into the other, by either method', () => {
    for (const method of ['bradford', 'cat16'] as const) {
      const { x, y, z } = adaptXyz(whites.A, whites.A, whites.D65, method);
      expect(x).toBeCloseTo(whites.D65.x, 9);
      expect(y).toBeCloseTo(1, 9);
      expect(z).toBeCloseTo(whites.D65.z, 9);
    }
  });

  test('comes back when it is turned round, and does nothing at degree 0', () => {
    const unit = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(unit, unit, unit, (x, y, z) => {
        const there = adaptXyz({ x, y, z }, whites.D65, whites.A, 'cat16');
        const back = adaptXyz(there, whites.A, whites.D65, 'cat16');
        expect(Math.hypot(back.x - x, back.y - y, back.z - z)).toBeLessThan(1e-9);
        const still = adaptXyz({ x, y, z }, whites.D65, whites.A, 'bradford', 0);
        expect(Math.hypot(still.x - x, still.y - y, still.z - z)).toBeLessThan(1e-12);
      }),
    );
  });

  test('goes half the way in the cones at degree 0.5', () => {
    const none = adaptationMatrix(whites.A, whites.D65, 'cat16', 0);
    const half = adaptationMatrix(whites.A, whites.D65, 'cat16', 0.5);
    const whole = adaptationMatrix(whites.A, whites.D65, 'cat16', 1);
    half.forEach((v, i) => {
      expect(v).toBeCloseTo((none[i]! + whole[i]!) / 2, 9);
    });
  });
});

describe('light from a card', () => {
  test('makes a white card neutral and as light as it is, whatever the lamp', () => {
    for (const kind of ['white card', 'grey card'] as const) {
      const share = kind === 'white card' ? 0.9 : 0.18;
      const measured = underLamp({ r: share, g: share, b: share });
      const fit = lightFromCard(measured, kind);
      const { r, g, b } = correctLight(measured, fit);
      for (const v of [r, g, b]) expect(v).toBeCloseTo(share, 6);
      expect(fit).toMatchObject({ from: kind, residual: null });
    }
  });

  test('takes the card’s own reflectance, and another method', () => {
    const measured = { r: 0.5, g: 0.4, b: 0.3 };
    const { g } = correctLight(
      measured,
      lightFromCard(measured, 'white card', { reflectance: 0.8, method: 'cat16' }),
    );
    expect(g).toBeCloseTo(0.8, 6);
  });

  test('leaves some of the cast where adaptation is incomplete', () => {
    const measured = { r: 0.5, g: 0.4, b: 0.3 };
    const { r, b } = correctLight(measured, lightFromCard(measured, 'white card', { degree: 0.6 }));
    expect(r).toBeGreaterThan(b + 0.05);
  });

  test('brings other colours nearer to what they are', () => {
    const fit = lightFromCard(underLamp({ r: 0.9, g: 0.9, b: 0.9 }), 'white card');
    const off = (seen: Rgb, i: number) => deltaE2000(labFromRgb(rgbFromLinear(seen)), chartLabs()[i]!.lab);
    const before = chart.map((patch, i) => off(underLamp(patch), i));
    const after = chart.map((patch, i) => off(correctLight(underLamp(patch), fit), i));
    const mean = (list: number[]) => list.reduce((sum, d) => sum + d, 0) / list.length;
    expect(mean(after)).toBeLessThan(mean(before) / 3);
  });

  test('is refused from a black card', () => {
    expect(() => lightFromCard({ r: 0, g: 0.1, b: 0.1 }, 'white card')).toThrow('too dark');
  });
});

describe('light from the 24-patch chart', () => {
  test('undoes a lamp that is a matrix, with nothing left over', () => {
    const fit = lightFromChart(chart.map(underLamp));
    expect(fit.residual!.worst).toBeLessThan(1e-3);
    const { r, g, b } = correctLight(underLamp({ r: 0.3, g: 0.5, b: 0.2 }), fit);
    expect(Math.hypot(r - 0.3, g - 0.5, b - 0.2)).toBeLessThan(1e-6);
  });

  test('says what is left over, and where it is worst, when a patch does not fit', () => {
    const seen = chart.map(underLamp);
    seen[14] = { r: 0.2, g: 0.3, b: 0.4 };
    const { residual, from } = lightFromChart(seen);
    expect(from).toBe('chart');
    expect(residual!.worst).toBeGreaterThan(5);
    expect(residual!.mean).toBeLessThan(residual!.worst);
    expect(residual!.worstPatch).toBe('red');
  });

  test('is refused where patches are missing or all alike', () => {
    expect(() => lightFromChart(chart.slice(1))).toThrow('24 patches, not 23');
    expect(() => lightFromChart(chart.map(() => ({ r: 0, g: 0, b: 0 })))).toThrow('without an inverse');
  });
});

describe('matrices', () => {
  test('are undone by their inverse', () => {
    const m = [2, 1, 0, 0, 3, 1, 1, 0, 1] as const;
    product(m, inverse(m)).forEach((v, i) => {
      expect(v).toBeCloseTo(i % 4 === 0 ? 1 : 0, 12);
    });
    expect(times(m, [1, 2, 3])).toEqual([4, 9, 4]);
    expect(() => inverse([1, 2, 3, 2, 4, 6, 1, 1, 1])).toThrow(RangeError);
  });

  test('are found by least squares from what they did', () => {
    const m = [0.9, 0.1, 0, 0.05, 0.7, 0.1, 0, 0.2, 0.5] as const;
    const from = [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
      [1, 1, 1],
    ] as const;
    leastSquares(
      from,
      from.map((v) => times(m, v)),
    ).forEach((v, i) => {
      expect(v).toBeCloseTo(m[i]!, 12);
    });
  });
});
