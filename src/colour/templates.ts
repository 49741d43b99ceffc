import { hueDistanceDeg, wrapDeg } from './hue.ts';
import type { Wheel } from './model.ts';
import { placeOnWheel } from './wheels.ts';

/** Matsuda's letters for his templates of hue; N (no hue at all) is left out, for neutrals are left out before. */
export type TemplateName = 'i' | 'I' | 'V' | 'L' | 'Y' | 'T' | 'X';

export interface TemplateFit {
  readonly template: TemplateName;
  /** Where the middle of its first sector stands on the wheel, degrees. */
  readonly turnDeg: number;
  /** Degrees of the circle that it covers: the fewer, the more it says. */
  readonly coveredDeg: number;
  readonly wheel: Wheel;
}

/**
 * The narrowest template, by covered arc, that holds every hue given (OKLCH, degrees), or null where none does or no
 * hue is given. Wide templates always fit and say little. L is tried both ways round.
 * Source: Y. Matsuda (1995), as tabulated by D. Cohen-Or et al., Color harmonization, ACM TOG 25(3) (2006).
 */
export function narrowestTemplate(huesDeg: readonly number[], wheel: Wheel): TemplateFit | null {
  if (huesDeg.length === 0) return null;
  const places = huesDeg.map((h) => placeOnWheel(h, wheel));
  for (const { name, sectors } of templates) {
    const turn = turnThatHolds(places, sectors);
    if (turn !== null)
      return {
        template: name,
        turnDeg: turn,
        coveredDeg: sectors.reduce((sum, s) => sum + s.width, 0),
        wheel,
      };
  }
  return null;
}

interface Sector {
  /** Degrees from the first sector's middle to this one's. */
  readonly at: number;
  readonly width: number;
}

/** Widths of a twentieth, 22 and 26 hundredths, and half of the circle; narrowest template first. */
const [thin, middle, wide, half] = [18, 79.2, 93.6, 180] as const;
const templates: readonly { readonly name: TemplateName; readonly sectors: readonly Sector[] }[] = [
  { name: 'i', sectors: [{ at: 0, width: thin }] },
  {
    name: 'I',
    sectors: [
      { at: 0, width: thin },
      { at: 180, width: thin },
    ],
  },
  { name: 'V', sectors: [{ at: 0, width: wide }] },
  {
    name: 'L',
    sectors: [
      { at: 0, width: thin },
      { at: 90, width: middle },
    ],
  },
  {
    name: 'L',
    sectors: [
      { at: 0, width: thin },
      { at: 270, width: middle },
    ],
  },
  {
    name: 'Y',
    sectors: [
      { at: 0, width: wide },
      { at: 180, width: thin },
    ],
  },
  { name: 'T', sectors: [{ at: 0, width: half }] },
  {
    name: 'X',
    sectors: [
      { at: 0, width: wide },
      { at: 180, width: wide },
    ],
  },
];

/** A template that holds can be turned until a hue lies on a sector's first edge, so only those turns are tried. */
function turnThatHolds(places: readonly number[], sectors: readonly Sector[]): number | null {
  for (const place of places)
    for (const { at, width } of sectors) {
      const turn = wrapDeg(place + width / 2 - at);
      const all = places.every((p) =>
        sectors.some((s) => hueDistanceDeg(p, turn + s.at) <= s.width / 2 + 1e-9),
      );
      if (all) return turn;
    }
  return null;
}
