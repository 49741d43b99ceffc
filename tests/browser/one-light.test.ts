import { afterAll, describe, expect, it } from 'vitest';
import { commands } from 'vitest/browser';
import type { PixelImage } from '../../src/sheet/model.ts';
import { readWithPlaces } from '../../src/sheet/read-side.ts';
import { startReadClient } from '../../src/workbench/reading/read-client.ts';

/**
 * The bytes of one PNG, with one card, through the three doors as they are: the page's worker in a browser, the terminal's
 * reader in Node, and the engine. Held against each other, to the bit; what is right is held in tests/unit/sheet.
 */
const client = startReadClient();
afterAll(() => client.close());

describe('the same bytes with the same card', () => {
  it.each([
    ['adaptation', 81],
    ['gains', 82],
    ['spectra', 83],
  ] as const)(
    'give the page, the terminal and the engine the same inks: %s, sheet %i',
    async (kind, seed) => {
      const { png, width, height, card, ...terminal } = await commands.throughTerminal(kind, seed);
      const bytes = Uint8Array.from(atob(png), (letter) => letter.charCodeAt(0));
      const engine = readWithPlaces(await pixelsOf(bytes), { mmPerPixel: 305 / width, card });
      const frame = {
        x: card.x / width,
        y: card.y / height,
        width: card.width / width,
        height: card.height / height,
      };
      const page = await client.read({
        id: `${kind}${seed}`,
        bytes: bytes.buffer,
        options: {},
        prepare: {
          sizeMm: { width: 305, height: (305 * height) / width },
          light: { kind: 'white', frame, reflectance: card.reflectance! },
        },
      });
      expect(page.side.light.known).toBe(true);
      expect(page.side.inks.length).toBeGreaterThan(1);
      expect(page.side).toEqual(terminal.side);
      expect(page.side).toEqual(engine.side);
      const { labels } = page.places;
      expect([page.places.width, page.places.height]).toEqual([
        terminal.places.width,
        terminal.places.height,
      ]);
      expect([...labels]).toEqual(terminal.places.labels);
      expect(labels).toEqual(engine.places.labels);
    },
  );
});

async function pixelsOf(bytes: Uint8Array<ArrayBuffer>): Promise<PixelImage> {
  const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
  const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d')!;
  context.drawImage(bitmap, 0, 0);
  return context.getImageData(0, 0, bitmap.width, bitmap.height) as unknown as PixelImage;
}
