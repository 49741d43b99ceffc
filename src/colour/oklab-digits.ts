import type { Matrix } from './matrix.ts';

/**
 * The numbers of OKLab, each once, row by row. Who loops over pixels takes them apart into names of its own.
 * Source: B. Ottosson, "A perceptual color space for image processing" (2020), with the digits of CSS Color Module
 * Level 4; those from and to linear sRGB are products with its matrices of sRGB.
 */

/** Cones (long, middle, short) of linear sRGB. */
export const conesOfRgb: Matrix = [
  0.412221469470763, 0.5363325372617348, 0.0514459932675022, 0.2119034958178252, 0.6806995506452344,
  0.1073969535369406, 0.0883024591900564, 0.2817188391361215, 0.6299787016738222,
];

/** Lightness, a and b of the cones' cube roots. */
export const labOfRoots: Matrix = [
  0.210454268309314, 0.7936177747023054, -0.0040720430116193, 1.9779985324311684, -2.4285922420485799,
  0.450593709617411, 0.0259040424655478, 0.7827717124575296, -0.8086757549230774,
];

/** What a and b add to the cones' cube roots, two a cone; lightness adds itself to each. */
export const rootsOfAb: readonly [number, number, number, number, number, number] = [
  0.3963377773761749, 0.2158037573099136, -0.1055613458156586, -0.0638541728258133, -0.0894841775298119,
  -1.2914855480194092,
];

/** Linear sRGB of the cones. */
export const rgbOfCones: Matrix = [
  4.0767416360759583, -3.3077115392580616, 0.2309699031821041, -1.2684379732850317, 2.6097573492876887,
  -0.3413193760026573, -0.0041960761386754, -0.7034186179359362, 1.7076146940746117,
];

/** XYZ (Y = 1 for white, D65) of the cones. */
export const xyzOfCones: Matrix = [
  1.2268798758459243, -0.5578149944602171, 0.2813910456659647, -0.0405757452148008, 1.112286803280317,
  -0.0717110580655164, -0.0763729366746601, -0.4214933324022432, 1.5869240198367816,
];
