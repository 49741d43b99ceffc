import type { Reason, ReasonKind } from '../model.ts';
import { pageLimits } from '../thresholds.ts';
import type { ReasonBuilder, Told } from './build.ts';
import { dominanceReasons } from './dominance.ts';
import { findingReasons } from './from-findings.ts';
import { neighbourReasons, oppositeReasons } from './kinship.ts';
import { lightnessReasons } from './lightness.ts';
import { otherEyesReasons } from './other-eyes.ts';
import { repeatReasons } from './repeat.ts';
import { repeatedNeutralReasons } from './repeated-neutral.ts';
import { weightReasons } from './tags.ts';
import { modelReasons } from './two-colour-model.ts';
import { lightReasons } from './unknown-light.ts';

/**
 * Every reason of a pair: its findings, those that lead first, and then what is worth knowing and counts for nothing. Nothing
 * that is only worth knowing says another thing of two colours than a finding does.
 */
export function reasonsOf(told: Told): Reason[] {
  const findings = findingReasons(told);
  const notes = noteBuilders.flatMap((build) => build(told));
  return [...findings, ...notes.filter((note) => !isSaidOtherwise(note, findings))];
}

/** In the order in which practitioners check. */
const noteBuilders: readonly ReasonBuilder[] = [
  repeatReasons,
  oppositeReasons,
  neighbourReasons,
  repeatedNeutralReasons,
  lightnessReasons,
  dominanceReasons,
  modelReasons,
  otherEyesReasons,
  weightReasons,
  lightReasons,
];

/** Notes on how two colours stand to each other. */
const onTwo: ReadonlySet<ReasonKind> = new Set(['repeat', 'opposites', 'neighbours', 'two-colour model']);

function isSaidOtherwise({ kind, inks, evidence }: Reason, findings: readonly Reason[]): boolean {
  const has = (name: ReasonKind): boolean => findings.some((finding) => finding.kind === name);
  if (onTwo.has(kind))
    return findings.some(
      (finding) => finding.inks.length === 2 && finding.inks.every((id) => inks.includes(id)),
    );
  // That the two lie far apart in light and dark, and that they look flat, can't both be said.
  if (kind === 'lightness range') {
    const { darkest = 0, lightest = 100 } = evidence;
    return lightest - darkest < pageLimits.flatRange && has('light-dark step');
  }
  return false;
}
