import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import sharp from 'sharp';
import type { PixelImage } from '../sheet/model.ts';
import { Trouble } from './trouble.ts';

/** A picture as it is seen: upright, sRGB, alpha kept. */
export interface Decoded {
  readonly image: PixelImage;
  /** Pixels of `image` to one pixel of the file: 1, or less where it was reduced. */
  readonly scale: number;
  /** Size in the file, upright, in pixels. */
  readonly width: number;
  readonly height: number;
}

/** Pictures above this are reduced to it, in linear light, before they are read. Our choice: an inch keeps 290 of them. */
const keptPixels = 12e6;
/** Above this a picture is refused: it would take gigabytes to hold. Our choice. */
const mostPixels = 200e6;

/**
 * Opens PNG, JPEG, WebP, TIFF and AVIF.
 * @param folder that a relative path starts from.
 * @throws Trouble in one sentence that names the file.
 */
export async function decode(file: string, folder: string): Promise<Decoded> {
  const bytes = await bytesOf(file, folder);
  const { width, height } = await sizeOf(bytes, file);
  const scale = Math.min(1, Math.sqrt(keptPixels / (width * height)));
  try {
    let picture = sharp(bytes, { failOn: 'error', limitInputPixels: mostPixels }).autoOrient();
    if (scale < 1) {
      picture = picture
        .pipelineColourspace('scrgb')
        .resize(Math.round(width * scale), Math.round(height * scale), { fit: 'fill', kernel: 'linear' });
    }
    const { data, info } = await picture
      .toColourspace('srgb')
      .ensureAlpha()
      .raw({ depth: 'uchar' })
      .toBuffer({ resolveWithObject: true });
    const image = {
      data: new Uint8ClampedArray(data.buffer, data.byteOffset, data.byteLength),
      width: info.width,
      height: info.height,
    };
    return { image, scale: image.width / width, width, height };
  } catch {
    throw new Trouble(`${file} is damaged or cut short, and could not be opened as a picture.`);
  }
}

async function bytesOf(file: string, folder: string): Promise<Buffer> {
  const bytes = await readFile(resolve(folder, file)).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') throw new Trouble(`There is no file ${file}.`);
    if (error.code === 'EISDIR') throw new Trouble(`${file} is a folder, not a picture.`);
    throw new Trouble(`${file} could not be read (${error.code}).`);
  });
  if (bytes.length === 0) throw new Trouble(`${file} is an empty file.`);
  return bytes;
}

async function sizeOf(bytes: Buffer, file: string): Promise<{ width: number; height: number }> {
  const { format, compression, ...rest } = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch(() => {
      throw new Trouble(`${file} is not a picture that can be opened here: PNG, JPEG, WebP, TIFF or AVIF.`);
    });
  const opens =
    ['png', 'jpeg', 'webp', 'tiff'].includes(format ?? '') || (format === 'heif' && compression === 'av1');
  if (!opens)
    throw new Trouble(
      `${file} is ${format?.toUpperCase()}, and only PNG, JPEG, WebP, TIFF and AVIF are opened here.`,
    );
  const { width, height } = rest.autoOrient;
  if (width * height > mostPixels) {
    const megapixels = Math.round((width * height) / 1e6);
    throw new Trouble(
      `${file} has ${megapixels} million pixels, and at most ${mostPixels / 1e6} million are read.`,
    );
  }
  return { width, height };
}
