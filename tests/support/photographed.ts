import { converter, formatHex } from 'culori';
import sharp from 'sharp';
import { chartLabs } from '../../src/colour/light.ts';
import { drawDemoSheet } from '../../src/demo/sheets.ts';

/** A picture file as a reader drops it. */
export interface PictureFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** Where things lie on a photograph, in fractions of it. */
export const onPhotograph = {
  /** The sheet's corners, clockwise from its top left. */
  corners: [
    { x: 0.1, y: 0.12 },
    { x: 0.1 + 0.56 * 0.75, y: 0.12 },
    { x: 0.1 + 0.56 * 0.75, y: 0.68 },
    { x: 0.1, y: 0.68 },
  ],
  card: { x: 0.76, y: 0.2, width: 0.15, height: 0.18 },
  /** Where a chart of 24 patches lies instead: the outer edges of its patches. */
  chart: { x: 0.58, y: 0.2, width: 0.36, height: 0.32 },
} as const;

/**
 * A demo sheet lying on a brown table with a white card of 90 % or a chart of 24 patches beside it, under a warm lamp:
 * the lamp is a gain on each channel in linear light, as a camera would see it.
 */
export async function photographOf(
  id: string,
  name: string,
  width = 1200,
  beside: 'card' | 'chart' = 'card',
): Promise<PictureFile> {
  const height = (width * 3) / 4;
  const px = Math.round(height * 0.56);
  const paper = drawDemoSheet(id, 'A', px);
  const sheet = { width: paper.width, height: paper.height, channels: 4 } as const;
  const flat = (w: number, h: number, background: string) =>
    sharp({ create: { width: Math.round(w), height: Math.round(h), channels: 3, background } })
      .png()
      .toBuffer();
  const { data, info } = await sharp(await flat(width, height, '#6d6259'))
    .composite([
      {
        input: await sharp(Buffer.from(paper.data.buffer), { raw: sheet }).png().toBuffer(),
        left: Math.round(width * onPhotograph.corners[0].x),
        top: Math.round(height * onPhotograph.corners[0].y),
      },
      ...(await Promise.all(
        marks[beside].map(async (mark) => ({
          input: await flat(width * mark.width, height * mark.height, mark.colour),
          left: Math.round(width * mark.x),
          top: Math.round(height * mark.y),
        })),
      )),
    ])
    .removeAlpha()
    .raw()
    .toBuffer({ resolveWithObject: true });
  const lamp = [1, 0.86, 0.62].map((gain) =>
    Uint8Array.from({ length: 256 }, (_, v) => Math.round(encoded(linear(v / 255) * gain) * 255)),
  );
  for (let i = 0; i < data.length; i++) data[i] = lamp[i % 3]![data[i]!]!;
  const bytes = await sharp(data, { raw: { width: info.width, height: info.height, channels: 3 } })
    .jpeg({ quality: 92 })
    .toBuffer();
  return { name, type: 'image/jpeg', bytes };
}

const srgb = converter('rgb');
const { chart } = onPhotograph;
/** Six patches across and four down, with a little of the chart's black between them. */
const patch = { width: chart.width / 6, height: chart.height / 4 } as const;
const marks = {
  // sRGB of 90 % grey in linear light.
  card: [{ ...onPhotograph.card, colour: '#f3f3f3' }],
  chart: [
    { ...chart, colour: '#202020' },
    ...chartLabs().map(({ lab }, i) => ({
      x: chart.x + patch.width * ((i % 6) + 0.06),
      y: chart.y + patch.height * (Math.floor(i / 6) + 0.06),
      width: patch.width * 0.88,
      height: patch.height * 0.88,
      colour: formatHex(srgb({ mode: 'lab65', l: lab.l, a: lab.a, b: lab.b })),
    })),
  ],
} as const;

/** Source: IEC 61966-2-1. */
function linear(v: number): number {
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
}

function encoded(v: number): number {
  return v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055;
}
