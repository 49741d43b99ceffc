import type { Spot } from '../model.ts';
import { hullOf, isConvex, type Quad, quadAround, twiceArea } from './quad.ts';

/** Sums of a plane along its rows, so that any quadrilateral is summed in one step a row. */
export class RowSums {
  readonly width: number;
  readonly height: number;
  private readonly sums: Float64Array;

  constructor(values: Float32Array, width: number, height: number, less = 0) {
    this.width = width;
    this.height = height;
    this.sums = new Float64Array((width + 1) * height);
    for (let y = 0; y < height; y++)
      for (let x = 0; x < width; x++)
        this.sums[y * (width + 1) + x + 1] = this.sums[y * (width + 1) + x]! + values[y * width + x]! - less;
  }

  /** Sum within a convex quadrilateral, what lies outside the plane counting nothing. */
  within(quad: Quad): number {
    const top = Math.max(0, Math.floor(Math.min(...quad.map((p) => p.y))));
    const bottom = Math.min(this.height, Math.ceil(Math.max(...quad.map((p) => p.y))));
    let sum = 0;
    for (let y = top; y < bottom; y++) {
      const at = y + 0.5;
      let left = Number.POSITIVE_INFINITY;
      let right = Number.NEGATIVE_INFINITY;
      for (let i = 0; i < 4; i++) {
        const a = quad[i]!;
        const b = quad[(i + 1) & 3]!;
        if (a.y > at === b.y > at) continue;
        const x = a.x + ((b.x - a.x) * (at - a.y)) / (b.y - a.y);
        if (x < left) left = x;
        if (x > right) right = x;
      }
      if (right > left) sum += this.along(y, left, right);
    }
    return sum;
  }

  /** Sum along a row, from one place to another. */
  along(y: number, left: number, right: number): number {
    return this.upTo(y, right) - this.upTo(y, left);
  }

  private upTo(y: number, x: number): number {
    const at = Math.max(0, Math.min(this.width, x));
    const whole = Math.floor(at);
    const row = y * (this.width + 1);
    const base = this.sums[row + whole]!;
    return whole < this.width ? base + (at - whole) * (this.sums[row + whole + 1]! - base) : base;
  }
}

/** Small print inside must not decide alone; the quadrilateral shrinks over what tells nothing. */
const shrink = 0.15;

/** The convex quadrilateral that holds the most of what speaks for the sheet and the least of what does not. */
export function fitQuad(says: Float32Array, width: number, height: number): Quad | null {
  const sums = new RowSums(says, width, height, shrink);
  const starts = [hullStart(says, width, height), inset(width, height, 0.2), inset(width, height, 0.32)];
  let best: { quad: Quad; sum: number } | null = null;
  for (const start of starts) {
    if (!start || !isConvex(start)) continue;
    const found = climbed(sums, start, Math.max(width, height) / 16);
    if (!best || found.sum > best.sum) best = found;
  }
  return best && best.sum > 0 ? best.quad : null;
}

/** As `fitQuad`, from a quadrilateral that is nearly right. */
export function refitQuad(says: Float32Array, width: number, height: number, start: Quad): Quad {
  return climbed(new RowSums(says, width, height, shrink), start, Math.max(width, height) / 50).quad;
}

/** Moves sides and corners while that helps, in ever smaller steps. */
function climbed(sums: RowSums, start: Quad, first: number): { quad: Quad; sum: number } {
  let quad = start;
  let sum = sums.within(quad);
  for (let step = first; step >= 0.4; step /= 2)
    for (let round = 0, better = true; better && round < 40; round++) {
      better = false;
      for (const move of moves(quad, step)) {
        const next = move(quad);
        if (!inReach(next, sums) || !isConvex(next)) continue;
        const now = sums.within(next);
        if (now <= sum + 1e-6) continue;
        quad = next;
        sum = now;
        better = true;
      }
    }
  return { quad, sum };
}

function moves(quad: Quad, step: number): ((q: Quad) => Quad)[] {
  const list: ((q: Quad) => Quad)[] = [];
  for (let i = 0; i < 4; i++) {
    const [a, b] = [quad[i]!, quad[(i + 1) % 4]!];
    const length = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    const [nx, ny] = [(-(b.y - a.y) / length) * step, ((b.x - a.x) / length) * step];
    for (const sign of [1, -1]) {
      const [dx, dy] = [nx * sign, ny * sign];
      list.push((q) => moved(q, dx, dy, i, (i + 1) % 4));
      list.push((q) => moved(q, dx, dy, i));
      list.push((q) => moved(q, dx, dy, (i + 1) % 4));
    }
  }
  return list;
}

function moved(quad: Quad, dx: number, dy: number, ...which: readonly number[]): Quad {
  return quad.map((p, i) => (which.includes(i) ? { x: p.x + dx, y: p.y + dy } : p)) as unknown as Quad;
}

function inReach(quad: Quad, { width, height }: RowSums): boolean {
  const out = 0.04 * Math.max(width, height);
  return (
    quad.every((p) => p.x > -out && p.y > -out && p.x < width + out && p.y < height + out) &&
    twiceArea(quad) > 0.04 * width * height
  );
}

function inset(width: number, height: number, by: number): Quad {
  const [x, y] = [width * by, height * by];
  return [
    { x, y },
    { x: width - x, y },
    { x: width - x, y: height - y },
    { x, y: height - y },
  ];
}

/** Around the largest joined-up place that speaks for the sheet once it is softened. */
function hullStart(says: Float32Array, width: number, height: number): Quad | null {
  const reach = Math.max(2, Math.round(Math.max(width, height) / 80));
  const sums = new RowSums(says, width, height);
  const on = new Uint8Array(width * height);
  const column = new Float64Array(width);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      // Across by the sums of the row, down by a mean that forgets.
      column[x] = 0.8 * column[x]! + 0.2 * sums.along(y, x - reach, x + reach + 1);
      on[y * width + x] = column[x]! > 0 ? 1 : 0;
    }
  const hull = hullOf(largest(on, width, height));
  return hull.length < 4 ? null : quadAround(hull);
}

function largest(on: Uint8Array, width: number, height: number): Spot[] {
  let best: number[] = [];
  for (let start = 0; start < on.length; start++) {
    if (on[start] !== 1) continue;
    const found = [start];
    on[start] = 2;
    for (let k = 0; k < found.length; k++) {
      const i = found[k]!;
      const x = i % width;
      const near = [x > 0 ? i - 1 : -1, x < width - 1 ? i + 1 : -1, i - width, i + width];
      for (const j of near)
        if (j >= 0 && j < width * height && on[j] === 1) {
          on[j] = 2;
          found.push(j);
        }
    }
    if (found.length > best.length) best = found;
  }
  return best.map((i) => ({ x: (i % width) + 0.5, y: Math.floor(i / width) + 0.5 }));
}
