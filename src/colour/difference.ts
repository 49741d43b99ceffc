import type { Lab, OkLab } from './model.ts';

/**
 * CIEDE2000 colour difference ΔE₀₀ of two CIELAB colours, kL = kC = kH = 1.
 * Meant for small differences: where the hue difference crosses 180° it jumps, so rank nothing by it above 20.
 * Source: G. Sharma, W. Wu, E. N. Dalal, Color Res. Appl. 30(1):21–30 (2005), doi 10.1002/col.20070.
 */
export function deltaE2000(labA: Lab, labB: Lab): number {
  return total(terms(labA, labB), 1);
}

/** CIE 1976 difference ΔE*ab: the straight line in CIELAB. Source: CIE 015:2018. */
export function deltaE76(labA: Lab, labB: Lab): number {
  return Math.hypot(labA.l - labB.l, labA.a - labB.a, labA.b - labB.b);
}

/**
 * ΔE OK: the straight line in OKLab, with a and b multiplied by `abWeight` (default 1; 2 evens out chroma and
 * lightness for distant colours). Defined and smooth at any distance.
 * Source: CSS Color 4, 13.2.2 (deltaEOK); the weight 2 is that of deltaEOK2 in B. Ottosson's note to it.
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
  const t = terms(labA, labB);
  return total(t, noSeparationSlope * total(t, 1) + noSeparationOffset);
}

/**
 * Difference as two sheets with a gap between them show it: about a tenth less than ΔE₀₀.
 * Source: S.-S. Guan, M. R. Luo and J. H. Xin et al., as reviewed by Mirjalili et al., JOSA A 36(5):789 (2019).
 */
export function deltaEApart(labA: Lab, labB: Lab): number {
  return apartFactor * deltaE2000(labA, labB);
}

/** Coefficients of D_L, no unit. Source: Mirjalili et al. 2019. */
export const noSeparationSlope = 0.08;
export const noSeparationOffset = 0.27;
/** Share of ΔE₀₀ that remains across a gap. Source: Guan & Luo; Xin et al., reviewed in Mirjalili et al. 2019. */
export const apartFactor = 0.9;

/** CIEDE2000's weighted terms: ΔL′/S_L, ΔC′/S_C, ΔH′/S_H and R_T. */
interface Terms {
  readonly dL: number;
  readonly dC: number;
  readonly dH: number;
  readonly rT: number;
}

const twentyFiveTo7 = 25 ** 7;
const deg = Math.PI / 180;

function total({ dL, dC, dH, rT }: Terms, lightnessDivisor: number): number {
  const l = dL / lightnessDivisor;
  return Math.sqrt(Math.max(0, l * l + dC * dC + dH * dH + rT * dC * dH));
}

function terms(x: Lab, y: Lab): Terms {
  const meanC = (Math.hypot(x.a, x.b) + Math.hypot(y.a, y.b)) / 2;
  const g = 1.5 - 0.5 * Math.sqrt(meanC ** 7 / (meanC ** 7 + twentyFiveTo7));
  const a1 = x.a * g;
  const a2 = y.a * g;
  const c1 = Math.hypot(a1, x.b);
  const c2 = Math.hypot(a2, y.b);
  const h1 = primedHue(a1, x.b);
  const h2 = primedHue(a2, y.b);
  const colourless = c1 * c2 === 0;

  let turn = colourless ? 0 : h2 - h1;
  if (turn > 180) turn -= 360;
  else if (turn < -180) turn += 360;

  let meanH = h1 + h2;
  if (!colourless) {
    if (Math.abs(h1 - h2) > 180) meanH += meanH < 360 ? 360 : -360;
    meanH /= 2;
  }

  const meanL = (x.l + y.l) / 2 - 50;
  const meanC2 = (c1 + c2) / 2;
  const t =
    1 -
    0.17 * Math.cos((meanH - 30) * deg) +
    0.24 * Math.cos(2 * meanH * deg) +
    0.32 * Math.cos((3 * meanH + 6) * deg) -
    0.2 * Math.cos((4 * meanH - 63) * deg);
  const sL = 1 + (0.015 * meanL * meanL) / Math.sqrt(20 + meanL * meanL);
  const sC = 1 + 0.045 * meanC2;
  const sH = 1 + 0.015 * meanC2 * t;
  const turned = (meanH - 275) / 25;
  const rC = 2 * Math.sqrt(meanC2 ** 7 / (meanC2 ** 7 + twentyFiveTo7));
  return {
    dL: (y.l - x.l) / sL,
    dC: (c2 - c1) / sC,
    dH: (2 * Math.sqrt(c1 * c2) * Math.sin((turn / 2) * deg)) / sH,
    rT: -Math.sin(60 * Math.exp(-turned * turned) * deg) * rC,
  };
}

function primedHue(a: number, b: number): number {
  if (a === 0 && b === 0) return 0;
  const h = Math.atan2(b, a) / deg;
  return h < 0 ? h + 360 : h;
}
