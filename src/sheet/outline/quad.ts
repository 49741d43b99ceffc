import type { Spot } from '../model.ts';

/** Four corners in pixels, clockwise (y down). */
export type Quad = readonly [Spot, Spot, Spot, Spot];

/** Twice the signed area: above nought where the corners go clockwise. */
export function twiceArea(points: readonly Spot[]): number {
  return points.reduce((sum, a, i) => {
    const b = points[(i + 1) % points.length]!;
    return sum + a.x * b.y - b.x * a.y;
  }, 0);
}

export function isConvex(quad: Quad): boolean {
  return quad.every((b, i) => {
    const a = quad[(i + 3) % 4]!;
    const c = quad[(i + 1) % 4]!;
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x) > 0;
  });
}

/** The convex hull of points, clockwise (y down). Source: Andrew's monotone chain, Information Processing Letters 9 (1979). */
export function hullOf(points: readonly Spot[]): Spot[] {
  const sorted = [...points].sort((p, q) => p.x - q.x || p.y - q.y);
  const half = (list: readonly Spot[]): Spot[] => {
    const out: Spot[] = [];
    for (const c of list) {
      while (out.length > 1) {
        const [a, b] = [out.at(-2)!, out.at(-1)!];
        if ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x) > 0) break;
        out.pop();
      }
      out.push(c);
    }
    return out.slice(0, -1);
  };
  return [...half(sorted), ...half(sorted.reverse())];
}

/** A hull brought down to four corners: again and again the side whose neighbours, drawn on, add the least area goes. */
export function quadAround(hull: readonly Spot[]): Quad | null {
  let points = [...hull];
  while (points.length > 4) {
    let best: { at: number; meet: Spot; area: number } | null = null;
    for (let i = 0; i < points.length; i++) {
      const [a, b, c, d] = [0, 1, 2, 3].map((k) => points[(i + k) % points.length]!) as [
        Spot,
        Spot,
        Spot,
        Spot,
      ];
      const meet = crossing(a, b, d, c);
      // Drawn on, the neighbours must meet beyond the side, not behind it.
      if (!meet || (meet.x - b.x) * (b.x - a.x) + (meet.y - b.y) * (b.y - a.y) < 0) continue;
      const area = Math.abs(twiceArea([b, meet, c]));
      if (!best || area < best.area) best = { at: i, meet, area };
    }
    if (!best) return null;
    const { at, meet } = best;
    const [p, q] = [(at + 1) % points.length, (at + 2) % points.length];
    points = points.map((point, i) => (i === p ? meet : point)).filter((_, i) => i !== q);
  }
  return points.length === 4 ? (points as unknown as Quad) : null;
}

/** Where the line a–b meets the line c–d, or null where they hardly do. */
export function crossing(a: Spot, b: Spot, c: Spot, d: Spot): Spot | null {
  const [ux, uy, vx, vy] = [b.x - a.x, b.y - a.y, d.x - c.x, d.y - c.y];
  const cross = ux * vy - uy * vx;
  if (Math.abs(cross) < 1e-3 * Math.hypot(ux, uy) * Math.hypot(vx, vy)) return null;
  const t = ((c.x - a.x) * vy - (c.y - a.y) * vx) / cross;
  return { x: a.x + t * ux, y: a.y + t * uy };
}

/** Where a sheet has only just begun: the corner nearest the picture's top left comes first. */
export function fromTopLeft(quad: Quad): Quad {
  const first = [0, 1, 2, 3].reduce((best, i) =>
    quad[i]!.x + quad[i]!.y < quad[best]!.x + quad[best]!.y ? i : best,
  );
  return [0, 1, 2, 3].map((i) => quad[(first + i) % 4]!) as unknown as Quad;
}
