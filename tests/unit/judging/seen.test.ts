import { converter } from 'culori';
import { describe, expect, it } from 'vitest';
import { oklabFromLinear } from '../../../src/colour/oklab-linear.ts';
import type { Planes } from '../../../src/sheet/planes.ts';
import { seenOf } from '../../../src/sheet/seen/seen.ts';
import { seenNumbers } from '../../../src/sheet/seen/seen-numbers.ts';
import { squaresOf } from '../../../src/sheet/seen/squares.ts';
import { chanceOf } from '../../support/chance.ts';

type Grey = (xMm: number, yMm: number) => number;

/** A square sheet whose luminance (0–1) is a function of the place in mm. */
function sheet(of: Grey, mm: number, perMm: number): Planes {
  const n = Math.round(mm * perMm);
  const l = new Float32Array(n * n);
  for (let y = 0; y < n; y++)
    for (let x = 0; x < n; x++) {
      const v = of((x + 0.5) / perMm, (y + 0.5) / perMm);
      l[y * n + x] = oklabFromLinear(v, v, v).l;
    }
  const zero = new Float32Array(n * n);
  return {
    width: n,
    height: n,
    l,
    a: zero,
    b: zero,
    on: new Uint8Array(n * n).fill(1),
    count: n * n,
    block: 1,
  };
}

const check =
  (side: number): Grey =>
  (x, y) =>
    (Math.floor(x / side) + Math.floor(y / side)) % 2 ? 0.8 : 0.1;

describe('what an eye sees at arm’s length', () => {
  it('turns OKLab to CIELAB as culori does', () => {
    const chance = chanceOf(3);
    for (let k = 0; k < 200; k++) {
      const [l, a, b] = [chance(), 0.2 * (chance() - 0.5), 0.2 * (chance() - 0.5)].map(Math.fround) as [
        number,
        number,
        number,
      ];
      const one = (v: number): Float32Array => new Float32Array([v]);
      const on = new Uint8Array([1]);
      const { channels } = squaresOf(
        { width: 1, height: 1, l: one(l), a: one(2 * a), b: one(2 * b), on, count: 1, block: 1 },
        1.5,
      );
      const expected = converter('lab65')({ mode: 'oklab', l, a, b });
      expect(channels[0][0]).toBeCloseTo(expected.l, 4);
      expect(channels[1][0]).toBeCloseTo(expected.a, 4);
      expect(channels[2][0]).toBeCloseTo(expected.b, 4);
    }
  });

  it('blurs as S-CIELAB does: 0.14, 0.19 and 0.26 mm at 40 cm', () => {
    // Zhang & Wandell 1996: the spreads of the narrow parts of the three channels; w · exp(−x²/σ²), so that the deviation is σ/√2.
    const mm = (degrees: number): number => (degrees / Math.SQRT2) * ((400 * Math.PI) / 180);
    const { lightness, redGreen, blueYellow } = seenNumbers;
    expect([lightness, redGreen, blueYellow].map(([narrow]) => mm(narrow[1]).toFixed(2))).toEqual([
      '0.14',
      '0.19',
      '0.26',
    ]);
  });

  it('sees nothing of a screen of 100 lines an inch, and a check of 8 mm in full', () => {
    // Such a screen has a period of 0.254 mm; one arc-minute, what an eye resolves, is 0.13 mm at 45 cm.
    expect(seenOf(sheet(check(0.127), 30, 16), 1 / 16).light).toBeLessThan(0.5);
    expect(seenOf(sheet(check(8), 200, 2), 0.5).light).toBeGreaterThan(15);
  });

  it('sees the same pattern alike, however many pixels show it', () => {
    const [few, many] = [1.5, 4].map((perMm) => seenOf(sheet(check(8), 160, perMm), 1 / perMm));
    expect(many!.light / few!.light).toBeCloseTo(1, 1);
    expect(many!.regular).toBeCloseTo(few!.regular, 1);
  });

  it('finds a check regular at its own way, and strewn spots not', () => {
    const regular = seenOf(sheet(check(8), 200, 2), 0.5);
    expect(regular.regular).toBeGreaterThan(0.9);
    expect(regular.repeatMm).toBeCloseTo(16, 0);
    const chance = chanceOf(7);
    const spots = Array.from({ length: 90 }, () => [200 * chance(), 200 * chance()] as const);
    const strewn = sheet(
      (x, y) => (spots.some(([u, v]) => Math.hypot(x - u, y - v) < 5) ? 0.1 : 0.8),
      200,
      1,
    );
    expect(seenOf(strewn, 1).regular).toBeLessThan(0.2);
  });

  it('finds an ombre at rest: what runs once over a sheet is neither pattern nor bodies', () => {
    const ombre = seenOf(
      sheet((_, y) => 0.1 + (0.7 * y) / 300, 300, 1),
      1,
    );
    expect(Math.hypot(ombre.light, ombre.large)).toBeLessThan(2);
  });

  it('sees less contrast where there is less, and finer print as finer', () => {
    const soft: Grey = (x, y) => (check(8)(x, y) > 0.5 ? 0.5 : 0.4);
    expect(seenOf(sheet(soft, 160, 2), 0.5).light).toBeLessThan(
      seenOf(sheet(check(8), 160, 2), 0.5).light / 3,
    );
    expect(seenOf(sheet(check(2), 160, 2), 0.5).fine).toBeGreaterThan(
      2 * seenOf(sheet(check(10), 160, 2), 0.5).fine,
    );
  });
});
