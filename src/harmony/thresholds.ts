/**
 * Every number that judges two papers, with its unit and its standing: P published, T common practice of the
 * trade, O our choice. Those that judge a pair as a whole stand in whole/whole-thresholds.ts.
 */

/** Which link is it? First test that holds wins. */
export const linkLimits = {
  /** ΔE₀₀. O, after a printed solid that may lie 3.5 from its aim. Source: `iso-12647-2`, `mokrzycki-tatol`. */
  repeatApart: 5,
  /** ΔE₀₀. O: edges that meet show more than edges with a gap. Source: `no-separation`. */
  repeatTouching: 3,
  /** Munsell hue steps of 100. P: Moon & Spencer 1944, first ambiguity 1–7 steps; O: we start at 1.5. */
  nearMissFromSteps: 1.5,
  /** Munsell hue steps of 100. P: Moon & Spencer 1944, end of the first ambiguity. */
  nearMissToSteps: 7,
  /** ΔE₀₀ beyond which two colours are no near miss, however near their hues. O: in 348 combinations of a historic master such pairs are rarer than chance only while small (8: 0.14 of chance, 14: 0.39, over 18 as chance). */
  nearMissDeltaEMax: 16,
  /** Munsell value steps. O: from here on a pair of like hue reads as light and dark of one colour. */
  tonalValueSteps: 2,
  /** Munsell hue steps of 100. O: a little past Moon & Spencer's similarity (7–12). */
  neighbourToSteps: 17,
  /** Hue steps of 100 on either side of half the circle. O. */
  oppositeWithinSteps: 5,
  /** ΔE₀₀, upper end for two whites that nearly agree. O, after the reading-error scale. */
  whitesDeltaEMax: 10,
  /** ΔE₀₀, lower end for the same. O. */
  whitesDeltaEMin: 3,
  /** Difference in b* that makes two whites disagree. O. */
  whitesDeltaB: 4,
  /** L* above which a neutral counts as light. O. */
  lightNeutralL: 80,
} as const;

/** Inks that count as strong, and as quiet. */
export const inkLimits = {
  /** C*ab from which an ink wants a partner. O. */
  strayChroma: 25,
  /** Share from which it is one. O. */
  strayShare: 0.01,
  /** C*ab below which an ink of a side is quiet: no hue of it can clash. O. */
  quietChroma: 15,
  /** Share under which an ink is an accent. T. */
  accentShare: 0.05,
  /** C*ab above which no neutral lies near. Kraft ends at 40. O. */
  clearOfNeutralsChroma: 48,
  /** ΔE₀₀ within which a neutral is near: a third of the hue counts at each. O. */
  nearNeutralDeltaE: [1.5, 3, 4.5],
  /** C*ab at which colour starts to weigh at all, and at which it weighs in full. O. */
  tintFrom: 8,
  tintFull: 20,
  /** C*ab at which an ink is vivid in full. O. */
  vividFull: 70,
  /** How vivid an ink at strayChroma is, 0–1. O. */
  vividAtStray: 0.3,
  /** Shares between which a speck comes to be seen. O; an accent of 1 % counts (T). */
  speckFrom: 0.002,
  speckFull: 0.01,
  /** Share at which an ink is as large as it needs to be. O. */
  largeShare: 0.2,
} as const;

/** How far the weight of a trouble grows from the border of its kind to its full size. O: this keeps verdicts steady. */
export const ramps = {
  /** ΔE₀₀ up to which a repeat weighs in full, where papers lie apart; less in proportion where they touch. After ISO 12647-2. */
  repeatFullDeltaE: 2,
  /** ΔE₀₀ beyond the repeat limit. */
  nearMissDeltaE: 3,
  /** ΔE₀₀ inside the outer end of a near miss. */
  nearMissEnds: 4,
  /** Munsell hue steps inside either end of the near-miss band. */
  nearMissSteps: 0.5,
  /** Munsell value steps below the tonal limit. */
  nearMissValue: 0.2,
} as const;

/** Weights of ties, 0–1: what the smallest weighs, and what its size adds. O. */
export const tieWeights = {
  repeat: { least: 0.55, size: 0.35, atLimit: 0.6, greyish: 0.6 },
  neutral: { least: 0.12, size: 0.2 },
  tonal: { least: 0.4, size: 0.2 },
  neighbour: { least: 0.35, size: 0.15 },
  opposite: { least: 0.38, size: 0.17 },
} as const;

/** Weights of troubles, 0–1. O. */
export const troubleWeights = {
  nearMiss: { full: 0.85, leastSize: 0.7, chromaFull: 30, sizeFull: 0.1 },
  nearWhites: 0.25,
  /** From this weight on a finding is worth a sentence. */
  worthSaying: 0.05,
} as const;

