import { describe, expect, test } from 'vitest';
import { chart24 } from '../../../reference-data/chart24/chart.ts';
import { packedMachado } from '../../../reference-data/colour-vision/machado.ts';
import { activePassive, heavyLight, warmCool } from '../../../src/colour/emotion.ts';
import { ouLuo } from '../../../src/colour/harmony-two.ts';
import { labFromHex } from '../../../src/colour/spaces.ts';
import { seenLinear } from '../../../src/colour/vision.ts';
import { numbers, table } from './table.ts';

describe('scales of feeling', () => {
  // Recomputed from Ou, Luo, Woodcock, Wright, Color Res. Appl. 29(3):232–240 (2004).
  test.each(table('colour-emotion/colour-emotion-checkvalues.csv'))(
    'of $hex are warm $WC2004, heavy $HL2004, active $AP2004',
    (row) => {
      const lab = { l: Number(row.L), a: Number(row.a), b: Number(row.b) };
      expect(Math.abs(warmCool(lab) - Number(row.WC2004))).toBeLessThan(6e-5);
      expect(Math.abs(heavyLight(lab) - Number(row.HL2004))).toBeLessThan(6e-5);
      expect(Math.abs(activePassive(lab) - Number(row.AP2004))).toBeLessThan(6e-5);
    },
  );
});

describe('the two-colour model', () => {
  // Recomputed from Ou & Luo, Color Res. Appl. 31(3):191–204 (2006), doi 10.1002/col.20208.
  const rows = numbers('two-colour-harmony/harmony-ou-luo-2006-checkvalues.csv');
  test.each(rows)('gives ($L1,$a1,$b1) with ($L2,$a2,$b2) $CH2006, in parts', (row) => {
    const found = ouLuo({ l: row.L1!, a: row.a1!, b: row.b1! }, { l: row.L2!, a: row.a2!, b: row.b2! });
    expect(Math.abs(found.hc - row.HC!)).toBeLessThan(6e-6);
    expect(Math.abs(found.hl - row.HL!)).toBeLessThan(6e-6);
    expect(Math.abs(found.hh - row.HH!)).toBeLessThan(6e-6);
    expect(Math.abs(found.ch - row.CH2006!)).toBeLessThan(6e-6);
  });

  test.each([
    ['#f0308c', '#d7263d', -0.9],
    ['#f6ecd6', '#f58a32', 0.55],
    ['#5ec6c9', '#1aa7a8', 0.85],
  ] as const)('gives %s with %s %s (recomputed for this project)', (a, b, score) => {
    expect(ouLuo(labFromHex(a), labFromHex(b)).ch).toBeCloseTo(score, 2);
  });
});

describe('other eyes', () => {
  // Source: Machado, Oliveira, Fernandes, IEEE TVCG 15(6):1291–1298 (2009), doi 10.1109/TVCG.2009.113.
  const rows = table('colour-vision/cvd-machado-2009.csv');

  test.each([
    ['protan', 'Protanomaly'],
    ['deutan', 'Deuteranomaly'],
  ] as const)('of the kind %s have the published matrices', (kind, type) => {
    const published = rows.filter((row) => row.type === type);
    expect(published).toHaveLength(11);
    published.forEach((row, i) => {
      const matrix = [1, 2, 3].flatMap((r) => [1, 2, 3].map((c) => Number(row[`m${r}${c}`])));
      expect(packedMachado[kind][i]!.split(' ').map(Number)).toEqual(matrix.map((v) => v + 0));
      const seen = seenLinear([0.2, 0.5, 0.8], kind, Number(row.severity));
      [0, 3, 6].forEach((at, c) => {
        expect(seen[c]).toBeCloseTo(0.2 * matrix[at]! + 0.5 * matrix[at + 1]! + 0.8 * matrix[at + 2]!, 12);
      });
    });
  });
});

describe('the packed chart', () => {
  test('holds the same numbers as the published table', () => {
    const published = table('chart24/chart24-xyY-C-1976.csv');
    expect(chart24).toEqual(published.map((row) => [row.name, Number(row.x), Number(row.y), Number(row.Y)]));
  });
});

describe('an eye without short cones', () => {
  // The two half-planes of Brettel, Viénot, Mollon, JOSA A 14:2647–2655 (1997), meet the colours that such an eye sees
  // as they are: lights of 485 nm and 660 nm. Their CIE 1931 2° colour-matching values (CIE 015) are from memory,
  // turned to linear sRGB by the matrix of IEC 61966-2-1.
  const seenUnchanged: readonly [string, number, number, number][] = [
    ['485 nm', 0.058, 0.1693, 0.6162],
    ['660 nm', 0.1649, 0.061, 0],
  ];
  test.each(seenUnchanged)('sees light of %s as it is', (_light, x, y, z) => {
    const linear = [
      3.2406 * x - 1.5372 * y - 0.4986 * z,
      -0.9689 * x + 1.8758 * y + 0.0415 * z,
      0.0557 * x - 0.204 * y + 1.057 * z,
    ] as const;
    const seen = seenLinear(linear, 'tritan');
    for (const [i, value] of seen.entries()) expect(Math.abs(value - linear[i]!)).toBeLessThan(0.005);
  });
});
