import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { describe, expect, it } from 'vitest';
import { demoSheets, drawDemoSheet } from '../../../src/demo/sheets.ts';
import type { Corners, PixelImage } from '../../../src/sheet/model.ts';
import { findPaper } from '../../../src/sheet/outline/find-paper.ts';
import { judgedFolder } from '../../support/judging/judged.ts';
import { onPhotograph, photographOf } from '../../support/photographed.ts';
import { dice } from '../../support/sheets/dice.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { onTable, poseOf, tables } from '../../support/sheets/on-table.ts';

/**
 * Held against photographs drawn by us, whose corners are known exactly; against the judged papers and the demo's, none of
 * which lies on a table; and against frames and panels that are printed.
 */
const judged = readdirSync(join(judgedFolder, 'pictures'));

describe('a paper on a table', () => {
  it('is found surely, its corners within a thirtieth of its width, on every kind of table', () => {
    const found = [1, 2, 3, 4, 5, 6, 7, 8].map((seed) => {
      const drawn = drawSheet(seed, { width: 300, samples: 2 });
      const pose = poseOf(dice(seed * 101 + 7));
      const { image, corners } = onTable(drawn, tables[seed % 4]!, seed, pose, 480, 360);
      const paper = findPaper(image);
      return { isSure: paper?.isSure, off: paper && farthest(paper.corners, corners, image) };
    });
    expect(found.map(({ isSure }) => isSure)).toEqual(found.map(() => true));
    expect(Math.max(...found.map(({ off }) => off ?? 1))).toBeLessThan(1 / 30);
  }, 60_000);

  it('is found beside a card, in the light of a lamp, as a file of a camera', async () => {
    for (const id of ['blossom-bough', 'press-ledger', 'bee-dots']) {
      const image = await pixelsOf(Buffer.from((await photographOf(id, 'x.jpg', 900)).bytes));
      const paper = findPaper(image);
      expect(paper?.isSure, id).toBe(true);
      expect(farthest(paper!.corners, onPhotograph.corners, image), id).toBeLessThan(0.01);
    }
  });

  it('is asked about where it leaves the picture', () => {
    for (const seed of [1, 3]) {
      const pose = { ...poseOf(dice(seed)), x: 0.8 };
      const drawn = drawSheet(seed, { width: 200, samples: 2 });
      const paper = findPaper(onTable(drawn, tables[seed % 4]!, seed, pose, 480, 360).image);
      expect(paper?.isSure).not.toBe(true);
      for (const { x, y } of paper?.corners ?? []) {
        expect(Math.min(x, y)).toBeGreaterThanOrEqual(0);
        expect(Math.max(x, y)).toBeLessThanOrEqual(1);
      }
    }
  });
});

describe('where there is no table', () => {
  it.each(judged)('nothing is found: %s', async (file) => {
    expect(findPaper(await pixelsOf(join(judgedFolder, 'pictures', file)))).toBeNull();
  });

  it.each(demoSheets.map(({ id }) => id))('nothing is found on the demo’s %s', (id) => {
    expect(findPaper(drawDemoSheet(id, 'A', 500))).toBeNull();
  });

  it('a printed frame, and a panel in the middle, are asked about and never cut out', async () => {
    for (const seed of [1, 2, 3, 4, 5]) {
      const drawn = toImage(drawSheet(seed, { width: 300, samples: 2 }));
      const inFrame = await laid(drawn, '#27374f', 30 + seed * 8);
      expect(findPaper(inFrame)?.isSure, `frame ${seed}`).not.toBe(true);
      const panel = { create: { width: 150, height: 90, channels: 3, background: '#f4ead6' } } as const;
      const withPanel = await pixelsOf(
        await picture(drawn)
          .composite([{ input: panel, left: 75, top: 40 + seed * 20 }])
          .png()
          .toBuffer(),
      );
      expect(findPaper(withPanel)?.isSure, `panel ${seed}`).not.toBe(true);
    }
  });
});

function picture({ data, width, height }: PixelImage) {
  return sharp(Buffer.from(data), { raw: { width, height, channels: 4 } });
}

/** A print within a frame of one colour, as it comes from a scanner. */
async function laid(print: PixelImage, background: string, margin: number): Promise<PixelImage> {
  const frame = { top: margin, bottom: margin, left: margin, right: margin, background };
  return pixelsOf(await picture(print).extend(frame).png().toBuffer());
}

async function pixelsOf(file: string | Buffer): Promise<PixelImage> {
  const { data, info } = await sharp(file).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data: new Uint8ClampedArray(data), width: info.width, height: info.height };
}

/** The farthest corner’s distance, in widths of the sheet’s top edge; whichever corner is called the first. */
function farthest(found: Corners, truth: Corners, { width, height }: PixelImage): number {
  const far = (a: { x: number; y: number }, b: { x: number; y: number }) =>
    Math.hypot((a.x - b.x) * width, (a.y - b.y) * height);
  const turned = [0, 1, 2, 3].map((turn) =>
    Math.max(...truth.map((corner, i) => far(found[(i + turn) % 4]!, corner))),
  );
  return Math.min(...turned) / far(truth[0], truth[1]);
}
