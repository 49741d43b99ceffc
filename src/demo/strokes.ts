import type { Outline } from './raster.ts';

/**
 * A line drawn through points with a pen: one outline for the body of the line, with round ends.
 * @param points x0, y0, x1, y1 … in millimetres.
 * @param widths of the pen in millimetres: one for all, or a function of the way along, 0–1.
 */
export function stroke(points: readonly number[], widths: number | ((t: number) => number)): Outline {
  const count = points.length / 2;
  const widthAt = typeof widths === 'number' ? () => widths : widths;
  const [left, right]: [number[], number[]] = [[], []];
  let [startTurn, endTurn] = [0, 0];
  for (let i = 0; i < count; i += 1) {
    const [x, y] = [points[2 * i]!, points[2 * i + 1]!];
    const before = Math.max(0, i - 1) * 2;
    const after = Math.min(count - 1, i + 1) * 2;
    const turn = Math.atan2(points[after + 1]! - points[before + 1]!, points[after]! - points[before]!);
    const half = widthAt(i / (count - 1)) / 2;
    left.push(x + half * Math.sin(turn), y - half * Math.cos(turn));
    right.push(x - half * Math.sin(turn), y + half * Math.cos(turn));
    if (i === 0) startTurn = turn;
    if (i === count - 1) endTurn = turn;
  }
  const outline = [...left];
  outline.push(
    ...roundEnd(points[2 * count - 2]!, points[2 * count - 1]!, widthAt(1) / 2, endTurn - Math.PI / 2),
  );
  for (let i = right.length - 2; i >= 0; i -= 2) outline.push(right[i]!, right[i + 1]!);
  outline.push(...roundEnd(points[0]!, points[1]!, widthAt(0) / 2, startTurn + Math.PI / 2));
  return outline;
}

/** Points on a smooth curve through the given ones (Catmull–Rom), `steps` to each piece. */
export function smooth(points: readonly number[], steps = 5): number[] {
  const count = points.length / 2;
  if (count < 3) return [...points];
  const at = (i: number, axis: number): number => points[2 * Math.min(count - 1, Math.max(0, i)) + axis]!;
  const curve: number[] = [];
  for (let i = 0; i < count - 1; i += 1) {
    for (let step = 0; step < steps; step += 1) {
      const t = step / steps;
      for (const axis of [0, 1]) {
        const [a, b, c, d] = [at(i - 1, axis), at(i, axis), at(i + 1, axis), at(i + 2, axis)];
        curve.push(b + 0.5 * t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a))));
      }
    }
  }
  curve.push(points[2 * count - 2]!, points[2 * count - 1]!);
  return curve;
}

function roundEnd(x: number, y: number, radius: number, from: number): number[] {
  const end: number[] = [];
  for (let i = 1; i < 5; i += 1) {
    const turn = from + (i * Math.PI) / 5;
    end.push(x + radius * Math.cos(turn), y + radius * Math.sin(turn));
  }
  return end;
}
