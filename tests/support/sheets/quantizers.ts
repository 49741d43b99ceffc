import { buildPaletteSync, utils } from 'image-q';
import quantize from 'quantize';
import RgbQuant from 'rgbquant';
import type { Frame, PixelImage } from '../../../src/sheet/model.ts';
import type { Rgb3 } from './truth-colour.ts';

/** A general-purpose quantizer, asked for a given number of colours. The share of each is counted by the nearest colour. */
export interface Quantizer {
  readonly name: string;
  readonly swatches: (image: PixelImage, colours: number) => Rgb3[];
}

/** Quantizers from the registry: image-q (Wu), quantize (median cut), rgbquant (popularity). */
export const quantizers: readonly Quantizer[] = [
  {
    name: 'image-q, Wu',
    swatches: (image, colours) => {
      const points = utils.PointContainer.fromUint8Array(image.data, image.width, image.height);
      const palette = buildPaletteSync([points], {
        colors: colours,
        paletteQuantization: 'wuquant',
        colorDistanceFormula: 'euclidean',
      });
      return palette
        .getPointContainer()
        .getPointArray()
        .map(({ r, g, b }): Rgb3 => [r, g, b]);
    },
  },
  {
    name: 'quantize, median cut',
    swatches: (image, colours) => {
      const pixels: [number, number, number][] = [];
      for (let i = 0; i < image.data.length; i += 4)
        pixels.push([image.data[i]!, image.data[i + 1]!, image.data[i + 2]!]);
      const map = quantize(pixels, Math.max(2, colours));
      return map ? map.palette().map(([r, g, b]): Rgb3 => [r!, g!, b!]) : [];
    },
  },
  {
    name: 'rgbquant',
    swatches: (image, colours) => {
      const reducer = new RgbQuant({ colors: Math.max(2, colours) });
      reducer.sample(image.data, image.width);
      return reducer.palette(true, true).map((c): Rgb3 => [c[0]!, c[1]!, c[2]!]);
    },
  },
];

/** The part of a picture inside a frame, with each channel divided by `white` (linear light, 0–1): the help that a quantizer gets where a card was in view. */
export function cropped(image: PixelImage, frame: Frame | undefined, white: Rgb3 | null): PixelImage {
  const { x, y, width, height } = frame ?? { x: 0, y: 0, width: image.width, height: image.height };
  const data = new Uint8ClampedArray(width * height * 4);
  const table = [0, 1, 2].map((c) =>
    Uint8ClampedArray.from({ length: 256 }, (_, n) => {
      const v = n / 255;
      const linear = (v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4) / (white?.[c] ?? 1);
      return 255 * (linear <= 0.0031308 ? 12.92 * linear : 1.055 * Math.min(1, linear) ** (1 / 2.4) - 0.055);
    }),
  );
  for (let j = 0; j < height; j++)
    for (let i = 0; i < width; i++) {
      const from = ((y + j) * image.width + x + i) * 4;
      const to = (j * width + i) * 4;
      for (let c = 0; c < 3; c++) data[to + c] = table[c]![image.data[from + c]!]!;
      data[to + 3] = 255;
    }
  return { data, width, height };
}

/** A box blur of code values, `size` across: the help that a quantizer gets against printed dots. */
export function boxBlurred(image: PixelImage, size: number): PixelImage {
  const { width, height } = image;
  const reach = Math.max(1, Math.round(size / 2));
  const half = new Float32Array(image.data.length);
  const data = new Uint8ClampedArray(image.data.length);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let c = 0; c < 4; c++) {
        let sum = 0;
        for (let k = -reach; k <= reach; k++)
          sum += image.data[(y * width + Math.min(width - 1, Math.max(0, x + k))) * 4 + c]!;
        half[(y * width + x) * 4 + c] = sum / (2 * reach + 1);
      }
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++)
      for (let c = 0; c < 4; c++) {
        let sum = 0;
        for (let k = -reach; k <= reach; k++)
          sum += half[(Math.min(height - 1, Math.max(0, y + k)) * width + x) * 4 + c]!;
        data[(y * width + x) * 4 + c] = sum / (2 * reach + 1);
      }
  return { data, width, height };
}
