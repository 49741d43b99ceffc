import { painterFromHue } from './wheels.ts';

/** A pure hue and the share of the area it covers. */
export interface HueArea {
  readonly id: string;
  /** OKLCH hue in degrees. */
  readonly hueDeg: number;
  /** Any unit of area. */
  readonly share: number;
}

/** What contrast of extension says of one hue. */
export interface Extension {
  readonly id: string;
  /** Share of the hues' area that it covers, 0–1. */
  readonly share: number;
  /** Share at which the hues would balance, 0–1. */
  readonly balance: number;
}

/**
 * Light value of a hue, 3–9: yellow 9, orange 8, red 6, violet 3, blue 4, green 6, and straight lines between them on the
 * painter's wheel (the lines are ours). A teaching rule for pure hues.
 * Source: Goethe's values, as in J. Itten, Kunst der Farbe (1961).
 */
export function lightValue(hueDeg: number): number {
  const place = painterFromHue(hueDeg) / 60;
  const low = Math.floor(place) % 6;
  const share = place - Math.floor(place);
  return lightValues[low]! + share * (lightValues[(low + 1) % 6]! - lightValues[low]!);
}

/** Areas of two hues that balance, first over second: yellow over violet 1/3. Source: as above. */
export function balancedAreas(hueA: number, hueB: number): number {
  return lightValue(hueB) / lightValue(hueA);
}

/** Each hue's share of their common area beside the share at which they would balance. Empty for no area. */
export function extensionOf(hues: readonly HueArea[]): Extension[] {
  const area = hues.reduce((sum, { share }) => sum + share, 0);
  if (!(area > 0)) return [];
  const inverse = hues.reduce((sum, { hueDeg }) => sum + 1 / lightValue(hueDeg), 0);
  return hues.map(({ id, hueDeg, share }) => ({
    id,
    share: share / area,
    balance: 1 / lightValue(hueDeg) / inverse,
  }));
}

/** Yellow, orange, red, violet, blue, green: every 60° of the painter's wheel. */
const lightValues = [9, 8, 6, 3, 4, 6] as const;
