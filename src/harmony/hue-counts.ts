import type { Lab } from '../colour/model.ts';
import { neutralKind } from '../colour/neutral.ts';
import { inkLimits } from './thresholds.ts';

/**
 * How far a colour's hue counts, 0–1: 0 for a neutral (cream and kraft too), 1 where it lies clear of every
 * neutral's region, and in steps between, so that no ink turns from neutral to strong at a stroke.
 */
export function hueCounts(lab: Lab): number {
  if (neutralKind(lab) !== null) return 0;
  const chroma = Math.hypot(lab.a, lab.b);
  if (chroma > inkLimits.clearOfNeutralsChroma) return 1;
  const near = inkLimits.nearNeutralDeltaE.findIndex((reach) => touchesNeutral(lab, chroma, reach));
  return near < 0 ? 1 : near / inkLimits.nearNeutralDeltaE.length;
}

/** Whether a step of about `reach` ΔE₀₀ in lightness, chroma or hue can end in a neutral. */
function touchesNeutral(lab: Lab, chroma: number, reach: number): boolean {
  // CIEDE2000's weights of chroma and hue, without their finer terms: enough to say how long a step is.
  const alongChroma = (reach * (1 + 0.045 * chroma)) / chroma;
  const acrossHue = (reach * (1 + 0.015 * chroma)) / chroma;
  return [-1, 1].some(
    (sign) =>
      neutralKind({ ...lab, l: lab.l + sign * reach }) !== null ||
      neutralKind({ l: lab.l, a: lab.a * (1 + sign * alongChroma), b: lab.b * (1 + sign * alongChroma) }) !==
        null ||
      neutralKind({
        l: lab.l,
        a: lab.a - sign * acrossHue * lab.b,
        b: lab.b + sign * acrossHue * lab.a,
      }) !== null,
  );
}
