import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Drawer } from '../../../src/drawer/model.ts';
import type { ColourIt } from '../../../src/harmony/model.ts';
import type { StudyLeaf, Surround } from '../../../src/notebook/model.ts';
import { colourablesIn, findColourIt } from '../../../src/workbench/colour-it.ts';
import '../../study/qw-colour-it.ts';
import type { CandidateView, PaperView } from '../../study/study-view.ts';
import { QwElement } from '../../support/element.ts';

/** Which colour would tie the pair most; what is coloured is chosen here, and not kept in the notebook. */
@customElement('qw-open-colour-it')
export class QwOpenColourIt extends QwElement {
  @property({ attribute: false }) leaf: StudyLeaf | null = null;
  @property({ attribute: false }) drawer: Drawer | null = null;
  @property({ attribute: false }) anchor: PaperView | null = null;
  @property({ attribute: false }) candidate: CandidateView | null = null;
  @property() surround: Surround = 'grey';
  @state() private thing: string | null = null;
  private known: { of: unknown; on: string; drawer: unknown; found: ColourIt } | null = null;

  override render() {
    const { leaf, drawer, anchor, candidate } = this;
    if (!leaf || !drawer || !anchor || !candidate) return nothing;
    const things = colourablesIn(drawer);
    const thing = things.find(({ id }) => id === this.thing) ?? things[0]!;
    const { comparison } = candidate;
    if (this.known?.of !== comparison || this.known.on !== thing.id || this.known.drawer !== drawer) {
      const found = findColourIt(drawer, comparison, thing);
      this.known = { of: comparison, on: thing.id, drawer, found };
    }
    const names = { anchor: anchor.name, candidate: candidate.name };
    return html`<qw-colour-it
      .view=${{ names, comparison, found: this.known.found, things, thing: thing.id }}
      .wheel=${leaf.wheel}
      .surround=${this.surround}
      @qw-colour-what=${(event: CustomEvent<{ value: string }>) => (this.thing = event.detail.value)}
    ></qw-colour-it>`;
  }
}
