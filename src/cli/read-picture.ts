import { readPhotograph } from '../sheet/light/photograph.ts';
import type { Corners, Frame, PixelImage, Places, ReadOptions, Side } from '../sheet/model.ts';
import { findPaper } from '../sheet/outline/find-paper.ts';
import { readWithPlaces } from '../sheet/read-side.ts';
import { sizeOfCorners } from '../sheet/sold-sizes.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import type { PictureOrder } from './arguments.ts';
import { type Decoded, decode } from './decode.ts';
import { Refusal, refusalFor } from './refusal.ts';
import { reachesOutside } from './words/refusals.ts';

/** A picture that was named, its side, and the pixels that were read. */
export interface ReadPicture {
  readonly file: string;
  readonly side: Side;
  /** Where its inks lie. */
  readonly places: Places;
  readonly image: PixelImage;
  /** The part of `image` that is the sheet, or null for all of it. */
  readonly crop: Frame | null;
}

/**
 * Opens a picture and reads its side.
 * @throws Refusal in one sentence that names the file.
 */
export async function readPicture(order: PictureOrder, folder: string): Promise<ReadPicture> {
  const decoded = await decode(order.file, folder);
  const { crop, card, chart } = order;
  for (const [what, frame] of [
    ['crop', crop],
    ['card', card],
    ['chart', chart],
  ] as const) {
    if (frame && !liesIn(frame, decoded)) {
      throw new Refusal(reachesOutside(what, order.file, decoded.width, decoded.height));
    }
  }
  const { scale, image } = decoded;
  const onTable = order.whole || crop || card || chart ? null : findPaper(image);
  if (onTable?.isSure) return readCutOut(order, image, onTable.corners);
  const options: ReadOptions = {
    ...(order.widthMm ? { mmPerPixel: order.widthMm / ((crop?.width ?? decoded.width) * scale) } : {}),
    ...(crop ? { crop: scaled(crop, scale) } : {}),
    ...(card ? { card: { ...card, ...scaled(card, scale) } } : {}),
    ...(chart ? { chart: scaled(chart, scale) } : {}),
  };
  try {
    const { side, places } = readWithPlaces(image, options);
    return { file: order.file, side, places, image, crop: options.crop ?? null };
  } catch (error) {
    if (error instanceof UnreadableImage) throw refusalFor(order.file, error);
    throw error;
  }
}

/** As the page reads it: cut out of its table. */
function readCutOut({ file, widthMm }: PictureOrder, photograph: PixelImage, corners: Corners): ReadPicture {
  const sold = sizeOfCorners(corners, photograph.width / photograph.height);
  const sizeMm = widthMm ? { width: widthMm, height: (widthMm * sold.height) / sold.width } : sold;
  const { side, places, image } = readPhotograph(photograph, { corners, sizeMm });
  return { file, side, places, image, crop: null };
}

function liesIn({ x, y, width, height }: Frame, decoded: Decoded): boolean {
  return x + width <= decoded.width && y + height <= decoded.height;
}

function scaled(frame: Frame, scale: number): Frame {
  if (scale === 1) return frame;
  const [x, y] = [Math.round(frame.x * scale), Math.round(frame.y * scale)];
  return {
    x,
    y,
    width: Math.max(1, Math.round((frame.x + frame.width) * scale) - x),
    height: Math.max(1, Math.round((frame.y + frame.height) * scale) - y),
  };
}
