import { linearFromOklab, oklabFromLinear } from '../../colour/oklab-linear.ts';
import { numbers } from '../reading-limits.ts';
import type { Mode } from './modes.ts';

/** Distance of two colours in OKLab with a and b doubled (as modes hold them). */
export function apart(p: Colour3, q: Colour3): number {
  return Math.sqrt((p.l - q.l) ** 2 + (p.a - q.a) ** 2 + (p.b - q.b) ** 2);
}

interface Colour3 {
  readonly l: number;
  readonly a: number;
  readonly b: number;
}

/** Modes nearer than one ink's width become one, at the place of the stronger. Strongest first. */
export function mergeNear(modes: readonly Mode[], nearer: number = numbers.sameInk): Mode[] {
  const kept: Mode[] = [];
  for (const mode of modes) {
    const near = kept.find((k) => apart(k, mode) < nearer);
    if (near) near.votes += mode.votes;
    else kept.push({ ...mode });
  }
  return kept;
}

/** Linear sRGB of an OKLab colour whose a and b are doubled. */
export function linearOf({ l, a, b }: Colour3): readonly [number, number, number] {
  return linearFromOklab(l, a / 2, b / 2);
}

/** OKLab with a and b doubled of linear sRGB. */
export function oklabOf(red: number, green: number, blue: number): Colour3 {
  const { l, a, b } = oklabFromLinear(red, green, blue);
  return { l, a: 2 * a, b: 2 * b };
}

/** How far a colour lies from the nearest mixture (in linear light) of two others, and the mixture's share of `q`. */
export function offMixture(colour: Colour3, p: Colour3, q: Colour3): { off: number; share: number } {
  const [r0, g0, b0] = linearOf(p);
  const [r1, g1, b1] = linearOf(q);
  const at = (t: number): number =>
    apart(colour, oklabOf(r0 + t * (r1 - r0), g0 + t * (g1 - g0), b0 + t * (b1 - b0)));
  // The curve is smooth and bends one way: a coarse look, then a finer one around its best.
  let share = 0;
  let off = Number.POSITIVE_INFINITY;
  for (const [from, step, n] of [
    [0, 1 / 12, 12],
    [-1, 1 / 60, 10],
  ] as const) {
    const start = from < 0 ? share - 5 * step : from;
    for (let i = 0; i <= n; i++) {
      const t = Math.min(1, Math.max(0, start + i * step));
      const d = at(t);
      if (d < off) {
        off = d;
        share = t;
      }
    }
  }
  return { off, share };
}
