import { steadyAngle } from '../../colour/steady.ts';
import type { Corners, PixelImage, Spot } from '../model.ts';
import { findCorners } from './corners.ts';
import { isConvex, twiceArea } from './quad.ts';

/** A paper that lies on something else in its picture. */
export interface PaperOnTable {
  /** Fractions 0–1 of the picture, clockwise from the corner nearest its top left. */
  readonly corners: Corners;
  /** True where it can be cut out unasked; else whoever took the picture is asked first. */
  readonly isSure: boolean;
}

/** Numbers that tell a paper on a table from a picture that is all paper. Ours; measured in tests/unit/sheet. */
const limits = {
  /** Sureness of the corners, 0–1, from which they are asked about, and from which they need no look. */
  asked: 0.2,
  sure: 0.75,
  /** Share of the picture below which what stands out may be a motif, and above which all is paper: a trimmed scan keeps a rim. */
  least: 0.15,
  mostly: 0.9,
  /** Degrees within which a side runs along the picture's, and part of the picture within which two margins are one. */
  straightDeg: 1.5,
  evenMargins: 0.015,
} as const;

/**
 * The paper against the table in a photograph; null where the picture is all paper, as a scan is, or shows no table. A
 * frame or a panel that is printed on a paper looks much like it, but is drawn straight and in the middle: what lies so is
 * never sure.
 */
export function findPaper(image: PixelImage): PaperOnTable | null {
  const found = findCorners(image);
  if (found === null || found.sure < limits.asked) return null;
  const corners = found.corners.map(inside) as unknown as Corners;
  const share = Math.abs(twiceArea(corners)) / 2;
  const isClear = found.sure >= limits.sure;
  if ((share < limits.least && !isClear) || share >= limits.mostly || !isConvex(corners)) return null;
  return { corners, isSure: isClear && share >= limits.least && !mayBePrinted(corners, image) };
}

/** True where all sides run along the picture's and the margins to both hands, or above and below, are the same. */
function mayBePrinted(corners: Corners, { width, height }: PixelImage): boolean {
  const isStraight = corners.every((a, i) => {
    const b = corners[(i + 1) % 4]!;
    const [across, down] = [Math.abs(b.x - a.x) * width, Math.abs(b.y - a.y) * height];
    return (
      steadyAngle(Math.min(across, down), Math.max(across, down)) <= (limits.straightDeg * Math.PI) / 180
    );
  });
  const [xs, ys] = [corners.map(({ x }) => x), corners.map(({ y }) => y)];
  const isEven = (all: readonly number[]) =>
    Math.abs(Math.min(...all) - (1 - Math.max(...all))) <= limits.evenMargins;
  return isStraight && (isEven(xs) || isEven(ys));
}

/** A corner beyond the picture's rim comes to lie on it. */
function inside({ x, y }: Spot): Spot {
  return { x: Math.max(0, Math.min(1, x)), y: Math.max(0, Math.min(1, y)) };
}
