import { color, rgb as d3Rgb } from 'd3-color';
import type { Rgb } from './model.ts';

/** The one door to d3-color: CSS colours at the edge, in and out. */

/** sRGB 0–1 of any CSS colour text (hex, rgb(), hsl(), a name), or undefined where it is none or not opaque. */
export function parseCssColour(text: string): Rgb | undefined {
  const parsed = color(text.trim());
  if (!parsed || !(parsed.opacity >= 1)) return undefined;
  const { r, g, b } = parsed.rgb();
  return { r: r / 255, g: g / 255, b: b / 255 };
}

/** CSS text of sRGB 0–1, clamped: `rgb(215, 38, 61)`, or with an opacity 0–1 `rgba(215, 38, 61, 0.5)`. */
export function cssFromRgb({ r, g, b }: Rgb, opacity = 1): string {
  return d3Rgb(r * 255, g * 255, b * 255, opacity).formatRgb();
}
