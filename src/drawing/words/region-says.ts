import type { ColourRegion } from '../../harmony/model.ts';

/** A stretch in words, with its numbers. */
export function regionSays({ hueDeg, lightness, chroma }: ColourRegion): string {
  const span = (list: readonly number[], digits: number) => list.map((one) => one.toFixed(digits)).join('–');
  return `Any colour in here: hue ${span(hueDeg, 0)}°, L* ${span(lightness, 0)}, chroma ${span(chroma, 2)}.`;
}
