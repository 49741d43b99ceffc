import type { Card, Frame, PixelImage } from '../../../src/sheet/model.ts';
import { dice } from './dice.ts';
import { type DrawnSheet, toImage } from './draw-sheet.ts';
import { adaptationCast, gainsCast, spectraCast } from './lamp.ts';
import { jpeg, noise } from './spoil.ts';
import type { Rgb3 } from './truth-colour.ts';

export type CastKind = 'adaptation' | 'gains' | 'spectra';

/**
 * The sheet on a table beside a white card, photographed under a warm lamp: a cast, vignetting, a shadow's slope, a soft
 * lens, noise, and a JPEG.
 */
export async function photograph(
  drawn: DrawnSheet,
  seed: number,
  kind: CastKind,
): Promise<{ image: PixelImage; crop: Frame; card: Card }> {
  const roll = dice(seed * 31337 + 3);
  const cast = { adaptation: adaptationCast, gains: gainsCast, spectra: spectraCast }[kind](roll);
  const margin = Math.round(drawn.width * 0.09);
  const width = drawn.width + 2 * margin;
  const height = drawn.height + 2 * margin;
  const table = cast([118, 96, 80]);
  const reflectance = 0.9;
  const grey = 255 * (1.055 * reflectance ** (1 / 2.4) - 0.055);
  const white = cast([grey, grey, grey] as Rgb3);
  const lit = drawn.repaint(drawn.colours.map(cast));
  const cardSize = Math.round(margin * 0.8);
  const card = {
    x: Math.round(width * roll.between(0.1, 0.8)),
    y: Math.round(margin * 0.1),
    width: cardSize,
    height: cardSize,
    reflectance,
  };
  const light = unevenness(
    width,
    height,
    roll.between(0.08, 0.25),
    roll.between(0, 2 * Math.PI),
    roll.between(0.05, 0.22),
  );
  const linear = new Float32Array(width * height * 3);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const i = y * width + x;
      const sx = x - margin;
      const sy = y - margin;
      const onSheet = sx >= 0 && sy >= 0 && sx < drawn.width && sy < drawn.height;
      const onCard = x >= card.x && y >= card.y && x < card.x + cardSize && y < card.y + cardSize;
      const gain = light(x, y);
      for (let c = 0; c < 3; c++) {
        const v = onCard ? white[c]! : onSheet ? lit[(sy * drawn.width + sx) * 3 + c]! : table[c]!;
        linear[i * 3 + c] = v * gain;
      }
    }
  const soft = blurred(linear, width, height, roll.between(0.4, 0.8));
  const image = await jpeg(
    noise(toImage({ width, height, linear: soft }), roll.between(1, 2), seed),
    roll.whole(85, 93),
  );
  return { image, crop: { x: margin, y: margin, width: drawn.width, height: drawn.height }, card };
}

/** Light over the picture: falling off towards the corners by cos⁴, and sloping off to one side as beside a shadow. */
export function unevenness(
  width: number,
  height: number,
  vignette: number,
  toward: number,
  slope: number,
): (x: number, y: number) => number {
  const r2 = (width * width + height * height) / 4;
  // cos⁴ of the field angle equals 1 − vignette in the corner.
  const tan2 = (1 - vignette) ** -0.5 - 1;
  const [c, s] = [Math.cos(toward), Math.sin(toward)];
  return (x, y) => {
    const dx = x - width / 2;
    const dy = y - height / 2;
    const fall = 1 / (1 + (tan2 * (dx * dx + dy * dy)) / r2) ** 2;
    const along = (c * dx + s * dy) / (Math.max(width, height) / 2);
    return fall * (1 - slope / (1 + Math.exp(-3 * along)));
  };
}

/** A Gaussian blur of an RGB float picture, edges held. */
export function blurred(linear: Float32Array, width: number, height: number, sigma: number): Float32Array {
  const reach = Math.ceil(3 * sigma);
  const kernel = Array.from({ length: 2 * reach + 1 }, (_, i) =>
    Math.exp(-((i - reach) ** 2) / (2 * sigma * sigma)),
  );
  const sum = kernel.reduce((s, v) => s + v, 0);
  const pass = (from: Float32Array, lines: number, lineStep: number, length: number, step: number) => {
    const out = new Float32Array(from.length);
    for (let line = 0; line < lines; line++)
      for (let n = 0; n < length; n++) {
        const held = n < reach || n >= length - reach;
        const at = line * lineStep + n * step;
        let [r, g, b] = [0, 0, 0];
        for (let k = 0; k < kernel.length; k++) {
          const tap = n + k - reach;
          const p = line * lineStep + (held ? Math.min(length - 1, Math.max(0, tap)) : tap) * step;
          const weight = kernel[k]!;
          r += weight * from[p]!;
          g += weight * from[p + 1]!;
          b += weight * from[p + 2]!;
        }
        out[at] = r / sum;
        out[at + 1] = g / sum;
        out[at + 2] = b / sum;
      }
    return out;
  };
  return pass(pass(linear, height, 3 * width, width, 3), width, 3, height, 3 * width);
}
