import type { Matrix } from './matrix.ts';

/**
 * XYZ (Y = 1 for white, D65) of linear sRGB, row by row.
 * Source: CSS Color Module Level 4, sample code (from the chromaticities of IEC 61966-2-1).
 */
export const xyzOfRgb: Matrix = [
  0.4123907992659593, 0.357584339383878, 0.1804807884018343, 0.2126390058715102, 0.715168678767756,
  0.0721923153607337, 0.0193308187155918, 0.119194779794626, 0.9505321522496607,
];
