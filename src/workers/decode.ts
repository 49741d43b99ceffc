import type { PictureHeader } from '../files/picture-file.ts';
import { pictureLimits, reduction } from '../files/picture-limits.ts';
import type { RawPicture } from '../files/raw-picture.ts';
import { allTransparent, decoderNotLoaded, noCanvas, reducedFrom } from '../files/words/opening-words.ts';
import { checkedHeader, checkSize, torn } from '../files/words/picture-refusals.ts';
import type { PixelImage } from '../sheet/model.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { bitmapThroughProfile } from './decode-profile.ts';

/** A picture decoded at the size at which it is read. */
export interface Decoded {
  readonly image: PixelImage;
  readonly canvas: OffscreenCanvas;
  /** True where every pixel is solid. */
  readonly opaque: boolean;
  readonly kind: PictureHeader['kind'];
  readonly fullWidth: number;
  readonly fullHeight: number;
  /** What was done on the way, one plain sentence each; often none. */
  readonly notes: readonly string[];
}

export interface DecodeOptions {
  /** Pixels to which a larger picture is reduced. Default: as many as are read. Never more than a canvas may have. */
  readonly maxPixels?: number;
}

/**
 * Decodes a picture file onto an sRGB canvas: whatever the browser decodes, at its default colour conversion; HEIC
 * through libheif where the browser has no decoder of its own; TIFF of 8 and 16 bits. Upright, reduced as it is decoded
 * where it is larger than is read; of what else the file says (place, time, camera) nothing comes through.
 * @throws UnreadableImage with one clear sentence.
 */
export async function decodePicture(bytes: ArrayBuffer, options: DecodeOptions = {}): Promise<Decoded> {
  const most = Math.min(options.maxPixels ?? pictureLimits.read, pictureLimits.canvas);
  const header = checkedHeader(new Uint8Array(bytes));
  const { bitmap, fullWidth, fullHeight, notes } = await decoded(bytes, header, most);
  // Where the header told no size, the reduction comes after decoding.
  const factor = reduction(bitmap.width, bitmap.height, most);
  const width = Math.max(1, Math.round(bitmap.width * factor));
  const height = Math.max(1, Math.round(bitmap.height * factor));
  checkSize(width, height);
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (context === null) throw new UnreadableImage(noCanvas);
  context.imageSmoothingQuality = 'medium';
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const image = context.getImageData(0, 0, width, height);
  const alpha = alphaOf(image);
  if (alpha === 'none') {
    throw new UnreadableImage(allTransparent);
  }
  const told =
    fullWidth * fullHeight > width * height * 1.02
      ? [...notes, reducedFrom(fullWidth * fullHeight, width * height)]
      : notes;
  return { image, canvas, opaque: alpha === 'all', kind: header.kind, fullWidth, fullHeight, notes: told };
}

interface Opened {
  readonly bitmap: ImageBitmap;
  readonly fullWidth: number;
  readonly fullHeight: number;
  readonly notes: readonly string[];
}

async function decoded(bytes: ArrayBuffer, header: PictureHeader, most: number): Promise<Opened> {
  if (header.kind === 'tiff') return fromRaw(await rawPicture(bytes, header, most));
  try {
    return await byBrowser(bytes, header, most);
  } catch (error) {
    // Some browsers open HEIC by themselves; for those that don't there is a decoder of our own.
    if (header.kind === 'heic') return fromRaw(await rawPicture(bytes, header, most));
    throw torn(header.kind, error);
  }
}

async function byBrowser(bytes: ArrayBuffer, header: PictureHeader, most: number): Promise<Opened> {
  const blob = new Blob([bytes], { type: header.mime });
  const { width, height } = header;
  const factor = width === null || height === null ? 1 : reduction(width, height, most);
  const bitmap =
    factor < 1 && width !== null && height !== null
      ? await createImageBitmap(blob, {
          resizeWidth: Math.round(width * factor),
          resizeHeight: Math.round(height * factor),
          resizeQuality: 'medium',
        })
      : await createImageBitmap(blob);
  return { bitmap, fullWidth: width ?? bitmap.width, fullHeight: height ?? bitmap.height, notes: [] };
}

/** Each decoder is fetched when a picture first needs it. */
async function rawPicture(bytes: ArrayBuffer, header: PictureHeader, most: number): Promise<RawPicture> {
  try {
    if (header.kind === 'tiff') {
      const { tiffPicture } = await import('./decode-tiff.ts');
      return await tiffPicture(bytes, checkSize, most);
    }
    const { heicPicture } = await import('./decode-heic.ts');
    return await heicPicture(new Uint8Array(bytes), checkSize, most);
  } catch (error) {
    if (error instanceof UnreadableImage) throw error;
    throw new UnreadableImage(decoderNotLoaded(header.kind), { cause: error });
  }
}

async function fromRaw({ image, colours, fullWidth, fullHeight, notes }: RawPicture): Promise<Opened> {
  const pixels = image.data as Uint8ClampedArray<ArrayBuffer>;
  const bitmap =
    colours === null
      ? await createImageBitmap(new ImageData(pixels, image.width, image.height))
      : await bitmapThroughProfile(image, colours);
  return { bitmap, fullWidth, fullHeight, notes };
}

function alphaOf({ data }: PixelImage): 'all' | 'some' | 'none' {
  let least = 255;
  let most = 0;
  for (let i = 3; i < data.length; i += 4) {
    const alpha = data[i] ?? 0;
    if (alpha < least) least = alpha;
    if (alpha > most) most = alpha;
  }
  return least === 255 ? 'all' : most === 0 ? 'none' : 'some';
}
