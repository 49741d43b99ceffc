import { differenceCiede2000 } from 'culori';
import { describe, expect, test } from 'vitest';
import { deltaE2000, deltaENoSeparation } from '../../../src/colour/difference.ts';
import { labFromRgb } from '../../../src/colour/spaces.ts';
import { numbers } from './table.ts';

// Source: Sharma, Wu, Dalal, Color Res. Appl. 30(1):21–30 (2005), doi 10.1002/col.20070, table of 34 pairs.
const pairs = numbers('ciede2000/ciede2000-sharma.csv').map((row, i) => ({
  pair: i + 1,
  a: { l: row.L1!, a: row.a1!, b: row.b1! },
  b: { l: row.L2!, a: row.a2!, b: row.b2! },
  published: row.dE00!,
}));

describe('CIEDE2000', () => {
  test('stands on 34 published pairs', () => expect(pairs).toHaveLength(34));

  test.each(pairs)(
    'gives pair $pair its published value to four decimals, both ways',
    ({ pair, a, b, published }) => {
      // Pair 14 lies at a hue difference of exactly 180° and may read either of two values.
      const allowed = pair === 14 ? [4.8045, 4.7461] : [published];
      for (const found of [deltaE2000(a, b), deltaE2000(b, a)])
        expect(Math.min(...allowed.map((value) => Math.abs(value - found)))).toBeLessThanOrEqual(
          0.00005 + 1e-9,
        );
    },
  );

  test('agrees with an independent implementation on a grid of sRGB pairs', () => {
    const measure = differenceCiede2000();
    const steps = [0, 0.2, 0.5, 0.8, 1];
    const labs = steps.flatMap((r) => steps.flatMap((g) => steps.map((b) => labFromRgb({ r, g, b }))));
    let worst = 0;
    for (const x of labs)
      for (const y of labs) {
        const theirs = measure({ mode: 'lab65', ...x }, { mode: 'lab65', ...y });
        worst = Math.max(worst, Math.abs(deltaE2000(x, y) - theirs));
      }
    expect(worst).toBeLessThan(1e-6);
  });
});

describe('the difference of touching sheets', () => {
  // Source: Mirjalili, Luo, Cui, Morovic, JOSA A 36(5):789–799 (2019); evaluated by hand on pairs whose terms are known.
  test('divides the lightness term of a pair of greys by 0.08 ΔE₀₀ + 0.27', () => {
    const a = { l: 50, a: 0, b: 0 };
    const b = { l: 53, a: 0, b: 0 };
    const whole = deltaE2000(a, b);
    expect(deltaENoSeparation(a, b)).toBeCloseTo(whole / (0.08 * whole + 0.27), 9);
  });

  test('equals ΔE₀₀ where lightness is the same', () => {
    const a = { l: 60, a: 20, b: 30 };
    const b = { l: 60, a: 26, b: 24 };
    expect(deltaENoSeparation(a, b)).toBeCloseTo(deltaE2000(a, b), 9);
  });
});
