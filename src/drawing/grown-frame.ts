import type { Frame, PixelImage, Spot } from '../sheet/model.ts';

/** How far a pixel may lie from the colour that was tapped, in 8-bit steps of any channel, to be of one piece with it. Ours. */
const alike = 26;
/** The part of a new edge that must be alike. Ours. */
const most = 0.9;
/** What is left out at each side, as a part of the frame: the rim may be shadow. Ours. */
const rim = 0.06;
/** Narrower frames than this part of the picture are no card. Ours. */
const least = 0.02;

/**
 * The upright frame that a tap on a card means: grown from the spot (fractions of the picture) over what is of one
 * colour with it, as fractions; null where there is no such piece.
 */
export function grownFrame({ data, width, height }: PixelImage, spot: Spot): Frame | null {
  const x = Math.min(width - 2, Math.max(1, Math.round(spot.x * width)));
  const y = Math.min(height - 2, Math.max(1, Math.round(spot.y * height)));
  const tapped = [0, 1, 2].map((k) => {
    let sum = 0;
    for (let dy = -1; dy <= 1; dy++)
      for (let dx = -1; dx <= 1; dx++) sum += data[((y + dy) * width + x + dx) * 4 + k]!;
    return sum / 9;
  });
  const isAlike = (at: number): boolean =>
    data[4 * at + 3]! > 127 && tapped.every((v, k) => Math.abs(data[4 * at + k]! - v) <= alike);
  const line = (from: number, count: number, step: number): boolean => {
    let on = 0;
    for (let n = 0; n < count; n++) if (isAlike(from + n * step)) on++;
    return on >= most * count;
  };
  let [left, top, right, bottom] = [x, y, x, y];
  for (let grew = true; grew; ) {
    grew = false;
    const [wide, high] = [right - left + 1, bottom - top + 1];
    if (left > 0 && line(top * width + left - 1, high, width)) [left, grew] = [left - 1, true];
    if (right < width - 1 && line(top * width + right + 1, high, width)) [right, grew] = [right + 1, true];
    if (top > 0 && line((top - 1) * width + left, wide, 1)) [top, grew] = [top - 1, true];
    if (bottom < height - 1 && line((bottom + 1) * width + left, wide, 1))
      [bottom, grew] = [bottom + 1, true];
  }
  const [wide, high] = [right - left + 1, bottom - top + 1];
  if (wide < least * width || high < least * height) return null;
  return {
    x: (left + rim * wide) / width,
    y: (top + rim * high) / height,
    width: (wide * (1 - 2 * rim)) / width,
    height: (high * (1 - 2 * rim)) / height,
  };
}
