import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { afterAll, describe, expect, inject, it } from 'vitest';
import { dotsFile, stripesFile } from '../support/drawn-papers.ts';
import { dropFiles, emptyNotebook, shutBrowser } from '../support/reader.ts';

const url = inject('pageUrl');
afterAll(shutBrowser);

describe('a board', () => {
  it('is made from a study, and saved as picture, drawing and print with a name that says what it is', async () => {
    const reader = await emptyNotebook(url);
    const { page } = reader;
    await dropFiles(page, [await dotsFile(), await stripesFile()]);
    await page.locator('qw-verdict h3').waitFor();
    await page.getByRole('button', { name: 'Make a board' }).click();
    const picture = page.locator('qw-board img');
    await picture.waitFor();
    const shown = await picture.evaluate((img: HTMLImageElement) => ({
      w: img.naturalWidth,
      h: img.naturalHeight,
    }));

    const save = async (name: RegExp) => {
      const coming = page.waitForEvent('download');
      await page.getByRole('button', { name }).click();
      const download = await coming;
      return { name: download.suggestedFilename(), bytes: await readFile(await download.path()) };
    };
    const png = await save(/PNG/);
    expect(png.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)+\.png$/);
    expect(png.name).toMatch(/dots|stripes/);
    const { width = 0, height = 0 } = await sharp(png.bytes).metadata();
    expect(width / height).toBeCloseTo(shown.w / shown.h, 2);
    // The square board is 12 in at 300 ppi or, at the least, fills a large screen.
    expect(width).toBeGreaterThanOrEqual(2000);
    const { channels } = await sharp(png.bytes).stats();
    expect(channels.slice(0, 3).every(({ min, max }) => max - min > 100)).toBe(true);

    const svg = await save(/SVG/);
    expect(svg.name).toMatch(/\.svg$/);
    expect(svg.bytes.toString()).toMatch(/^(<\?xml[^>]*>\s*)?<svg /);
    const pdf = await save(/PDF/);
    expect(pdf.name).toMatch(/\.pdf$/);
    expect(pdf.bytes.subarray(0, 5).toString()).toBe('%PDF-');
    expect(reader.errors).toEqual([]);
    await reader.close();
  });
});
