import { describe, expect, it } from 'vitest';
import { labFromMunsell } from '../../src/colour/munsell/munsell.ts';
import { painterSteps } from '../../src/colour/wheels.ts';
import { mostOf } from '../../src/cutting/packing.ts';
import { compare } from '../../src/harmony/compare.ts';
import { lightValueOf } from '../../src/harmony/measure/extension.ts';
import { linkLimits, pageLimits } from '../../src/harmony/thresholds.ts';
import { labSide } from '../support/chance.ts';

const kindOf = (hue: number, hueSteps: number, value = 5, chroma = 10) =>
  compare(
    labSide([labFromMunsell({ hue, value, chroma })], [0.3]),
    labSide([labFromMunsell({ hue: hue + hueSteps, value, chroma })], [0.3]),
  ).links.at(-1)!;

/** P. Moon, D. E. Spencer, "Geometric formulation of classical color harmony", JOSA 34(1):46–59 (1944). */
describe('Moon and Spencer’s intervals of hue, of 100 steps', () => {
  it('are near misses in the first ambiguity, 1 to 7 steps, beyond what counts as one colour', () => {
    for (const hue of [5, 25, 45, 65, 85]) {
      for (const steps of [4, 5.5]) {
        const link = kindOf(hue, steps);
        if (link.deltaE00 > linkLimits.repeatApart) expect(link.kind).toBe('near miss');
      }
    }
    expect(linkLimits.nearMissToSteps).toBe(7);
  });

  it('belong together in similarity, 7 to 12 steps', () => {
    for (const hue of [5, 25, 45, 65, 85]) {
      for (const steps of [8, 10, 11.5]) expect(kindOf(hue, steps).kind).toBe('neighbour');
    }
  });

  it('are left open in the second ambiguity, 12 to 28 steps, which explains and decides nothing', () => {
    for (const hue of [5, 45, 85]) expect(kindOf(hue, 22).kind).toBe('unrelated');
  });
});

/** J. Itten, Kunst der Farbe (1961), contrast of extension, with Goethe’s light values. */
describe('Goethe’s light values as Itten teaches them', () => {
  const at = (name: string) => lightValueOf(painterSteps.find((step) => step.name === name)!.painterDeg);

  it('are yellow 9, orange 8, red 6, violet 3, blue 4, green 6', () => {
    expect(['yellow', 'orange', 'red', 'violet', 'blue', 'green'].map(at)).toEqual([9, 8, 6, 3, 4, 6]);
  });

  it('balance yellow to violet at areas of 1 : 3, orange to blue at 1 : 2, red to green at 1 : 1', () => {
    expect(at('yellow') / at('violet')).toBe(3);
    expect(at('orange') / at('blue')).toBe(2);
    expect(at('red') / at('green')).toBe(1);
  });

  it('are told with the proportion in which two opposites stand here', () => {
    const yellow = labFromMunsell({ hue: 25, value: 8, chroma: 12 });
    const violet = labFromMunsell({ hue: 85, value: 4, chroma: 12 });
    const found = compare(labSide([yellow], [0.1]), labSide([violet], [0.3]));
    const told = found.reasons.find(({ figure }) => figure.includes('taught'));
    expect(told!.evidence.actualRatio).toBeCloseTo(3, 9);
    expect(told!.sourceIds).toEqual(['goethe', 'itten']);
  });
});

/** The limits as they are written down for this project, after ISO 12647-2:2013 and Mokrzycki & Tatol 2011. */
describe('the table of links', () => {
  it('has the limits it was given', () => {
    expect(linkLimits).toEqual({
      repeatApart: 5,
      repeatTouching: 3,
      nearMissDeltaEMax: 16,
      nearMissFromSteps: 1.5,
      nearMissToSteps: 7,
      tonalValueSteps: 2,
      neighbourToSteps: 17,
      oppositeWithinSteps: 5,
      whitesDeltaEMax: 10,
      whitesDeltaEMin: 3,
      whitesDeltaB: 4,
      lightNeutralL: 80,
    });
  });
});

/** Common practice, no source. */
describe('facts of paper', () => {
  it('call a sheet under 150 g/m² thin', () => {
    expect(pageLimits.thinGsm).toBe(150);
  });

  it('get four 5 × 7 in pieces out of a 12 × 12 in sheet with stopped cuts, three from edge to edge', () => {
    const [sheet, piece] = [
      { width: 304.8, height: 304.8 },
      { width: 127, height: 177.8 },
    ];
    expect(mostOf(sheet, piece, 'stopped')).toBe(4);
    expect(mostOf(sheet, piece, 'edge to edge')).toBe(3);
  });
});
