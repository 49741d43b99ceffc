/**
 * How far what is said of a paper may go, for what is typed and for what is stored: both ask here. Ours: far above what
 * a paper craft uses, and low enough that a slip of the hand or a torn file is told from a paper.
 */
export const paperLimits = {
  /** Inks on one side. */
  inks: 64,
  /** Corrections by hand of one reading. */
  corrections: 500,
  /** Any length that is stored, in mm: 100 m. */
  lengthMm: 100_000,
  /** A side of a sheet that is typed, in mm. */
  sheetMm: { least: 5, most: 5_000 },
  /** A side of a piece that is typed, in mm. */
  pieceMm: { least: 1, most: 5_000 },
  /** The border of a mat that is typed, in mm. */
  borderMm: { least: 0.5, most: 60 },
  /** Grammage in g/m². */
  gsm: 10_000,
  /** Basis weight in pounds that is stored. */
  lb: 10_000,
  /** The same that is typed: bond, the heaviest to the pound, is 9,800 g/m² then. */
  lbTyped: 2_600,
  /** How many of a sheet there are. */
  count: 1_000_000,
  /** The same that is typed. */
  countTyped: 9_999,
  /** OKLCH of an ink: lightness from and to, and the most chroma. sRGB ends at 0, 1 and 0.33. */
  oklch: { darkest: -0.5, lightest: 1.5, chroma: 2 },
  /** The most OKLCH chroma of a colour that is typed. Pure light on a wide screen (Rec. 2020) reaches 0.47, paper less. */
  chromaTyped: 0.5,
} as const;
