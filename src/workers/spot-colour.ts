import { hexFromRgb, oklabFromRgb, rgbFromOklab } from '../colour/spaces.ts';
import { colourAtSpot as okAtSpot } from '../sheet/hand/hand-colours.ts';
import type { PixelImage, Spot } from '../sheet/model.ts';

/** The colour at a spot, `#rrggbb`: as the hand reads it, so that what is shown before a correction is what it will be. */
export function colourAtSpot(image: PixelImage, spot: Spot): string {
  return hexFromRgb(rgbFromOklab(okAtSpot(image, spot)));
}

/** Share of the picture within this distance of a colour (OKLab). Ours: what is seen as one printed colour. */
export function shareNear(
  image: PixelImage,
  rgb: { r: number; g: number; b: number },
  within = 0.05,
): number {
  const { data, width, height } = image;
  const at = oklabFromRgb(rgb);
  const step = Math.max(1, Math.floor(Math.sqrt((width * height) / 40_000)));
  let near = 0;
  let all = 0;
  for (let y = step >> 1; y < height; y += step) {
    for (let x = step >> 1; x < width; x += step) {
      const i = (y * width + x) * 4;
      const { l, a, b } = oklabFromRgb({ r: data[i]! / 255, g: data[i + 1]! / 255, b: data[i + 2]! / 255 });
      if (Math.hypot(l - at.l, a - at.a, b - at.b) <= within) near++;
      all++;
    }
  }
  return all === 0 ? 0 : near / all;
}
