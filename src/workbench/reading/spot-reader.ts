import { parseHex } from '../../colour/spaces.ts';
import type { Held } from '../../drawer/model.ts';
import type { Notebook } from '../../notebook/model.ts';
import type { PixelImage, Spot } from '../../sheet/model.ts';
import { colourAtSpot, shareNear } from '../../workers/spot-colour.ts';
import { type Pictures, sourceOf } from '../pictures.ts';
import type { SpotReading } from '../session-types.ts';

/** What lies at a spot of a paper's picture. The last picture stays decoded, because a spot is moved about on it. */
export interface SpotReader {
  at(notebook: Notebook, held: Held, spot: Spot): Promise<SpotReading | null>;
}

export function startSpotReader(pictures: Pictures): SpotReader {
  let last: { readonly id: string; readonly image: Promise<PixelImage | null> } | null = null;
  return {
    async at(notebook, held, spot) {
      const id = sourceOf(notebook, held)?.pictureId ?? null;
      if (id === null) return null;
      if (last?.id !== id) last = { id, image: decoded(pictures, id) };
      const image = await last.image;
      if (image === null) return null;
      const hex = colourAtSpot(image, spot);
      return { hex, share: shareNear(image, parseHex(hex)!) };
    },
  };
}

/** Smaller than it is stored: a spot is a few hundredths of a picture, and the page must not wait. */
const mostPixels = 700;

async function decoded(pictures: Pictures, id: string): Promise<PixelImage | null> {
  const picture = await pictures.get(id);
  if (picture === null) return null;
  const factor = Math.min(1, mostPixels / Math.max(picture.width, picture.height));
  const width = Math.max(1, Math.round(picture.width * factor));
  const height = Math.max(1, Math.round(picture.height * factor));
  const bitmap = await createImageBitmap(new Blob([picture.bytes], { type: picture.type }), {
    resizeWidth: width,
    resizeHeight: height,
    resizeQuality: 'medium',
  });
  const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
  context?.drawImage(bitmap, 0, 0);
  bitmap.close();
  return context?.getImageData(0, 0, width, height) ?? null;
}
