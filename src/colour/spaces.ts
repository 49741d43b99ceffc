import { labFromRgb, oklabFromRgb, rgbFromLab, rgbFromOklab, rgbFromXyz } from './culori.ts';
import { angleDeg } from './hue.ts';
import type { Lab, OkLab, Oklch, OklchTuple, Rgb, Xyz } from './model.ts';
import { steadyCos, steadyPower, steadySin } from './steady.ts';

/**
 * Conversions of one colour. The white is D65 in all of them; nothing here clips or maps.
 * Source: `css-color-4` for sRGB, XYZ and CIELAB; `oklab` for OKLab and OKLCH.
 */
export {
  labFromRgb,
  labFromXyz,
  oklabFromRgb,
  rgbFromLab,
  rgbFromOklab,
  rgbFromXyz,
  xyzFromLab,
  xyzFromRgb,
} from './culori.ts';
export { hueDistanceDeg } from './hue.ts';

/** OKLCH chroma at or below which a colour has no hue. Source: CSS Color 4, powerless components. */
export const noHueBelowChroma = 4e-6;

/** sRGB 0–1 of `#rgb` or `#rrggbb` (the # may be missing), or undefined where the text is neither. */
export function parseHex(text: string): Rgb | undefined {
  const match = /^#?([0-9a-f]{3}|[0-9a-f]{6})$/i.exec(text.trim());
  if (!match) return undefined;
  const digits = match[1]!.length === 3 ? [...match[1]!].map((d) => d + d).join('') : match[1]!;
  const n = Number.parseInt(digits, 16);
  return { r: (n >> 16) / 255, g: ((n >> 8) & 255) / 255, b: (n & 255) / 255 };
}

/**
 * sRGB 0–1 of a hex colour.
 * @throws RangeError holding the text, where it is no hex colour.
 */
export function rgbFromHex(hex: string): Rgb {
  const rgb = parseHex(hex);
  if (!rgb) throw new RangeError(`Not a hex colour: "${hex}"`);
  return rgb;
}

/** `#rrggbb`, each channel clamped to 0–1 and rounded to 8 bits. */
export function hexFromRgb({ r, g, b }: Rgb): string {
  const n = (byte(r) << 16) | (byte(g) << 8) | byte(b);
  return `#${n.toString(16).padStart(6, '0')}`;
}

/** Linear light of one gamma-encoded sRGB channel; odd about zero, so that colours out of gamut survive. */
export function linearFromEncoded(v: number): number {
  const size = Math.abs(v);
  return size <= 0.04045 ? v / 12.92 : Math.sign(v) * steadyPower((size + 0.055) / 1.055, 2.4);
}

/** Gamma-encoded sRGB channel of linear light; the inverse of `linearFromEncoded`. */
export function encodedFromLinear(v: number): number {
  const size = Math.abs(v);
  return size <= 0.0031308 ? v * 12.92 : Math.sign(v) * (1.055 * steadyPower(size, 1 / 2.4) - 0.055);
}

/** Linear-light sRGB, each channel 0–1 inside the gamut. */
export function linearFromRgb({ r, g, b }: Rgb): Rgb {
  return { r: linearFromEncoded(r), g: linearFromEncoded(g), b: linearFromEncoded(b) };
}

/** Gamma-encoded sRGB of linear-light sRGB. */
export function rgbFromLinear({ r, g, b }: Rgb): Rgb {
  return { r: encodedFromLinear(r), g: encodedFromLinear(g), b: encodedFromLinear(b) };
}

/** OKLCH of OKLab; hue null at or below the numerical chroma threshold. */
export function oklchFromOklab({ l, a, b }: OkLab): Oklch {
  const c = Math.hypot(a, b);
  return { l, c, h: c <= noHueBelowChroma ? null : angleDeg(a, b) };
}

/** OKLab of OKLCH; a hue of null counts as 0°. */
export function oklabFromOklch({ l, c, h }: Oklch): OkLab {
  const angle = ((h ?? 0) * Math.PI) / 180;
  return { l, a: c * steadyCos(angle), b: c * steadySin(angle) };
}

/** OKLCH of gamma-encoded sRGB. */
export function oklchFromRgb(rgb: Rgb): Oklch {
  return oklchFromOklab(oklabFromRgb(rgb));
}

/** Gamma-encoded sRGB of OKLCH, unmapped: the channels may leave 0–1. */
export function rgbFromOklch(oklch: Oklch): Rgb {
  return rgbFromOklab(oklabFromOklch(oklch));
}

/** CIELAB D65 of OKLCH. */
export function labFromOklch(oklch: Oklch): Lab {
  return labFromRgb(rgbFromOklch(oklch));
}

/** OKLCH of CIELAB D65. */
export function oklchFromLab(lab: Lab): Oklch {
  return oklchFromRgb(rgbFromLab(lab));
}

/** OKLab of CIELAB D65. */
export function oklabFromLab(lab: Lab): OkLab {
  return oklabFromRgb(rgbFromLab(lab));
}

/** OKLab of XYZ. */
export function oklabFromXyz(xyz: Xyz): OkLab {
  return oklabFromRgb(rgbFromXyz(xyz));
}

/** CIELAB D65 of a hex colour. @throws RangeError where it is none. */
export function labFromHex(hex: string): Lab {
  return labFromRgb(rgbFromHex(hex));
}

/** OKLCH of a hex colour. @throws RangeError where it is none. */
export function oklchFromHex(hex: string): Oklch {
  return oklchFromRgb(rgbFromHex(hex));
}

/** OKLCH as it stands in files: [L, C, h° | null]. */
export function tupleFromOklch({ l, c, h }: Oklch): OklchTuple {
  return [l, c, h];
}

/** OKLCH of its tuple. */
export function oklchFromTuple([l, c, h]: OklchTuple): Oklch {
  return { l, c, h };
}

/** CIELAB chroma C*ab. */
export function chromaAb({ a, b }: Lab): number {
  return Math.hypot(a, b);
}

/** CIELAB hue h*ab in degrees [0, 360); meaningless where the chroma is next to nothing. */
export function hueAbDeg({ a, b }: Lab): number {
  return angleDeg(a, b);
}

function byte(channel: number): number {
  return Math.round(Math.min(1, Math.max(0, channel)) * 255);
}
