/**
 * How far what is said of a paper may go, for what is typed and for what is stored: both ask here. Ours: far above what
 * a paper craft uses, and low enough that a slip of the hand or a torn file is told from a paper.
 */
export const paperLimits = {
  /** Inks on one side. */
  inks: 64,
  /** Corrections by hand of one reading. */
  corrections: 500,
  /** Any length, in mm: 100 m. */
  lengthMm: 100_000,
  /** Grammage in g/m². */
  gsm: 10_000,
  /** Basis weight in pounds. */
  lb: 10_000,
  /** How many of a sheet there are. */
  count: 1_000_000,
  /** OKLCH of an ink: lightness from and to, and the most chroma. sRGB ends at 0, 1 and 0.33. */
  oklch: { darkest: -0.5, lightest: 1.5, chroma: 2 },
} as const;
