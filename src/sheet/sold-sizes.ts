import { steadyLog } from '../colour/steady.ts';
import type { Corners, SizeMm, Spot } from './model.ts';

/** The sizes that papers are sold in, upright. Source: A4 of ISO 216; the others in inches, common practice. */
export const soldSizes = {
  twelve: inches(12, 12),
  eight: inches(8, 8),
  six: inches(6, 6),
  letter: inches(8.5, 11),
  a4: { width: 210, height: 297 },
} as const satisfies Record<string, SizeMm>;

/**
 * The sold size whose proportion is nearest to that of the corners, upright or on its side. `ratio`: width over height of
 * the picture that they lie on.
 */
export function sizeOfCorners(corners: Corners, ratio: number): SizeMm {
  const [a, b, c, d] = corners;
  const far = (p: Spot, q: Spot) => Math.hypot((p.x - q.x) * ratio, p.y - q.y);
  const seen = steadyLog((far(a, b) + far(d, c)) / (far(a, d) + far(b, c)));
  const sizes = Object.values<SizeMm>(soldSizes).flatMap((size) => [
    size,
    { width: size.height, height: size.width },
  ]);
  const off = ({ width, height }: SizeMm) => Math.abs(steadyLog(width / height) - seen);
  return sizes.reduce((best, size) => (off(size) < off(best) - 1e-9 ? size : best));
}

function inches(width: number, height: number): SizeMm {
  // In tenths, so that twelve inches are 304.8 and not a bit less.
  return { width: (width * 254) / 10, height: (height * 254) / 10 };
}
