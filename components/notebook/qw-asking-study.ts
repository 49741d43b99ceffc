import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { StudyLeaf } from '../../src/notebook/model.ts';
import '../picture/qw-is-paper.ts';
import type { PaperView } from '../study/study-view.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import '../support/qw-title.ts';

/**
 * A study before it can judge: of a paper it is not known where it lies on its photograph, which is asked first.
 * @fires qw-retitle - `{ title }` · qw-paper-is - `{ held, is }`
 */
@customElement('qw-asking-study')
export class QwAskingStudy extends QwElement {
  static override styles = [
    controls,
    ruled,
    css`
      :host {
        padding: 34px 0 60px;
      }
      .head .margin {
        padding-top: 8px;
      }
      .papers {
        display: grid;
        grid-template-columns: repeat(auto-fit, minmax(min(100%, 280px), 1fr));
        gap: 24px;
        align-items: start;
        margin-top: 14px;
      }
      @container (max-width: 620px) {
        :host {
          padding-top: 18px;
        }
      }
    `,
  ];

  @property({ attribute: false }) leaf: StudyLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  /** The papers that are asked about. */
  @property({ attribute: false }) papers: readonly PaperView[] = [];

  override render() {
    if (!this.leaf) return nothing;
    return html`<div class="row head">
        <div class="margin">${this.margin.map((line) => html`<span>${line}</span>`)}</div>
        <div class="text">
          <qw-title .value=${this.leaf.title} empty="What do you want to know?"></qw-title>
          <p class="lede">One thing first: only the paper is judged, not the table round it.</p>
          <div class="papers">
            ${this.papers.map(
              ({ held, name, picture, asks }) =>
                html`<qw-is-paper .held=${held} .name=${name} .picture=${picture} .corners=${asks ?? null}></qw-is-paper>`,
            )}
          </div>
        </div>
      </div>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-asking-study': QwAskingStudy;
  }
}
