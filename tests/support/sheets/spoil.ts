import sharp from 'sharp';
import type { PixelImage } from '../../../src/sheet/model.ts';
import { dice } from './dice.ts';

/** The same picture after a JPEG of this quality (4:2:0 unless said). Done by sharp (libvips, libjpeg-turbo's kin). */
export async function jpeg(
  image: PixelImage,
  quality: number,
  chroma: '4:2:0' | '4:4:4' = '4:2:0',
): Promise<PixelImage> {
  const { width, height, data } = image;
  const file = await sharp(Buffer.from(data.buffer, data.byteOffset, data.length), {
    raw: { width, height, channels: 4 },
  })
    .removeAlpha()
    .jpeg({ quality, chromaSubsampling: chroma })
    .toBuffer();
  const raw = await sharp(file).ensureAlpha().raw().toBuffer();
  return { width, height, data: new Uint8ClampedArray(raw) };
}

/** Normal noise of this many 8-bit steps on each channel. */
export function noise(image: PixelImage, steps: number, seed: number): PixelImage {
  const roll = dice(seed + 99991);
  const data = new Uint8ClampedArray(image.data);
  for (let i = 0; i < data.length; i += 4)
    for (let c = i; c < i + 3; c++) data[c] = data[c]! + steps * roll.normal();
  return { ...image, data };
}
