import { linearOfByte } from '../../colour/light-tables.ts';
import { xyzOfRgb } from '../../colour/srgb-digits.ts';
import type { Frame, PixelImage } from '../model.ts';
import { numbers } from '../reading-limits.ts';

const [, , , yRed, yGreen, yBlue] = xyzOfRgb;

/** Why what was marked may be no card: its frame lies on more than one colour, or much else is brighter than white. */
export type CardDoubt = 'uneven' | 'dim';

/**
 * Whether what a hand marked as a card can be one; null where nothing speaks against it. `frame` in pixels;
 * `reflectance` 0–1 of the card.
 */
export function doubtOfCard(image: PixelImage, frame: Frame, reflectance: number): CardDoubt | null {
  const card = lightIn(image, frame, 2_000).sort((p, q) => p - q);
  if (card.length === 0) return null;
  const at = (part: number): number => card[Math.min(card.length - 1, Math.floor(part * card.length))]!;
  if (at(0.9) - at(0.1) > numbers.cardUneven * at(0.5)) return 'uneven';
  const all = lightIn(image, { x: 0, y: 0, width: image.width, height: image.height }, 40_000);
  const most = (at(0.5) / reflectance) * numbers.beyondWhite;
  return all.filter((light) => light > most).length > numbers.beyondWhiteShare * all.length ? 'dim' : null;
}

/** Luminance in linear light (0–1) at about so many places of a frame; see-through ones are left out. */
function lightIn({ data, width, height }: PixelImage, frame: Frame, places: number): number[] {
  const step = Math.max(1, Math.floor(Math.sqrt((frame.width * frame.height) / places)));
  const out: number[] = [];
  for (let y = Math.max(0, Math.floor(frame.y)); y < Math.min(height, frame.y + frame.height); y += step)
    for (let x = Math.max(0, Math.floor(frame.x)); x < Math.min(width, frame.x + frame.width); x += step) {
      const i = (y * width + x) * 4;
      if (data[i + 3]! < 128) continue;
      const [r, g, b] = [linearOfByte[data[i]!]!, linearOfByte[data[i + 1]!]!, linearOfByte[data[i + 2]!]!];
      out.push(yRed * r + yGreen * g + yBlue * b);
    }
  return out;
}
