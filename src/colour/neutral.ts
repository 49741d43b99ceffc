import { angleDeg } from './hue.ts';
import type { Lab } from './model.ts';

export type NeutralKind = 'white' | 'grey' | 'black' | 'cream' | 'kraft';

/**
 * What kind of neutral a CIELAB D65 colour is, or null where it is a colour with a hue that counts.
 * White, grey and black are neutral by weak chroma; cream and kraft by what they are, though their chroma is strong.
 * Source: ours; that cream and kraft act as neutrals is common practice, no source.
 */
export function neutralKind({ l, a, b }: Lab): NeutralKind | null {
  return neutralKindAt(l, Math.hypot(a, b), angleDeg(a, b));
}

/** The same of L* 0–100, C*ab and h*ab in degrees [0, 360). */
export function neutralKindAt(l: number, chroma: number, hue: number): NeutralKind | null {
  if (isIn(creamRegion, l, chroma, hue)) return 'cream';
  if (isIn(kraftRegion, l, chroma, hue)) return 'kraft';
  if (chroma > chromaLimit(l, hue)) return null;
  if (l >= whiteFromLightness) return 'white';
  return l < blackBelowLightness ? 'black' : 'grey';
}

/** Whether a colour acts as a neutral beside others: white, grey, black, cream or kraft. */
export function readsAsNeutral(lab: Lab): boolean {
  return neutralKind(lab) !== null;
}

/** L*, C*ab and h*ab (degrees) of a region. */
interface Region {
  readonly l: readonly [number, number];
  readonly chroma: readonly [number, number];
  readonly hue: readonly [number, number];
}

/** All of these are ours, in CIELAB D65: L* 0–100, C*ab, degrees. */
const whiteFromLightness = 87;
const blackBelowLightness = 25;
const creamRegion: Region = { l: [79, 100], chroma: [7, 24], hue: [64, 110] };
const kraftRegion: Region = { l: [42, 79], chroma: [17, 40], hue: [60, 88] };
/** C*ab up to which a colour reads as neutral: light, mid and dark, and mid on the warm side (greige, taupe). */
const limits = { light: 8, mid: 6, dark: 10, warm: 13 };
const warmHues: readonly [number, number] = [50, 105];

function chromaLimit(l: number, hue: number): number {
  if (l >= 40 && l < 79 && hue >= warmHues[0] && hue <= warmHues[1]) return limits.warm;
  return coolChromaLimit(l);
}

/** C*ab up to which a colour of no warm hue reads as neutral, at L* 0–100. */
export function coolChromaLimit(l: number): number {
  if (l >= 80) return limits.light;
  if (l <= blackBelowLightness) return limits.dark;
  if (l > 70) return limits.mid + ((limits.light - limits.mid) * (l - 70)) / 10;
  return l < 40 ? limits.dark - ((limits.dark - limits.mid) * (l - blackBelowLightness)) / 15 : limits.mid;
}

function isIn({ l, chroma, hue }: Region, lightness: number, c: number, h: number): boolean {
  return (
    lightness >= l[0] &&
    lightness < l[1] + 1e-9 &&
    c >= chroma[0] &&
    c <= chroma[1] &&
    h >= hue[0] &&
    h <= hue[1]
  );
}
