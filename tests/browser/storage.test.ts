import { afterEach, describe, expect, it } from 'vitest';
import type { Scene } from '../../src/board/model.ts';
import { sceneSvg } from '../../src/board/svg.ts';
import type { SceneNode } from '../../src/drawing/model.ts';
import { emptyNotebook } from '../../src/notebook/empty.ts';
import { fontCss } from '../../src/storage/board-fonts.ts';
import { boardPdf } from '../../src/storage/pdf/pdf.ts';
import { openShelf, type Shelf } from '../../src/storage/shelf.ts';
import { svgToPng } from '../../src/storage/svg-to-png.ts';

/** The shelf in the browser's own database, and boards as pictures, in a real browser. */

const opened: Shelf[] = [];
const shelfNamed = (name: string) => {
  const shelf = openShelf({ name });
  opened.push(shelf);
  return shelf;
};
afterEach(async () => {
  await Promise.all(opened.splice(0).map((shelf) => shelf.close()));
});

const scene = (nodes: readonly SceneNode[], width = 600, height = 400): Scene => ({
  width,
  height,
  title: 'A board',
  description: 'For a test',
  background: '#ffffff',
  nodes,
});
const words = (text: string, face: 'serif' | 'sans' = 'serif'): SceneNode => ({
  type: 'text',
  x: 20,
  y: 120,
  text,
  size: 80,
  face,
  fill: '#000000',
});

describe('the shelf in the browser', () => {
  it('keeps notebooks and pictures through closing', async () => {
    const name = `test-${crypto.randomUUID()}`;
    const one = shelfNamed(name);
    await one.save(emptyNotebook('n', 'Kept'), 0);
    await one.putPictures([
      {
        id: 'p',
        bytes: new Uint8Array(100_000).fill(7).buffer,
        type: 'image/png',
        width: 9,
        height: 9,
        thumb: null,
        addedAt: new Date().toISOString(),
      },
    ]);
    await one.close();
    const other = shelfNamed(name);
    expect((await other.notebook('n'))?.notebook.title).toBe('Kept');
    expect((await other.picture('p'))?.bytes.byteLength).toBe(100_000);
  });

  it('lets one of two connections through and tells the other', async () => {
    const name = `test-${crypto.randomUUID()}`;
    const [one, other] = [shelfNamed(name), shelfNamed(name)];
    await one.save(emptyNotebook('n'), 0);
    const both = await Promise.allSettled([
      one.save(emptyNotebook('n', 'a'), 1),
      other.save(emptyNotebook('n', 'b'), 1),
    ]);
    expect(both.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
  });
});

describe('a board as PNG', () => {
  it('has the size and the colours of its scene', async () => {
    const svg = sceneSvg(scene([{ type: 'rect', x: 100, y: 100, width: 200, height: 200, fill: '#c23b4e' }]));
    const image = await pixelsOf(await svgToPng(svg, 600, 400));
    expect([image.width, image.height]).toEqual([600, 400]);
    expect([...image.at(200, 200)]).toEqual([194, 59, 78, 255]);
    expect([...image.at(50, 50)]).toEqual([255, 255, 255, 255]);
  });

  it('of 12 inches at 300 to the inch is whole, without seams between its strips', async () => {
    const svg = sceneSvg(
      scene([{ type: 'rect', x: 0, y: 0, width: 1800, height: 3600, fill: '#1f3a5f' }], 3600, 3600),
    );
    const image = await pixelsOf(await svgToPng(svg, 3600, 3600));
    for (let y = 0; y < 3600; y++) {
      const [r, g, b] = image.at(900, y);
      if (r !== 31 || g !== 58 || b !== 95) throw new Error(`row ${y} is ${r} ${g} ${b}`);
    }
  });

  it('is set in the fonts that are bundled, also in italics, weights and Greek', async () => {
    const css = await fontCss();
    expect(css.match(/@font-face/g)).toHaveLength(7);
    expect(css).not.toMatch(/url\((?!data:)/);
    for (const node of [
      words('Hamburg'),
      words('Hamburg', 'sans'),
      { ...words('Hamburg'), italic: true } as SceneNode,
      words('ΔΔΔ'),
    ]) {
      const set = await pixelsOf(await svgToPng(sceneSvg(scene([node]), { fontCss: css }), 600, 400));
      const unset = await pixelsOf(await svgToPng(sceneSvg(scene([node])), 600, 400));
      expect(set.data).not.toEqual(unset.data);
    }
  });

  it('that would be blank, or larger than canvases are, is told in a sentence', async () => {
    await expect(svgToPng(sceneSvg(scene([])), 600, 400)).rejects.toThrow('came out blank');
    await expect(svgToPng('<svg', 600, 400)).rejects.toThrow('came out blank');
    await expect(svgToPng(sceneSvg(scene([])), 5000, 5000)).rejects.toThrow('larger than a browser can draw');
  });
});

describe('a board as PDF', () => {
  const board = (nodes: readonly SceneNode[]) => ({
    title: 'A board',
    size: 'square' as const,
    scene: scene(nodes, 3600, 3600),
  });

  it('is a page of the board’s size with real text', async () => {
    const bytes = await boardPdf(board([words('Coral and navy, ΔE₀₀ 9'), words('Sans', 'sans')]), () =>
      Promise.reject(new Error('no picture is needed')),
    );
    const { PDFDocument } = await import('pdf-lib');
    const read = await PDFDocument.load(bytes);
    expect(read.getTitle()).toBe('A board');
    expect(read.getPage(0).getSize()).toEqual({ width: 864, height: 864 });
    const fonts = read.context
      .enumerateIndirectObjects()
      .filter(([, object]) => String(object).includes('/BaseFont'));
    expect(fonts.length).toBeGreaterThanOrEqual(3);
  });

  it('with letters that the fonts lack is the board’s picture', async () => {
    let asked = 0;
    const bytes = await boardPdf(board([words('紙')]), () => {
      asked++;
      return svgToPng(sceneSvg(scene([words('紙')])), 600, 400);
    });
    expect(asked).toBe(1);
    expect(bytes.length).toBeGreaterThan(1000);
  });
});

async function pixelsOf(png: Blob) {
  expect(png.type).toBe('image/png');
  const bitmap = await createImageBitmap(png);
  const canvas = new OffscreenCanvas(bitmap.width, bitmap.height);
  const context = canvas.getContext('2d', { willReadFrequently: true })!;
  context.drawImage(bitmap, 0, 0);
  const { data, width, height } = context.getImageData(0, 0, bitmap.width, bitmap.height);
  return {
    data,
    width,
    height,
    at: (x: number, y: number) => data.subarray((y * width + x) * 4, (y * width + x) * 4 + 4),
  };
}
