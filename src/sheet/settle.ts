import type { Mode } from './modes.ts';
import { numbers } from './numbers.ts';

/** Distance of two colours in OKLab with a and b doubled (as modes hold them). */
export function apart(p: Colour3, q: Colour3): number {
  return Math.hypot(p.l - q.l, p.a - q.a, p.b - q.b);
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

/** Linear sRGB of an OKLab colour whose a and b are doubled. Source: Ottosson 2020, inverse matrices as in CSS Color 4. */
export function linearOf({ l, a, b }: Colour3): readonly [number, number, number] {
  const x = a / 2;
  const y = b / 2;
  const p = (l + 0.3963377773761749 * x + 0.2158037573099136 * y) ** 3;
  const q = (l - 0.1055613458156586 * x - 0.0638541728258133 * y) ** 3;
  const r = (l - 0.0894841775298119 * x - 1.2914855480194092 * y) ** 3;
  return [
    4.0767416360759583 * p - 3.3077115392580616 * q + 0.2309699031821041 * r,
    -1.2684379732850317 * p + 2.6097573492876887 * q - 0.3413193760026573 * r,
    -0.0041960761386754 * p - 0.7034186179359362 * q + 1.7076146940746117 * r,
  ];
}

/** OKLab with a and b doubled of linear sRGB. */
export function oklabOf(r: number, g: number, b: number): Colour3 {
  const l = Math.cbrt(0.412221469470763 * r + 0.5363325372617348 * g + 0.0514459932675022 * b);
  const m = Math.cbrt(0.2119034958178252 * r + 0.6806995506452344 * g + 0.1073969535369406 * b);
  const s = Math.cbrt(0.0883024591900564 * r + 0.2817188391361215 * g + 0.6299787016738222 * b);
  return {
    l: 0.210454268309314 * l + 0.7936177747023054 * m - 0.0040720430116193 * s,
    a: 2 * (1.9779985324311684 * l - 2.4285922420485799 * m + 0.450593709617411 * s),
    b: 2 * (0.0259040424655478 * l + 0.7827717124575296 * m - 0.8086757549230774 * s),
  };
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
