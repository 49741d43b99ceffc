/** A stretch of hue, degrees, and what its colours are called: bands of lightness from dark to light. */
export type Column = readonly [from: number, to: number, bands: readonly Band[]];

/**
 * The OKLCH lightness that the band ends before, then words from grey outwards, each after the chroma it starts at and
 * up to the next: `[0.64, 0.045, 'dusty rose', 0.13, 'crimson']`.
 */
export type Band = readonly [upTo: number, ...(readonly (number | string)[])];
