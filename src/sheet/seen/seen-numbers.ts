/**
 * The numbers by which a side is seen at arm's length. The weights and spreads of the three channels are published.
 * Source: `s-cielab`, after A. B. Poirson, B. A. Wandell (1993): w · exp(−x²/σ²), σ in
 * degrees of visual angle; the third part of the lightness channel, wider than 4° and negative, is left out, as it only
 * shifts a whole sheet. The rest is ours.
 */
export const seenNumbers = {
  /** [weight, σ in degrees] of each channel. */
  lightness: [
    [0.921, 0.0283],
    [0.105, 0.133],
  ],
  redGreen: [
    [0.531, 0.0392],
    [0.33, 0.494],
  ],
  blueYellow: [
    [0.488, 0.0536],
    [0.371, 0.386],
  ],
  /** How far away a sheet in the hand or on a table is looked at, mm. */
  distanceMm: 450,
  /** Side of the squares that the sheet is looked at in, mm; at the distance above the eye resolves 0.13. */
  squareMm: 1.5,
  /** At most so many squares along the longer side: larger sheets are looked at from further away. */
  mostSquares: 203,
  /** Standard deviations of the blurs between which patterns lie, mm: the contrast of a pattern is what the first keeps and the last loses. */
  patternMm: [0, 1, 2, 4, 8],
  /** The same for what is larger than a pattern; beyond it lies what runs once over a sheet. */
  largeMm: 24,
  /** Shortest and longest way at which a print is asked whether it comes back on itself, mm. */
  repeatMm: [4, 60],
  /** Agreement with itself from which a print is at all regular, and at which it is so in full. */
  regularFrom: 0.35,
  regularFull: 0.85,
  /** Ways up to the first are a small, regular print's; from the second a print is loose however exactly it comes back. */
  shortFullMm: 32,
  shortNoneMm: 56,
} as const;
