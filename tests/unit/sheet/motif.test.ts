import { describe, expect, it } from 'vitest';
import type { MotifFamily, PixelImage } from '../../../src/sheet/model.ts';
import { guessMotif } from '../../../src/sheet/print/motif.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { noise } from '../../support/sheets/spoil.ts';

/** What the drawn patterns are called. */
const families: Readonly<Record<string, MotifFamily>> = {
  dots: 'dots',
  stripe: 'stripe',
  chevron: 'chevron',
  grid: 'grid',
  checker: 'grid',
  text: 'text',
  floral: 'organic',
  confetti: 'organic',
  leaves: 'organic',
  scallop: 'organic',
};

const drawn = (pattern: string, seed: number): PixelImage =>
  toImage(drawSheet(seed, { width: 300, samples: 2, pattern }));

describe('the first guess at a motif', () => {
  it.each(Object.entries(families))(
    'takes drawn %s for %s, four times in five or better',
    (pattern, family) => {
      const guesses = [301, 302, 303, 304, 305].map((seed) => guessMotif(drawn(pattern, seed)));
      expect(guesses.filter((guess) => guess.family === family).length).toBeGreaterThanOrEqual(4);
      for (const { sure } of guesses) expect(sure > 0 && sure < 1).toBe(true);
    },
  );

  it('is the same on a noisy picture', () => {
    for (const pattern of ['dots', 'stripe', 'chevron', 'grid', 'text', 'floral'])
      expect(guessMotif(noise(drawn(pattern, 310), 3, 1)).family, pattern).toBe(families[pattern]);
  });

  it('is plain on one colour, with or without the grain of a camera', () => {
    const data = new Uint8ClampedArray(200 * 200 * 4).fill(200);
    const plain = { data: data.map((v, i) => (i % 4 === 3 ? 255 : v)), width: 200, height: 200 };
    expect(guessMotif(plain)).toMatchObject({ family: 'plain' });
    expect(guessMotif(noise(plain, 3, 2)).family).toBe('plain');
  });

  it('keeps to stripes and grids when the sheet is turned', () => {
    // Turned by a third of a right angle, sampled by hand.
    for (const [pattern, family] of [
      ['stripe', 'stripe'],
      ['grid', 'grid'],
    ] as const) {
      const from = drawn(pattern, 320);
      const data = new Uint8ClampedArray(200 * 200 * 4);
      for (let y = 0; y < 200; y++)
        for (let x = 0; x < 200; x++) {
          const u = Math.round(150 + (x - 100) * Math.cos(0.5) - (y - 100) * Math.sin(0.5));
          const v = Math.round(150 + (x - 100) * Math.sin(0.5) + (y - 100) * Math.cos(0.5));
          data.set(from.data.subarray((v * 300 + u) * 4, (v * 300 + u) * 4 + 4), (y * 200 + x) * 4);
        }
      expect(guessMotif({ data, width: 200, height: 200 }).family).toBe(family);
    }
  });
});
