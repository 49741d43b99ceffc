import { heldKey } from '../../../src/drawer/held.ts';
import type { PaperChange } from '../../../src/drawing/tried/changed-paper.ts';
import { kindWords } from '../../../src/drawing/words/kind-words.ts';
import { isGathered } from '../../../src/harmony/measure/take-side.ts';
import type { Change, Comparison, Role } from '../../../src/harmony/model.ts';
import type { Side } from '../../../src/sheet/model.ts';
import type { Supposed } from '../../../src/workbench/what-if.ts';
import type { CandidateView, PaperView } from '../../study/study-view.ts';
import type { TriedPair, TriedPaper, TriedView } from '../../study/tried/tried-view.ts';
import type { StudyScene } from './study-template.ts';
import { paperView } from './views.ts';

/** The pair that is shown, as it is and as it would be. */
export function triedView(
  { session, shelf, supposing }: StudyScene,
  anchor: PaperView,
  shown: CandidateView,
  supposed: Supposed,
): TriedView {
  const from = shown.comparison;
  const { changes } = supposing;
  const whole = { anchor, candidate: shown };
  const after = (role: Role): TriedPaper => {
    const held = supposed.papers[role];
    const isOther = heldKey(held) !== heldKey(whole[role].held);
    const paper = isOther ? (paperView(session, shelf, held, role) ?? whole[role]) : whole[role];
    return triedPaper(paper, supposed.start[role], changesOn(changes, role));
  };
  return {
    before: {
      ...said(from),
      anchor: triedPaper(anchor, from.anchor, []),
      candidate: triedPaper(shown, from.candidate, []),
      between: null,
    },
    after: {
      ...said(supposed.comparison),
      anchor: after('anchor'),
      candidate: after('candidate'),
      between: betweenOf(changes),
      distance: from.distance,
    },
    clauses: supposed.clauses,
    lifts: liftedBy(from, supposed.comparison),
  };
}

function said({
  distance,
  verdict,
  decision,
}: Comparison): Pick<TriedPair, 'distance' | 'verdict' | 'summary'> {
  return { distance, verdict, summary: decision.summary };
}

function triedPaper(
  { name, picture, places }: PaperView,
  side: Side,
  changes: readonly PaperChange[],
): TriedPaper {
  const inside = new Map(
    isGathered(side)
      ? side.families.map(({ id, inks }) => [id, side.within.filter((ink) => inks.includes(ink.id))] as const)
      : [],
  );
  return { name, picture, places, side, inside, changes };
}

/** What a mat adds to its paper lies round it, and is no piece on it. */
function changesOn(changes: readonly Change[], role: Role): readonly PaperChange[] {
  const mat = changes.find((change) => change.kind === 'strip' && change.as === 'mat');
  return changes.flatMap((change) => {
    if (change.kind === 'strip' || change.kind === 'replace' || change.of !== role) return [];
    const isMat =
      mat?.kind === 'strip' &&
      role === 'candidate' &&
      change.kind === 'add' &&
      change.ink.hex === mat.ink.hex;
    return isMat ? [] : [change];
  });
}

function betweenOf(changes: readonly Change[]): TriedPair['between'] {
  const strip = changes.findLast((change) => change.kind === 'strip');
  return strip ? { as: strip.as ?? 'strip', hex: strip.ink.hex } : null;
}

/** What counted against the pair and is not told of it any more. */
function liftedBy(before: Comparison, after: Comparison): readonly string[] {
  const against = ({ reasons }: Comparison) =>
    reasons.filter(({ weighs }) => weighs < 0).map(({ kind }) => kind);
  const still = against(after);
  return [...new Set(against(before))].filter((kind) => !still.includes(kind)).map((kind) => kindWords[kind]);
}
