import { describe, expect, it } from 'vitest';
import { findBlocks, readPart } from '../../../src/sheet/blocks/parts.ts';
import type { Frame, PixelImage } from '../../../src/sheet/model.ts';
import { readWithPlaces } from '../../../src/sheet/read-side.ts';
import { UnreadableImage } from '../../../src/sheet/unreadable.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { patchwork } from '../../support/sheets/patchwork.ts';

/** Three prints that end plainly: dots on blue, a coral check on cream, green rings on brown; white gutters. */
const sheet = painted(300, 300, (x, y) => {
  const dots = (step: number) => Math.hypot((x % step) - step / 2, (y % step) - step / 2);
  if (x < 12 || x >= 288 || y < 12 || y >= 288) return '#ffffff';
  if (y < 140) return dots(16) < 5 ? '#f4d35e' : '#3a6ea5';
  if (y < 152) return '#ffffff';
  if (x < 170) return (Math.floor(x / 7) + Math.floor(y / 7)) % 2 ? '#e26f57' : '#f3e8ce';
  if (x < 182) return '#ffffff';
  return dots(14) > 3 && dots(14) < 5 ? '#9bc53d' : '#5c3d2e';
});

const frames: readonly Frame[] = [
  { x: 12, y: 12, width: 276, height: 128 },
  { x: 12, y: 152, width: 158, height: 136 },
  { x: 182, y: 152, width: 106, height: 136 },
].map(({ x, y, width, height }) => ({ x: x / 300, y: y / 300, width: width / 300, height: height / 300 }));

describe('the blocks of a sheet', () => {
  it('are found between gutters, by rows, to within a hundredth of the sheet', () => {
    const found = findBlocks(sheet);
    expect(found).toHaveLength(3);
    found.forEach(({ frame, sure }, i) => {
      for (const side of ['x', 'y', 'width', 'height'] as const)
        expect(Math.abs(frame[side] - frames[i]![side]), `${side} of ${i}`).toBeLessThan(0.01);
      expect(sure).toBeGreaterThan(0.5);
    });
  });

  it('are the same where the places of the inks are given', () => {
    const { places } = readWithPlaces(sheet);
    expect(findBlocks(sheet, places).map(({ frame }) => frame)).toEqual(
      findBlocks(sheet).map(({ frame }) => ({
        x: expect.closeTo(frame.x, 1),
        y: expect.closeTo(frame.y, 1),
        width: expect.closeTo(frame.width, 1),
        height: expect.closeTo(frame.height, 1),
      })),
    );
  });

  it.each([
    ['in a grid with gutters', { grid: [3, 4], gutter: 10 }],
    ['in a grid edge to edge', { grid: [3, 3], gutter: 0 }],
    ['cut again and again with gutters', { gutter: 8 }],
    ['cut again and again edge to edge', { gutter: 0 }],
  ] as const)('are mostly found %s: of drawn patchworks of any prints, more than half', (_, how) => {
    let [hit, all] = [0, 0];
    for (const seed of [3, 6]) {
      const { image, blocks } = patchwork(seed, how);
      const found = findBlocks(image);
      all += blocks.length;
      hit += blocks.filter((block) => found.some(({ frame }) => common(frame, block) > 0.9)).length;
    }
    // Prints that share their ground with the gutter, or with the print beside them, end nowhere.
    expect(hit / all).toBeGreaterThan(0.55);
  });

  it('do not end between the rows of a print on the ground that the gutters have', () => {
    const { image, blocks } = patchwork(203, { gutter: 8 });
    const rows = blocks[0]!;
    const inside = findBlocks(image).filter(({ frame }) => common(frame, rows) > 0.2);
    expect(inside).toHaveLength(1);
    // Where the block itself ends is a guess: its ground is the gutter's colour.
    expect(common(inside[0]!.frame, rows)).toBeGreaterThan(0.6);
  });

  it('end after the usual width of a gutter where it runs into a ground of its own colour', () => {
    const dots = (x: number, y: number, step: number) =>
      Math.hypot((x % step) - step / 2, (y % step) - step / 2);
    const seen = painted(300, 300, (x, y) => {
      if (x < 12 || x >= 288 || y < 12 || y >= 288 || (y >= 140 && y < 152)) return '#ffffff';
      if (y < 140 && x < 140) return dots(x, y, 16) < 5 ? '#f4d35e' : '#3a6ea5';
      // Red dots on white, which begin a while after the gutter.
      if (y < 140) return x > 164 && dots(x, y, 16) < 7 ? '#b3202c' : '#ffffff';
      if (x < 200) return (Math.floor(x / 7) + Math.floor(y / 7)) % 2 ? '#e26f57' : '#f3e8ce';
      return x < 212 ? '#ffffff' : dots(x, y, 14) > 3 && dots(x, y, 14) < 5 ? '#9bc53d' : '#5c3d2e';
    });
    const found = findBlocks(seen).map(({ frame }) => frame);
    expect(found).toHaveLength(4);
    expect(found[0]!.x + found[0]!.width).toBeCloseTo(140 / 300, 1);
    expect(found[1]!.x).toBeGreaterThan(150 / 300);
  });

  it('are none on a paper of one print: of thirty drawn papers of all patterns, at most two are cut up', () => {
    const cut = Array.from({ length: 30 }, (_, n) =>
      findBlocks(toImage(drawSheet(n + 1, { width: 300, samples: 1 }))),
    ).filter((blocks) => blocks.length > 0);
    expect(cut.length).toBeLessThanOrEqual(2);
  });

  it('are none on stripes, on a check, on a plain sheet and on a speck', () => {
    const colours = ['#e26f57', '#f3e8ce', '#22355a', '#6c9a4f', '#dfa934'];
    expect(findBlocks(painted(200, 200, (x) => colours[Math.floor(x / 37) % 5]!))).toEqual([]);
    expect(
      findBlocks(painted(200, 200, (x, y) => colours[(Math.floor(x / 40) + Math.floor(y / 40)) % 2]!)),
    ).toEqual([]);
    expect(findBlocks(painted(200, 200, () => '#f3e8ce'))).toEqual([]);
    expect(findBlocks(painted(9, 9, () => '#f3e8ce'))).toEqual([]);
  });
});

