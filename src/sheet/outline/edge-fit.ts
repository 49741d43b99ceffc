import type { Spot } from '../model.ts';
import type { Planes } from '../planes.ts';
import { crossing, isConvex, type Quad } from './quad.ts';

/** A quadrilateral whose sides lie on edges, and how much of each side is an edge, 0–1. */
export interface EdgeFit {
  readonly quad: Quad;
  readonly support: readonly number[];
}

/** Looked at across each side, in pixels to either hand. */
const reach = 6;
const step = 0.5;

/**
 * Each side laid anew through the places where the picture changes from table to sheet, to a part of a pixel: along the
 * side, across it, the place that parts the two best; near it, the middle of the change of colour; through all of them a
 * straight line that leaves out what lies off it.
 */
export function onEdges(planes: Planes, says: Float32Array, quad: Quad): EdgeFit {
  const fits = quad.map((a, i) => fitSide(planes, says, a, quad[(i + 1) % 4]!));
  const corners = fits.map((fit, i) => {
    const before = fits[(i + 3) % 4]!;
    return crossing(before.a, before.b, fit.a, fit.b) ?? quad[i]!;
  }) as unknown as Quad;
  const near = corners.every((p, i) => Math.hypot(p.x - quad[i]!.x, p.y - quad[i]!.y) < 3 * reach);
  return { quad: near && isConvex(corners) ? corners : quad, support: fits.map((fit) => fit.support) };
}

interface SideFit {
  readonly a: Spot;
  readonly b: Spot;
  readonly support: number;
}

function fitSide(planes: Planes, says: Float32Array, a: Spot, b: Spot): SideFit {
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const [tx, ty] = [(b.x - a.x) / length, (b.y - a.y) / length];
  // The corners go clockwise, so this points into the sheet.
  const [nx, ny] = [-ty, tx];
  const along: number[] = [];
  const off: number[] = [];
  const strong: number[] = [];
  const count = Math.max(24, Math.round(length / 2));
  for (let k = 0; k < count; k++) {
    const t = (0.04 + (0.92 * (k + 0.5)) / count) * length;
    const [x, y] = [a.x + tx * t, a.y + ty * t];
    if (x < 1 || y < 1 || x > planes.width - 1 || y > planes.height - 1) continue;
    const change = changeAcross(planes, says, x, y, nx, ny);
    if (!change) continue;
    along.push(t);
    off.push(change.at);
    strong.push(change.size);
  }
  const line = lineThrough(along, off, strong);
  const at = (t: number): Spot => {
    const d = line.start + line.slope * t;
    return { x: a.x + tx * t + nx * d, y: a.y + ty * t + ny * d };
  };
  return { a: at(0), b: at(length), support: line.held / count };
}

function changeAcross(
  planes: Planes,
  says: Float32Array,
  x: number,
  y: number,
  nx: number,
  ny: number,
): { at: number; size: number } | null {
  const n = Math.round((2 * reach) / step) + 1;
  const s = new Float64Array(n);
  const colours = [planes.l, planes.a, planes.b].map(() => new Float64Array(n));
  for (let i = 0; i < n; i++) {
    const d = i * step - reach;
    const [px, py] = [x + nx * d, y + ny * d];
    s[i] = at(says, planes, px, py);
    [planes.l, planes.a, planes.b].forEach((plane, c) => {
      colours[c]![i] = at(plane, planes, px, py);
    });
  }
  // The place with the most table before it and the most sheet behind.
  let score = 0;
  let best = 0;
  let split = 0;
  for (let i = 0; i < n; i++) {
    score -= s[i]!;
    if (score > best) {
      best = score;
      split = i + 1;
    }
  }
  const found = split > 2 && split < n - 2 && s.slice(split).reduce((sum, v) => sum + v, 0) > 0;
  if (!found) return null;
  // The change of colour nearby, weighed by its square.
  let sum = 0;
  let weight = 0;
  for (let i = Math.max(1, split - 4); i <= Math.min(n - 2, split + 3); i++) {
    const change = colours.reduce((all, c) => all + (c[i + 1]! - c[i - 1]!) ** 2, 0);
    sum += change * (i * step - reach);
    weight += change;
  }
  return weight > 2e-4 ? { at: sum / weight, size: Math.sqrt(weight) } : null;
}

/** A straight line by repeated least squares, each place weighing less the further off it lies. */
function lineThrough(t: readonly number[], d: readonly number[], size: readonly number[]) {
  const middle = [...d].sort((p, q) => p - q)[d.length >> 1] ?? 0;
  let start = middle;
  let slope = 0;
  for (let round = 0; round < 12; round++) {
    const wide = Math.max(0.5, 3 / (round + 1));
    let [w, wt, wd, wtt, wtd] = [0, 0, 0, 0, 0];
    for (let i = 0; i < t.length; i++) {
      const far = (d[i]! - start - slope * t[i]!) / wide;
      const k = size[i]! / (1 + far * far) ** 2;
      w += k;
      wt += k * t[i]!;
      wd += k * d[i]!;
      wtt += k * t[i]! * t[i]!;
      wtd += k * t[i]! * d[i]!;
    }
    const spread = w * wtt - wt * wt;
    if (!(spread > 1e-6)) break;
    slope = (w * wtd - wt * wd) / spread;
    start = (wd - slope * wt) / w;
  }
  const held = d.filter((v, i) => Math.abs(v - start - slope * t[i]!) < 1).length;
  return { start, slope, held };
}

/** A plane between its pixels, whose middles lie at halves. */
function at(plane: Float32Array, { width, height }: Planes, x: number, y: number): number {
  const px = Math.max(0, Math.min(width - 1.001, x - 0.5));
  const py = Math.max(0, Math.min(height - 1.001, y - 0.5));
  const [x0, y0] = [Math.floor(px), Math.floor(py)];
  const [fx, fy] = [px - x0, py - y0];
  const i = y0 * width + x0;
  const upper = plane[i]! * (1 - fx) + plane[i + 1]! * fx;
  const lower = plane[i + width]! * (1 - fx) + plane[i + width + 1]! * fx;
  return upper * (1 - fy) + lower * fy;
}
