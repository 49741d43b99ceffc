import type { Corners, Frame, Spot } from '../../../src/sheet/model.ts';

/** Where a pointer is on a box, as fractions 0–1, kept inside it. */
export function spotAt(at: { clientX: number; clientY: number }, box: DOMRect): Spot {
  return {
    x: within((at.clientX - box.left) / box.width),
    y: within((at.clientY - box.top) / box.height),
  };
}

/** How far an arrow key moves something: half a hundredth of the picture's width, with Shift ten times that. */
const step = 0.005;

/** The spot after an arrow key, or null where the key is no arrow. `ratio`: width over height, so that steps are square. */
export function nudged(
  spot: Spot,
  event: { key: string; shiftKey: boolean },
  ratio: number,
  bounds: { least?: Spot; most?: Spot } = {},
): Spot | null {
  const arrow = arrows[event.key];
  if (!arrow) return null;
  const size = step * (event.shiftKey ? 10 : 1);
  return {
    x: within(spot.x + arrow[0] * size, bounds.least?.x, bounds.most?.x),
    y: within(spot.y + arrow[1] * size * ratio, bounds.least?.y, bounds.most?.y),
  };
}

const arrows: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The frame with these two corners. */
export function frameBetween(a: Spot, b: Spot): Frame {
  return {
    x: Math.min(a.x, b.x),
    y: Math.min(a.y, b.y),
    width: Math.abs(a.x - b.x),
    height: Math.abs(a.y - b.y),
  };
}

/** A frame of the same size with its top left there, kept inside the picture. */
export function frameMoved(frame: Frame, to: Spot): Frame {
  return { ...frame, x: within(to.x, 0, 1 - frame.width), y: within(to.y, 0, 1 - frame.height) };
}

/** True where four corners make a sheet: no side crosses another, none turns inward. */
export function makesSheet(corners: Corners): boolean {
  const turns = corners.map((a, i) => {
    const b = corners[(i + 1) % 4]!;
    const c = corners[(i + 2) % 4]!;
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
  });
  return turns.every((turn) => turn > 1e-4);
}

/** "12 % across, 8 % down". */
export function placeWords({ x, y }: Spot): string {
  return `${percent(x)} across, ${percent(y)} down`;
}

/** "12 %"; one decimal below ten. */
export function percent(fraction: number): string {
  const value = fraction * 100;
  return `${value >= 10 || value === 0 ? Math.round(value) : Math.round(value * 10) / 10} %`;
}

export function within(value: number, least = 0, most = 1): number {
  return Math.min(Math.max(value, least), Math.max(least, most));
}
