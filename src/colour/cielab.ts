import { steadyRoot } from './steady.ts';

/** Where CIELAB's root goes over into a line, and that line's slope. Source: CIE 015:2018, §8.2.1.1, in the exact fractions of CSS Color 4. */
export const labEpsilon = 216 / 24389;
export const labKappa = 24389 / 27;

/** CIELAB's response to a share of the white, t ≥ 0: L* is 116 times it, less 16. Source: as above. */
export function labResponse(t: number): number {
  return t > labEpsilon ? steadyRoot(t) : (labKappa * t + 16) / 116;
}

/** The share of the white that has this response. */
export function shareOfResponse(response: number): number {
  const cube = response * response * response;
  return cube > labEpsilon ? cube : (116 * response - 16) / labKappa;
}