/** From which weight a link ties, and a trouble stands, for what is offered and sought. O. */
export const answerLimits = {
  /** Weight from which an unanswered trouble asks for a bridge. */
  trouble: 0.4,
  /** Weight of a tie of colour that holds two papers. */
  tie: 0.3,
} as const;

/** The rest of the page: print, light and dark, warm and cool, weight of the paper. */
export const pageLimits = {
  /** Share-weighted warmth (Ou et al. 2004, neutral = −0.5) away from neutral that counts as leaning. O. */
  leaning: 0.15,
  /** L*: a gap that a photograph can sit in. O. */
  photoGap: 15,
  /** L*: the least range that keeps a page from looking flat. O. */
  flatRange: 40,
  /** Area rule of thumb, 60–30–10. T. */
  dominant: 0.6,
  /** How far the largest colour may lie from it before it is said. O. */
  dominantSlack: 0.15,
  /** Share of both sheets by which the largest colour must be ahead of the next to lead. O. */
  dominantAhead: 0.05,
  /** g/m² below which a sheet buckles under glue: mount it. T: older patterned papers of 100–150 g/m². */
  thinGsm: 150,
  /** ΔE₀₀ that two inks must have for all, and may not exceed for other eyes, to be told. O. */
  otherEyesFrom: 20,
  otherEyesTo: 8,
  /** Share both inks need for that. O. */
  otherEyesShare: 0.04,
  /** Ou–Luo score that is called high or low. O; the model spans about −1.3 to 1.6 over sRGB. */
  ouLuoHigh: 0.4,
  ouLuoLow: -0.4,
  /** Most ties of one kind that get a sentence each. O. */
  tiesTold: 4,
} as const;

/** Weights of what is worth knowing and does not decide, −1…1. T, numbers O. */
export const adviceWeights = {
  flat: -0.2,
  range: 0.1,
  dominance: 0.05,
} as const;

/** Effort, roughly in cuts; a remedy of less effort stands first, but to swap the sheet comes last. T, numbers O. */
export const remedyEffort = {
  turn: 0.2,
  swap: 0.5,
  strip: 1,
  carryOwned: 1.8,
  carry: 2,
  trim: 2.5,
  punch: 3,
  pieces: 5,
  mat: 4,
  /** The anchor is the old sheet: what cuts into it costs more. */
  anchorExtra: 1.5,
  /** Share of a side up to which an ink can be cut away, where it is not known where it lies. O. */
  trimUpToShare: 0.05,
  /** Side of the largest square without the ink that is enough to use, as a part of the sheet's longer side: 76 mm of 305. O. */
  trimFreePart: 0.25,
  /** Sides of other sheets that are tried in full in a candidate's place; of more, the first of a ranking. O. */
  swapsTried: 12,
  /** Sides that are ranked for it; of more, those that promise most at a quick look. O: a third of a millisecond each. */
  swapsRanked: 300,
  /** What a finding must count against a pair, 0–1, for its families to be cut away or covered. O. */
  troubledFrom: 0.25,
  /** What a finding must count less, 0–1, for a remedy to be said to lift it. O. */
  liftsFrom: 0.1,
  /** Remedies shown at most, and found at least where a pair does not hold. */
  most: 6,
  least: 2,
} as const;

/** Share of a sheet that two small pieces add to it. O. */
export const carriedShare = 0.03;
/** Share of a sheet that a mat 3–5 mm wide shows around it: 4 × 300 × 4 ÷ 300². O. */
export const matShare = 0.05;
/** Neutrals that any shop has, for a strip where none is owned. O. */
export const neutralHexes = { kraft: '#c9a878', grey: '#9a9a98' } as const;

/** Colours that are tried for a thing that takes any colour: OKLCH lightness and chroma, and degrees of hue. O. */
export const colourItGrid = {
  lightness: [0.32, 0.42, 0.52, 0.62, 0.72, 0.82],
  chroma: [0.06, 0.1, 0.14, 0.18],
  hueStepDeg: 6,
  /** ΔE₀₀ up to which an owned colour comes near one: twice a repeat; beyond it the eye sees another colour. O. */
  nearDeltaE: 10,
} as const;

/** A kit. Every two of its papers are held together, so the work grows with the square of their number. Ours. */
export const kitLimits = {
  /** Papers and plains that are judged at most: far more than a page holds. */
  papers: 40,
  /** Pieces and mats that a cut list is worked out for. O: of more, a page would stand still. */
  piecesToCut: 120,
} as const;
