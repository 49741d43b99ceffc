import { labFromOklch, oklchFromTuple } from '../colour/spaces.ts';
import type { Ink } from '../sheet/model.ts';
import type { SurroundTones } from './surround.ts';

/** Where the lanes of a strip begin, below the words for the empty stretch. */
export const stripTop = 24;

/** What all parts of a strip share: its width, its tones, and where an L* stands. */
export interface StripLook {
  readonly width: number;
  readonly tones: SurroundTones;
  readonly x: (lightness: number) => number;
}

/** CIELAB L* of an ink, D65. */
export function lightnessOf(ink: Ink): number {
  return labFromOklch(oklchFromTuple(ink.oklch)).l;
}
