import chroma from 'chroma-js';
import Color from 'colorjs.io';
import { lab as d3Lab } from 'd3-color';
import { describe, expect, test } from 'vitest';
import { adaptXyz } from '../../../src/colour/adaptation.ts';
import { whites } from '../../../src/colour/illuminants.ts';
import type { Lab, Xyz } from '../../../src/colour/model.ts';
import {
  labFromHex,
  labFromXyz,
  oklabFromRgb,
  oklchFromHex,
  rgbFromHex,
  xyzFromRgb,
} from '../../../src/colour/spaces.ts';
import { table } from './table.ts';

// Recomputed for this project with two independent libraries; definitions: W3C CSS Color 4. See its SOURCE.md.
const rows = table('transforms/transform-checkvalues.csv');

/** CIELAB under D50, by CIE 015's own formula: for the comparison with a library whose Lab is D50. */
function labD50({ x, y, z }: Xyz): Lab {
  const f = (t: number) => (t > 216 / 24389 ? Math.cbrt(t) : ((24389 / 27) * t + 16) / 116);
  const [fx, fy, fz] = [f(x / whites.D50.x), f(y), f(z / whites.D50.z)];
  return { l: 116 * fy - 16, a: 500 * (fx - fy), b: 200 * (fy - fz) };
}

describe('conversions, on the check values', () => {
  test.each(rows)('$hex has its XYZ, CIELAB, OKLab and OKLCH', (row) => {
    const hex = row.hex!;
    const xyz = xyzFromRgb(rgbFromHex(hex));
    const close = (found: number, column: string, half: number) =>
      expect(Math.abs(found - Number(row[column])), column).toBeLessThanOrEqual(half);
    close(xyz.x, 'X65', 6e-7);
    close(xyz.y, 'Y65', 6e-7);
    close(xyz.z, 'Z65', 6e-7);
    const d65 = labFromHex(hex);
    close(d65.l, 'L_d65', 6e-5);
    close(d65.a, 'a_d65', 6e-5);
    close(d65.b, 'b_d65', 6e-5);
    const d50 = labD50(adaptXyz(xyz, whites.D65, whites.D50));
    // The two libraries behind the table agree to 1e-3 in Lab D50, no better.
    close(d50.l, 'L_d50', 1e-3);
    close(d50.a, 'a_d50', 1e-3);
    close(d50.b, 'b_d50', 1e-3);
    const ok = oklabFromRgb(rgbFromHex(hex));
    close(ok.l, 'okL', 6e-7);
    close(ok.a, 'okA', 6e-7);
    close(ok.b, 'okB', 6e-7);
    const oklch = oklchFromHex(hex);
    close(oklch.c, 'okC', 6e-7);
    if (row.okH === 'NaN') expect(oklch.h).toBeNull();
    else close(oklch.h!, 'okH', 6e-4);
  });
});

describe('conversions, beside independent libraries', () => {
  const steps = [0, 31, 64, 128, 200, 255];
  const hexes = steps.flatMap((r) =>
    steps.flatMap((g) => steps.map((b) => `#${((r << 16) | (g << 8) | b).toString(16).padStart(6, '0')}`)),
  );

  test('agree with colorjs.io in CIELAB D65, OKLab and OKLCH', () => {
    for (const hex of hexes) {
      const theirs = new Color(hex);
      const lab = labFromHex(hex);
      const [l, a, b] = theirs.to('lab-d65').coords as [number, number, number];
      expect(Math.hypot(lab.l - l, lab.a - a, lab.b - b)).toBeLessThan(1e-3);
      const ok = oklabFromRgb(rgbFromHex(hex));
      const [okL, okA, okB] = theirs.to('oklab').coords as [number, number, number];
      expect(Math.hypot(ok.l - okL, ok.a - okA, ok.b - okB)).toBeLessThan(1e-6);
      const { c, h } = oklchFromHex(hex);
      if (h !== null && c > 0.001) expect(Math.abs(theirs.to('oklch').coords[2]! - h)).toBeLessThan(1e-3);
    }
  });

  test('agree with d3-color, whose Lab is D50, once the colour is adapted from D65', () => {
    for (const hex of hexes) {
      const theirs = d3Lab(hex);
      const lab = labD50(adaptXyz(xyzFromRgb(rgbFromHex(hex)), whites.D65, whites.D50));
      // Its matrix and white are rounded to about five digits.
      expect(Math.hypot(lab.l - theirs.l, lab.a - theirs.a, lab.b - theirs.b)).toBeLessThan(0.02);
    }
  });

  test('differ from a D50 Lab by far more than rounding where nothing is adapted, so D50 and D65 are never mixed', () => {
    const theirs = d3Lab('#0000ff');
    const lab = labFromHex('#0000ff');
    expect(Math.hypot(lab.l - theirs.l, lab.a - theirs.a, lab.b - theirs.b)).toBeGreaterThan(5);
  });

  test('agree with chroma-js in OKLCH and OKLab', () => {
    for (const hex of hexes) {
      const [l, a, b] = chroma(hex).oklab();
      const ok = oklabFromRgb(rgbFromHex(hex));
      // It keeps the matrices of 2020, before CSS Color 4 computed them anew; the largest gap is 5e-5.
      expect(Math.hypot(ok.l - l, ok.a - a, ok.b - b)).toBeLessThan(1e-4);
    }
  });

  test('put white at L* 100 without a trace of colour', () => {
    const white = labFromXyz(whites.D65);
    expect(white.l).toBeCloseTo(100, 12);
    expect(Math.hypot(white.a, white.b)).toBeLessThan(1e-12);
  });
});
