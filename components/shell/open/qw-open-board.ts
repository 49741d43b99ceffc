import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { boardKinds } from '../../../src/board/kinds.ts';
import type { BoardLeaf, Notebook, Surround } from '../../../src/notebook/model.ts';
import type { Session } from '../../../src/workbench/session-types.ts';
import '../../notebook/qw-board-leaf.ts';
import { QwElement } from '../../support/element.ts';

const kinds = Object.entries(boardKinds).map(([value, { label }]) => ({ value, label }));

/** A board leaf with its picture, drawn anew when the notebook or its pictures change. */
@customElement('qw-open-board')
export class QwOpenBoard extends QwElement {
  @property({ attribute: false }) leaf: BoardLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) notebook: Notebook | null = null;
  @property({ type: Number }) pictures = 0;
  @property() surround: Surround = 'grey';
  @state() private svg: string | null = null;
  private drawn = 0;

  override render() {
    const { leaf, notebook } = this;
    if (!leaf) return nothing;
    const title = notebook?.leaves.find(({ id }) => id === leaf.studyId)?.title ?? null;
    return html`<qw-board-leaf .leaf=${leaf} .margin=${this.margin} .kinds=${kinds} .svg=${this.svg} .studyTitle=${title}></qw-board-leaf>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (changed.has('notebook') || changed.has('pictures') || changed.has('leaf') || changed.has('surround'))
      void this.draw();
  }

  private async draw(): Promise<void> {
    if (!this.session || !this.leaf) return;
    const turn = ++this.drawn;
    const svg = await this.session.boardSvg(this.leaf.id);
    // A later drawing may have overtaken this one.
    if (turn === this.drawn) this.svg = svg;
  }
}
