import type { Picture } from '../storage/database.ts';
import { pictureLimits } from '../workers/picture-limits.ts';

/**
 * A picture made small, as the drawer shows it; null where this browser draws nothing outside a page.
 * Rejects where the picture can't be decoded.
 */
export async function smallPicture(picture: Blob): Promise<Picture['thumb']> {
  const whole = await createImageBitmap(picture);
  try {
    if (typeof OffscreenCanvas === 'undefined') return null;
    const factor = Math.min(1, pictureLimits.thumbSide / Math.max(whole.width, whole.height));
    const width = Math.max(1, Math.round(whole.width * factor));
    const height = Math.max(1, Math.round(whole.height * factor));
    const canvas = new OffscreenCanvas(width, height);
    const context = canvas.getContext('2d', { colorSpace: 'srgb' });
    if (context === null) return null;
    context.imageSmoothingQuality = 'high';
    context.drawImage(whole, 0, 0, width, height);
    // A JPEG has no transparency, and may be what it was made from.
    const made =
      picture.type === 'image/png'
        ? await canvas.convertToBlob({ type: 'image/png' })
        : await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.92 });
    return { bytes: await made.arrayBuffer(), type: made.type };
  } finally {
    whole.close();
  }
}

/** Whether this browser's decoder opens it. Where there is no decoder, nothing speaks against it. */
export async function isDecodable(picture: Blob): Promise<boolean> {
  if (typeof createImageBitmap === 'undefined') return true;
  try {
    (await createImageBitmap(picture)).close();
    return true;
  } catch {
    return false;
  }
}
