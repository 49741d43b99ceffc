import { lightFromCard, usualReflectance } from '../../colour/light.ts';
import type { Matrix } from '../../colour/matrix.ts';
import type { Card, Frame, Light, LightMark, PixelImage, ReadOptions } from '../model.ts';
import { UnreadableImage } from '../unreadable.ts';
import { lightWords } from '../words/light-words.ts';
import { refusals } from '../words/refusals.ts';
import { doubtOfCard } from './card-doubt.ts';
import { chartLight } from './chart-light.ts';
import { middleLight, wholeFrame, withoutRim } from './middle-light.ts';

/** What a card or a chart in a picture tells of its light. */
export interface KnownLight extends Light {
  /** Undoes the light, on linear sRGB. */
  readonly matrix: Matrix;
  /** Where the card or chart lies, in pixels: that is no paper, and there the light is right. Null where it is not in the picture. */
  readonly lies: Frame | null;
}

/**
 * The light of a picture from the chart or else the card that is pointed out in it; null where neither is. The one place
 * where it is told, whoever asks.
 * @throws UnreadableImage where the card is too dark, see-through or outside, or the frame does not lie on a chart.
 */
export function knownLightOf(
  image: PixelImage,
  { card, chart }: Pick<ReadOptions, 'card' | 'chart'>,
): KnownLight | null {
  if (chart !== undefined) return chartLight(image, wholeFrame(chart));
  return card === undefined ? null : cardLight(image, { ...card, ...wholeFrame(card) });
}

/** A mark in fractions of a picture, as options in its pixels. */
export function markInPixels(
  mark: LightMark,
  { width, height }: { width: number; height: number },
): Pick<ReadOptions, 'card' | 'chart'> {
  const { frame } = mark;
  const pixels = wholeFrame({
    x: frame.x * width,
    y: frame.y * height,
    width: frame.width * width,
    height: frame.height * height,
  });
  if (mark.kind === 'chart') return { chart: pixels };
  return { card: { ...pixels, kind: mark.kind, reflectance: mark.reflectance } };
}

/** A card that reflects less than this and is not called white is called grey. Ours. */
const greyBelow = 0.5;
/** Linear light below which a card tells nothing, and above which a camera's channel is taken to be full. Ours. */
const tooDark = 0.004;
const clippedAbove = 0.985;

function cardLight(image: PixelImage, card: Card): KnownLight {
  const kind = card.kind ?? ((card.reflectance ?? 1) < greyBelow ? 'grey' : 'white');
  const name = `${kind} card` as const;
  const reflectance = Math.min(1, Math.max(0.02, card.reflectance ?? usualReflectance[name]));
  const middle = withoutRim(card, image);
  const seen = middleLight(image, middle);
  if (seen === null) throw new UnreadableImage(refusals.cardTransparent);
  if (Math.min(seen.r, seen.g, seen.b) < tooDark) throw new UnreadableImage(refusals.cardDark);
  const { matrix } = lightFromCard(seen, name, { reflectance });
  const lies = { x: card.x, y: card.y, width: card.width, height: card.height };
  const doubt = doubtOfCard(image, middle, reflectance);
  if (doubt !== null) return { matrix, lies, known: false, note: lightWords.doubtful(name, doubt) };
  const clipped = Math.max(seen.r, seen.g, seen.b) > clippedAbove;
  const note = clipped ? lightWords.overexposed(name) : lightWords.card(name);
  return { matrix, lies, known: true, note };
}
