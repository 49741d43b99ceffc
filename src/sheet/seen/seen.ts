import type { Seen } from '../model.ts';
import type { Planes } from '../planes.ts';
import { blurred } from './blurred.ts';
import { regularityOf } from './regularity.ts';
import { seenNumbers } from './seen-numbers.ts';
import { squaresOf } from './squares.ts';

/**
 * What an eye sees of a side at arm's length: contrast of pattern, of larger bodies, how fine and how regular. `mmPerPixel`
 * is the size of a pixel of `planes` on the sheet. Lightness and colour are blurred each as far as the eye blurs it.
 * Source: Zhang & Wandell 1997 (S-CIELAB) for the blur, here of L*, a* and b*, so that greys stay grey; the measures are ours.
 */
export function seenOf(planes: Planes, mmPerPixel: number): Seen {
  const { width, height, mm, channels, on } = squaresOf(planes, mmPerPixel);
  const [l, a, b] = [seenNumbers.lightness, seenNumbers.redGreen, seenNumbers.blueYellow].map((parts, k) =>
    asSeen(channels[k]!, width, height, parts, mm),
  ) as [Float64Array, Float64Array, Float64Array];
  const ladder = (plane: Float64Array): Float64Array[] => {
    const steps: Float64Array[] = [plane];
    for (let k = 1; k < seenNumbers.patternMm.length; k++) {
      const further = blurMm(seenNumbers.patternMm[k]!, seenNumbers.patternMm[k - 1]!);
      steps.push(blurred(steps[k - 1]!, width, height, further / mm));
    }
    return steps;
  };
  const ladders = [l, a, b].map(ladder);
  const last = seenNumbers.patternMm.length - 1;
  const lost = ladders.map((steps) => power(steps[0]!, steps[last]!, on));
  const fine = ladders.map((steps) => power(steps[0]!, steps[1]!, on));
  // Larger bodies and pools of paint, but not what runs once over the sheet: an ombre is at rest.
  const beyond = blurMm(seenNumbers.largeMm, seenNumbers.patternMm[last]!);
  const kept = ladders.map((steps) =>
    power(steps[last]!, blurred(steps[last]!, width, height, beyond / mm), on),
  );
  const all = weighed(lost);
  const { regular, repeatMm } = regularityOf([l, a, b], width, height, mm);
  return {
    light: Math.sqrt(lost[0]!),
    colour: Math.sqrt(lost[1]! + lost[2]!),
    large: Math.sqrt(weighed(kept)),
    fine: all > 0 ? Math.min(1, weighed(fine) / all) : 0,
    regular,
    repeatMm,
  };
}

/** A channel as the eye passes it on. */
function asSeen(
  plane: Float64Array,
  width: number,
  height: number,
  parts: readonly (readonly [weight: number, degrees: number])[],
  mm: number,
): Float64Array {
  const perDegree = (seenNumbers.distanceMm * Math.PI) / 180;
  const whole = parts.reduce((sum, [weight]) => sum + weight, 0);
  const out = new Float64Array(plane.length);
  for (const [weight, degrees] of parts) {
    const part = blurred(plane, width, height, (degrees * perDegree) / Math.SQRT2 / mm);
    for (let i = 0; i < out.length; i++) out[i]! += (weight / whole) * part[i]!;
  }
  return out;
}

/** Lightness and half of colour, as powers. */
function weighed([l, a, b]: readonly number[]): number {
  return l! + (a! + b!) / 4;
}

/** Mean square of the difference of two planes. */
function power(p: Float64Array, q: Float64Array, on: Uint8Array): number {
  let sum = 0;
  let n = 0;
  for (let i = 0; i < p.length; i++) {
    if (!on[i]) continue;
    const d = p[i]! - q[i]!;
    sum += d * d;
    n++;
  }
  return n ? sum / n : 0;
}

/** The blur that makes one of `to` out of one of `from`, mm. */
function blurMm(to: number, from: number): number {
  return Math.sqrt(to * to - from * from);
}
