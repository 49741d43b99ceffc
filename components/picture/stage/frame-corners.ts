import type { Frame, Spot } from '../../../src/sheet/model.ts';
import { frameBetween } from './spots.ts';

/** The smallest frame, as a fraction of the picture. */
export const least = 0.01;

/** One corner of a frame. */
export interface Corner {
  readonly right: boolean;
  readonly bottom: boolean;
  readonly words: string;
}

export const corners: readonly Corner[] = [
  { right: false, bottom: false, words: 'top left' },
  { right: true, bottom: false, words: 'top right' },
  { right: true, bottom: true, words: 'bottom right' },
  { right: false, bottom: true, words: 'bottom left' },
];

export function cornerOf({ x, y, width, height }: Frame, { right, bottom }: Corner): Spot {
  return { x: x + (right ? width : 0), y: y + (bottom ? height : 0) };
}

/** The opposite corner stays where it is; a corner can't be pulled past it. */
export function withCorner(frame: Frame, corner: Corner, to: Spot): Frame {
  const fixed = cornerOf(frame, { ...corner, right: !corner.right, bottom: !corner.bottom });
  return frameBetween(fixed, {
    x: corner.right ? Math.max(to.x, fixed.x + least) : Math.min(to.x, fixed.x - least),
    y: corner.bottom ? Math.max(to.y, fixed.y + least) : Math.min(to.y, fixed.y - least),
  });
}

/** Where a frame lies, as CSS in percentages. */
export function boxStyle({ x, y, width, height }: Frame): string {
  return `left:${x * 100}%;top:${y * 100}%;width:${width * 100}%;height:${height * 100}%`;
}

/** The outline of a frame, in a box of 100 × 100. */
export function framePath({ x, y, width, height }: Frame): string {
  return `M${x * 100} ${y * 100}h${width * 100}v${height * 100}h${-width * 100}Z`;
}

/** The outline of a shape whose corners are fractions of the frame, in a box of 100 × 100. */
export function shapePath({ x, y, width, height }: Frame, outline: readonly Spot[]): string {
  return `M${outline.map((spot) => `${(x + spot.x * width) * 100} ${(y + spot.y * height) * 100}`).join('L')}Z`;
}

/** The lines that part a frame into columns and rows, in a box of 100 × 100. */
export function gridPath({ x, y, width, height }: Frame, [columns, rows]: readonly [number, number]): string {
  const upright = Array.from(
    { length: columns - 1 },
    (_, i) => `M${(x + (width * (i + 1)) / columns) * 100} ${y * 100}v${height * 100}`,
  );
  const level = Array.from(
    { length: rows - 1 },
    (_, i) => `M${x * 100} ${(y + (height * (i + 1)) / rows) * 100}h${width * 100}`,
  );
  return [...upright, ...level].join('');
}
