import type { Rgb } from '../../colour/model.ts';
import type { Frame, PixelImage } from '../model.ts';
import { clampFrame, linearPlanes } from '../planes.ts';

/** A frame in whole pixels, so that fractions of a picture and pixels of it name the same place. */
export function wholeFrame({ x, y, width, height }: Frame): Frame {
  const [left, top] = [Math.round(x), Math.round(y)];
  return {
    x: left,
    y: top,
    width: Math.max(1, Math.round(x + width) - left),
    height: Math.max(1, Math.round(y + height) - top),
  };
}

/**
 * A frame without its rim, which may be shadow or table, brought inside the picture. `rim` is the part of its width and
 * height that goes on each side.
 * @throws UnreadableImage where nothing of it lies inside.
 */
export function withoutRim({ x, y, width, height }: Frame, image: PixelImage, rim = 0.15): Frame {
  const inner = {
    x: x + width * rim,
    y: y + height * rim,
    width: Math.max(1, width * (1 - 2 * rim)),
    height: Math.max(1, height * (1 - 2 * rim)),
  };
  return clampFrame(inner, image);
}

/**
 * Middle colour of a frame in linear light, 0–1: of each channel the mean of its middle half, so that a speck, a pencil
 * stroke or a glint does not count. Null where all of it is see-through.
 */
export function middleLight(image: PixelImage, frame: Frame): Rgb | null {
  const block = Math.max(1, Math.floor(Math.min(frame.width, frame.height) / 64));
  const { r, g, b, on, count } = linearPlanes(image, frame, null, block);
  if (count === 0) return null;
  const middle = (plane: Float32Array): number => {
    const sorted = plane.filter((_, i) => on[i]).sort();
    const from = Math.floor(sorted.length * 0.25);
    const to = Math.max(from + 1, Math.ceil(sorted.length * 0.75));
    return sorted.subarray(from, to).reduce((sum, v) => sum + v, 0) / (to - from);
  };
  return { r: middle(r), g: middle(g), b: middle(b) };
}
