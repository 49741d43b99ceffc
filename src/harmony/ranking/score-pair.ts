import { ciede2000At } from '../../colour/ciede2000.ts';
import {
  atA,
  atB,
  atChroma,
  atCounts,
  atEye,
  atHue,
  atL,
  atNeutral,
  atPainter,
  atShare,
  atValue,
  lineWidth,
} from '../measure/fade.ts';
import {
  farDeltaE,
  kindOf,
  type Meeting,
  missSizeOf,
  seenOf,
  sizeOf,
  strongOf,
  tintOf,
} from '../measure/link-kind.ts';
import { degreesPerStep } from '../measure/links.ts';
import type { LinkKind } from '../model.ts';
import { inkLimits, linkLimits, ramps } from '../thresholds.ts';
import type { Lines } from './score-lines.ts';

/** Two inks on lines of numbers: the same meeting as `links.ts` makes, asked for no more than can matter. */

/** The link of two inks; their ΔE₀₀ is left in the meeting, Infinity where it is too large to matter. */
export function relate(
  m: Meeting,
  limit: number,
  a: Float64Array,
  i: number,
  b: Float64Array,
  j: number,
): LinkKind {
  m.chromatic = a[i + atNeutral] === 0 && b[j + atNeutral] === 0;
  if (m.chromatic) {
    m.hueSteps = stepsApart(a[i + atHue]!, b[j + atHue]!);
    // Two hues this far apart are no repeat, unless both are nearly grey.
    const distinct =
      m.hueSteps > linkLimits.neighbourToSteps && a[i + atChroma]! >= tinted && b[j + atChroma]! >= tinted;
    m.deltaE00 = distinct ? Number.POSITIVE_INFINITY : differenceWithin(a, i, b, j, colourReach);
    m.whites = false;
    if (m.hueSteps <= linkLimits.nearMissToSteps) m.valueSteps = Math.abs(b[j + atValue]! - a[i + atValue]!);
    else if (m.hueSteps > linkLimits.neighbourToSteps) m.offSteps = offStepsOf(a, i, b, j);
    return kindOf(m, limit);
  }
  const both = a[i + atNeutral] !== 0 && b[j + atNeutral] !== 0;
  m.deltaE00 = differenceWithin(a, i, b, j, both ? farDeltaE : linkLimits.repeatApart);
  if (m.deltaE00 === Number.POSITIVE_INFINITY) return 'unrelated';
  m.whites =
    lightNeutral(a, i) && lightNeutral(b, j) && Math.abs(b[j + atB]! - a[i + atB]!) > linkLimits.whitesDeltaB;
  return kindOf(m, limit);
}

export function emptyMeeting(): Meeting {
  return {
    deltaE00: 0.5,
    hueSteps: 0.5,
    valueSteps: 0.5,
    offSteps: 0.5,
    chromatic: false,
    whites: false,
    size: 0.5,
    missSize: 0.5,
    seen: 0.5,
    tint: 0.5,
    strong: 0.5,
  };
}

export function hues(m: Meeting, a: Float64Array, i: number, b: Float64Array, j: number): void {
  m.hueSteps = stepsApart(a[i + atHue]!, b[j + atHue]!);
  m.valueSteps = Math.abs(b[j + atValue]! - a[i + atValue]!);
  m.offSteps = offStepsOf(a, i, b, j);
}

export function stepsApart(one: number, other: number): number {
  const apart = Math.abs(one - other);
  return Math.min(apart, 100 - apart);
}

function offStepsOf(a: Float64Array, i: number, b: Float64Array, j: number): number {
  const eye = offDeg(a[i + atEye]!, b[j + atEye]!);
  const painter = offDeg(a[i + atPainter]!, b[j + atPainter]!);
  return Math.min(eye, painter) / degreesPerStep;
}

