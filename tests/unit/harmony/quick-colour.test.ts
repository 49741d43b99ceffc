import { describe, expect, it } from 'vitest';
import { munsellFromLab, munsellHueSteps } from '../../../src/colour/munsell/munsell.ts';
import { neutralKind } from '../../../src/colour/neutral.ts';
import { hueDistanceDeg, labFromOklch, oklchFromLab, oklchFromRgb } from '../../../src/colour/spaces.ts';
import { painterFromHue } from '../../../src/colour/wheels.ts';
import {
  atA,
  atB,
  atChroma,
  atCounts,
  atEye,
  atHue,
  atL,
  atNeutral,
  atPainter,
  atSaturation,
  atValue,
  colourWidth,
} from '../../../src/harmony/measure/fade.ts';
import { hueCounts } from '../../../src/harmony/measure/hue-counts.ts';
import { measureInto, neutralKinds, quickPainter } from '../../../src/harmony/measure/quick-colour.ts';
import { quickMunsellHue } from '../../../src/harmony/measure/quick-munsell.ts';
import { chanceOf } from '../../support/chance.ts';

const line = new Float64Array(colourWidth);

function colours(count: number, seed: number) {
  const chance = chanceOf(seed);
  return Array.from({ length: count }, () => oklchFromRgb({ r: chance(), g: chance(), b: chance() }));
}

describe('a colour measured into a line of numbers', () => {
  it('has the CIELAB that the room below computes, to 1e-9', () => {
    let worst = 0;
    for (const oklch of colours(2000, 1)) {
      measureInto(line, 0, oklch.l, oklch.c, oklch.h);
      const lab = labFromOklch(oklch);
      const chroma = Math.hypot(lab.a, lab.b);
      worst = Math.max(
        worst,
        Math.abs(line[atL]! - lab.l),
        Math.abs(line[atA]! - lab.a),
        Math.abs(line[atB]! - lab.b),
        Math.abs(line[atChroma]! - chroma),
        Math.abs(line[atSaturation]! - chroma / Math.hypot(chroma, lab.l)),
      );
    }
    expect(worst).toBeLessThan(1e-9);
  });

  it('has the Munsell hue within 0.4 steps and the value within 0.001 of the exact inversion', () => {
    const misses = colours(3000, 2).flatMap((oklch) => {
      measureInto(line, 0, oklch.l, oklch.c, oklch.h);
      const munsell = munsellFromLab(labFromOklch(oklch));
      if (!(Math.abs(line[atValue]! - munsell.value) < 0.001)) return [100];
      return line[atChroma]! < 8 ? [] : [munsellHueSteps(line[atHue]!, munsell.hue!)];
    });
    misses.sort((a, b) => a - b);
    expect(misses.at(-1)).toBeLessThan(0.4);
    expect(misses[Math.floor(misses.length * 0.9)]).toBeLessThan(0.05);
  });

  it('stands where it stands on the painter’s wheel, to 0.01°', () => {
    for (let h = 0; h < 360; h += 0.37) {
      expect(hueDistanceDeg(quickPainter(h), painterFromHue(h))).toBeLessThan(0.01);
    }
    expect(quickPainter(360)).toBeCloseTo(quickPainter(0), 9);
  });

  it('is told from the neutrals, and from what lies near them, as by the full rules, all over CIELAB', () => {
    const parted: object[] = [];
    for (let l = 5; l < 100; l += 3.7) {
      for (let chroma = 1; chroma < 60; chroma += 2.3) {
        for (let h = 0; h < 360; h += 5.1) {
          const turn = (h * Math.PI) / 180;
          const {
            l: ol,
            c,
            h: oh,
          } = oklchFromLab({
            l,
            a: chroma * Math.cos(turn),
            b: chroma * Math.sin(turn),
          });
          measureInto(line, 0, ol, c, oh);
          const lab = { l: line[atL]!, a: line[atA]!, b: line[atB]! };
          const kind = neutralKind(lab);
          if (neutralKinds[line[atNeutral]!] !== kind) parted.push(lab);
          if (line[atCounts] !== (kind === null ? hueCounts(lab) : 0)) parted.push(lab);
        }
      }
    }
    expect(parted).toEqual([]);
  });

  it('has no hue for a grey, whatever angle came with it', () => {
    measureInto(line, 0, 0.5, 4e-6, 123);
    expect(line[atHue]).toBeNaN();
    expect(line[atEye]).toBeNaN();
    expect(line[atPainter]).toBeNaN();
    expect(neutralKinds[line[atNeutral]!]).toBe('grey');
    measureInto(line, 0, 0, 0, null);
    expect(line[atL]).toBeCloseTo(0, 9);
    expect(neutralKinds[line[atNeutral]!]).toBe('black');
  });

  it('is looked up at the rim of the renotation without leaving it', () => {
    for (const value of [-1, 0, 0.5, 9.5, 10, 12]) {
      const hue = quickMunsellHue(-380, -60, value);
      expect(hue).toBeGreaterThanOrEqual(0);
      expect(hue).toBeLessThan(100);
    }
  });
});

describe('how far a hue counts', () => {
  it('grows in thirds from nothing in a neutral to all of it well outside', () => {
    const greys = Array.from({ length: 60 }, (_, i) => hueCounts({ l: 60, a: 0, b: -(i / 4) }));
    expect(new Set(greys)).toEqual(new Set([0, 1 / 3, 2 / 3, 1]));
    expect([...greys].sort()).toEqual(greys);
  });
});
