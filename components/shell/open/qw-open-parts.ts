import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { StudyLeaf } from '../../../src/notebook/model.ts';
import { findParts } from '../../../src/workbench/parts.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import '../../study/qw-parts.ts';
import type { PartsView } from '../../study/qw-parts.ts';
import type { CandidateView, PaperView } from '../../study/study-view.ts';
import { QwElement } from '../../support/element.ts';

/** Which parts of the shown candidate hold; kept until the pair or where its inks lie changes. */
@customElement('qw-open-parts')
export class QwOpenParts extends QwElement {
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) leaf: StudyLeaf | null = null;
  @property({ attribute: false }) anchor: PaperView | null = null;
  @property({ attribute: false }) candidate: CandidateView | null = null;
  private known: { of: unknown; places: unknown; found: ReturnType<typeof findParts> } | null = null;

  override render() {
    const { session, anchor, candidate } = this;
    if (!session || !anchor || !candidate) return nothing;
    const found = this.found(session, anchor, candidate);
    const view: PartsView = {
      name: candidate.name,
      anchorName: anchor.name,
      picture: candidate.picture,
      comparison: candidate.comparison,
      shading: found?.shading ?? null,
      veil: found?.veil ?? null,
      canKeep: candidate.held.kind === 'sheet',
    };
    return html`<qw-parts .view=${view}></qw-parts>`;
  }

  private found(session: Session, anchor: PaperView, { held, comparison, places }: CandidateView) {
    if (!places) return null;
    if (this.known?.of === comparison && this.known.places === places) return this.known.found;
    const { drawer } = session.state.notebook;
    const found = findParts(drawer, { anchor: anchor.held, candidate: held }, comparison, places);
    this.known = { of: comparison, places, found };
    return found;
  }
}
