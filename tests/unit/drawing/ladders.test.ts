import { interpolate, wcagContrast } from 'culori';
import { expect, test } from 'vitest';
import { contrastOf, ladder, letterOn } from '../../../src/drawing/ladders.ts';

/** Spread over all of sRGB. */
const hexes = Array.from(
  { length: 400 },
  (_, i) => `#${((i * 2_654_435_761) % 0x1000000).toString(16).padStart(6, '0')}`,
);
/** Made before the whole library is loaded: it would bring in what the parts lack. */
const ours = hexes.map((hex) => ({
  tints: ladder(hex, 'tints'),
  tones: ladder(hex, 'tones'),
  shades: ladder(hex, 'shades'),
  contrast: contrastOf(hex, '#123456'),
}));
const { default: chroma } = await import('chroma-js');
const ends = { tints: '#ffffff', tones: '#808080', shades: '#000000' } as const;

test('the parts of chroma-js that are used give what the whole library gives', () => {
  for (const [i, hex] of hexes.entries()) {
    for (const [kind, end] of Object.entries(ends) as [keyof typeof ends, string][]) {
      const whole = Array.from({ length: 5 }, (_, step) => chroma.mix(hex, end, step / 5, 'oklab').hex());
      expect(ours[i]![kind]).toEqual(whole);
    }
    expect(ours[i]!.contrast).toBe(chroma.contrast(hex, '#123456'));
  }
});

test('a step of a ladder is within one of 255 of culori’s mixture in OKLab', () => {
  for (const hex of hexes) {
    const mixed = interpolate([hex, '#ffffff'], 'oklab')(0.4);
    const [r, g, b] = chroma(ladder(hex, 'tints')[2]!).rgb();
    const other = chroma.oklab(mixed.l, mixed.a ?? 0, mixed.b ?? 0).rgb();
    expect(
      Math.max(Math.abs(r! - other[0]), Math.abs(g! - other[1]), Math.abs(b! - other[2])),
    ).toBeLessThanOrEqual(1);
  }
});

test('the letter on a colour is the one with the higher contrast by culori’s measure', () => {
  for (const hex of hexes) {
    const [dark, light] = [wcagContrast(hex, '#050505'), wcagContrast(hex, '#ffffff')];
    if (Math.abs(dark - light) > 0.05) expect(letterOn(hex)).toBe(dark > light ? '#050505' : '#ffffff');
  }
});
