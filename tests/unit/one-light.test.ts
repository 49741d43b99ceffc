import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import sharp from 'sharp';
import { afterAll, describe, expect, it } from 'vitest';
import { readPicture } from '../../src/cli/read-picture.ts';
import { chartLabs } from '../../src/colour/light.ts';
import { linearFromRgb, rgbFromLab, rgbFromLinear } from '../../src/colour/spaces.ts';
import { readWithPlaces } from '../../src/index.ts';
import { readPhotograph } from '../../src/sheet/light/photograph.ts';
import type { Card, Frame, LightMark, PixelImage } from '../../src/sheet/model.ts';
import { findPaper } from '../../src/sheet/outline/find-paper.ts';
import { sizeOfCorners } from '../../src/sheet/sold-sizes.ts';
import { drawSheet } from '../support/sheets/draw-sheet.ts';
import { onTable } from '../support/sheets/on-table.ts';
import { type CastKind, photograph } from '../support/sheets/photograph.ts';

/**
 * The same bytes with the same card through three doors: the engine, the terminal (from a file), and what the page's worker
 * calls with what was marked on the page. They are held against each other, to the bit; what is right is held in
 * tests/unit/sheet. PNG, because two decoders give one picture of it.
 */
const folder = mkdtempSync(join(tmpdir(), 'quirewise-light-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

type Door = 'engine' | 'page' | 'terminal';

async function throughAllDoors(
  name: string,
  image: PixelImage,
  card: Card | null,
  chart: Frame | null = null,
) {
  const { width, height, data } = image;
  const file = `${name.replaceAll(/\W+/g, '-')}.png`;
  const png = await sharp(data, { raw: { width, height, channels: 4 } })
    .png()
    .toBuffer();
  writeFileSync(join(folder, file), png);
  const options = { ...(card ? { card } : {}), ...(chart ? { chart } : {}) };
  const sizeMm = { width: 305, height: 305 };
  const engine = readWithPlaces(image, { mmPerPixel: 305 / width, ...options });
  const page = readPhotograph(image, { sizeMm, light: markOf(image, card, chart) });
  const terminal = await readPicture({ file, widthMm: sizeMm.width, ...options }, folder);
  const sides: Record<Door, unknown> = { engine: engine.side, page: page.side, terminal: terminal.side };
  return { sides, places: [engine.places, page.places], side: engine.side };
}

/** As the page keeps it: in fractions of the picture, with a share of light. */
function markOf({ width, height }: PixelImage, card: Card | null, chart: Frame | null): LightMark {
  const { x, y, width: w, height: h } = (chart ?? card)!;
  const frame = { x: x / width, y: y / height, width: w / width, height: h / height };
  if (chart) return { kind: 'chart', frame };
  return { kind: card!.kind ?? 'white', frame, reflectance: card!.reflectance ?? 0.9 };
}

/** Darkens a frame: a shadow that lies over half of the card. */
function shadowed({ data, width, height }: PixelImage, { x, y, width: w, height: h }: Frame): PixelImage {
  const copy = Uint8ClampedArray.from(data);
  for (let row = y; row < y + h; row++)
    for (let column = x; column < x + w / 2; column++)
      for (let c = 0; c < 3; c++) copy[(row * width + column) * 4 + c]! *= 0.6;
  return { data: copy, width, height };
}

/** A small sheet on a table beside a card. */
function photographed(kind: CastKind, seed: number) {
  return photograph(drawSheet(seed, { width: 360 }), seed, kind);
}

/** Lays the 24 patches on a picture, under a warm lamp. */
function withChart({ data, width, height }: PixelImage, chart: Frame): PixelImage {
  const copy = Uint8ClampedArray.from(data);
  const patches = chartLabs().map(({ lab }) => linearFromRgb(rgbFromLab(lab)));
  for (let y = 0; y < chart.height; y++)
    for (let x = 0; x < chart.width; x++) {
      const patch = patches[Math.floor((y * 4) / chart.height) * 6 + Math.floor((x * 6) / chart.width)]!;
      const seen = rgbFromLinear({ r: patch.r * 0.9, g: patch.g * 0.8, b: patch.b * 0.6 });
      copy.set([seen.r * 255, seen.g * 255, seen.b * 255], ((chart.y + y) * width + chart.x + x) * 4);
    }
  return { data: copy, width, height };
}

describe('a paper on a table, in the terminal', () => {
  it('is cut out before it is read, as the page does it; where the whole is said to be the paper, all is read', async () => {
    const { image } = onTable(drawSheet(3, { width: 300, samples: 2 }), 'dark', 3, undefined, 480, 360);
    const { data, width, height } = image;
    const raw = { width, height, channels: 4 } as const;
    await sharp(Buffer.from(data), { raw }).png().toFile(join(folder, 'table.png'));
    const { corners } = findPaper(image)!;
    const page = readPhotograph(image, { corners, sizeMm: sizeOfCorners(corners, width / height) });
    const terminal = await readPicture({ file: 'table.png' }, folder);
    expect(terminal.side).toEqual(page.side);
    expect(terminal.image).toEqual(page.image);
    const whole = await readPicture({ file: 'table.png', whole: true }, folder);
    expect(whole.side).toEqual(readWithPlaces(image).side);
    expect(whole.image.width).toBe(width);
  });
});

describe('one light through three doors', () => {
  it.each([
    ['adaptation', 81],
    ['gains', 82],
    ['spectra', 83],
  ] as const)('gives the same inks and places, to the bit: %s, sheet %i', async (kind, seed) => {
    const { image, card } = await photographed(kind, seed);
    const { sides, places, side } = await throughAllDoors(`${kind} ${seed}`, image, card);
    expect(side.light.known).toBe(true);
    expect(sides.page).toEqual(sides.engine);
    expect(sides.terminal).toEqual(sides.engine);
    expect(places[1]).toEqual(places[0]);
  });

  it('says the same of a card that a shadow lies on', async () => {
    const { image, card } = await photographed('gains', 84);
    const { sides, side } = await throughAllDoors('shadow', shadowed(image, card), card);
    expect(side.light).toMatchObject({ known: false });
    expect(side.light.note).toContain('more than one colour');
    expect(sides.page).toEqual(sides.engine);
    expect(sides.terminal).toEqual(sides.engine);
  });

  it('gives the same by a card that is called grey', async () => {
    const { image, card: white } = await photographed('gains', 85);
    const card: Card = { ...white, kind: 'grey', reflectance: 0.6 };
    const { sides, side } = await throughAllDoors('grey', image, card);
    expect(side.light.note).toContain('grey card');
    expect(sides.page).toEqual(sides.engine);
    expect(sides.terminal).toEqual(sides.engine);
  });

  it('gives the same by a chart', async () => {
    const { image } = await photographed('gains', 87);
    const chart = { x: 30, y: 300, width: 180, height: 120 };
    const { sides, side } = await throughAllDoors('chart', withChart(image, chart), null, chart);
    expect(side.light).toMatchObject({ known: true });
    expect(side.light.note).toContain('by the chart');
    expect(sides.page).toEqual(sides.engine);
    expect(sides.terminal).toEqual(sides.engine);
  });

  it('refuses with one sentence where the frame lies on no chart', async () => {
    const { image, card: chart } = await photographed('gains', 86);
    const says = 'does not lie on the 24 patches';
    expect(() => readWithPlaces(image, { chart })).toThrow(says);
    const { width, height } = image;
    expect(() =>
      readPhotograph(image, { sizeMm: { width, height }, light: markOf(image, null, chart) }),
    ).toThrow(says);
  });
});
