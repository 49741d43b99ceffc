import { describe, expect, it } from 'vitest';
import type { Corners, PixelImage } from '../../../src/sheet/model.ts';
import { findCorners } from '../../../src/sheet/outline/corners.ts';
import { dice } from '../../support/sheets/dice.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { onTable, poseOf, tables } from '../../support/sheets/on-table.ts';

/** Drawn by us, photographed by a pinhole camera that meets each ray with the table: the corners are known exactly. */
const photograph = (seed: number, n: number) =>
  onTable(
    drawSheet(seed, { width: 300, samples: 2 }),
    tables[n]!,
    seed,
    poseOf(dice(seed * 101 + 7)),
    480,
    360,
  );

describe('the corners of a sheet on a table', () => {
  it.each(tables.map((table, n) => ({ table, n })))(
    'are found on $table to within a hundredth of the sheet’s width, tilted and turned, print touching the edges',
    ({ n }) => {
      for (const seed of [n + 1, n + 5]) {
        const { image, corners } = photograph(seed, n);
        const found = findCorners(image)!;
        expect(farthest(found.corners, corners, image), `sheet ${seed}`).toBeLessThan(1);
        expect(found.sure, `sheet ${seed}`).toBeGreaterThan(0.6);
      }
    },
    60_000,
  );

  it('go clockwise from the one that lies nearest the top left of the picture', () => {
    const { image } = photograph(2, 1);
    const [a, b, c, d] = findCorners(image)!.corners;
    expect(b.x).toBeGreaterThan(a.x);
    expect(c.y).toBeGreaterThan(b.y);
    expect(d.x).toBeLessThan(c.x);
    expect(d.y).toBeGreaterThan(a.y);
  });

  it('are the same on a larger picture of the same, to within half a percent', () => {
    const { image, corners } = photograph(6, 2);
    const twice = enlarged(image);
    expect(farthest(findCorners(twice)!.corners, corners, twice)).toBeLessThan(0.5);
  });

  it('are the corners of the picture where it is a scan that is all sheet', () => {
    for (const seed of [1, 4, 6]) {
      const found = findCorners(toImage(drawSheet(seed, { width: 400, samples: 2 })))!;
      expect(found.corners.map(({ x, y }) => [x, y])).toEqual([
        [0, 0],
        [1, 0],
        [1, 1],
        [0, 1],
      ]);
      expect(found.sure).toBeGreaterThan(0.4);
    }
  });

  it('are told as unsure where the sheet leaves the picture', () => {
    for (const seed of [1, 3]) {
      const pose = { ...poseOf(dice(seed)), x: 0.8 };
      const { image } = onTable(
        drawSheet(seed, { width: 200, samples: 2 }),
        tables[seed % 4]!,
        seed,
        pose,
        480,
        360,
      );
      expect(findCorners(image)?.sure ?? 0).toBeLessThan(0.4);
    }
  });

  it('are none on a picture too small to hold a sheet', () => {
    expect(findCorners({ data: new Uint8ClampedArray(4 * 4 * 4), width: 4, height: 4 })).toBeNull();
  });
});

/** The farthest corner's distance, in percent of the width of the sheet's top edge. */
function farthest(found: Corners, truth: Corners, { width, height }: PixelImage): number {
  const far = (i: number, j: readonly { x: number; y: number }[], k: number) =>
    Math.hypot((found[i]!.x - j[k]!.x) * width, (found[i]!.y - j[k]!.y) * height);
  const side = Math.hypot((truth[1].x - truth[0].x) * width, (truth[1].y - truth[0].y) * height);
  return (100 * Math.max(...truth.map((_, i) => far(i, truth, i)))) / side;
}

function enlarged({ data, width, height }: PixelImage): PixelImage {
  const from = new Uint32Array(data.buffer, data.byteOffset, width * height);
  const to = new Uint32Array(width * height * 4);
  for (let i = 0; i < to.length; i++)
    to[i] = from[Math.floor(i / (2 * width) / 2) * width + Math.floor((i % (2 * width)) / 2)]!;
  return { data: new Uint8ClampedArray(to.buffer), width: 2 * width, height: 2 * height };
}
