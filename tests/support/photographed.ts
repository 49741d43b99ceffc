import sharp from 'sharp';
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
} as const;

/**
 * A demo sheet lying on a brown table with a white card of 90 % beside it, under a warm lamp: the lamp is a gain on
 * each channel in linear light, as a camera would see it.
 */
export async function photographOf(id: string, name: string, width = 1200): Promise<PictureFile> {
  const height = (width * 3) / 4;
  const px = Math.round(height * 0.56);
  const paper = drawDemoSheet(id, 'A', px);
  const sheet = { width: paper.width, height: paper.height, channels: 4 } as const;
  const { card } = onPhotograph;
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
      {
        // sRGB of 90 % grey in linear light.
        input: await flat(width * card.width, height * card.height, '#f3f3f3'),
        left: Math.round(width * card.x),
        top: Math.round(height * card.y),
      },
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

/** Source: IEC 61966-2-1. */
function linear(v: number): number {
  return v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
}

function encoded(v: number): number {
  return v <= 0.0031308 ? v * 12.92 : 1.055 * v ** (1 / 2.4) - 0.055;
}
