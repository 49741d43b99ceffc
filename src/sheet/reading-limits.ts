/**
 * The numbers that judge while a side is read, in one place. Distances are in OKLab with a and b doubled
 * (0.01 ≈ one step of lightness in a hundred). All are our choice, set on drawn sheets with known inks
 * (tests/support/sheets) and reported by the bench on fresh ones. Source: `reading`.
 */
export const numbers = {
  /** Side of a histogram cell. */
  cell: 0.01,
  /** A window votes while its spread is under this many times the picture's own noise … */
  flatTimesNoise: 2.2,
  /** … and never held tighter than this, nor looser than that. */
  flatFloor: 0.006,
  flatCeiling: 0.06,
  /** The part of the windows, by lightness, that is taken for flat when the noise is measured. */
  noisePercentile: 0.2,
  /** Above this many pixels only every other window across and down votes. */
  everyOther: 400000,
  /** A hill is its own mode where the pass to a higher one lies under this share of its top. */
  passUnderTop: 0.55,
  /** A mode counts from this share of the flat votes. */
  leastVotes: 0.0008,
  /** Two inks nearer than this are one. */
  sameInk: 0.035,
  /** How far off the line between two inks a mixture may lie. */
  mixtureOffLine: 0.035,
  /** A colour with less of its area inside (all neighbours alike) than this may be the rim between two others … */
  rimInside: 0.35,
  /** With less than this inside, it need only look like their edge as a JPEG blurs it, this near, … */
  hardlyInside: 0.12,
  edgeOff: 0.06,
  /** With next to nothing inside, this near. */
  noInside: 0.03,
  edgeOffNoInside: 0.1,
  /** … and is, where both lie near at this part of its places. */
  betweenBoth: 0.5,
  /** A pixel is explained by an ink or a mixture this near, … */
  explainedNear: 0.06,
  /** … or within this many times the picture's noise. */
  explainedTimesNoise: 3.5,
  /** Colours that only hearts of unexplained places show count from this share of the sheet's pixels. */
  leastHearts: 0.0003,
  /** Printed dots are averaged by a kernel of this many screen periods (standard deviation). */
  screenSigma: 0.385,
  /** … and this many pixels beside, in quadrature: what a pixel's square makes of fine dots is coarser than they are. */
  screenAlias: 0.5,
  /** Rosettes, up to four screen periods coarse, are averaged by this much more (variance, in squared periods), … */
  rosetteVariance: 0.9,
  /** … where that moves a colour by no more than this, … */
  rosette: 0.15,
  /** … and by less from this lightness up, down to this part of it: light tints have faint ones (measured on drawn halftones). */
  rosetteFadesFrom: 0.6,
  rosetteLeast: 0.2,
  /** Light that differs by less than this over the sheet (natural logarithm of OKLab lightness) is even. */
  leastUnevenness: 0.012,
  /** It must also be this many times what a paper's grain leaves over from place to place. */
  unevennessOverGrain: 1.5,
  /** Where colour drifts by more than this part of the light's range, the print shades, not the light. */
  mostDrift: 0.4,
  /** Edges softer than this (standard deviation of colour, in pixels) pale thin lines and small dots … */
  softFrom: 0.42,
  /** … (told by strokes alone: softer in lightness than this, as a lens makes them, for noise and a JPEG seem to soften them a little) … */
  strokesSoft: 0.5,
  /** … of inks that have less than this part of their area inside, where it is known how soft the edges are, … */
  solidInside: 0.75,
  /** … or where lightness, too, is softer than this: a JPEG blurs colour alone, the lens both; … */
  plainlySoft: 0.8,
  /** … where less than that was measured, of those with less than the first of these, and wholly from the second down: an ink with more of an inside shows its colour there. */
  solidInsideMeasured: [0.45, 0.2],
  /** An ink without blur must still explain this part of what it explained with it. */
  lostShare: 0.3,
  /** Two inks shade into each other where, across their border, the colour changes by less than this part of what they differ by … */
  rampChange: 0.5,
  /** … without a single step across it of more than this part, which is a hard line's, … */
  rampStep: 0.25,
  /** … unless what is flat, so many times over, steps as far … */
  rampStepTimesFlat: 3,
  /** … at this part of the border, … */
  rampSoft: 0.6,
  /** … which is this long at least, as a part of the sheet's side. */
  rampBorder: 0.08,
  /**
   * A wash pales along a line, from which its colours stray by less than this part of its length: 0.11 in drawn washes,
   * 0.2 and more where the blurred background of a photograph runs from one colour into others.
   */
  rampAside: 0.15,
  /** The part of a wash that says what its ends are. */
  rampEnd: 0.05,
  /** A wash whose ends are nearer than this is one ink. */
  rampLeast: 0.1,
  /** Least share of an ink. */
  leastShare: 0.003,
  /** … and of one that has hardly an inside: less of it are flecks of the paper. */
  leastThinShare: 0.006,
  /** An ink under this share is an accent … */
  accentShare: 0.05,
  /** … where it stands off the base by at least this. */
  accentDistance: 0.12,
  /** Light inside a card's frame (from its darkest tenth to its brightest) that differs by more than this part is not all of a card. */
  cardUneven: 0.4,
  /** What is this many times as bright as white under the corrected light, … */
  beyondWhite: 1.45,
  /** … over more than this part of the picture, tells that no card was marked. */
  beyondWhiteShare: 0.04,
} as const;
