import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { readSide } from '../../../src/sheet/read-side.ts';

/**
 * Photographs of real things, against what a person names at first glance: written down by looking at them. Both are of scikit-image 0.26, in the public domain by CC0 (coffee.png and chelsea.png, the first made
 * smaller), and were packed as JPEG here.
 */
const photographs = [
  {
    file: 'cup.jpg',
    seen: [/red|brick|maroon/, /brown/, /white|cream/, /black|dark .*brown/],
    never: /green|blue|violet|purple/,
  },
  {
    file: 'cat.jpg',
    seen: [/brown/, /pink|blush|tan/, /black/],
    never: /blue|violet|purple|(vivid|strong) (red|green|yellow)\b/,
  },
] as const;

describe('a photograph of real things', () => {
  it.each(photographs)('is read as a person names its colours: $file', async ({ file, seen, never }) => {
    const path = fileURLToPath(new URL(`../../support/pictures/${file}`, import.meta.url));
    const { data, info } = await sharp(path).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
    const { base, inks } = readSide({
      data: new Uint8ClampedArray(data),
      width: info.width,
      height: info.height,
    });
    const words = [base, ...inks].map(({ name, trade }) => `${name} ${trade ?? ''}`);
    for (const word of seen)
      expect(
        words.some((one) => word.test(one)),
        `${word} in ${words.join(', ')}`,
      ).toBe(true);
    expect(words.filter((one) => never.test(one))).toEqual([]);
  });
});
