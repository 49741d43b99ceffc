import type { Advised, FamilySide } from '../harmony/model.ts';
import { groundSaid } from '../sheet/print/base-sure.ts';

/** One candidate with the file that it came from, best first. */
export interface Placed {
  readonly file: string;
  readonly comparison: Advised;
}

/**
 * The study as one line-broken JSON text: `quirewise-study`. Sides carry their file first. In version 2 a side has its families
 * (A, B … on the anchor, a, b … on a candidate, the base's first) and the inks in them (A1, A2 …), and a candidate the findings;
 * version 1 has families as inks, and neither.
 */
export function studyJson(
  anchorFile: string,
  anchor: FamilySide,
  candidates: readonly Placed[],
  version: StudyVersion = 2,
): string {
  const side = version === 1 ? sideOfOne : sideOfTwo;
  const study = {
    format: 'quirewise-study',
    version,
    anchor: side(anchorFile, anchor),
    candidates: candidates.map(({ file, comparison }) => {
      const { verdict, findings, links, reasons, remedies, distance, decision } = comparison;
      return {
        side: side(file, comparison.candidate),
        verdict,
        ...(version === 1 ? {} : { findings }),
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

export const studyVersions = [1, 2] as const;
export type StudyVersion = (typeof studyVersions)[number];

/** A side with its file, and with b* and the sureness of its base's kind. */
function sideOfOne(file: string, { families: _, within: __, seen: ___, ...side }: FamilySide) {
  const { b, sure } = groundSaid(side);
  return { file, ...side, base: { ...side.base, b, kindSure: sure } };
}

function sideOfTwo(file: string, { families, within, ...side }: FamilySide) {
  const { b, sure } = groundSaid(side);
  const { kind, printed } = side.base;
  const [base, ...inks] = within;
  return { file, families, ...side, base: { ...base, kind, printed, b, kindSure: sure }, inks };
}

/** Numbers to six decimals; shares stay as they are, because they sum to one. */
function rounded(key: string, value: unknown): unknown {
  if (typeof value !== 'number' || key === 'share') return value;
  // Adding 0 turns −0 into 0.
  return Math.round(value * 1e6) / 1e6 + 0;
}
