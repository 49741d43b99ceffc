import { ciede2000At } from './ciede2000.ts';
import type { Lab, OkLab } from './model.ts';

/**
 * CIEDE2000 colour difference ΔE₀₀ of two CIELAB colours, kL = kC = kH = 1.
 * Meant for small differences: where the hue difference crosses 180° it jumps, so rank nothing by it above 20.
 * Source: G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30(1):21–30 (2005), doi 10.1002/col.20070.
 */
export function deltaE2000(labA: Lab, labB: Lab): number {
  return ofTwo(labA, labB, false);
}

/** CIE 1976 difference ΔE*ab: the straight line in CIELAB. Source: CIE 015:2018. */
export function deltaE76(labA: Lab, labB: Lab): number {
  return Math.hypot(labA.l - labB.l, labA.a - labB.a, labA.b - labB.b);
}

/**
 * ΔE OK: the straight line in OKLab, with a and b multiplied by `abWeight` (default 1; 2 gives hue and chroma their
 * due beside lightness). Smooth at any distance.
 * Source: W3C, CSS Color 4 (deltaEOK); the weight of 2 for nearest partners is ours.
 */
export function deltaEOk(okA: OkLab, okB: OkLab, abWeight = 1): number {
  return Math.hypot(okA.l - okB.l, abWeight * (okA.a - okB.a), abWeight * (okA.b - okB.b));
}

/**
 * Difference of two sheets whose edges touch: lightness counts for more the smaller the whole difference is.
 * ΔE_NS = √((ΔL′/D_L)² + ΔC′² + ΔH′² + R_T ΔC′ ΔH′), D_L = 0.08 ΔE₀₀ + 0.27.
 * Source: F. Mirjalili, M. R. Luo, G. Cui, J. Morovic, JOSA A 36(5):789–799 (2019).
 */
export function deltaENoSeparation(labA: Lab, labB: Lab): number {
  return ofTwo(labA, labB, true);
}

/**
 * Difference as two sheets with a gap between them show it: about a tenth less than ΔE₀₀. Lightness then counts less as
 * well; how much depends on the gap, no one number is published for it, and so it is left out.
 * Source: Guan & Luo; Xin et al., both as reviewed by Mirjalili et al., JOSA A 36(5):789 (2019).
 */
export function deltaEApart(labA: Lab, labB: Lab): number {
  return apartFactor * deltaE2000(labA, labB);
}

/** Share of ΔE₀₀ that remains across a gap. Source: the review in Mirjalili et al. 2019 ("about a tenth smaller"). */
export const apartFactor = 0.9;

// Kept so that a call makes no arrays; nothing is read from it that the same call did not write.
const first = /* @__PURE__ */ new Float64Array(3);
const second = /* @__PURE__ */ new Float64Array(3);

function ofTwo(labA: Lab, labB: Lab, touching: boolean): number {
  first[0] = labA.l;
  first[1] = labA.a;
  first[2] = labA.b;
  second[0] = labB.l;
  second[1] = labB.a;
  second[2] = labB.b;
  return ciede2000At(first, 0, second, 0, touching);
}
