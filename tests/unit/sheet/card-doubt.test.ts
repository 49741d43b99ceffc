import { describe, expect, it } from 'vitest';
import { doubtOfCard } from '../../../src/sheet/light/card-doubt.ts';
import { readSide } from '../../../src/sheet/read-side.ts';
import { spoiltSheet } from '../../support/sheets/kinds.ts';

/** What speaks against a card is common practice, no source; the limits are ours. */
describe('what was marked as a card', () => {
  it.each([71, 72, 73])(
    'is taken for one where it is one, in a warm and uneven light: sheet %i',
    async (seed) => {
      const { image, options } = await spoiltSheet('photo, gains', seed);
      expect(doubtOfCard(image, options.card!, 0.9)).toBeNull();
      expect(readSide(image, options).light.known).toBe(true);
    },
  );

  it('is doubted where its frame lies half beside the card, or on something far darker', async () => {
    const { image, options } = await spoiltSheet('photo, gains', 71);
    const card = options.card!;
    const beside = { ...card, x: card.x - card.width / 2 };
    expect(doubtOfCard(image, beside, 0.9)).toBe('uneven');
    const shadow = { x: 2, y: 2, width: 12, height: 12 };
    const { light } = readSide(image, { ...options, card: shadow });
    expect(light.known).toBe(false);
    expect(light.note).toMatch(/brighter than white: is that the card\?|more than one colour/);
  });
});
