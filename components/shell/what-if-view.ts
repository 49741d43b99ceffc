import { readsAsNeutral } from '../../src/colour/neutral.ts';
import { labFromOklch, oklchFromTuple } from '../../src/colour/spaces.ts';
import type { Session } from '../../src/workbench/session-types.ts';
import type { Supposed } from '../../src/workbench/what-if.ts';
import type { CandidateView, PaperView } from '../study/study-view.ts';
import type { WhatIfView } from '../study/what-if-view.ts';
import type { Supposing } from './supposing.ts';

/** What the panel of a what-if shows for the pair that is open. */
export function whatIfView(
  session: Session,
  anchor: PaperView,
  shown: CandidateView,
  supposing: Supposing,
  supposed: Supposed | null,
): WhatIfView {
  const { plains } = session.state.notebook.drawer;
  return {
    from: shown.comparison,
    names: { anchor: anchor.name, candidate: shown.name },
    plains: plains.map(({ id, name, ink }) => ({
      id,
      name,
      ink,
      neutral: readsAsNeutral(labFromOklch(oklchFromTuple(ink.oklch))),
    })),
    changes: supposing.changes,
    clauses: supposed?.clauses ?? [],
    after: supposed?.comparison.verdict ?? null,
    steps: supposing.steps.length,
  };
}
