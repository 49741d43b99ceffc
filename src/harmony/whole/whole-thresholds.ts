import type { FindingName } from './model.ts';

/**
 * Every number that judges two papers as a whole, with its unit and its standing: P published, T common practice of the
 * trade, O our choice. What says "tuned" was tuned by us on judged papers, leaving pictures out. Nothing else in this
 * folder holds such a number.
 */

/** How a side is seen as a whole. */
export const portraitLimits = {
  /** What a step of colour, and of larger bodies, counts beside a step of lightness in the contrast. O. */
  colourCounts: 0.7,
  largeCounts: 1.5,
  /** Contrast (steps of L*) up to which a side rests in full, and from which not at all. O: linen 2, driftwood 6.5, an open line print 11. */
  restFull: 4,
  restNone: 10,
  /** Contrast under which a print is soft. O. */
  softContrast: 12,
  /** Share of the ground from which a regular print starts to be sparse, and is so in full. O. */
  sparseFrom: 0.55,
  sparseFull: 0.85,
  /** Contrast from which a regular print starts to be hard, and is so in full. O. */
  hardFrom: 8,
  hardFull: 16,
  /** C*ab from which a family starts to have a hue, and has it in full. O. */
  tintFrom: 6,
  tintFull: 14,
  /** What a white, grey, black or cream counts in the greyness of a side. O. */
  neutralCounts: 0.25,
  /** Shares between which a family comes to count as a colour of its side. O. */
  colourFrom: 0.002,
  colourFull: 0.02,
  /** C*ab between which a family comes to count as a hue. O. */
  hueFrom: 10,
  hueFull: 22,
  /** Busyness from which contrast is all pattern, for sides whose pixels were not looked at. O. */
  patternBusyness: 0.2,
} as const;

/** From which number each measure begins, and where it is full (or the other way round, where it ends). All O. */
export const measureLimits = {
  /** Colours of the simpler side up to which it is simple in full, and from which not at all. */
  few: [1, 5],
  /** Hues of both sides together. */
  hues: [1, 9],
  /** Contrast of colour of the stronger side, root mean square in a*, b*: linen 1, a bold pair of brights 30. */
  contrastOfColour: [3, 30],
  /** ΔE₀₀ of two grounds up to which they are one, and from which they are two. */
  groundDeltaE: [3, 9],
  /** C*ab of the strong side from which it is strong, and up to which the other is soft. */
  strongChroma: [40, 75],
  softChroma: [25, 45],
  /** How much of the less coloured side must have a hue (by the root of its share). */
  coloured: [0.05, 0.4],
  /** Mean ΔE₀₀ to the nearest ink of the other side up to which two sheets are one paper, and from which they are two. */
  otherPaper: [1, 4],
  /** Mean ΔE₀₀ to the nearest ink of the other side; no ink counts as further than `farDeltaE`. */
  sharedDeltaE: [10, 28],
  farDeltaE: 40,
  /** Shares and C*ab from which two families lead. */
  leadShare: [0.01, 0.15],
  leadChroma: [8, 20],
  /** A near miss: degrees of hue from which and up to which, steps of L* up to which, ΔE₀₀ from which. After Moon & Spencer 1944 (up to 25°). */
  missHueFrom: [6, 12],
  missHueTo: [30, 45],
  missLightness: [12, 28],
  missDeltaE: [5, 8],
  /** ΔE₀₀ over which it ends: in 348 combinations of a historic master such pairs are rarer than chance only while small. */
  missEnds: [12, 16],
  /** Share and ΔE₀₀ by which a sheet holds a colour as a step of its own. */
  stepShare: [0.005, 0.03],
  stepDeltaE: [4, 8],
  /** One hue of which one is greyed: degrees up to which, difference of greyness (HWB, 0–0.5), C*ab of the cleaner, ΔE₀₀. */
  dullHue: [25, 45],
  dullGrey: [0.05, 0.2],
  dullChroma: [35, 60],
  dullDeltaE: [6, 10],
  /** Hues that have nothing to do with each other: shares, C*ab, degrees. */
  farShare: [0.02, 0.2],
  farChroma: [12, 30],
  farHue: [40, 90],
  /** Strong opposites: C*ab, degrees. */
  oppositeChroma: [25, 45],
  oppositeHue: [100, 140],
  /** A colour that comes back: shares, C*ab, ΔE₀₀. */
  backShare: [0.005, 0.1],
  backChroma: [6, 16],
  backDeltaE: [3, 10],
} as const;

