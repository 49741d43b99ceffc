import type { Corners, Light, LightMark, PixelImage, SizeMm } from '../sheet/model.ts';
import { straighten } from '../sheet/straighten.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { lightFromMark, underKnownLight } from './light-mark.ts';

/** What is to be done to a photograph before it is read. Everything in fractions of it. */
export interface Preparation {
  readonly corners?: Corners;
  readonly light?: LightMark;
  readonly sizeMm: SizeMm;
}

export interface Prepared {
  readonly image: PixelImage;
  readonly mmPerPixel: number;
  /** What is known of the light; null where nothing tells. */
  readonly light: Light | null;
}

/**
 * A photograph straightened and its light undone; the mark that tells the light may lie beside the sheet.
 * @throws UnreadableImage where the corners make no sheet or the mark tells nothing.
 */
export function prepared(image: PixelImage, { corners, light: mark, sizeMm }: Preparation): Prepared {
  const known = mark === undefined ? null : lightFromMark(image, mark);
  const flat = corners === undefined ? image : flattened(image, corners, sizeMm);
  return {
    image: known === null ? flat : underKnownLight(flat, known.fit),
    mmPerPixel: Math.max(sizeMm.width, sizeMm.height) / Math.max(flat.width, flat.height),
    light: known?.light ?? null,
  };
}

function flattened(image: PixelImage, corners: Corners, sizeMm: SizeMm): PixelImage {
  try {
    return straighten(image, corners, { sizeMm }).image;
  } catch (error) {
    const says =
      'These corners make no sheet: put each handle on its own corner of it, and straighten again.';
    throw new UnreadableImage(says, { cause: error });
  }
}
