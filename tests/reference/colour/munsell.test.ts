import { hexToMhvc } from 'munsell';
import { describe, expect, test } from 'vitest';
import { chart24 } from '../../../reference-data/chart24/chart.ts';
import { packedRenotation, renotationY } from '../../../reference-data/munsell-renotation/renotation.ts';
import { adaptXyz } from '../../../src/colour/adaptation.ts';
import { whites, xyzFromXyY } from '../../../src/colour/illuminants.ts';
import type { Lab } from '../../../src/colour/model.ts';
import {
  labFromMunsell,
  munsellFromLab,
  munsellHueSteps,
  parseMunsell,
} from '../../../src/colour/munsell/munsell.ts';
import { munsellLuminance, munsellValue } from '../../../src/colour/munsell/munsell-value.ts';
import { labFromHex, labFromXyz } from '../../../src/colour/spaces.ts';
import { table } from './table.ts';

// Source: Newhall, Nickerson, Judd, JOSA 33(7):385–418 (1943); 2,734 real colours, Y relative to magnesium oxide.
const grid = table('munsell-renotation/munsell-renotation-real.csv').map((row) => ({
  munsell: parseMunsell(`${row.h} ${row.V}/${row.C}`)!,
  x: Number(row.x),
  y: Number(row.y),
  luminance: (Number(row.Y) * 0.975) / 100,
}));

/** CIELAB D65 of a colour seen under illuminant C. */
function labOf(x: number, y: number, luminance: number): Lab {
  return labFromXyz(adaptXyz(xyzFromXyY(x, y, luminance), whites.C, whites.D65));
}

describe('the packed renotation', () => {
  test('holds the same numbers as the published table', () => {
    const unpacked = packedRenotation.flatMap((line, hue) =>
      line.split('|').flatMap((row, v) => {
        const steps = row.split(' ').map(Number);
        let [x, y] = [0, 0];
        return Array.from({ length: steps.length / 2 }, (_, i) => {
          x += steps[2 * i]!;
          y += steps[2 * i + 1]!;
          return [hue * 2.5, v + 1, 2 * i + 2, x, y, renotationY[v]!].join(' ');
        });
      }),
    );
    const published = table('munsell-renotation/munsell-renotation-real.csv').map((row) => {
      const { hue, value, chroma } = parseMunsell(`${row.h} ${row.V}/${row.C}`)!;
      const [x, y] = [Math.round(Number(row.x) * 1e4), Math.round(Number(row.y) * 1e4)];
      return [hue, value, chroma, x, y, Number(row.Y)].join(' ');
    });
    expect(unpacked).toHaveLength(2734);
    expect([...unpacked].sort()).toEqual([...published].sort());
  });
});

describe('Munsell value', () => {
  test('has the luminance that the renotation gives values 1 to 9, relative to magnesium oxide', () => {
    renotationY.forEach((published, i) => {
      expect(Math.abs((munsellLuminance(i + 1) * 100) / 0.975 - published)).toBeLessThan(0.005);
    });
  });

  test('agrees with ASTM D1535 at value 4.08244375, luminance 12.2363426…', () => {
    // Source: the example in the documentation of colour-science for its luminance_ASTMD1535.
    expect(munsellLuminance(4.08244375) * 100).toBeCloseTo(12.2363426, 6);
    expect(munsellValue(0.122363426)).toBeCloseTo(4.08244375, 6);
  });

  test('comes back from its luminance, and holds at 0 and 10', () => {
    for (let v = 0; v <= 10; v += 0.05) expect(munsellValue(munsellLuminance(v))).toBeCloseTo(v, 9);
    expect(munsellValue(-1)).toBe(0);
    expect(munsellValue(1.2)).toBe(10);
  });
});

describe('Munsell from CIELAB', () => {
  test('finds every colour of the renotation again', () => {
    for (const { munsell, x, y, luminance } of grid) {
      const found = munsellFromLab(labOf(x, y, luminance));
      // Y is published to three decimals, the quintic fits it to 0.005, and so value is good to a few thousandths.
      expect(Math.abs(found.value - munsell.value)).toBeLessThan(0.005);
      expect(Math.abs(found.chroma - munsell.chroma)).toBeLessThan(0.06);
      expect(munsellHueSteps(found.hue!, munsell.hue!)).toBeLessThan(0.1);
    }
  });

  test('gives every colour of the renotation its place in CIELAB', () => {
    for (const { munsell, x, y, luminance } of grid) {
      const published = labOf(x, y, luminance);
      const found = labFromMunsell(munsell);
      expect(Math.hypot(found.l - published.l, found.a - published.a, found.b - published.b)).toBeLessThan(
        0.15,
      );
    }
  });

  test('agrees with an independent library in sRGB', () => {
    const off: number[] = [];
    for (let n = 0; n < 1 << 24; n += 50_021) {
      const hex = `#${n.toString(16).padStart(6, '0')}`;
      const [hue, value, chroma] = hexToMhvc(hex);
      const lab = labFromHex(hex);
      const theirs = labFromMunsell({ hue: hue % 100, value, chroma });
      off.push(Math.hypot(lab.l - theirs.l, lab.a - theirs.a, lab.b - theirs.b));
    }
    off.sort((a, b) => a - b);
    // It interpolates a larger table, with colours that no pigment shows; so the extremes differ, by a few units.
    expect(off[Math.floor(off.length * 0.5)]).toBeLessThan(0.1);
    expect(off[Math.floor(off.length * 0.9)]).toBeLessThan(0.6);
    expect(off.at(-1)).toBeLessThan(5);
  });

  test('gives the patches of the 24-patch chart the notation printed with it', () => {
    // Source: the chart's data sheet, as transcribed in two public places; its Y too is relative to magnesium oxide.
    const printed =
      '3YR 3.7/3.2,2.2YR 6.47/4.1,4.3PB 4.95/5.5,6.7GY 4.2/4.1,9.7PB 5.47/6.7,2.5BG 7/6,5YR 6/11,7.5PB 4/10.7,2.5R 5/10,5P 3/7,5GY 7.1/9.1,10YR 7/10.5,7.5PB 2.9/12.7,0.25G 5.4/8.65,5R 4/12,5Y 8/11.1,2.5RP 5/12,5B 5/8,N 9.5/,N 8/,N 6.5/,N 5/,N 3.5/,N 2/'.split(
        ',',
      );
    chart24.forEach(([, x, y, luminance], i) => {
      const published = parseMunsell(printed[i]!)!;
      const found = munsellFromLab(labOf(x, y, luminance * 0.975));
      expect(Math.abs(found.value - published.value)).toBeLessThan(0.06);
      expect(Math.abs(found.chroma - published.chroma)).toBeLessThan(0.25);
      if (published.hue !== null) expect(munsellHueSteps(found.hue!, published.hue)).toBeLessThan(0.2);
    });
  });
});
