import { chartLabs, lightFromChart } from '../../colour/light.ts';
import type { Rgb } from '../../colour/model.ts';
import type { Frame, PixelImage } from '../model.ts';
import { UnreadableImage } from '../unreadable.ts';
import { lightWords } from '../words/light-words.ts';
import { refusals } from '../words/refusals.ts';
import type { KnownLight } from './known-light.ts';
import { middleLight, withoutRim } from './middle-light.ts';

/**
 * The light by a chart of 24 patches whose outer edges are framed, however it lies: on its side or on its head. The way
 * that fits best is the one.
 * @throws UnreadableImage where the frame does not lie on a chart.
 */
export function chartLight(image: PixelImage, frame: Frame): KnownLight {
  const tall = frame.height > frame.width;
  const [columns, rows] = tall ? [4, 6] : [6, 4];
  const seen = Array.from({ length: columns * rows }, (_, i) =>
    patchLight(image, {
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
  if (fit?.residual == null || fit.residual.mean > noChart) throw offChart();
  const { mean, worst, worstPatch } = fit.residual;
  const note = lightWords.chart(mean, worst, worstPatch);
  return { matrix: fit.matrix, lies: frame, known: true, note };
}

/** Mean ΔE₀₀ left on the patches above which the frame can't lie on a chart. Ours. */
const noChart = 12;
/** Part of a patch left out on each side: charts have dark lines between their patches, and frames lie askew. Ours. */
const patchRim = 0.25;

function patchLight(image: PixelImage, frame: Frame): Rgb {
  const seen = middleLight(image, withoutRim(frame, image, patchRim));
  if (seen === null) throw offChart();
  return seen;
}

function offChart(): UnreadableImage {
  return new UnreadableImage(refusals.offChart(chartLabs().length));
}

/** Four columns of six in reading order, from a chart that lies on its side: its rows run upward. */
function turned(seen: readonly Rgb[]): readonly Rgb[] {
  return Array.from({ length: 24 }, (_, i) => seen[(5 - (i % 6)) * 4 + Math.floor(i / 6)]!);
}