describe('a part of a sheet', () => {
  it('is read from its own pixels, in its own millimetres', () => {
    // The sheet is 305 mm; the dots come again every 16 of its 300 pixels.
    const side = readPart(sheet, frames[0]!, { width: 276 * (305 / 300), height: 128 * (305 / 300) });
    expect(side.inks).toHaveLength(1);
    expect(side.base.hex).toBe('#3a6ea5');
    expect(side.print.repeatMm).toBeCloseTo((16 * 305) / 300, 0);
  });

  it('can be no part at all, and says so', () => {
    const size = { width: 100, height: 100 };
    expect(() => readPart(sheet, { x: 0.2, y: 0.2, width: 0, height: 0.5 }, size)).toThrow(UnreadableImage);
    expect(() => readPart(sheet, { x: 2, y: 0.2, width: 0.1, height: 0.5 }, size)).toThrow(UnreadableImage);
  });
});

/** What two frames have in common, as a part of what they cover together. */
function common(p: Frame, q: Frame): number {
  const w = Math.min(p.x + p.width, q.x + q.width) - Math.max(p.x, q.x);
  const h = Math.min(p.y + p.height, q.y + q.height) - Math.max(p.y, q.y);
  const both = Math.max(0, w) * Math.max(0, h);
  return both / (p.width * p.height + q.width * q.height - both);
}

function painted(width: number, height: number, at: (x: number, y: number) => string): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const n = Number.parseInt(at(x, y).slice(1), 16);
      data.set([n >> 16, (n >> 8) & 255, n & 255, 255], (y * width + x) * 4);
    }
  return { data, width, height };
}
