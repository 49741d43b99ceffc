import { encodedFromLinear, hexFromRgb, linearFromEncoded, oklabFromRgb } from '../colour/spaces.ts';
import type { PixelImage, Spot } from '../sheet/model.ts';

/** Share of the picture's smaller side that a spot is wide. Ours: a fingertip's precision, without the neighbour's ink. */
const spotSize = 0.006;

/** The colour at a spot, `#rrggbb`: the middle values of a few pixels about it, so that one grain does not decide. */
export function colourAtSpot(image: PixelImage, spot: Spot): string {
  const { data, width, height } = image;
  const reach = Math.max(1, Math.round((Math.min(width, height) * spotSize) / 2));
  const cx = Math.min(width - 1, Math.floor(spot.x * width));
  const cy = Math.min(height - 1, Math.floor(spot.y * height));
  const channels: [number[], number[], number[]] = [[], [], []];
  for (let y = Math.max(0, cy - reach); y <= Math.min(height - 1, cy + reach); y++) {
    for (let x = Math.max(0, cx - reach); x <= Math.min(width - 1, cx + reach); x++) {
      const i = (y * width + x) * 4;
      for (let k = 0; k < 3; k++) channels[k]!.push(data[i + k]!);
    }
  }
  const [r, g, b] = channels.map((values) => middle(values.sort((p, q) => p - q))) as [
    number,
    number,
    number,
  ];
  return hexFromRgb({ r, g, b });
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

/** Mean of the middle half, in linear light. */
function middle(sorted: readonly number[]): number {
  const from = Math.floor(sorted.length / 4);
  const some = sorted.slice(from, Math.max(from + 1, sorted.length - from));
  return encodedFromLinear(some.reduce((sum, v) => sum + linearFromEncoded(v / 255), 0) / some.length);
}
