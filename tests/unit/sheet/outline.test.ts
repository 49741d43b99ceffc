import { describe, expect, it } from 'vitest';
import { outlineOf, oval } from '../../../src/drawing/outlines.ts';
import type { PixelImage } from '../../../src/sheet/model.ts';
import { insideOf, mostCorners } from '../../../src/sheet/outline/outline.ts';
import { readSide, readWithPlaces } from '../../../src/sheet/read-side.ts';

describe('the shape of a part', () => {
  it('holds the pixels whose middles lie within it: of an oval π/4 of its frame', () => {
    const inside = insideOf(oval, 400, 300);
    const part = inside.reduce((n, v) => n + v, 0) / inside.length;
    // The oval is drawn with 48 corners: area of the regular 48-gon in its circle, 24 sin(2π/48) / 4 of the square.
    expect(part).toBeCloseTo((24 * Math.sin(Math.PI / 24)) / 4, 3);
    expect(inside[0]).toBe(0);
    expect(inside[150 * 400 + 200]).toBe(1);
  });

  it('is the whole frame where its corners are the frame’s', () => {
    const square = [
      { x: 0, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: 0, y: 1 },
    ];
    expect(insideOf(square, 7, 5).every((v) => v === 1)).toBe(true);
  });

  it('keeps a drawn line’s corners and drops what lies on the way between them', () => {
    const side = (x0: number, y0: number, x1: number, y1: number) =>
      Array.from({ length: 30 }, (_, i) => ({ x: x0 + ((x1 - x0) * i) / 30, y: y0 + ((y1 - y0) * i) / 30 }));
    const line = [...side(0.2, 0.1, 0.6, 0.1), ...side(0.6, 0.1, 0.4, 0.5), ...side(0.4, 0.5, 0.2, 0.1)];
    const drawn = outlineOf(line)!;
    expect(drawn.frame.x).toBeCloseTo(0.2, 9);
    expect(drawn.frame.width).toBeCloseTo(0.4, 9);
    expect(drawn.frame.height).toBeCloseTo(0.4, 9);
    const kept = (x: number, y: number) => drawn.outline.some((c) => Math.hypot(c.x - x, c.y - y) < 0.02);
    expect([kept(0, 0), kept(1, 0), kept(0.5, 1)]).toEqual([true, true, true]);
    expect(drawn.outline.length).toBeLessThan(6);
  });

  it('never has more corners than are kept, and is none where a line goes round nothing', () => {
    const scribble = Array.from({ length: 3000 }, (_, i) => ({
      x: 0.5 + 0.4 * Math.cos(i / 3) * (0.5 + 0.5 * Math.sin(i * 1.7)),
      y: 0.5 + 0.4 * Math.sin(i / 3),
    }));
    expect(outlineOf(scribble)!.outline.length).toBeLessThanOrEqual(mostCorners);
    expect(outlineOf([{ x: 0.1, y: 0.1 }])).toBeNull();
    expect(outlineOf([0.1, 0.2, 0.3].map((x) => ({ x, y: 0.4 })))).toBeNull();
  });

  it('is read without what lies beyond it', () => {
    const image = motifOnRed();
    const outline = oval;
    const crop = { x: 100, y: 100, width: 200, height: 200 };
    const whole = readSide(image, { crop });
    const { side, places } = readWithPlaces(image, { crop, outline });
    expect(whole.inks.length).toBeGreaterThan(side.inks.length);
    expect([side.base, ...side.inks].map(({ share }) => share).reduce((s, v) => s + v, 0)).toBe(1);
    expect([side.base, ...side.inks].some(({ oklch }) => oklch[1] > 0.2)).toBe(false);
    expect(places.labels[0]).toBe(255);
  });
});

/** A navy and cream disc of 200 pixels on loud red. */
function motifOnRed(): PixelImage {
  const data = new Uint8ClampedArray(400 * 400 * 4);
  for (let y = 0; y < 400; y++)
    for (let x = 0; x < 400; x++) {
      const r = Math.hypot(x - 199.5, y - 199.5);
      const rgb = r > 101 ? [230, 20, 30] : r > 55 ? [31, 58, 95] : [244, 232, 205];
      data.set([...rgb, 255], (y * 400 + x) * 4);
    }
  return { data, width: 400, height: 400 };
}
