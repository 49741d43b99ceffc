import type { Softness } from '../inks/softness.ts';
import type { Frame, PixelImage } from '../model.ts';
import { blockFor, type LinearPlanes, linearPlanes, soften } from '../planes.ts';
import { numbers } from '../reading-limits.ts';
import { screenPeriod } from './screen.ts';

/** The sheet in linear light, printed dots averaged away; and how soft its edges then are, where that is known. */
export interface Descreened {
  readonly linear: LinearPlanes;
  /** Null where no dots were found: then softness is measured. */
  readonly softness: Softness | null;
  /** By how much rosettes ask to be softened further: variance, in pixels² of `linear`; 0 where no dots were found. */
  readonly rosettes: number;
}

/** A scanner's own blur, standard deviation in pixels. Ours. */
const lens = 0.5;

/** Averages a frame down to the working size, and as far as printed dots ask for. */
export function withoutScreen(image: PixelImage, frame: Frame, card: Frame | null): Descreened {
  const period = screenPeriod(image, frame);
  const block = blockFor(frame.width * frame.height);
  if (period === null)
    return { linear: linearPlanes(image, frame, card, block, true), softness: null, rosettes: 0 };
  const coarse = Math.max(block, Math.round(period / 2));
  const linear = linearPlanes(image, frame, card, coarse);
  const { times, weight } = softening(period, coarse);
  soften(linear, times, weight);
  const sigma = Math.sqrt(1 / 12 + 2 * times * weight + (lens / coarse) ** 2);
  return {
    linear,
    softness: { light: sigma, colour: sigma },
    rosettes: numbers.rosetteVariance * (period / coarse) ** 2,
  };
}

/** How many softenings, and how strong, make dots of this period vanish on top of averaging in blocks. */
function softening(period: number, block: number): { times: number; weight: number } {
  // Each pixel takes `weight` of its neighbours on both sides, a quarter at most: a variance of twice that, in blocks.
  const wanted = (numbers.screenSigma * period) ** 2 + numbers.screenAlias ** 2;
  const variance = Math.max(0, wanted / block ** 2 - 1 / 12);
  const times = Math.ceil(2 * variance);
  return { times, weight: times && variance / (2 * times) };
}
