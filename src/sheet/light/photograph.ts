import type { Corners, Frame, LightMark, PixelImage, Reading, SizeMm } from '../model.ts';
import { homographyOf, movedBy } from '../outline/homography.ts';
import { straighten } from '../outline/straighten.ts';
import { readUnderLight } from '../read-side.ts';
import { UnreadableImage } from '../unreadable.ts';
import { refusals } from '../words/refusals.ts';
import { type KnownLight, knownLightOf, markInPixels } from './known-light.ts';
import { pictureUnderLight } from './under-light.ts';

/** What is to be done to a photograph before it is read. Everything in fractions of it. */
export interface Preparation {
  readonly corners?: Corners;
  readonly light?: LightMark;
  readonly sizeMm: SizeMm;
}

export interface Prepared {
  /** Straightened, its light as it was taken: what is read. */
  readonly image: PixelImage;
  readonly mmPerPixel: number;
  /** What is known of the light; null where nothing tells. */
  readonly light: KnownLight | null;
}

/** A reading of a photograph, and the picture to look at: straightened, its light undone. */
export interface ReadPhotograph extends Reading {
  readonly image: PixelImage;
}

/**
 * Reads a photograph straightened and with its light undone, in linear light from the pixels as they were taken.
 * @throws UnreadableImage where the corners make no sheet or the mark tells nothing.
 */
export function readPhotograph(photograph: PixelImage, preparation: Preparation): ReadPhotograph {
  const { image, light, mmPerPixel } = prepared(photograph, preparation);
  const reading = readUnderLight(image, { mmPerPixel }, light);
  return { ...reading, image: light === null ? image : pictureUnderLight(image, light.matrix) };
}

/**
 * A photograph straightened, and what its mark tells of the light; the mark may lie beside the sheet.
 * @throws UnreadableImage where the corners make no sheet or the mark tells nothing.
 */
export function prepared(photograph: PixelImage, { corners, light: mark, sizeMm }: Preparation): Prepared {
  const light = mark === undefined ? null : knownLightOf(photograph, markInPixels(mark, photograph));
  const image = corners === undefined ? photograph : flattened(photograph, corners, sizeMm);
  return {
    image,
    mmPerPixel: Math.max(sizeMm.width, sizeMm.height) / Math.max(image.width, image.height),
    light:
      light === null || corners === undefined
        ? light
        : { ...light, lies: light.lies && movedFrame(light.lies, photograph, corners, image) },
  };
}

function flattened(image: PixelImage, corners: Corners, sizeMm: SizeMm): PixelImage {
  try {
    return straighten(image, corners, { sizeMm }).image;
  } catch (error) {
    throw new UnreadableImage(refusals.noCorners, { cause: error });
  }
}

/** Where a frame of the photograph comes to lie about the straightened sheet; null where it lies beyond its horizon. */
function movedFrame(frame: Frame, from: PixelImage, corners: Corners, to: PixelImage): Frame | null {
  const taken = corners.map(({ x, y }) => ({ x: x * from.width, y: y * from.height })) as unknown as Corners;
  const map = homographyOf(taken, cornersOf({ x: 0, y: 0, width: to.width, height: to.height }));
  if (map === null) return null;
  const spots = cornersOf(frame);
  if (spots.some(({ x, y }) => map[6] * x + map[7] * y + map[8] <= 0.02)) return null;
  const moved = spots.map((spot) => movedBy(map, spot));
  const [xs, ys] = [moved.map(({ x }) => x), moved.map(({ y }) => y)];
  const [left, top] = [Math.min(...xs), Math.min(...ys)];
  return { x: left, y: top, width: Math.max(...xs) - left, height: Math.max(...ys) - top };
}

function cornersOf({ x, y, width, height }: Frame): Corners {
  return [
    { x, y },
    { x: x + width, y },
    { x: x + width, y: y + height },
    { x, y: y + height },
  ];
}
