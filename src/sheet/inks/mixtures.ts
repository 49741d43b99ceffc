import { rgbOfCones, rootsOfAb } from '../../colour/oklab-digits.ts';
import { linearOf, oklabOf } from './settled-inks.ts';

const [longA, longB, middleA, middleB, shortA, shortB] = rootsOfAb;
const [redLong, redMiddle, redShort, greenLong, greenMiddle, greenShort, blueLong, blueMiddle, blueShort] =
  rgbOfCones;

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
  /** The way of a and b from one ink to the other in straight pieces: where each begins, where it goes, and that over its length². */
  private readonly path: Float64Array;
  /** The box of a and b that the way lies in: most colours are farther from it than another edge is. */
  private readonly aLow: number;
  private readonly aHigh: number;
  private readonly bLow: number;
  private readonly bHigh: number;
  /** What the cubes of OKLab's three roots add to the share of the second ink, and what is taken off. */
  private readonly byP: number;
  private readonly byQ: number;
  private readonly byR: number;
  private readonly less: number;

  constructor(p: Colour3, q: Colour3) {
    const slack = 0.1 * Math.abs(p.l - q.l);
    this.low = Math.min(p.l, q.l) - slack;
    this.high = Math.max(p.l, q.l) + slack;
    const [r0, g0, b0] = linearOf(p);
    const [r1, g1, b1] = linearOf(q);
    const [x, y, z] = [r1 - r0, g1 - g0, b1 - b0];
    const length2 = x * x + y * y + z * z || 1;
    // Linear sRGB of the cubes, projected on the way from one ink to the other.
    this.byP = (redLong * x + greenLong * y + blueLong * z) / length2;
    this.byQ = (redMiddle * x + greenMiddle * y + blueMiddle * z) / length2;
    this.byR = (redShort * x + greenShort * y + blueShort * z) / length2;
    this.less = (r0 * x + g0 * y + b0 * z) / length2;
    this.path = new Float64Array(6 * steps);
    let here = oklabOf(r0, g0, b0);
    for (let i = 0; i < steps; i++) {
      const t = (i + 1) / steps;
      const next = oklabOf(r0 + t * x, g0 + t * y, b0 + t * z);
      const dx = next.a - here.a;
      const dy = next.b - here.b;
      const len = dx * dx + dy * dy;
      const per = len > 1e-12 ? 1 / len : 0;
      this.path.set([here.a, here.b, dx, dy, dx * per, dy * per], 6 * i);
      here = next;
    }
    const as = [here.a, ...this.path.filter((_, i) => i % 6 === 0)];
    const bs = [here.b, ...this.path.filter((_, i) => i % 6 === 1)];
    [this.aLow, this.aHigh] = [Math.min(...as), Math.max(...as)];
    [this.bLow, this.bHigh] = [Math.min(...bs), Math.max(...bs)];
  }

  /** How far a colour lies from anything the edge can look like; `bound` where it is no nearer than that. */
  off(l: number, a: number, b: number, bound = 1e9): number {
    const { low, high, path } = this;
    const dl = l < low ? low - l : l > high ? l - high : 0;
    if (dl >= bound) return bound;
    const da = a < this.aLow ? this.aLow - a : a > this.aHigh ? a - this.aHigh : 0;
    const db = b < this.bLow ? this.bLow - b : b > this.bHigh ? b - this.bHigh : 0;
    if (dl * dl + da * da + db * db >= bound * bound) return bound;
    let least = 1e18;
    for (let i = 0; i < path.length; i += 6) {
      const x = a - path[i]!;
      const y = b - path[i + 1]!;
      let t = x * path[i + 4]! + y * path[i + 5]!;
      if (t < 0) t = 0;
      else if (t > 1) t = 1;
      const ex = x - t * path[i + 2]!;
      const ey = y - t * path[i + 3]!;
      const d = ex * ex + ey * ey;
      if (d < least) least = d;
    }
    const d = Math.sqrt(dl * dl + least);
    return Math.min(d, bound);
  }

  /** Share of the second ink in a colour on the edge, by linear light, 0–1. */
  share(l: number, a: number, b: number): number {
    return Math.min(1, Math.max(0, this.position(l, a, b)));
  }

  /** The same, running on below 0 and above 1 where the colour lies beyond the inks. */
  position(l: number, a: number, b: number): number {
    const u = a / 2;
    const v = b / 2;
    const p = l + longA * u + longB * v;
    const q = l + middleA * u + middleB * v;
    const r = l + shortA * u + shortB * v;
    // This is asked for every pixel of every edge, and a power is dearer than a product.
    return this.byP * p * p * p + this.byQ * q * q * q + this.byR * r * r * r - this.less;
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
