import { html, nothing, type TemplateResult } from 'lit';
import { heldKey } from '../../../src/drawer/held.ts';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import type { Supposed } from '../../../src/workbench/what-if.ts';
import type { FurtherWay } from '../../study/qw-further.ts';
import type { CandidateView, PaperView } from '../../study/study-view.ts';
import { emit } from '../../support/emit.ts';
import type { PlacesShelf } from './places-shelf.ts';
import type { Supposing } from './supposing.ts';
import { triedView } from './tried-view.ts';
import { candidateViews, paperView } from './views.ts';
import { whatIfView } from './what-if-view.ts';

/** What a study is drawn from. */
export interface StudyScene {
  readonly session: Session;
  readonly shelf: PlacesShelf;
  readonly supposing: Supposing;
  /** Ways to look further that are open. */
  readonly further: readonly string[];
}

/** The open study, with what is only supposed of it drawn in its place. */
export function studyTemplate(leaf: StudyLeaf, margin: readonly string[], scene: StudyScene): TemplateResult {
  void import('./study-elements.ts');
  const { session, shelf, supposing } = scene;
  const anchor = leaf.anchor ? paperView(session, shelf, leaf.anchor, 'anchor') : null;
  const candidates = anchor ? candidateViews(session, shelf, leaf) : [];
  const shown = candidates.find(({ index }) => index === leaf.shown) ?? candidates[0] ?? null;
  const asking = [anchor, shown].filter((paper) => paper?.asks !== undefined) as readonly PaperView[];
  if (asking.length > 0)
    return html`<qw-asking-study .leaf=${leaf} .margin=${margin} .papers=${asking}></qw-asking-study>`;
  const isOpen = anchor !== null && shown !== null && supposing.isOf(leaf, shown.held);
  const supposed = isOpen ? supposing.of(leaf, shown.held, shown.comparison) : null;
  const tried = supposed && shown ? asIf(scene, anchor!, candidates, shown, supposed) : null;
  return html`<qw-study
    .leaf=${leaf}
    .margin=${margin}
    .anchor=${anchor}
    .candidates=${candidates}
    .asIf=${tried}
    .surround=${session.state.look.surround}
    .reading=${session.state.readings.filter(({ studyId }) => studyId === leaf.id).map(({ fileName }) => fileName)}
  >
    ${
      isOpen && supposing.byHand
        ? html`<qw-what-if slot="what-if" .view=${whatIfView(session, anchor, shown, supposing, supposed)} .inkOf=${supposing.inkOf}></qw-what-if>`
        : nothing
    }
    ${
      supposed && shown
        ? html`<qw-before-after slot="tried" ?by-hand=${supposing.byHand} .view=${triedView(scene, anchor!, shown, supposed)} .surround=${session.state.look.surround}></qw-before-after>`
        : nothing
    }
    ${anchor ? furtherTemplate(leaf, anchor, shown, scene, isOpen && supposing.byHand) : nothing}
  </qw-study>`;
}

/** The ways to look further, one line each, and below them what is open. */
function furtherTemplate(
  leaf: StudyLeaf,
  anchor: PaperView,
  shown: CandidateView | null,
  { session, further }: StudyScene,
  supposes: boolean,
): TemplateResult {
  const { drawer } = session.state.notebook;
  const open = (way: string) => further.includes(way);
  return html`<div slot="further">
    <qw-further .ways=${ways.filter(({ way }) => shown || way === 'drawer')} .open=${supposes ? ['what-if', ...further] : further}></qw-further>
    ${
      open('drawer')
        ? panel(
            'drawer',
            html`<qw-open-find .session=${session} .leaf=${leaf} .drawer=${drawer} .anchor=${anchor} .candidate=${shown} .pictures=${session.state.pictures}></qw-open-find>`,
          )
        : nothing
    }
    ${
      shown && open('parts')
        ? panel(
            'parts',
            html`<qw-open-parts .session=${session} .leaf=${leaf} .anchor=${anchor} .candidate=${shown}></qw-open-parts>`,
          )
        : nothing
    }
    ${
      shown && open('colour-it')
        ? panel(
            'colour-it',
            html`<qw-open-colour-it .leaf=${leaf} .drawer=${drawer} .anchor=${anchor} .candidate=${shown} .surround=${session.state.look.surround}></qw-open-colour-it>`,
          )
        : nothing
    }
  </div>`;
}

/** What a way opened, and the way to shut it. */
function panel(way: string, content: TemplateResult): TemplateResult {
  const label = ways.find((one) => one.way === way)?.label ?? '';
  const shut = (event: Event) => emit(event.currentTarget!, 'qw-look-further', { way });
  return html`<div class="panel" data-way=${way}>
    ${content}
    <p><button type="button" class="word" aria-label="Close: ${label}" @click=${shut}><span>Close</span></button></p>
  </div>`;
}

/**
 * The papers as they would be; one that was exchanged with its own name and picture. Where inks lie is not known of a
 * paper that was changed only in thought.
 */
function asIf(
  { session, shelf }: StudyScene,
  anchor: PaperView,
  candidates: readonly CandidateView[],
  shown: CandidateView,
  { comparison, papers }: Supposed,
): { readonly anchor: PaperView; readonly candidates: readonly CandidateView[] } {
  const lies = (paper: PaperView, role: 'anchor' | 'candidate') => {
    const other =
      heldKey(papers[role]) === heldKey(paper.held) ? null : paperView(session, shelf, papers[role], role);
    const { name, picture, facts } = other ?? paper;
    const held = papers[role];
    return { held, name, picture, facts, turnsTo: null, side: comparison[role], places: null };
  };
  return {
    anchor: { ...anchor, ...lies(anchor, 'anchor') },
    candidates: candidates.map((one) =>
      one === shown ? { ...one, ...lies(one, 'candidate'), comparison } : one,
    ),
  };
}

const ways: readonly FurtherWay[] = [
  {
    way: 'what-if',
    label: 'What if?',
    about: 'cover, cut, recolour or lay on, on screen before the scissors',
  },
  {
    way: 'drawer',
    label: 'What else have I?',
    about: 'the whole drawer held against the anchor, best first',
  },
  {
    way: 'parts',
    label: 'Which parts?',
    about: 'where this sheet holds, and what is worth cutting out of it',
  },
  {
    way: 'colour-it',
    label: 'Colour it yourself',
    about: 'which colour on bare letters or a tag would tie most',
  },
];
