import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import sharp, { type Sharp } from 'sharp';
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
  const found = await foundIn(bytes, file);
  const scale = Math.min(1, Math.sqrt(keptPixels / (found.width * found.height)));
  try {
    const whole = await inSrgb(bytes, found);
    const { data, info } = scale < 1 ? await reduced(whole, scale) : whole;
    const image = {
      data: new Uint8ClampedArray(data.buffer, data.byteOffset, data.byteLength),
      width: info.width,
      height: info.height,
    };
    return { image, scale: image.width / found.width, width: found.width, height: found.height };
  } catch {
    throw new Trouble(`${file} is damaged or cut short, and could not be opened as a picture.`);
  }
}

/** What a file says of itself before it is opened; the size is that of the picture upright. */
interface Found {
  readonly width: number;
  readonly height: number;
  /** True where 16 bits a channel come with a profile. */
  readonly deepWithProfile: boolean;
}

/** RGBA, 8 bits. */
interface Pixels {
  readonly data: Buffer;
  readonly info: { readonly width: number; readonly height: number };
}

function inSrgb(bytes: Buffer, { deepWithProfile }: Found): Promise<Pixels> {
  const picture = sharp(bytes, { failOn: 'error', limitInputPixels: mostPixels }).autoOrient();
  // sharp brings 8 bits with a profile to sRGB by itself, but 16 bits only as far as Display P3.
  return pixelsOf(deepWithProfile ? picture.withIccProfile('srgb') : picture);
}

/** A smaller picture, averaged in linear light. Apart from `inSrgb`: sharp gives black where a profile meets linear light. */
function reduced({ data, info: { width, height } }: Pixels, scale: number): Promise<Pixels> {
  const raw = { width, height, channels: 4 } as const;
  return pixelsOf(
    sharp(data, { raw, limitInputPixels: mostPixels })
      .pipelineColourspace('scrgb')
      .resize(Math.round(width * scale), Math.round(height * scale), { fit: 'fill', kernel: 'linear' }),
  );
}

function pixelsOf(picture: Sharp): Promise<Pixels> {
  return picture
    .toColourspace('srgb')
    .ensureAlpha()
    .raw({ depth: 'uchar' })
    .toBuffer({ resolveWithObject: true });
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

async function foundIn(bytes: Buffer, file: string): Promise<Found> {
  const { format, compression, depth, hasProfile, autoOrient } = await sharp(bytes, {
    limitInputPixels: false,
  })
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
  const { width, height } = autoOrient;
  if (width * height > mostPixels) {
    const megapixels = Math.round((width * height) / 1e6);
    throw new Trouble(
      `${file} has ${megapixels} million pixels, and at most ${mostPixels / 1e6} million are read.`,
    );
  }
  return { width, height, deepWithProfile: depth === 'ushort' && hasProfile === true };
}
