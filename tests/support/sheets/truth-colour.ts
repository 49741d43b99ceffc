import { converter, differenceCiede2000 } from 'culori';
import type { Dice } from './dice.ts';

/** Encoded sRGB, 0–255. The truth is measured with culori here, so that the engine's own arithmetic is not its own judge. */
export type Rgb3 = readonly [number, number, number];

const toLab65 = converter('lab65');
const toRgb = converter('rgb');
const diff = differenceCiede2000();

export function culoriRgb([r, g, b]: Rgb3): { mode: 'rgb'; r: number; g: number; b: number } {
  return { mode: 'rgb', r: r / 255, g: g / 255, b: b / 255 };
}

export function labOf(rgb: Rgb3): { l: number; a: number; b: number } {
  return toLab65(culoriRgb(rgb));
}

/** ΔE₀₀ in CIELAB D65. */
export function apartBy(p: Rgb3, q: Rgb3): number {
  return diff(toLab65(culoriRgb(p)), toLab65(culoriRgb(q)));
}

export function rgbOfHex(hex: string): Rgb3 {
  return [
    Number.parseInt(hex.slice(1, 3), 16),
    Number.parseInt(hex.slice(3, 5), 16),
    Number.parseInt(hex.slice(5, 7), 16),
  ];
}

export function linearOf(rgb: Rgb3): Rgb3 {
  const f = (n: number): number => {
    const v = n / 255;
    return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
  };
  return [f(rgb[0]), f(rgb[1]), f(rgb[2])];
}

/** An ink at random inside sRGB; a vivid one for an accent. */
export function randomInk(roll: Dice, vivid: boolean): Rgb3 {
  for (;;) {
    const colour = toRgb({
      mode: 'oklch',
      l: roll.between(vivid ? 0.45 : 0.25, vivid ? 0.85 : 0.95),
      c: vivid ? roll.between(0.12, 0.25) : roll.between(0.01, 0.2),
      h: roll.between(0, 360),
    });
    const { r, g, b } = colour;
    if (Math.min(r, g, b) < 0.01 || Math.max(r, g, b) > 0.99) continue;
    return [Math.round(r * 255), Math.round(g * 255), Math.round(b * 255)];
  }
}

export function farEnough(next: Rgb3, from: readonly Rgb3[], apart: number, apartFromBase: number): boolean {
  return from.every((c, n) => apartBy(next, c) >= (n === 0 ? Math.max(apart, apartFromBase) : apart));
}
