import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  steadyAngle,
  steadyCos,
  steadyExp,
  steadyLog,
  steadyPower,
  steadyRoot,
  steadySin,
} from '../../../src/colour/steady.ts';
import { filesUnder } from '../../support/source-tree.ts';

/**
 * The oracle is the Math object of the machine that runs the tests, which is right to a unit in the last place (V8). That
 * other machines say the same to the bit is held in tests/browser/one-light.test.ts.
 */
const unit = 2 ** -52;

function near(found: number, wanted: number, units: number): void {
  // The very smallest numbers hold fewer places.
  if (Object.is(found, wanted) || Math.abs(found - wanted) < 1e-300) return;
  expect(Math.abs(found - wanted) / Math.abs(wanted), `${found} is not ${wanted}`).toBeLessThanOrEqual(
    units * unit,
  );
}

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const wide = fc.tuple(between(1, 2), fc.integer({ min: -1000, max: 1000 })).map(([v, e]) => v * 2 ** e);

describe('roots, powers and angles', () => {
  it.each([
    ['the cube root', steadyRoot, Math.cbrt, wide, 2],
    ['the cube root of a share of light', steadyRoot, Math.cbrt, between(-2, 2), 2],
    ['the exponential', steadyExp, Math.exp, between(-700, 700), 3],
    ['the logarithm', steadyLog, Math.log, wide, 3],
    ['the logarithm near 1', steadyLog, Math.log, between(0.5, 2), 3],
    ['the sine', steadySin, Math.sin, between(-3, 3), 3],
    ['the cosine', steadyCos, Math.cos, between(-1.5, 1.5), 3],
    ['the curve of sRGB', (v: number) => steadyPower(v, 2.4), (v: number) => v ** 2.4, between(0.001, 2), 20],
    [
      'the curve of sRGB back',
      (v: number) => steadyPower(v, 1 / 2.4),
      (v: number) => v ** (1 / 2.4),
      between(0.001, 2),
      5,
    ],
  ] as const)('%s is the machine’s own, but for its last places', (_, ours, theirs, values, units) => {
    fc.assert(
      fc.property(values, (v) => near(ours(v), theirs(v), units)),
      { numRuns: 3000 },
    );
  });

  it('has the angles of all points, and the sine and cosine of all turns', () => {
    fc.assert(
      fc.property(between(-1, 1), between(-1, 1), between(-400, 400), (x, y, turn) => {
        // −0 and 0 lie half a turn apart for Math.atan2; for a hue they are one.
        near(steadyAngle(y + 0, x + 0), Math.atan2(y + 0, x + 0), 4);
        expect(Math.abs(steadySin(turn) - Math.sin(turn))).toBeLessThan(1e-13);
        expect(Math.abs(steadyCos(turn) - Math.cos(turn))).toBeLessThan(1e-13);
      }),
      { numRuns: 3000 },
    );
  });

  // Identities that need no machine. Source: Abramowitz & Stegun 1964, chapter 4.
  it('is exact where the answer is a plain number', () => {
    expect([0, 1, 8, 27, -8, 0.125, 1].map(steadyRoot)).toEqual([0, 1, 2, 3, -2, 0.5, 1]);
    expect([steadyExp(0), steadyLog(1), steadyPower(1, 2.4), steadyPower(0, 2.4)]).toEqual([1, 0, 1, 0]);
    expect([steadySin(0), steadyCos(0), steadySin(Math.PI / 2), steadyCos(Math.PI)]).toEqual([0, 1, 1, -1]);
    expect([steadyAngle(0, 0), steadyAngle(0, 2), steadyAngle(3, 0), steadyAngle(0, -1)]).toEqual([
      0,
      0,
      Math.PI / 2,
      Math.PI,
    ]);
  });

  it('answers at the ends of what a number holds as the machine does', () => {
    for (const v of [5e-324, 1e-310, 1.7e308, Number.POSITIVE_INFINITY, Number.NaN, -0])
      near(steadyRoot(v), Math.cbrt(v), 2);
    for (const v of [0, 5e-324, Number.POSITIVE_INFINITY, Number.NaN, -1]) near(steadyLog(v), Math.log(v), 3);
    for (const v of [-800, 800, Number.NEGATIVE_INFINITY, Number.NaN]) near(steadyExp(v), Math.exp(v), 3);
  });
});

describe('what reads a picture', () => {
  it('takes no root, power or angle that machines round each in their own way', () => {
    const own =
      /Math\.(a?(sin|cos|tan)h?|atan2|exp|expm1|log|log2|log10|log1p|pow|cbrt)\(|(?<!\b(2|0\.5) )\*\* (?!2\b)/;
    const curves = ['spaces', 'oklab-linear', 'cielab', 'cube-root', 'light-tables', 'hue', 'gamut', 'light'];
    const read = filesUnder('src').filter(
      ({ path }) => path.startsWith('src/sheet/') || curves.some((name) => path === `src/colour/${name}.ts`),
    );
    expect(read.length).toBeGreaterThan(50);
    const lines = read.flatMap(({ path, text }) =>
      text
        .replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*/g, '')
        .split('\n')
        .filter((line) => own.test(line))
        .map((line) => `${path}: ${line.trim()}`),
    );
    expect(lines).toEqual([]);
  });
});
