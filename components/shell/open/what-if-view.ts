import { readsAsNeutral } from '../../../src/colour/neutral.ts';
import { labFromOklch, oklchFromTuple } from '../../../src/colour/spaces.ts';
import type { Plain } from '../../../src/sheet/model.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import { usualNeutrals } from '../../../src/workbench/usual-plains.ts';
import type { Supposed } from '../../../src/workbench/what-if.ts';
import type { CandidateView, PaperView } from '../../study/study-view.ts';
import type { Material, WhatIfView } from '../../study/tried/what-if-view.ts';
import type { Supposing } from './supposing.ts';

/** What the panel of a what-if shows for the pair that is open. */
export function whatIfView(
  session: Session,
  anchor: PaperView,
  shown: CandidateView,
  supposing: Supposing,
  supposed: Supposed | null,
): WhatIfView {
  const own = session.state.notebook.drawer.plains.map((plain) => materialOf(plain));
  // What most have, so that there is something to lay on and to put between before a plain is in the drawer.
  const usual = own.some(({ neutral }) => neutral)
    ? []
    : usualNeutrals().map((plain) => ({ ...materialOf(plain), usual: true }));
  return {
    from: supposed?.start ?? shown.comparison,
    names: supposed?.names ?? { anchor: anchor.name, candidate: shown.name },
    plains: [...own, ...usual],
    changes: supposing.changes,
    clauses: supposed?.clauses ?? [],
    steps: supposing.steps.length,
  };
}

function materialOf({ id, name, ink }: Plain): Material {
  const neutral = readsAsNeutral(labFromOklch(oklchFromTuple(ink.oklch)));
  return { id, name, ink, neutral };
}
