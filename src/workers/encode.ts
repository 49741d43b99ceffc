import { pictureLimits } from '../files/picture-limits.ts';
import type { EncodedPicture } from './messages.ts';

/** A canvas encoded anew with its longer side at most `side` pixels. `drawn` is true for what was drawn rather than photographed. */
export async function encodedPicture(
  canvas: OffscreenCanvas,
  side: number,
  opaque: boolean,
  drawn: boolean,
): Promise<EncodedPicture> {
  const factor = Math.min(1, side / Math.max(canvas.width, canvas.height));
  const width = Math.max(1, Math.round(canvas.width * factor));
  const height = Math.max(1, Math.round(canvas.height * factor));
  const small = new OffscreenCanvas(width, height);
  const context = small.getContext('2d', { colorSpace: 'srgb' });
  if (context === null) throw new Error('no canvas');
  context.imageSmoothingQuality = 'high';
  context.drawImage(canvas, 0, 0, width, height);
  if (drawn || !opaque) {
    const png = await small.convertToBlob({ type: 'image/png' });
    // A JPEG has no transparency, so a picture with some stays a PNG at any size.
    if (!opaque || png.size <= pictureLimits.pngBytes) {
      return { bytes: await png.arrayBuffer(), type: 'image/png', width, height };
    }
  }
  const jpeg = await small.convertToBlob({ type: 'image/jpeg', quality: 0.92 });
  return { bytes: await jpeg.arrayBuffer(), type: 'image/jpeg', width, height };
}