/**
 * What a measure counts in the balance when it holds in full: one, for or against. Weights that were fitted to the judged papers told
 * papers that they had not seen no better than these, so none is fitted. O.
 */
export const countWeights = {
  'one rests': 1,
  'few colours': 1,
  'soft beside loose': 1,
  'grounds agree': 1,
  'comes back': 1,
  'many hues': -1,
  'strong contrast of colour': -1,
  'strong beside soft': -1,
  'nothing shared': -1,
  'near miss': -1,
  'one is greyed': -1,
  'hues far apart': -1,
  'hard beside hard': -1,
} as const;

/**
 * What is left of a finding where the edges of two papers do not meet, and what a plain strip between them adds. That a strip
 * parts two busy prints is common practice (T); the numbers are ours (O).
 */
export const betweenLimits = {
  apart: { 'near miss': 0.85, 'hard beside hard': 0.85 },
  behindStrip: {
    'near miss': 0.45,
    'hard beside hard': 0.3,
    'many hues': 0.5,
    'strong contrast of colour': 0.5,
    'hues far apart': 0.6,
    'one is greyed': 0.6,
    'strong beside soft': 0.8,
  },
  /** How far the strip itself rests the eye. */
  stripRests: 0.4,
} as const;

/** The two limits of the balance, in findings. Tuned by us on judged papers, leaving pictures out. */
export const verdictLimits = {
  /** The pair holds together from here on: findings against may outweigh those for by no more than this. */
  holdsFrom: -0.3,
  /** Down to here it needs a bridge; below, it pulls apart. */
  bridgeFrom: -1.9,
  /** A balance this close to a limit can be argued. */
  close: 0.3,
} as const;

/** What each finding counts among the ties of a ranking. O. */
export const standingWeights: Readonly<Partial<Record<FindingName, number>>> = {
  'comes back': 1,
  'tone on tone': 0.5,
  'grounds agree': 0.5,
};

/** From which number each finding that is only told begins, and where it is full. All O. */
export const toldLimits = {
  /** Shares, degrees of hue up to which, steps of L* from which, difference of greyness up to which it is one colour in two depths. */
  toneShare: [0.01, 0.15],
  toneHue: [15, 30],
  toneLightness: [8, 18],
  toneGrey: [0.05, 0.15],
  /** Difference of mean L*. */
  step: [15, 40],
  /** ΔE₀₀ of two papers at rest. */
  noStep: [8, 20],
  /** Warmth of the less warm or less cool of the two, on Ou's scale with neutrals at 0. */
  warmth: [0.1, 0.4],
  /** L* and share of light grounds; how far apart they lie in a*, b*. */
  lightGround: [72, 84],
  groundShare: [0.2, 0.4],
  groundApart: [4, 15],
} as const;

/**
 * How often a viewer named the kind of a finding where it holds, about: what it is told by beside how far it holds.
 * Measured on what viewers said of the judged papers. O.
 */
export const tellingWeights = {
  'one rests': 1,
  'few colours': 0.9,
  'soft beside loose': 0.95,
  'grounds agree': 0.95,
  'comes back': 0.95,
  'many hues': 0.6,
  'strong contrast of colour': 0.6,
  'strong beside soft': 1,
  'nothing shared': 0.65,
  'near miss': 0.65,
  'one is greyed': 0.9,
  'hues far apart': 0.65,
  'hard beside hard': 0.95,
  'tone on tone': 0.4,
  'light-dark step': 0.7,
  'no step': 0.9,
  'warm beside cool': 0.5,
  'grounds differ': 0.93,
  'same motif': 0.5,
  'drawn differently': 0.5,
} as const;

/** How findings are told. O. */
export const telling = {
  /** One that holds less than this is not told. */
  least: 0.15,
  /** How much it matters how far a finding holds: the power that its size is raised to. */
  bySize: 0.3,
  /** What one that speaks against the verdict is told by, beside one that carries it. */
  contrary: 0.75,
  /** What a second or third one must be told by to stand before "more". */
  clear: 0.75,
} as const;
