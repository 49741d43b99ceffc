import { labEpsilon, labKappa } from '../cielab.ts';

/**
 * Munsell value and luminance. The quintic gives CIE luminance (perfect diffuser = 100 %), that is the 1943
 * renotation's Y, relative to magnesium oxide, times 0.975.
 * Source: Newhall, Nickerson, Judd 1943; coefficients as in ASTM D1535, checked against the renotation's nine values.
 */
const coefficients = [1.1914, -0.22533, 0.23352, -0.020484, 0.00081939] as const;

/** CIE luminance, 0–1, of Munsell value 0–10. */
export function munsellLuminance(value: number): number {
  return polynomial(value) / 100;
}

/** Munsell value, 0–10, of CIE luminance 0–1; held at 0 and 10 beyond. */
export function munsellValue(luminance: number): number {
  if (!(luminance > 0)) return 0;
  if (luminance >= 1) return 10;
  const target = luminance * 100;
  // Newton from the cube root, which is never far off; the quintic rises all the way.
  let value = 10 * Math.cbrt(luminance) - (luminance < 0.05 ? 0.5 : 0.3);
  for (let i = 0; i < 20; i++) {
    const step = (polynomial(value) - target) / slope(value);
    value = Math.min(10, Math.max(0, value - step));
    if (Math.abs(step) < 1e-13) break;
  }
  return value;
}

function polynomial(v: number): number {
  const [a, b, c, d, e] = coefficients;
  return v * (a + v * (b + v * (c + v * (d + v * e))));
}

function slope(v: number): number {
  const [a, b, c, d, e] = coefficients;
  return a + v * (2 * b + v * (3 * c + v * (4 * d + v * 5 * e)));
}

/** CIELAB lightness L*, 0–100, of Munsell value 0–10. */
export function munsellLightness(value: number): number {
  const y = munsellLuminance(value);
  return y > labEpsilon ? 116 * Math.cbrt(y) - 16 : labKappa * y;
}
