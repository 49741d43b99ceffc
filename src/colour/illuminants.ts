import type { Xyz } from './model.ts';

/** Whites by name, XYZ with Y = 1, CIE 1931 2° observer, from their chromaticities. Source: CIE 015:2018. */
export const whites = {
  A: white(0.44758, 0.40745),
  C: white(0.31006, 0.31616),
  D50: white(0.3457, 0.3585),
  D55: white(0.33243, 0.34744),
  D65: white(0.3127, 0.329),
  D75: white(0.29903, 0.31488),
  FL2: white(0.3721, 0.3751),
  FL11: white(0.3805, 0.3769),
  LEDB3: white(0.3756, 0.3723),
} as const satisfies Record<string, Xyz>;

export type WhiteName = keyof typeof whites;

/** XYZ with Y = 1 of a chromaticity. */
export function white(x: number, y: number): Xyz {
  return { x: x / y, y: 1, z: (1 - x - y) / y };
}

/** XYZ of a chromaticity and luminance. */
export function xyzFromXyY(x: number, y: number, luminance: number): Xyz {
  return { x: (x / y) * luminance, y: luminance, z: ((1 - x - y) / y) * luminance };
}
