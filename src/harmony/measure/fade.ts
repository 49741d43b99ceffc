/**
 * Where each number stands on the line that an ink is measured into, so that thousands can be measured without making
 * objects. Constants of their own, and not the fields of one object: they are put into the code when it is built, and a
 * ranking looks at them millions of times.
 */

// What is asked of every pair comes first, within one line of a processor's cache.
export const atL = 0;
export const atA = 1;
export const atB = 2;
/** C*ab. */
export const atChroma = 3;
/** Munsell hue 0–100, or NaN. */
export const atHue = 4;
/** OKLCH hue in degrees, or NaN. */
export const atEye = 5;
/** The same on the painter's wheel. */
export const atPainter = 6;
/** Index into `neutralKinds`; 0 for a colour. */
export const atNeutral = 7;
/** Munsell value 0–10. */
export const atValue = 8;
/** How far its hue counts, 0–1. */
export const atCounts = 9;
/** C* ÷ √(C*² + L*²). */
export const atSaturation = 10;
/** Numbers that a colour alone takes. */
export const colourWidth = 11;

/** Share of the side. */
export const atShare = 11;
/** Numbers an ink. */
export const lineWidth = 12;
