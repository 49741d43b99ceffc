import mix from 'chroma-js/src/generator/mix.js';
import 'chroma-js/src/interpolator/oklab.js';
import 'chroma-js/src/io/hex/index.js';
import 'chroma-js/src/io/rgb/index.js';
import 'chroma-js/src/ops/alpha.js';
import contrast from 'chroma-js/src/utils/contrast.js';

/** Dark and light letters: one of the two reaches a contrast of 4.5 on any colour. */
export const darkLetter = '#050505';
export const lightLetter = '#ffffff';

/** Whichever of the dark and the light letter has the higher contrast on a colour. Source: WCAG 2.2 contrast ratio. */
export function letterOn(hex: string): string {
  return contrast(hex, darkLetter) >= contrast(hex, lightLetter) ? darkLetter : lightLetter;
}

/** Contrast ratio of two colours, 1–21. Source: WCAG 2.2, relative luminance. */
export function contrastOf(hexA: string, hexB: string): number {
  return contrast(hexA, hexB);
}

export type LadderKind = 'tints' | 'tones' | 'shades';

/**
 * A colour and its steps towards white (tints), mid grey (tones) or black (shades), mixed in OKLab, as `#rrggbb`.
 * The first is the colour itself; the end of the ladder is left out, so that every step still shows the colour.
 */
export function ladder(hex: string, kind: LadderKind, steps = 5): string[] {
  const end = kind === 'tints' ? '#ffffff' : kind === 'shades' ? '#000000' : '#808080';
  return Array.from({ length: steps }, (_, step) => mix(hex, end, step / steps, 'oklab').hex());
}
