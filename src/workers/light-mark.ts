import { chartLabs, type LightFit, lightFromCard, lightFromChart } from '../colour/light.ts';
import type { Rgb } from '../colour/model.ts';
import { linearFromEncoded } from '../colour/spaces.ts';
import { doubtOfCard, doubtWords } from '../sheet/card-doubt.ts';
import type { Frame, Light, LightMark, PixelImage } from '../sheet/model.ts';
import { UnreadableImage } from '../sheet/unreadable.ts';
import { encodedTable } from './encoded-table.ts';

/** What a card or a chart on a photograph tells: how to undo the light, and one sentence on it. */
export interface KnownLight {
  readonly fit: LightFit;
  readonly light: Light;
}

/**
 * The light of a photograph from what was marked on it.
 * @throws UnreadableImage where the mark is too dark, or its frame does not lie on 24 patches.
 */
export function lightFromMark(image: PixelImage, mark: LightMark): KnownLight {
  if (mark.kind === 'chart') return fromChart(image, mark.frame);
  const seen = middleOf(image, mark.frame);
  const name = mark.kind === 'white' ? 'white card' : 'grey card';
  let fit: LightFit;
  try {
    fit = lightFromCard(seen, name, { reflectance: mark.reflectance });
  } catch (error) {
    throw new UnreadableImage('The card in the picture is too dark to tell the light from.', {
      cause: error,
    });
  }
  const { x, y, width, height } = mark.frame;
  const frame = {
    x: (x + width * rim) * image.width,
    y: (y + height * rim) * image.height,
    width: width * (1 - 2 * rim) * image.width,
    height: height * (1 - 2 * rim) * image.height,
  };
  const doubt = doubtOfCard(image, frame, mark.reflectance);
  if (doubt !== null)
    return { fit, light: { known: false, note: `Light corrected by the ${name}, but ${doubtWords[doubt]}` } };
  const clipped = Math.max(seen.r, seen.g, seen.b) > clippedAbove;
  const note = clipped
    ? `Light corrected by the ${name}, which is overexposed: trust light colours less.`
    : `Light corrected by the ${name} in the picture.`;
  return { fit, light: { known: true, note } };
}

/** A copy of the picture with the light undone. */
export function underKnownLight(image: PixelImage, { matrix }: LightFit): PixelImage {
  const { data: from, width, height } = image;
  const data = new Uint8ClampedArray(from.length);
  const linear = Float32Array.from({ length: 256 }, (_, i) => linearFromEncoded(i / 255) * 65_535);
  const encoded = encodedTable();
  const [m0, m1, m2, m3, m4, m5, m6, m7, m8] = matrix;
  const shown = (value: number) => encoded[value <= 0 ? 0 : value >= 65_535 ? 65_535 : Math.round(value)]!;
  for (let i = 0; i < from.length; i += 4) {
    const r = linear[from[i]!]!;
    const g = linear[from[i + 1]!]!;
    const b = linear[from[i + 2]!]!;
    data[i] = shown(m0 * r + m1 * g + m2 * b);
    data[i + 1] = shown(m3 * r + m4 * g + m5 * b);
    data[i + 2] = shown(m6 * r + m7 * g + m8 * b);
    data[i + 3] = from[i + 3]!;
  }
  return { data, width, height };
}

/** Linear light above which a camera's channel is taken to be full. Ours. */
const clippedAbove = 0.985;
/** Mean ΔE₀₀ left on the patches above which the frame can't lie on a chart. Ours. */
const noChart = 12;

/** However the chart lies: on its side, on its head; the way that fits best is the one. */
function fromChart(image: PixelImage, frame: Frame): KnownLight {
  const tall = frame.height * image.height > frame.width * image.width;
  const [columns, rows] = tall ? [4, 6] : [6, 4];
  const seen = Array.from({ length: columns * rows }, (_, i) =>
    middleOf(image, {
      x: frame.x + (frame.width * (i % columns)) / columns,
      y: frame.y + (frame.height * Math.floor(i / columns)) / rows,
      width: frame.width / columns,
      height: frame.height / rows,
    }),
  );
  const ways = tall ? [turned(seen), turned(seen).toReversed()] : [seen, seen.toReversed()];
  const fits = ways.flatMap((patches) => {
    try {
      return [lightFromChart(patches)];
    } catch {
      return [];
    }
  });
  const fit = fits.sort((a, b) => (a.residual?.mean ?? 0) - (b.residual?.mean ?? 0))[0];
  if (fit?.residual == null || fit.residual.mean > noChart) {
    throw new UnreadableImage(
      `This frame does not lie on the ${chartLabs().length} patches of a chart: lay it on their outer edges, so that each square holds one patch.`,
    );
  }
  const { mean, worst, worstPatch } = fit.residual;
  const note = `Light corrected by the chart: ΔE₀₀ ${mean.toFixed(1)} is left on its patches on average, ${worst.toFixed(1)} at worst (${worstPatch}).`;
  return { fit, light: { known: true, note } };
}

/** Four columns of six in reading order, from a chart that lies on its side: its rows run upward. */
function turned(seen: readonly Rgb[]): readonly Rgb[] {
  return Array.from({ length: 24 }, (_, i) => seen[(5 - (i % 6)) * 4 + Math.floor(i / 6)]!);
}

/** The part of a frame's width and height that is left out on each side: it may be shadow or table. */
const rim = 0.25;

/** Mean linear light of a frame's middle: its rim may be shadow or table. */
function middleOf({ data, width, height }: PixelImage, frame: Frame): Rgb {
  const left = Math.floor((frame.x + frame.width * rim) * width);
  const top = Math.floor((frame.y + frame.height * rim) * height);
  const right = Math.max(left + 1, Math.ceil((frame.x + frame.width * (1 - rim)) * width));
  const bottom = Math.max(top + 1, Math.ceil((frame.y + frame.height * (1 - rim)) * height));
  const sum = [0, 0, 0];
  let count = 0;
  for (let y = Math.max(0, top); y < Math.min(height, bottom); y++) {
    for (let x = Math.max(0, left); x < Math.min(width, right); x++) {
      const i = (y * width + x) * 4;
      for (let k = 0; k < 3; k++) sum[k]! += linearFromEncoded(data[i + k]! / 255);
      count++;
    }
  }
  const [r = 0, g = 0, b = 0] = sum.map((one) => one / Math.max(1, count));
  return { r, g, b };
}
