import type { Advised } from '../harmony/model.ts';
import type { Side } from '../sheet/model.ts';
import { groundSaid } from '../sheet/print/base-sure.ts';

/** One candidate with the file that it came from, best first. */
export interface Placed {
  readonly file: string;
  readonly comparison: Advised;
}

/**
 * The study as one line-broken JSON text: `quirewise-study`, version 1. Sides carry their file first; inks are named
 * A, B … on the anchor and a, b … on a candidate.
 */
export function studyJson(anchorFile: string, anchor: Side, candidates: readonly Placed[]): string {
  const study = {
    format: 'quirewise-study',
    version: 1,
    anchor: sideOf(anchorFile, anchor),
    candidates: candidates.map(({ file, comparison }) => {
      const { verdict, links, reasons, remedies, distance, decision } = comparison;
      return {
        side: sideOf(file, comparison.candidate),
        verdict,
        links,
        reasons,
        remedies,
        distance,
        decision,
      };
    }),
  };
  return `${JSON.stringify(study, rounded, 2)}\n`;
}

/** A side with its file, and with b* and the sureness of its base's kind. */
function sideOf(file: string, side: Side) {
  const { b, sure } = groundSaid(side);
  return { file, ...side, base: { ...side.base, b, kindSure: sure } };
}

/** Numbers to six decimals; shares stay as they are, because they sum to one. */
function rounded(key: string, value: unknown): unknown {
  if (typeof value !== 'number' || key === 'share') return value;
  // Adding 0 turns −0 into 0.
  return Math.round(value * 1e6) / 1e6 + 0;
}
