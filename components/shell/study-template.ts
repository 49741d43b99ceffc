import { html, nothing, type TemplateResult } from 'lit';
import type { StudyLeaf } from '../../src/notebook/model.ts';
import type { Session } from '../../src/workbench/session-types.ts';
import '../study/qw-further.ts';
import type { FurtherWay } from '../study/qw-further.ts';
import '../study/qw-study.ts';
import type { CandidateView, PaperView } from '../study/study-view.ts';
import type { PlacesShelf } from './places-shelf.ts';
import type { Supposing } from './supposing.ts';
import { candidateViews, paperView } from './views.ts';
import { whatIfView } from './what-if-view.ts';

/** The open study, with what is only supposed of it drawn in its place. */
export function studyTemplate(
  leaf: StudyLeaf,
  margin: readonly string[],
  session: Session,
  shelf: PlacesShelf,
  supposing: Supposing,
): TemplateResult {
  const anchor = leaf.anchor ? paperView(session, shelf, leaf.anchor, 'anchor') : null;
  const candidates = anchor ? candidateViews(session, shelf, leaf) : [];
  const shown = candidates.find(({ index }) => index === leaf.shown) ?? candidates[0] ?? null;
  const isOpen = anchor !== null && shown !== null && supposing.isOf(leaf, shown.held);
  const supposed = isOpen ? supposing.of(leaf, shown.held, shown.comparison) : null;
  const seen =
    supposed && shown ? asIf(anchor!, candidates, shown, supposed.comparison) : { anchor, candidates };
  return html`<qw-study
    .leaf=${leaf}
    .margin=${margin}
    .anchor=${seen.anchor}
    .candidates=${seen.candidates}
    .surround=${session.state.look.surround}
    .supposed=${supposed?.question ?? ''}
  >
    ${
      isOpen
        ? html`<qw-what-if slot="what-if" .view=${whatIfView(session, anchor, shown, supposing, supposed)} .inkOf=${supposing.inkOf}></qw-what-if>`
        : nothing
    }
    ${shown ? html`<qw-further slot="further" .ways=${ways} .open=${isOpen ? ['what-if'] : []}></qw-further>` : nothing}
  </qw-study>`;
}

/** The papers as they would be. Where inks lie is not known of a paper that was changed only in thought. */
function asIf(
  anchor: PaperView,
  candidates: readonly CandidateView[],
  shown: CandidateView,
  comparison: CandidateView['comparison'],
): { readonly anchor: PaperView; readonly candidates: readonly CandidateView[] } {
  return {
    anchor: { ...anchor, side: comparison.anchor, places: null },
    candidates: candidates.map((one) =>
      one === shown ? { ...one, side: comparison.candidate, comparison, places: null } : one,
    ),
  };
}

const ways: readonly FurtherWay[] = [
  {
    way: 'what-if',
    label: 'What if?',
    about: 'cover, cut, recolour or lay on, on screen before the scissors',
  },
];
