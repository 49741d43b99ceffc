import { lightFromCard as lightFromWhite } from '../colour/light.ts';
import type { Matrix } from '../colour/matrix.ts';
import { type CardDoubt, doubtOfCard } from './card-doubt.ts';
import type { Card, Frame, PixelImage } from './model.ts';
import { clampFrame, linearPlanes } from './planes.ts';
import { UnreadableImage } from './unreadable.ts';

/** Share of light a white card reflects where nothing is said. Common practice, no source. */
const cardReflectance = 0.9;

/**
 * The matrix, on linear sRGB, that turns the card's measured colour to a neutral of its reflectance: Bradford from the
 * card's white to D65, exposure with it.
 * @throws UnreadableImage where the card is black or lies outside the picture.
 * Source: as for `adaptXyz`.
 */
export function lightFromCard(image: PixelImage, card: Card): CardLight {
  const white = cardColour(image, card);
  if (Math.min(white.r, white.g, white.b) < 0.004)
    throw new UnreadableImage('The card in the picture is too dark to tell the light from.');
  const reflectance = Math.min(1, Math.max(0.02, card.reflectance ?? cardReflectance));
  return {
    matrix: lightFromWhite(white, 'white card', { reflectance }).matrix,
    clipped: white.clipped,
    doubt: doubtOfCard(image, middleOf(card, image), reflectance),
  };
}

/** What a card tells. */
export interface CardLight {
  readonly matrix: Matrix;
  readonly clipped: boolean;
  /** Why it may be no card. */
  readonly doubt: CardDoubt | null;
}

/** The card without its rim. */
function middleOf(card: Card, image: PixelImage): Frame {
  const rim = 0.15;
  const frame = {
    x: card.x + card.width * rim,
    y: card.y + card.height * rim,
    width: Math.max(1, card.width * (1 - 2 * rim)),
    height: Math.max(1, card.height * (1 - 2 * rim)),
  };
  return clampFrame(frame, image);
}

/** Middle colour of the card in linear light: its rim is left out, for it may be shadow or table. */
function cardColour(image: PixelImage, card: Card): { r: number; g: number; b: number; clipped: boolean } {
  const frame = middleOf(card, image);
  const block = Math.max(1, Math.floor(Math.min(frame.width, frame.height) / 64));
  const planes = linearPlanes(image, frame, null, block);
  if (!planes.count) throw new UnreadableImage('The card lies on a transparent part of the picture.');
  const middle = (p: Float32Array): number => {
    const sorted = Float32Array.from(p.filter((_, i) => planes.on[i])).sort();
    const from = Math.floor(sorted.length * 0.25);
    const to = Math.max(from + 1, Math.ceil(sorted.length * 0.75));
    return sorted.subarray(from, to).reduce((s, v) => s + v, 0) / (to - from);
  };
  const [r, g, b] = [middle(planes.r), middle(planes.g), middle(planes.b)];
  return { r, g, b, clipped: Math.max(r, g, b) > 0.985 };
}
