import { angleDeg } from '../../colour/hue.ts';
import type { Lab } from '../../colour/model.ts';
import { coolChromaLimit, neutralKindAt } from '../../colour/neutral.ts';
import { inkLimits } from '../thresholds.ts';

/**
 * How far a colour's hue counts, 0–1: 0 for a neutral (cream and kraft too), 1 where it lies clear of every
 * neutral's region, and in steps between, so that no ink turns from neutral to strong at a stroke.
 */
export function hueCounts({ l, a, b }: Lab): number {
  return hueCountsAt(l, Math.hypot(a, b), angleDeg(a, b));
}

/** The same of L* 0–100, C*ab and h*ab in degrees [0, 360). */
export function hueCountsAt(l: number, chroma: number, hue: number): number {
  if (chroma > inkLimits.clearOfNeutralsChroma) return 1;
  if (neutralKindAt(l, chroma, hue) !== null) return 0;
  const reaches = inkLimits.nearNeutralDeltaE;
  // From the farthest inwards: most colours are clear at the first look.
  for (let i = reaches.length - 1; i >= 0; i--) {
    if (!touchesNeutral(l, chroma, hue, reaches[i]!)) return (i + 1) / reaches.length;
  }
  return 0;
}

/**
 * The same for a colour that is no neutral and whose hue no step takes to the warm ones, where cream, kraft and greige
 * lie: then only how weak its chroma is can matter, and no angle is needed.
 */
export function coolCountsAt(l: number, chroma: number): number {
  const reaches = inkLimits.nearNeutralDeltaE;
  const limit = coolChromaLimit(l);
  for (let i = reaches.length - 1; i >= 0; i--) {
    const reach = reaches[i]!;
    if (
      chroma - reach * (1 + 0.045 * chroma) > limit &&
      chroma > coolChromaLimit(l - reach) &&
      chroma > coolChromaLimit(l + reach)
    )
      return (i + 1) / reaches.length;
  }
  return 0;
}

/** Whether a step of about `reach` ΔE₀₀ in lightness, chroma or hue can end in a neutral. */
function touchesNeutral(l: number, chroma: number, hue: number, reach: number): boolean {
  // CIEDE2000's weights of chroma and hue, without their finer terms: enough to say how long a step is.
  const dChroma = reach * (1 + 0.045 * chroma);
  const dHue = (Math.atan((reach * (1 + 0.015 * chroma)) / chroma) * 180) / Math.PI;
  return (
    neutralKindAt(l - reach, chroma, hue) !== null ||
    neutralKindAt(l + reach, chroma, hue) !== null ||
    neutralKindAt(l, Math.max(0, chroma - dChroma), hue) !== null ||
    neutralKindAt(l, chroma + dChroma, hue) !== null ||
    neutralKindAt(l, chroma, (hue - dHue + 360) % 360) !== null ||
    neutralKindAt(l, chroma, (hue + dHue) % 360) !== null
  );
}