/** The numbers that give it weight. */
export function weights(m: Meeting, a: Float64Array, i: number, b: Float64Array, j: number): void {
  // All of them grow with share or chroma: what the smaller gives is the smaller of both.
  const share = Math.min(a[i + atShare]!, b[j + atShare]!);
  const chroma = Math.min(a[i + atChroma]!, b[j + atChroma]!);
  const counts = Math.min(a[i + atCounts]!, b[j + atCounts]!);
  m.size = sizeOf(share);
  m.missSize = missSizeOf(share);
  m.seen = seenOf(share);
  m.tint = tintOf(chroma) * counts;
  m.strong = strongOf(chroma) * counts;
}

export function offDeg(one: number, other: number): number {
  const apart = Math.abs(one - other);
  return 180 - Math.min(apart, 360 - apart);
}

/** C*ab from which a hue is a hue: two that lie over 17 steps apart then differ by far more than `colourReach`. */
const tinted = 14;
/** ΔE₀₀ up to which anything asks how far two colours lie apart: the end of the widest ramp, and a little. */
export const colourReach = linkLimits.repeatApart + ramps.nearMissDeltaE + 0.1;

/** ΔE₀₀, or Infinity where a bound says that it is above `reach`. */
function differenceWithin(a: Float64Array, i: number, b: Float64Array, j: number, reach: number): number {
  return surelyBeyond(a, i, b, j, reach) ? Number.POSITIVE_INFINITY : ciede2000At(a, i, b, j, false);
}

/**
 * Whether ΔE₀₀ is surely above `reach`: S_L is at most 1 + 0.015 |L̄ − 50|; S_H is below S_C, which is 1 + 0.045 C̄′ with
 * C̄′ at most 1.5 C̄ and less than C̄ + 6; and the turn of the blues takes at most 0.866 √(C̄′⁷ / (C̄′⁷ + 25⁷)) of the sum of their squares.
 */
export function surelyBeyond(a: Float64Array, i: number, b: Float64Array, j: number, reach: number): boolean {
  const dL = a[i]! - b[j]!;
  const da = a[i + atA]! - b[j + atA]!;
  const db = a[i + atB]! - b[j + atB]!;
  const light = 1 + 0.0075 * Math.abs(a[i]! + b[j]! - 100);
  const sum = a[i + atChroma]! + b[j + atChroma]!;
  const tint = 1 + 0.0225 * Math.min(1.5 * sum, sum + 12);
  const lights = light * light;
  const tints = tint * tint * (a[i + atB]! + b[j + atB]! < 0 ? turns[Math.min(127, sum | 0)]! : 1.1);
  return dL * dL * tints + (da * da + db * db) * lights > reach * reach * lights * tints;
}

/**
 * By how much the turn of the blues can lessen what chroma and hue make, for each sum of two chromas: hardly where they
 * are pale.
 */
const turns = /* @__PURE__ */ Float64Array.from({ length: 128 }, (_, sum) => {
  const c7 = Math.min(0.75 * (sum + 1), (sum + 1) / 2 + 6) ** 7;
  return 1.01 / (1 - 0.866 * Math.sqrt(c7 / (c7 + 25 ** 7)));
});

export function lightNeutral(lines: Float64Array, o: number): boolean {
  return lines[o + atNeutral] !== 0 && lines[o + atL]! >= linkLimits.lightNeutralL;
}

export function hasComplement(lines: Lines, o: number): boolean {
  const { data, start, count } = lines;
  for (let k = 0, p = start; k < count; k++, p += lineWidth) {
    if (data[p + atNeutral] !== 0 || data[p + atShare]! < data[o + atShare]!) continue;
    if (data[p + atChroma]! < inkLimits.quietChroma) continue;
    const off = Math.min(
      offDeg(data[o + atEye]!, data[p + atEye]!),
      offDeg(data[o + atPainter]!, data[p + atPainter]!),
    );
    if (off <= linkLimits.oppositeWithinSteps * degreesPerStep) return true;
  }
  return false;
}
