import { findBlocks } from '../sheet/blocks/parts.ts';
import type { PixelImage } from '../sheet/model.ts';
import { findCorners } from '../sheet/outline/corners.ts';
import type { Look, Looked } from './messages.ts';

/** How sure corners or a block must be to be offered at all; 0–1. Ours. */
const leastSure = 0.3;

/** What is looked for on a picture, in fractions of it; `corners` null and `blocks` empty where nothing stands out. */
export function lookedAt(image: PixelImage, look: Look): Pick<Looked, 'corners' | 'blocks' | 'ratio'> {
  const found = look === 'blocks' ? null : findCorners(image);
  return {
    corners: found !== null && found.sure >= leastSure ? found.corners : null,
    blocks:
      look === 'blocks'
        ? findBlocks(image).flatMap(({ frame, sure }) => (sure >= leastSure ? [frame] : []))
        : [],
    ratio: image.width / image.height,
  };
}
