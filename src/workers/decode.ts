import type { PixelImage } from '../sheet/model.ts';
import { type PictureHeader, pictureHeader } from '../sheet/picture-file.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { pictureLimits, reduction } from './picture-limits.ts';

/** A picture decoded at the size at which it is read. */
export interface Decoded {
  readonly image: PixelImage;
  readonly canvas: OffscreenCanvas;
  /** True where every pixel is solid. */
  readonly opaque: boolean;
  readonly kind: PictureHeader['kind'];
  readonly fullWidth: number;
  readonly fullHeight: number;
}

/**
 * Decodes a picture file at the browser's default colour conversion onto an sRGB canvas, reduced as it is decoded where
 * it is larger than is read. @throws UnreadableImage with one clear sentence.
 */
export async function decodePicture(bytes: ArrayBuffer): Promise<Decoded> {
  const header = checkedHeader(new Uint8Array(bytes));
  const blob = new Blob([bytes], { type: header.mime });
  const bitmap = await decoded(blob, header);
  const fullWidth = header.width ?? bitmap.width;
  const fullHeight = header.height ?? bitmap.height;
  // Where the header told no size, the reduction comes after decoding.
  const factor = reduction(bitmap.width, bitmap.height, pictureLimits.read);
  const width = Math.max(1, Math.round(bitmap.width * factor));
  const height = Math.max(1, Math.round(bitmap.height * factor));
  checkSize(width, height);
  const canvas = new OffscreenCanvas(width, height);
  const context = canvas.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (context === null)
    throw new UnreadableImage('This browser can’t open pictures just now. Close other pages and try again.');
  context.imageSmoothingQuality = 'medium';
  context.drawImage(bitmap, 0, 0, width, height);
  bitmap.close();
  const image = context.getImageData(0, 0, width, height);
  const alpha = alphaOf(image);
  if (alpha === 'none') {
    throw new UnreadableImage('This picture is fully transparent: there is no paper in it to read.');
  }
  return { image, canvas, opaque: alpha === 'all', kind: header.kind, fullWidth, fullHeight };
}

function checkedHeader(bytes: Uint8Array): PictureHeader {
  if (bytes.length === 0) throw new UnreadableImage('This file is empty: there is no picture in it.');
  if (bytes.length > pictureLimits.file) {
    throw new UnreadableImage(
      'This file is too large to open (over 400 megabytes). Save a smaller copy and drop that.',
    );
  }
  const header = pictureHeader(bytes);
  if (header === null) {
    throw new UnreadableImage(
      'This file is not a picture, whatever its name says. PNG, JPEG, WebP, AVIF and GIF can be read.',
    );
  }
  const { width, height } = header;
  if (width !== null && height !== null) {
    checkSize(width, height);
    const millions = Math.round((width * height) / 1e6);
    if (width * height > pictureLimits.decode) {
      throw new UnreadableImage(
        `This picture has ${millions} megapixels, more than a page can open safely (${pictureLimits.decode / 1e6}). Save a copy of 12 to 50 megapixels and drop that; a 12-inch sheet needs no more.`,
      );
    }
  }
  return header;
}

function checkSize(width: number, height: number): void {
  if (Math.min(width, height) < pictureLimits.leastSide) {
    throw new UnreadableImage(
      `This picture is only ${width} × ${height} pixels: too small to read a paper from.`,
    );
  }
}

async function decoded(blob: Blob, header: PictureHeader): Promise<ImageBitmap> {
  const { width, height } = header;
  const factor = width === null || height === null ? 1 : reduction(width, height, pictureLimits.read);
  try {
    if (factor < 1 && width !== null && height !== null) {
      return await createImageBitmap(blob, {
        resizeWidth: Math.round(width * factor),
        resizeHeight: Math.round(height * factor),
        resizeQuality: 'medium',
      });
    }
    return await createImageBitmap(blob);
  } catch (error) {
    throw new UnreadableImage(undecodable(header), { cause: error });
  }
}

function undecodable(header: PictureHeader): string {
  if (header.kind === 'heic' || header.kind === 'tiff') {
    return `This browser can’t open ${header.kind.toUpperCase()} pictures. Save it as JPEG or PNG and drop that.`;
  }
  return 'This picture is torn: it begins as one, but can’t be opened to the end. Copy it again from where it came from.';
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
