import type { Wheel } from '../colour/model.ts';
import { painterSteps } from '../colour/wheels.ts';

/** A name on the ring, and the OKLCH hue at which it stands, degrees. */
export interface HueName {
  readonly name: string;
  readonly deg: number;
}

/** The names around a wheel: on the painter's, its twelve steps. */
export function hueNames(wheel: Wheel): readonly HueName[] {
  return wheel === 'eye' ? eyeNames : painterNames;
}

/** The name of the eye's wheel that stands nearest to an OKLCH hue, degrees. */
export function nearestHueName(deg: number): string {
  const away = (name: HueName) => Math.abs(((deg - name.deg + 540) % 360) - 180);
  return eyeNames.reduce((best, name) => (away(name) < away(best) ? name : best)).name;
}

/**
 * OKLCH hues of the vivid ISCC-NBS centroids, rounded; where two of them share a plain name, their mean (green:
 * yellowish green 146 and green 171; blue-green: bluish green 188 and greenish blue 213; purple: purple 321 and
 * reddish purple 337). Source: Kelly & Judd 1976, centroids of reference-data, taken to OKLCH by culori 4.
 */
const eyeNames: readonly HueName[] = [
  { name: 'red', deg: 20 },
  { name: 'orange', deg: 59 },
  { name: 'yellow', deg: 93 },
  { name: 'yellow-green', deg: 122 },
  { name: 'green', deg: 158 },
  { name: 'blue-green', deg: 201 },
  { name: 'blue', deg: 236 },
  { name: 'violet', deg: 303 },
  { name: 'purple', deg: 329 },
];

const painterNames: readonly HueName[] = painterSteps.map(({ name, hueDeg }) => ({ name, deg: hueDeg }));
