/** The colour types that every room shares. All are plain immutable objects; the white is D65 throughout. */

/** Gamma-encoded sRGB, each channel 0–1 inside the gamut; unmapped colours may lie outside. */
export interface Rgb {
  readonly r: number;
  readonly g: number;
  readonly b: number;
}

/** CIE XYZ, 1931 2° observer, Y = 1 for the white. */
export interface Xyz {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** CIELAB under D65: l 0–100, a and b unbounded. */
export interface Lab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** OKLab: l 0–1, a and b about −0.4…0.4. Source: Ottosson 2020; W3C CSS Color 4. */
export interface OkLab {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** OKLCH as a value: l 0–1, c ≥ 0, h in degrees [0, 360), or null below the numerical chroma threshold. */
export interface Oklch {
  readonly l: number;
  readonly c: number;
  readonly h: number | null;
}

/** OKLCH as it stands in files and in an ink: [L 0–1, C, h° | null]. */
export type OklchTuple = readonly [l: number, c: number, h: number | null];

/** A Munsell colour: hue 0–100 around the circle (10RP = 0 = 100, 5R = 5 …) or null for N, value 0–10, chroma ≥ 0. */
export interface Munsell {
  readonly hue: number | null;
  readonly value: number;
  readonly chroma: number;
}

/** Which wheel a sentence speaks of: hue by OKLCH angle, or the twelve-step pigment wheel. */
export const wheels = ['eye', 'painter'] as const;
export type Wheel = (typeof wheels)[number];
