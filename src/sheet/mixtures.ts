import { linearOf, oklabOf } from './settle.ts';

interface Colour3 {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

const steps = 6;

/**
 * What an edge between two inks can look like: lightness anywhere between theirs (and a little beyond, for ringing), hue and
 * chroma anywhere on the way from one to the other in linear light. The two need not keep step, for pictures blur colour more
 * than lightness. a and b doubled.
 */
export class Edge {
  private readonly low: number;
  private readonly high: number;
  private readonly path: Float64Array;
  private readonly from: readonly [number, number, number];
  private readonly along: readonly [number, number, number];
  private readonly length2: number;

  constructor(p: Colour3, q: Colour3) {
    const slack = 0.1 * Math.abs(p.l - q.l);
    this.low = Math.min(p.l, q.l) - slack;
    this.high = Math.max(p.l, q.l) + slack;
    const [r0, g0, b0] = linearOf(p);
    const [r1, g1, b1] = linearOf(q);
    this.from = [r0, g0, b0];
    this.along = [r1 - r0, g1 - g0, b1 - b0];
    this.length2 = this.along.reduce((s, v) => s + v * v, 0) || 1;
    this.path = new Float64Array(2 * (steps + 1));
    for (let i = 0; i <= steps; i++) {
      const t = i / steps;
      const c = oklabOf(r0 + t * (r1 - r0), g0 + t * (g1 - g0), b0 + t * (b1 - b0));
      this.path[2 * i] = c.a;
      this.path[2 * i + 1] = c.b;
    }
  }

  /** How far a colour lies from anything the edge can look like. */
  off(l: number, a: number, b: number): number {
    const { low, high, path } = this;
    const dl = l < low ? low - l : l > high ? l - high : 0;
    let least = 1e9;
    let x = path[0]!;
    let y = path[1]!;
    for (let i = 2; i < path.length; i += 2) {
      const u = path[i]!;
      const v = path[i + 1]!;
      const dx = u - x;
      const dy = v - y;
      const len = dx * dx + dy * dy;
      let t = len > 1e-12 ? ((a - x) * dx + (b - y) * dy) / len : 0;
      if (t < 0) t = 0;
      else if (t > 1) t = 1;
      const ex = a - x - t * dx;
      const ey = b - y - t * dy;
      const d = ex * ex + ey * ey;
      if (d < least) least = d;
      x = u;
      y = v;
    }
    return Math.sqrt(dl * dl + least);
  }

  /** Share of the second ink in a colour on the edge, by linear light, 0–1. */
  share(l: number, a: number, b: number): number {
    return Math.min(1, Math.max(0, this.position(l, a, b)));
  }

  /** The same, running on below 0 and above 1 where the colour lies beyond the inks. */
  position(l: number, a: number, b: number): number {
    // linearOf written out: this is asked for every pixel of every edge.
    const { from, along } = this;
    const u = a / 2;
    const v = b / 2;
    const p = (l + 0.3963377773761749 * u + 0.2158037573099136 * v) ** 3;
    const q = (l - 0.1055613458156586 * u - 0.0638541728258133 * v) ** 3;
    const r = (l - 0.0894841775298119 * u - 1.2914855480194092 * v) ** 3;
    const x = 4.0767416360759583 * p - 3.3077115392580616 * q + 0.2309699031821041 * r;
    const y = -1.2684379732850317 * p + 2.6097573492876887 * q - 0.3413193760026573 * r;
    const z = -0.0041960761386754 * p - 0.7034186179359362 * q + 1.7076146940746117 * r;
    return ((x - from[0]) * along[0] + (y - from[1]) * along[1] + (z - from[2]) * along[2]) / this.length2;
  }
}

/** The edges between every pair of a list of colours, made as they are asked for. */
export class Edges {
  private readonly colours: readonly Colour3[];
  private readonly made: (Edge | undefined)[] = [];

  constructor(colours: readonly Colour3[]) {
    this.colours = colours;
  }

  /** The edge from the ink of the lower number to the other. */
  between(p: number, q: number): Edge {
    const [low, high] = p < q ? [p, q] : [q, p];
    const at = low * this.colours.length + high;
    return (this.made[at] ??= new Edge(this.colours[low]!, this.colours[high]!));
  }
}
