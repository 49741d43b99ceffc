import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { drawDemoSheet } from '../../src/demo/sheets.ts';

/** Writes a demo sheet's side as a picture file (PNG, JPEG … by its ending). @returns the file's name. */
export async function putDemoFile(
  folder: string,
  name: string,
  id: string,
  side: 'A' | 'B' = 'A',
  px = 360,
): Promise<string> {
  const { data, width, height } = drawDemoSheet(id, side, px);
  const format = name.slice(name.lastIndexOf('.') + 1).replace('jpg', 'jpeg') as
    | 'png'
    | 'jpeg'
    | 'webp'
    | 'tiff';
  const bytes = await sharp(Buffer.from(data.buffer), { raw: { width, height, channels: 4 } })
    .removeAlpha()
    .toFormat(format)
    .toBuffer();
  writeFileSync(join(folder, name), bytes);
  return name;
}
