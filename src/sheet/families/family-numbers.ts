/**
 * The numbers by which inks are gathered into families. All are ours, set by looking at the judged papers, at what a person
 * names there, and at how steady the families are under small changes of a picture.
 */
export const familyNumbers = {
  /** OKLCH chroma at which a colour is half way from neutral to having a hue in full: see `placeOf`. */
  hueFromChroma: 0.06,
  /** OKLab lightness below which no hue is seen, and from which it is seen in full. */
  hueFromLightness: [0.05, 0.3],
  /** What a difference of 1 in OKLab lightness counts between two full colours, and what it counts more between neutrals. */
  lightnessOfColours: 0.6,
  lightnessOfNeutrals: 0.8,
  /** What a difference of 1 in OKLCH chroma counts: gold is not kraft. */
  chroma: 3,
  /** Inks nearer than this are one family; 0.4 is 23° of hue between full colours. No unit. */
  apart: 0.38,
  /** An ink joins the base's family only when it lies this near. */
  apartFromBase: 0.3,
  /** Inks that shade into each other count as nearer by this. */
  wash: 0.7,
  /** At most so many families; a photograph or a wash, whose inks are more than `manyInks`, may have one more. */
  most: 7,
  mostOfMany: 8,
  manyInks: 14,
  /** Contrast (lightness, half the colour, and larger bodies) under which a side is one texture and so one family. */
  plainContrast: 3.4,
  /** No two inks of a texture lie further apart than this in the plane of a* and b*, nor in L*. */
  textureReach: [20, 34],
} as const;
