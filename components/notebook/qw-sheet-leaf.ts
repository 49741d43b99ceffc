import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { SheetLeaf, Surround } from '../../src/notebook/model.ts';
import '../study/qw-mats.ts';
import type { PaperView } from '../study/study-view.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import '../support/qw-title.ts';
import '../support/qw-writing.ts';

/**
 * One sheet by itself: a side with its inks, its wheel and strip, what can be done to it, and what is noted of it.
 * @slot tools - what can be done to the side
 * @fires qw-retitle - `{ title }` · qw-write - `{ text }` · qw-turn-over - `{ side }`
 */
@customElement('qw-sheet-leaf')
export class QwSheetLeaf extends QwElement {
  static override styles = [controls, ruled, styles()];

  /** Null where it is looked at over another leaf. */
  @property({ attribute: false }) leaf: SheetLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  /** The side that is looked at; null where the sheet has left the drawer. */
  @property({ attribute: false }) paper: PaperView | null = null;
  /** The studies on which it lies: ways back to them stand at the head. */
  @property({ attribute: false }) studies: readonly { readonly id: string; readonly title: string }[] = [];
  @property() surround: Surround = 'grey';
  /** Over another leaf: first what can be done to it, then what was read. */
  @property({ type: Boolean, reflect: true }) near = false;
  @state() private lit: readonly string[] = [];

  override render() {
    const { leaf, paper } = this;
    if (this.near) return this.overLeaf(paper);
    if (!leaf) return nothing;
    return html`<div class="row head">
        <div class="margin">${this.margin.map((line) => html`<span>${line}</span>`)}</div>
        <div class="text"><qw-title .value=${leaf.title} ?given=${leaf.title === paper?.name}></qw-title>${this.studies.length ? this.ways() : nothing}</div>
      </div>
      ${
        paper
          ? html`${this.mats(paper)} ${this.inks(paper)}
            <slot name="tools"></slot>`
          : html`<div class="row"><div class="margin"></div><p class="text">This sheet is no longer in the drawer.</p></div>`
      }
      <div class="row">
        <div class="margin" aria-hidden="true"><b>your words</b></div>
        <div class="text">
          <qw-writing label="Your words on this sheet" prompt="Where it came from, how much is left, what it was kept for." .value=${leaf.text}></qw-writing>
        </div>
      </div>`;
  }

  private overLeaf(paper: PaperView | null) {
    if (!paper) return html`<p class="text">This sheet is no longer in the drawer.</p>`;
    return html`<slot name="tools"></slot>${this.inks(paper)} ${this.mats(paper)}`;
  }

  private mats(paper: PaperView) {
    return html`<div class="wide" @qw-point=${this.onPoint}>
      <qw-mats alone .anchor=${paper} .surround=${this.surround} .lit=${this.lit}></qw-mats>
    </div>`;
  }

  private ways() {
    return html`<ul class="ways" aria-label="Studies that it lies on">
      ${this.studies.map(
        ({ id, title }) =>
          html`<li><a class="word" href="#${id}"><span>On the study ${title ? `“${title}”` : 'without a title'}: back to it</span></a></li>`,
      )}
    </ul>`;
  }

  private inks({ side, ground }: PaperView) {
    return html`<div class="row" @qw-point=${this.onPoint}>
      <div class="margin" aria-hidden="true"><b>inks</b><span>share of the side</span></div>
      <ul class="text inks">
        ${[side.base, ...side.inks].map(
          ({ id, hex, name, trade, share }, n) =>
            html`<li><i style="background:${hex}"></i><span><b>${id}</b> ${trade ?? name}${trade && trade !== name ? html`, <small>${name}</small>` : nothing}${n === 0 && ground ? html`<small class="ground">${ground}</small>` : nothing}</span><span class="share">${(share * 100).toFixed(share < 0.0995 ? 1 : 0)} %</span></li>`,
        )}
      </ul>
    </div>`;
  }

  private onPoint(event: CustomEvent<{ inks: readonly string[] }>): void {
    this.lit = event.detail.inks;
  }
}

function styles() {
  return css`
    :host {
      padding: 34px 0 60px;
    }
    :host([near]) {
      padding-top: 8px;
    }
    .head .margin {
      padding-top: 8px;
    }
    .wide {
      margin: 18px 40px 26px 28px;
    }
    .inks {
      margin: 0 0 26px;
    }
    .ways {
      margin: 2px 0 10px;
    }
    .ways a {
      padding: 4px 0;
      text-decoration: none;
    }
    .inks li {
      display: grid;
      grid-template-columns: 30px minmax(0, 1fr) 60px;
      align-items: center;
      gap: 12px;
      max-width: 36em;
      padding: 5px 0;
      border-bottom: 1px solid var(--qw-rule);
    }
    .inks i {
      height: 26px;
      box-shadow: 0 0 0 0.5px oklch(0.5 0 0 / 0.4);
    }
    .inks b {
      display: inline-block;
      min-width: 1.3em;
      font: 600 14px/1 var(--qw-sans);
    }
    small {
      color: var(--qw-soft);
      font-size: 14px;
    }
    .ground {
      display: block;
    }
    .share {
      font: 14px/1 var(--qw-sans);
      font-variant-numeric: tabular-nums;
      text-align: right;
    }
    @container (max-width: 620px) {
      :host(:not([near])) {
        padding-top: 18px;
      }
      .wide {
        margin: 14px 0 20px;
      }
      .inks {
        padding: 0 18px;
      }
    }
  `;
}
