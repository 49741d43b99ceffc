import type { Frame, PixelImage } from './model.ts';
import { numbers } from './numbers.ts';
import { blockFor, type LinearPlanes, linearPlanes, soften } from './planes.ts';
import { screenPeriod } from './screen.ts';
import type { Softness } from './softness.ts';

/** The sheet in linear light, printed dots averaged away; and how soft its edges then are, where that is known. */
export interface Descreened {
  readonly linear: LinearPlanes;
  /** Null where no dots were found: then softness is measured. */
  readonly softness: Softness | null;
}

/** A scanner's own blur, standard deviation in pixels. Ours. */
const lens = 0.5;

/** Averages a frame down to the working size, and as far as printed dots ask for. */
export function withoutScreen(image: PixelImage, frame: Frame, card: Frame | null): Descreened {
  const period = screenPeriod(image, frame);
  const block = blockFor(frame.width * frame.height);
  if (period === null) return { linear: linearPlanes(image, frame, card, block, true), softness: null };
  const coarse = Math.max(block, Math.round(period / 2));
  const linear = linearPlanes(image, frame, card, coarse);
  const times = softenings(period, coarse);
  soften(linear, times);
  const sigma = Math.sqrt(1 / 12 + times / 2 + (lens / coarse) ** 2);
  return { linear, softness: { light: sigma, colour: sigma } };
}

/** How many softenings make dots of this period vanish, on top of averaging in blocks. */
function softenings(period: number, block: number): number {
  let variance = block ** 2 / 12;
  let times = 0;
  while (Math.sqrt(variance) < numbers.screenSigma * period) {
    variance += block ** 2 / 2;
    times++;
  }
  return times;
}
