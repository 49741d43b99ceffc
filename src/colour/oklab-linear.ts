import type { OkLab } from './model.ts';
import { conesOfRgb, labOfRoots, rgbOfCones, rootsOfAb } from './oklab-digits.ts';
import { steadyRoot } from './steady.ts';

const [longRed, longGreen, longBlue, middleRed, middleGreen, middleBlue, shortRed, shortGreen, shortBlue] =
  conesOfRgb;
const [lightLong, lightMiddle, lightShort, aLong, aMiddle, aShort, bLong, bMiddle, bShort] = labOfRoots;
const [longA, longB, middleA, middleB, shortA, shortB] = rootsOfAb;
const [redLong, redMiddle, redShort, greenLong, greenMiddle, greenShort, blueLong, blueMiddle, blueShort] =
  rgbOfCones;

/**
 * OKLab of linear-light sRGB.
 * Source: Ottosson 2020, with the digits of CSS Color 4.
 */
export function oklabFromLinear(r: number, g: number, b: number): OkLab {
  const l = steadyRoot(longRed * r + longGreen * g + longBlue * b);
  const m = steadyRoot(middleRed * r + middleGreen * g + middleBlue * b);
  const s = steadyRoot(shortRed * r + shortGreen * g + shortBlue * b);
  return {
    l: lightLong * l + lightMiddle * m + lightShort * s,
    a: aLong * l + aMiddle * m + aShort * s,
    b: bLong * l + bMiddle * m + bShort * s,
  };
}

/** Linear-light sRGB [r, g, b] of OKLab, unmapped. Source: as above, the inverse matrices. */
export function linearFromOklab(l: number, a: number, b: number): readonly [r: number, g: number, b: number] {
  const p = cubed(l + longA * a + longB * b);
  const q = cubed(l + middleA * a + middleB * b);
  const r = cubed(l + shortA * a + shortB * b);
  return [
    redLong * p + redMiddle * q + redShort * r,
    greenLong * p + greenMiddle * q + greenShort * r,
    blueLong * p + blueMiddle * q + blueShort * r,
  ];
}

/** Not by a power, which machines round each in their own way. */
function cubed(v: number): number {
  return v * v * v;
}
