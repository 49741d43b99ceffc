import { steadyAngle } from './steady.ts';

/** Hue arithmetic on the circle, in degrees. */

/** The same angle in [0, 360). */
export function wrapDeg(deg: number): number {
  const turned = deg % 360;
  const wrapped = turned < 0 ? turned + 360 : turned;
  // Adding 360 to a tiny negative number rounds up to 360 itself.
  return wrapped >= 360 ? 0 : wrapped;
}

/** Unsigned angle between two hues, 0–180. */
export function hueDistanceDeg(a: number, b: number): number {
  const apart = Math.abs(wrapDeg(a) - wrapDeg(b));
  return apart > 180 ? 360 - apart : apart;
}

/** Signed turn from one hue to another, −180 < turn ≤ 180. */
export function hueTurnDeg(from: number, to: number): number {
  const turn = wrapDeg(to - from);
  return turn > 180 ? turn - 360 : turn;
}

/** The angle of (a, b) in degrees [0, 360); 0 for the origin. */
export function angleDeg(a: number, b: number): number {
  return wrapDeg((steadyAngle(b, a) * 180) / Math.PI);
}
