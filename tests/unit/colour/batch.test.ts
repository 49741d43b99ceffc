import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import * as batch from '../../../src/colour/batch.ts';
import { cubeRoot } from '../../../src/colour/cube-root.ts';
import { deltaE2000 } from '../../../src/colour/difference.ts';
import { labFromRgb, oklabFromRgb } from '../../../src/colour/spaces.ts';

/** A few thousand colours spread over all 16.7 million, as RGBA. */
const bytes = new Uint8ClampedArray(4 * 4096);
for (let i = 0; i < 4096; i++) bytes.set([(i * 37) & 255, (i * 101) & 255, (i * 197) & 255, 255], 4 * i);
bytes.set([0, 0, 0, 255, 255, 255, 255, 255, 1, 1, 1, 255, 128, 128, 128, 255], 0);

const rgbAt = (i: number) => ({
  r: bytes[4 * i]! / 255,
  g: bytes[4 * i + 1]! / 255,
  b: bytes[4 * i + 2]! / 255,
});

describe('batch conversion', () => {
  test('equals the scalar form to 1e-14 in OKLab and 1e-12 in CIELAB, and exactly in greys', () => {
    const oklabs = batch.oklabFromBytes(bytes);
    const labs = batch.labFromBytes(bytes);
    let worstOk = 0;
    let worstLab = 0;
    for (let i = 0; i < 4096; i++) {
      const ok = oklabFromRgb(rgbAt(i));
      const lab = labFromRgb(rgbAt(i));
      for (const [at, key] of (['l', 'a', 'b'] as const).entries()) {
        worstOk = Math.max(worstOk, Math.abs(ok[key] - oklabs[3 * i + at]!));
        worstLab = Math.max(worstLab, Math.abs(lab[key] - labs[3 * i + at]!));
      }
    }
    expect(worstOk).toBeLessThan(1e-14);
    expect(worstLab).toBeLessThan(1e-12);
    expect([...oklabs.slice(10, 12)]).toEqual([0, 0]);
    expect([...labs.slice(10, 12)]).toEqual([0, 0]);
  });

  test('takes three bytes a pixel too, and writes where it is told', () => {
    const out = new Float32Array(6);
    expect(batch.oklabFromBytes(Uint8Array.of(255, 0, 0, 0, 0, 255), 3, out)).toBe(out);
    expect(out[0]).toBeCloseTo(0.627955, 5);
    expect(out[3]).toBeCloseTo(0.452014, 5);
    expect(batch.labFromBytes(Uint8Array.of(255, 0, 0), 3)).toHaveLength(3);
    expect(batch.labFromBytes(new Uint8Array(2), 3)).toHaveLength(0);
  });
});

describe('batch difference', () => {
  test('equals the scalar form bit for bit', () => {
    const labs = batch.labFromBytes(bytes);
    const turned = Float64Array.from(labs.slice(0, 12_288)).reverse();
    const lab = (list: batch.Numbers, i: number) => ({
      l: list[3 * i]!,
      a: list[3 * i + 1]!,
      b: list[3 * i + 2]!,
    });
    const pairs = batch.deltaE2000Pairs(labs, turned);
    const fromOne = batch.deltaE2000FromOne([labs[300]!, labs[301]!, labs[302]!], labs);
    for (let i = 0; i < 4096; i++) {
      expect(pairs[i]).toBe(deltaE2000(lab(labs, i), lab(turned, i)));
      expect(fromOne[i]).toBe(deltaE2000(lab(labs, 100), lab(labs, i)));
    }
  });

  test('finds the nearest by ΔE OK, the first of equals, and none in an empty list', () => {
    const list = Float64Array.of(0.5, 0.1, 0, 0.5, 0.2, 0, 0.9, 0.1, 0, 0.5, 0.1, 0);
    expect(batch.nearestOk(0.5, 0.11, 0, list)).toBe(0);
    expect(batch.nearestOk(0.85, 0.12, 0, list)).toBe(2);
    expect(batch.nearestOk(0.6, 0.19, 0, list, 4)).toBe(1);
    expect(batch.nearestOk(0.6, 0.19, 0, new Float64Array())).toBe(-1);
  });
});

test('the cube root is right to the last place or two, from nothing to one and beyond', () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 1.2, noNaN: true }), (v) => {
      expect(Math.abs(cubeRoot(v) - Math.cbrt(v))).toBeLessThanOrEqual(1e-15 * Math.cbrt(v));
    }),
    { numRuns: 5000 },
  );
  for (const v of [0, 1, 1 / 64, 1 / 4096, 1e-9, -0.2]) expect(cubeRoot(v)).toBeCloseTo(Math.cbrt(v), 15);
  expect(cubeRoot(Number.NaN)).toBeNaN();
});
