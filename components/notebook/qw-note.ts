import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { NoteLeaf } from '../../src/notebook/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import '../support/qw-title.ts';
import '../support/qw-writing.ts';

/**
 * A leaf to write on.
 * @fires qw-retitle - `{ title }`
 * @fires qw-write - `{ text }`
 */
@customElement('qw-note')
export class QwNote extends QwElement {
  static override styles = [
    controls,
    ruled,
    css`
      :host {
        padding: 34px 0 60px;
      }
      .margin {
        padding-top: 8px;
      }
      img {
        display: block;
        max-width: 100%;
        height: auto;
        margin-top: 14px;
      }
      qw-writing {
        --lines: 12;
        max-width: 41em;
        margin-top: 14px;
      }
      @container (max-width: 620px) {
        .margin {
          padding-top: 18px;
        }
      }
    `,
  ];

  @property({ attribute: false }) leaf: NoteLeaf | null = null;
  /** Stands in the margin: "leaf 1", "saved". */
  @property({ attribute: false }) margin: readonly string[] = [];

  /** Address of its picture, or null while it loads and where there is none. */
  @property({ attribute: false }) picture: string | null = null;

  override render() {
    return html`<div class="row">
      <div class="margin">${this.margin.map((line) => html`<span>${line}</span>`)}</div>
      <div class="text">
        <qw-title .value=${this.leaf?.title ?? ''}></qw-title>
        ${this.leaf?.picture && this.picture ? html`<img src=${this.picture} alt=${this.leaf.picture.alt} />` : nothing}
        <qw-writing
          label="What is written on this leaf"
          prompt="Write here: what is in the drawer, what you were looking for, what you learnt."
          .value=${this.leaf?.text ?? ''}
        ></qw-writing>
      </div>
    </div>`;
  }
}
