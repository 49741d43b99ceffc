import type { OkLab } from './model.ts';

/**
 * OKLab of linear-light sRGB.
 * Source: Ottosson 2020, with the digits of CSS Color 4.
 */
export function oklabFromLinear(r: number, g: number, b: number): OkLab {
  const l = Math.cbrt(0.412221469470763 * r + 0.5363325372617348 * g + 0.0514459932675022 * b);
  const m = Math.cbrt(0.2119034958178252 * r + 0.6806995506452344 * g + 0.1073969535369406 * b);
  const s = Math.cbrt(0.0883024591900564 * r + 0.2817188391361215 * g + 0.6299787016738222 * b);
  return {
    l: 0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s,
    a: 1.9779985324311684 * l - 2.4285922420485799 * m + 0.450593709617411 * s,
    b: 0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s,
  };
}

/** Linear-light sRGB [r, g, b] of OKLab, unmapped. Source: as above, the inverse matrices. */
export function linearFromOklab(l: number, a: number, b: number): readonly [r: number, g: number, b: number] {
  const p = (l + 0.3963377773761749 * a + 0.2158037573099136 * b) ** 3;
  const q = (l - 0.1055613458156586 * a - 0.0638541728258133 * b) ** 3;
  const r = (l - 0.0894841775298119 * a - 1.2914855480194092 * b) ** 3;
  return [
    4.0767416360759583 * p - 3.3077115392580616 * q + 0.2309699031821041 * r,
    -1.2684379732850317 * p + 2.6097573492876887 * q - 0.3413193760026573 * r,
    -0.0041960761386754 * p - 0.7034186179359362 * q + 1.7076146940746117 * r,
  ];
}
