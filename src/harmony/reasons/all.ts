import type { Reason } from '../model.ts';
import { baseReasons } from './base.ts';
import type { ReasonBuilder, Told } from './build.ts';
import { dominanceReasons } from './dominance.ts';
import { intensityReasons } from './intensity.ts';
import { neighbourReasons, oppositeReasons, toneOnToneReasons } from './kinship.ts';
import { lightnessReasons } from './lightness.ts';
import { nearMissReasons } from './near-miss.ts';
import { lightReasons, modelReasons, otherEyesReasons } from './other-voices.ts';
import { busynessReasons, scaleReasons } from './print.ts';
import { repeatReasons } from './repeat.ts';
import { repeatedNeutralReasons } from './repeated-neutral.ts';
import { strayReasons } from './stray.ts';
import { finishReasons, motifReasons, weightReasons } from './tags.ts';
import { warmthReasons } from './warmth.ts';

/** Every reason of a pair: weightiest first, troubles before ties of equal weight, then in the order practitioners check. */
export function reasonsOf(told: Told): Reason[] {
  return builders
    .flatMap((build) => build(told))
    .sort((one, other) => Math.abs(other.weighs) - Math.abs(one.weighs) || one.weighs - other.weighs);
}

/** In the order in which practitioners check: base, strength, finish and motif, repeats, scale, busyness; then the rest. */
const builders: readonly ReasonBuilder[] = [
  baseReasons,
  intensityReasons,
  finishReasons,
  motifReasons,
  repeatReasons,
  nearMissReasons,
  strayReasons,
  toneOnToneReasons,
  neighbourReasons,
  oppositeReasons,
  repeatedNeutralReasons,
  scaleReasons,
  busynessReasons,
  warmthReasons,
  lightnessReasons,
  dominanceReasons,
  modelReasons,
  otherEyesReasons,
  weightReasons,
  lightReasons,
];
