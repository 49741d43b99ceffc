import { encodedFromLinear } from '../colour/spaces.ts';
import type { PixelImage } from '../sheet/model.ts';
import { chance, smoothNoise } from './chance.ts';
import type { Raster } from './raster.ts';

/** What the print stands on: how it feels, and what years did to it. */
export interface Stock {
  /** Standard deviation of the grain, as a share of the light. */
  readonly grain: number;
  /** How much light the paper has lost near its edges, 0–1; more of the blue than of the red. */
  readonly yellowed: number;
  /** Dark fibres, as kraft has them: a share of the pixels that a fibre touches. */
  readonly fibres: number;
}

export const newStock: Stock = { grain: 0.007, yellowed: 0, fibres: 0 };
export const oldStock: Stock = { grain: 0.011, yellowed: 0.05, fibres: 0 };
export const kraftStock: Stock = { grain: 0.016, yellowed: 0, fibres: 0.02 };

/** The printed sheet as a scanner gives it: grain, age and then 8 bits of sRGB. The same every time. */
export function scanned(raster: Raster, stock: Stock, seed: number): PixelImage {
  const { px, light } = raster;
  const data = new Uint8ClampedArray(px * px * 4);
  const grain = (sharedGrain ??= grainTile());
  // Every sheet lies elsewhere on the same grain.
  const [dx, dy] = [(seed * 71) & 255, (seed * 37) & 255];
  const patches = smoothNoise(seed + 1);
  const losses = Float32Array.from({ length: px }, (_, i) => edgeLoss((i + 0.5) / px));
  for (let y = 0; y < px; y += 1) {
    for (let x = 0; x < px; x += 1) {
      const at = y * px + x;
      const flecked = grain[(((y + dy) & 255) << 8) | ((x + dx) & 255)]!;
      let gain = 1 + stock.grain * flecked;
      // A fibre is a short streak of the grain's darkest end, longer across than down.
      if (stock.fibres > 0 && grain[(((y * 3) & 255) << 8) | (((x + (y << 1)) >> 2) & 255)]! < -2.05)
        gain -= 0.09;
      let loss = 0;
      if (stock.yellowed > 0) {
        const worn = 0.35 + 0.65 * patches((x / px) * 5, (y / px) * 5);
        loss = stock.yellowed * worn * Math.min(1, losses[x]! + losses[y]!);
      }
      data[at * 4] = encoded(light[at * 3]! * gain * (1 - loss * 0.55));
      data[at * 4 + 1] = encoded(light[at * 3 + 1]! * gain * (1 - loss));
      data[at * 4 + 2] = encoded(light[at * 3 + 2]! * gain * (1 - loss * 1.9));
      data[at * 4 + 3] = 255;
    }
  }
  return { data, width: px, height: px };
}

/** Made when first wanted. */
let sharedGrain: Float32Array | null = null;

/** 256 × 256 values about 0 with a deviation near 1: half fine, half as wide as three pixels. */
function grainTile(): Float32Array {
  const next = chance(1);
  const fine = Float32Array.from({ length: 65536 }, () => (next() + next() + next() - 1.5) * 2);
  return fine.map((value, at) => {
    const [right, below] = [(at & 0xff00) | ((at + 1) & 255), (at + 256) & 0xffff];
    return (
      value * 0.6 + (value + fine[right]! + fine[below]! + fine[(below & 0xff00) | (right & 255)]!) * 0.4
    );
  });
}

function edgeLoss(t: number): number {
  const fromEdge = Math.min(t, 1 - t);
  return Math.exp(-fromEdge / 0.035);
}

const steps = 4096;
const table = Uint8ClampedArray.from({ length: steps + 1 }, (_, i) =>
  Math.round(encodedFromLinear(i / steps) * 255),
);

function encoded(linear: number): number {
  return table[linear <= 0 ? 0 : linear >= 1 ? steps : Math.round(linear * steps)]!;
}
