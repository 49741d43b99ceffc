import { describe, expect, it } from 'vitest';
import type { PixelImage } from '../../../src/sheet/model.ts';
import { readSide, readWithPlaces } from '../../../src/sheet/read-side.ts';
import { relabel } from '../../../src/sheet/relabel.ts';
import { UnreadableImage } from '../../../src/sheet/unreadable.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { score, swatchesOf } from '../../support/sheets/score.ts';
import { jpeg, noise } from '../../support/sheets/spoil.ts';
import { texturedPlain } from '../../support/sheets/texture.ts';
import { apartBy, type Rgb3, rgbOfHex } from '../../support/sheets/truth-colour.ts';

function solid(width: number, height: number, rgba: readonly number[]): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let i = 0; i < data.length; i++) data[i] = rgba[i % 4]!;
  return { data, width, height };
}

/** Pastes one picture onto another. */
function paste(
  onto: PixelImage,
  x0: number,
  y0: number,
  width: number,
  height: number,
  rgba: readonly number[],
): void {
  for (let y = y0; y < y0 + height; y++)
    for (let x = x0; x < x0 + width; x++)
      for (let c = 0; c < 4; c++) onto.data[(y * onto.width + x) * 4 + c] = rgba[c]!;
}

describe('a side read from pixels', () => {
  it('has shares that sum to exactly one, base first, inks by share', () => {
    for (const seed of [1, 2, 3]) {
      const side = readSide(toImage(drawSheet(seed, { width: 420 })));
      expect([side.base, ...side.inks].reduce((s, ink) => s + ink.share, 0)).toBe(1);
      expect([side.base, ...side.inks].map((ink) => ink.id)).toEqual(
        Array.from({ length: side.inks.length + 1 }, (_, n) => String.fromCharCode(65 + n)),
      );
      const shares = side.inks.map((ink) => ink.share);
      expect(shares).toEqual([...shares].sort((p, q) => q - p));
    }
  });

  it('is the same each time', () => {
    const image = toImage(drawSheet(4, { width: 420 }));
    expect(readSide(image)).toEqual(readSide(image));
  });

  it('leaves the pixels as they were', () => {
    const image = toImage(drawSheet(5, { width: 300 }));
    const before = image.data.slice();
    readSide(image);
    // Not toEqual, which takes seconds over so many numbers.
    expect(image.data.every((v, i) => v === before[i])).toBe(true);
  });

  it('finds the inks of flat prints, and nothing else', () => {
    for (const seed of [3, 4, 7, 15, 19]) {
      const drawn = drawSheet(seed);
      const found = score(drawn.truth, swatchesOf(readSide(toImage(drawn))), 3);
      expect([seed, found.missed, found.extra]).toEqual([seed, [], []]);
      expect(found.shareError).toBeLessThan(2);
    }
  });

  it('reads the base and the main inks of a busy floral after a JPEG', async () => {
    const drawn = drawSheet(4, { pattern: 'floral', inks: 4, accent: false, baseKind: 'cream' });
    const side = readSide(await jpeg(noise(toImage(drawn), 2, 4), 75));
    const found = score(drawn.truth, swatchesOf(side), 3);
    expect(found.missed).toEqual([]);
    expect(found.extra).toEqual([]);
    expect(side.base.kind).toBe('cream');
    expect(side.print.busyness).toBeGreaterThan(0.05);
  });

  it('reads one colour from textured cardstock', () => {
    const papers: [Rgb3, 'white' | 'cream' | 'kraft' | 'tinted' | 'dark'][] = [
      [[250, 250, 247], 'white'],
      [[246, 234, 210], 'cream'],
      [[187, 148, 108], 'kraft'],
      [[214, 120, 90], 'tinted'],
      [[40, 54, 92], 'dark'],
    ];
    const textures = ['linen', 'laid', 'felt', 'flecked'] as const;
    papers.forEach(([rgb, kind], n) => {
      // All four on the dark paper, two on each of the others: every surface meets light and dark.
      for (const texture of textures.filter((_, t) => kind === 'dark' || (n + t) % 2)) {
        const side = readSide(toImage(texturedPlain(3, rgb, texture, 400, kind)));
        expect([texture, kind, side.inks.length]).toEqual([texture, kind, 0]);
        expect(apartBy(rgb, rgbOfHex(side.base.hex))).toBeLessThan(3);
        expect(side.base.kind).toBe(kind);
      }
    });
  });

  it('reads a plain sheet of one colour as its base alone', () => {
    const side = readSide(solid(64, 48, [187, 148, 108, 255]));
    expect(side.base).toMatchObject({ hex: '#bb946c', kind: 'kraft', printed: false, share: 1 });
    expect(side.inks).toEqual([]);
    expect(side.print).toEqual({ busyness: 0, repeatMm: null, scale: null });
  });

  it('takes navy with white dots as a printed ground', () => {
    const image = solid(400, 400, [30, 40, 86, 255]);
    for (let y = 10; y < 390; y += 40)
      for (let x = 10; x < 390; x += 40) paste(image, x, y, 16, 16, [252, 252, 250, 255]);
    const side = readSide(image, { mmPerPixel: 0.25 });
    expect(side.base).toMatchObject({ hex: '#1e2856', kind: 'dark', printed: true });
    expect(side.inks.map((ink) => ink.hex)).toEqual(['#fcfcfa']);
    expect(side.print.repeatMm).toBeCloseTo(10, 0);
    expect(side.print.scale).toBe('small');
  });

  it('tells where each ink lies', () => {
    const image = solid(300, 200, [250, 250, 250, 255]);
    paste(image, 200, 0, 100, 200, [200, 40, 60, 255]);
    const { side, places } = readWithPlaces(image);
    expect([places.width, places.height]).toEqual([300, 200]);
    expect(places.labels[100 * 300 + 50]).toBe(0);
    expect(places.labels[100 * 300 + 250]).toBe(1);
    expect(side.inks[0]!.share).toBeCloseTo(1 / 3, 2);
  });

  it('reads only the crop, and leaves transparent pixels out of the sheet', () => {
    const image = solid(200, 200, [10, 120, 60, 255]);
    paste(image, 50, 50, 100, 100, [246, 234, 210, 255]);
    paste(image, 60, 60, 40, 40, [0, 0, 0, 0]);
    const side = readSide(image, { crop: { x: 50, y: 50, width: 100, height: 100 } });
    expect(side.inks).toEqual([]);
    expect(side.base.hex).toBe('#f6ead2');
  });

  it('undoes a lamp and its exposure by the card, and says that the light is known', () => {
    // The lamp here is a gain on each linear channel, which Bradford does not undo exactly: within 3 it must.
    const paper: Rgb3 = [243, 232, 214];
    const lamp = [0.8, 0.68, 0.5];
    const lit = (rgb: Rgb3): number[] => [
      ...rgb.map((v, c) => {
        const lin = (v / 255 <= 0.04045 ? v / 255 / 12.92 : ((v / 255 + 0.055) / 1.055) ** 2.4) * lamp[c]!;
        return Math.round(255 * (lin <= 0.0031308 ? 12.92 * lin : 1.055 * lin ** (1 / 2.4) - 0.055));
      }),
      255,
    ];
    const cardWhite: Rgb3 = [243, 243, 243];
    const image = solid(300, 300, lit(paper));
    paste(image, 200, 200, 80, 80, lit(cardWhite));
    const card = { x: 200, y: 200, width: 80, height: 80, reflectance: ((243 / 255 + 0.055) / 1.055) ** 2.4 };
    const side = readSide(image, { card });
    expect(side.inks).toEqual([]);
    expect(apartBy(paper, rgbOfHex(side.base.hex))).toBeLessThan(3);
    expect(side.light.known).toBe(true);
    expect(readSide(image).light.known).toBe(false);
  });

  it('is less sure of an ink that few pixels show, and of all where nothing tells the light', () => {
    const image = solid(300, 300, [246, 234, 210, 255]);
    paste(image, 20, 20, 140, 140, [31, 58, 95, 255]);
    for (let n = 0; n < 14; n++)
      paste(image, 190 + 14 * (n % 7), 190 + 30 * (n > 6 ? 1 : 0), 6, 6, [226, 60, 50, 255]);
    paste(image, 250, 20, 40, 40, [243, 243, 243, 255]);
    const [wide, small] = readSide(image, { crop: { x: 0, y: 0, width: 240, height: 300 } }).inks;
    expect(small!.hex).toMatch(/^#[d-f]/);
    expect(wide!.sure).toBeGreaterThan(small!.sure!);
    const lit = readSide(image, {
      crop: { x: 0, y: 0, width: 240, height: 300 },
      card: { x: 252, y: 22, width: 36, height: 36 },
    });
    expect(lit.inks[0]!.sure).toBeGreaterThan(wide!.sure!);
    expect(lit.base.sure).toBeGreaterThan(0.9);
  });

  it('says where the light fell unevenly, and guesses what is drawn', () => {
    const image = solid(360, 360, [240, 236, 225, 255]);
    for (let y = 10; y < 340; y += 40) paste(image, 0, y, 360, 18, [60, 110, 120, 255]);
    expect(readSide(image).light.note).not.toContain('unevenly');
    expect(readSide(image).motif).toMatchObject({ family: 'stripe' });
    for (let i = 0; i < image.data.length; i++) {
      if (i % 4 < 3) image.data[i]! *= 1 - 0.2 * (((i >> 2) % 360) / 360);
    }
    expect(readSide(image).light.note).toContain('unevenly');
  });

  it('refuses what holds nothing, in one clear sentence', () => {
    expect(() => readSide(solid(1, 1, [9, 9, 9, 255]))).toThrow(UnreadableImage);
    expect(() => readSide(solid(40, 40, [9, 9, 9, 0]))).toThrow(/fully transparent/);
    expect(() => readSide({ data: new Uint8ClampedArray(0), width: 0, height: 0 })).toThrow(/empty/);
    expect(() =>
      readSide(solid(40, 40, [9, 9, 9, 255]), { crop: { x: 90, y: 0, width: 9, height: 9 } }),
    ).toThrow(/outside/);
  });
});

describe('relabel', () => {
  it('names a candidate in small letters and an anchor in capitals, base first', () => {
    const side = readSide(toImage(drawSheet(7, { width: 420 })));
    const small = relabel(side, 'candidate');
    expect([small.base, ...small.inks].map((ink) => ink.id).join('')).toMatch(/^abc/);
    expect(relabel(small, 'anchor')).toEqual(side);
  });
});
