import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import sharp, { type Sharp } from 'sharp';
import { bmpPicture } from '../files/bmp-picture.ts';
import { heifPicture } from '../files/heif-picture.ts';
import type { PictureHeader } from '../files/picture-file.ts';
import { pictureLimits, reduction } from '../files/picture-limits.ts';
import { reducedPicture, rowsOfRgba } from '../files/reduced-picture.ts';
import { checkedHeader, checkSize, separated, torn } from '../files/words/picture-refusals.ts';
import type { PixelImage } from '../sheet/model.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { inSrgbByNote } from './colour-note.ts';
import { loadLibheif } from './load-libheif.ts';
import { Refusal, refusalFor } from './refusal.ts';
import { isFolder, noSuchFile, notReadable } from './words/refusals.ts';

/** A picture as it is seen: upright, sRGB, alpha kept. */
export interface Decoded {
  readonly image: PixelImage;
  /** Pixels of `image` to one pixel of the file: 1, or less where it was reduced. */
  readonly scale: number;
  /** Size in the file, upright, in pixels. */
  readonly width: number;
  readonly height: number;
}

/**
 * Opens what the page opens, within the same limits: PNG, JPEG, WebP, TIFF, AVIF, GIF (its first picture), BMP and HEIC.
 * @param folder that a relative path starts from.
 * @throws Refusal that names the file and says what the page says.
 */
export async function decode(file: string, folder: string): Promise<Decoded> {
  const bytes = await bytesOf(file, folder);
  try {
    const header = checkedHeader(bytes);
    return await decoded(bytes, header);
  } catch (error) {
    throw error instanceof UnreadableImage ? refusalFor(file, error) : error;
  }
}

async function decoded(bytes: Buffer, header: PictureHeader): Promise<Decoded> {
  if (header.kind === 'bmp') {
    const { data, width, height } = bmpPicture(bytes);
    const image = reducedPicture(width, height, rowsOfRgba(data, width), pictureLimits.read);
    return { image, scale: image.width / width, width, height };
  }
  if (header.kind === 'heic') return fromHeif(bytes);
  return bySharp(bytes, header);
}

async function fromHeif(bytes: Buffer): Promise<Decoded> {
  const libheif = await loadLibheif();
  const raw = await heifPicture(libheif, bytes, checkSize, pictureLimits.read);
  const image = raw.colours === null ? raw.image : await inSrgbByNote(raw.image, raw.colours);
  return { image, scale: image.width / raw.fullWidth, width: raw.fullWidth, height: raw.fullHeight };
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

async function bySharp(bytes: Buffer, { kind }: PictureHeader): Promise<Decoded> {
  const found = await foundIn(bytes, kind);
  const scale = reduction(found.width, found.height, pictureLimits.read);
  try {
    const whole = await inSrgb(bytes, found);
    const { data, info } = scale < 1 ? await reduced(whole, scale) : whole;
    const image = {
      data: new Uint8ClampedArray(data.buffer, data.byteOffset, data.byteLength),
      width: info.width,
      height: info.height,
    };
    return { image, scale: image.width / found.width, width: found.width, height: found.height };
  } catch (error) {
    throw torn(kind, error);
  }
}

function inSrgb(bytes: Buffer, { deepWithProfile }: Found): Promise<Pixels> {
  const picture = sharp(bytes, { failOn: 'error', limitInputPixels: pictureLimits.decode }).autoOrient();
  // sharp brings 8 bits with a profile to sRGB by itself, but 16 bits only as far as Display P3.
  return pixelsOf(deepWithProfile ? picture.withIccProfile('srgb') : picture);
}

/** A smaller picture, averaged in linear light. Apart from `inSrgb`: sharp gives black where a profile meets linear light. */
function reduced({ data, info: { width, height } }: Pixels, scale: number): Promise<Pixels> {
  const raw = { width, height, channels: 4 } as const;
  return pixelsOf(
    sharp(data, { raw, limitInputPixels: pictureLimits.decode })
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
  return readFile(resolve(folder, file)).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') throw new Refusal(noSuchFile(file));
    if (error.code === 'EISDIR') throw new Refusal(isFolder(file));
    throw new Refusal(notReadable(file, error.code));
  });
}

async function foundIn(bytes: Buffer, kind: PictureHeader['kind']): Promise<Found> {
  const { depth, hasProfile, autoOrient, space } = await sharp(bytes, { limitInputPixels: false })
    .metadata()
    .catch((error: unknown) => {
      throw torn(kind, error);
    });
  if (space === 'cmyk') throw separated(kind);
  const { width, height } = autoOrient;
  checkSize(width, height);
  return { width, height, deepWithProfile: depth === 'ushort' && hasProfile === true };
}
