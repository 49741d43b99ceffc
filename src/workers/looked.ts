import { findBlocks } from '../sheet/blocks/parts.ts';
import type { Corners, PixelImage } from '../sheet/model.ts';
import { type FoundCorners, findCorners } from '../sheet/outline/corners.ts';
import type { Look, Looked } from './messages.ts';

/** How sure corners or a block must be to be offered at all; 0–1. Ours. */
const leastSure = 0.3;
/** How sure they must be to speak of them unasked. Source: the finder itself says that from about 0.6 they need no look. */
const spokenOf = 0.6;
/** Share of the picture below which a sheet lies on something. Ours: a trimmed scan keeps a rim. */
const mostlySheet = 0.9;

/** What is looked for on a picture, in fractions of it; `corners` null and `blocks` empty where nothing stands out. */
export function lookedAt(
  image: PixelImage,
  look: Look,
): Pick<Looked, 'corners' | 'blocks' | 'ratio' | 'onTable'> {
  const found = look === 'blocks' ? null : findCorners(image);
  return {
    ...(look === 'table' ? { onTable: showsTable(found) } : {}),
    corners: found !== null && found.sure >= leastSure ? found.corners : null,
    blocks:
      look === 'blocks'
        ? findBlocks(image).flatMap(({ frame, sure }) => (sure >= leastSure ? [frame] : []))
        : [],
    ratio: image.width / image.height,
  };
}

function showsTable(found: FoundCorners | null): boolean {
  return found !== null && found.sure >= spokenOf && areaOf(found.corners) < mostlySheet;
}

/** Share of the picture within the corners. */
function areaOf(corners: Corners): number {
  const twice = corners.reduce((sum, a, i) => {
    const b = corners[(i + 1) % 4]!;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
  return Math.abs(twice) / 2;
}
