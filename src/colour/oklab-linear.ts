import type { OkLab } from './model.ts';
import { conesOfRgb, labOfRoots, rgbOfCones, rootsOfAb } from './oklab-digits.ts';

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
  const l = Math.cbrt(longRed * r + longGreen * g + longBlue * b);
  const m = Math.cbrt(middleRed * r + middleGreen * g + middleBlue * b);
  const s = Math.cbrt(shortRed * r + shortGreen * g + shortBlue * b);
  return {
    l: lightLong * l + lightMiddle * m + lightShort * s,
    a: aLong * l + aMiddle * m + aShort * s,
    b: bLong * l + bMiddle * m + bShort * s,
  };
}

/** Linear-light sRGB [r, g, b] of OKLab, unmapped. Source: as above, the inverse matrices. */
export function linearFromOklab(l: number, a: number, b: number): readonly [r: number, g: number, b: number] {
  const p = (l + longA * a + longB * b) ** 3;
  const q = (l + middleA * a + middleB * b) ** 3;
  const r = (l + shortA * a + shortB * b) ** 3;
  return [
    redLong * p + redMiddle * q + redShort * r,
    greenLong * p + greenMiddle * q + greenShort * r,
    blueLong * p + blueMiddle * q + blueShort * r,
  ];
}
