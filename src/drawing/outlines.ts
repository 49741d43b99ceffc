import type { Frame, Spot } from '../sheet/model.ts';
import { mostCorners } from '../sheet/outline/outline.ts';

/** An oval that fills its frame, in fractions of it. */
export const oval: readonly Spot[] = Array.from({ length: 48 }, (_, i) => {
  const t = (2 * Math.PI * i) / 48;
  return { x: 0.5 + 0.5 * Math.cos(t), y: 0.5 + 0.5 * Math.sin(t) };
});

/**
 * The frame of a line that was drawn round something, and the line's corners in fractions of that frame; null where it
 * goes round nothing. Corners that lie within half a hundredth of the line between their neighbours are left out.
 * Source of the thinning: Douglas & Peucker 1973.
 */
export function outlineOf(line: readonly Spot[]): { frame: Frame; outline: readonly Spot[] } | null {
  const xs = line.map(({ x }) => x);
  const ys = line.map(({ y }) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  const [width, height] = [Math.max(...xs) - x, Math.max(...ys) - y];
  if (line.length < 3 || !(width > 0 && height > 0)) return null;
  const within = line.map((spot) => ({ x: (spot.x - x) / width, y: (spot.y - y) / height }));
  const exact = thinned(within, 0.005);
  // A scribble that no pair of scissors could follow: every so manieth place of it.
  const every = Math.ceil(exact.length / mostCorners);
  const outline = every > 1 ? exact.filter((_, i) => i % every === 0) : exact;
  return outline.length < 3 ? null : { frame: { x, y, width, height }, outline };
}

function thinned(line: readonly Spot[], off: number): readonly Spot[] {
  const first = line[0]!;
  const last = line.at(-1)!;
  let far = 0;
  let at = 0;
  for (let i = 1; i < line.length - 1; i++) {
    const d = offLine(line[i]!, first, last);
    if (d > far) {
      far = d;
      at = i;
    }
  }
  if (far <= off) return [first, last];
  return [...thinned(line.slice(0, at + 1), off).slice(0, -1), ...thinned(line.slice(at), off)];
}

function offLine(p: Spot, a: Spot, b: Spot): number {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  if (length < 1e-9) return Math.hypot(p.x - a.x, p.y - a.y);
  return Math.abs((b.x - a.x) * (a.y - p.y) - (a.x - p.x) * (b.y - a.y)) / length;
}
