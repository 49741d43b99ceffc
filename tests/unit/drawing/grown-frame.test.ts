import { describe, expect, it } from 'vitest';
import { grownFrame } from '../../../src/drawing/grown-frame.ts';
import { spoiltSheet } from '../../support/sheets/kinds.ts';

describe('a tap on a card', () => {
  it.each([71, 74, 75])('lays a frame inside it, in a warm and uneven light: sheet %i', async (seed) => {
    const { image, options } = await spoiltSheet('photo, gains', seed);
    const card = options.card!;
    const [w, h] = [image.width, image.height];
    for (const [px, py] of [
      [0.5, 0.5],
      [0.25, 0.7],
    ] as const) {
      const frame = grownFrame(image, {
        x: (card.x + px * card.width) / w,
        y: (card.y + py * card.height) / h,
      })!;
      // Within the card, up to two pixels of its blurred rim, and most of it.
      expect(frame.x * w).toBeGreaterThan(card.x - 2);
      expect(frame.y * h).toBeGreaterThan(card.y - 2);
      expect((frame.x + frame.width) * w).toBeLessThan(card.x + card.width + 2);
      expect((frame.y + frame.height) * h).toBeLessThan(card.y + card.height + 2);
      expect(frame.width * frame.height * w * h).toBeGreaterThan(0.4 * card.width * card.height);
    }
  });

  it('lays none where nothing of one colour is that large', () => {
    const data = Uint8ClampedArray.from({ length: 80 * 80 * 4 }, (_, i) =>
      i % 4 === 3 ? 255 : ((Math.floor(i / 4) % 80) + Math.floor(i / 320)) % 2 ? 250 : 10,
    );
    expect(grownFrame({ data, width: 80, height: 80 }, { x: 0.5, y: 0.5 })).toBeNull();
  });
});
