import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Kit } from '../../src/harmony/model.ts';
import type { KitLeaf } from '../../src/notebook/model.ts';
import type { KitView } from '../kit/kit-view.ts';
import '../kit/qw-cut-list.ts';
import '../kit/qw-kit-matrix.ts';
import '../kit/qw-kit-pieces.ts';
import { chipStyle } from '../study/chip-style.ts';
import '../study/qw-reasons.ts';
import '../study/qw-verdict.ts';
import { inksSpokenOf, withChips } from '../study/sentence.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { paperType } from '../support/paper-type.ts';
import '../support/qw-title.ts';
import '../support/qw-writing.ts';

/**
 * A kit: the papers and plains chosen for one page, and how they hold together as a whole.
 * @fires qw-retitle - `{ title }` · qw-write - `{ text }`
 * @fires qw-choose-paper - `{ as: 'piece' }` · qw-drop-paper - `{ key, as: 'piece' }` · qw-add-photographs - nothing
 * @fires qw-change-piece - `{ index, change }` · qw-remove-piece - `{ index }`
 */
@customElement('qw-kit-leaf')
export class QwKitLeaf extends QwElement {
  static override styles = [controls, ruled, chipStyle, styles()];

  @property({ attribute: false }) leaf: KitLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  @property({ attribute: false }) view: KitView | null = null;
  @state() private lit: readonly string[] = [];
  @state() private over = false;

  override render() {
    const { leaf, view } = this;
    if (!leaf || !view) return nothing;
    const { kit, pieces } = view;
    return html`<div class="page" @qw-point=${this.onPoint}>
      <div class="row head">
        <div class="margin">${this.margin.map((line) => html`<span>${line}</span>`)}</div>
        <div class="text">
          <qw-title .value=${leaf.title} empty="What is the page for?"></qw-title>
          <p class="lede">The papers and plains for one page, judged as a whole.</p>
        </div>
      </div>
      <section class="row" aria-label="Pieces">
        <div class="margin" aria-hidden="true"><b>pieces</b><span>numbered as below</span></div>
        <div class="text">
          ${pieces.length ? html`<qw-kit-pieces .view=${view} .lit=${this.lit}></qw-kit-pieces>` : html`<p class="invitation">Take out what the page is to be made of: sheets, plains, parts, and the photographs that will sit on it.</p>`}
          <div
            class="take ${this.over ? 'over' : ''}"
            @dragover=${this.onDragOver}
            @dragleave=${() => (this.over = false)}
            @drop=${this.onDrop}
          >
            <button type="button" class="slip" @click=${() => emit(this, 'qw-choose-paper', { as: 'piece' })}>Choose from the drawer</button>
            <button type="button" class="slip" @click=${() => emit(this, 'qw-add-photographs', {})}>Add photographs</button>
          </div>
        </div>
      </section>
      ${kit && pieces.length > 1 ? this.found(kit, view) : nothing}
      <div class="row words">
        <div class="margin" aria-hidden="true"><b>your words</b></div>
        <div class="text">
          <qw-writing label="Your words on this kit" prompt="The story of the page, where things go, what to buy." .value=${leaf.text}></qw-writing>
        </div>
      </div>
    </div>`;
  }

  private found(kit: Kit, view: KitView) {
    return html`<qw-verdict .comparison=${kit}></qw-verdict>
      <qw-reasons .comparison=${kit} .lit=${this.lit}></qw-reasons>
      ${this.section('Every two', 'press a mark for its reasons', html`<qw-kit-matrix .kit=${kit}></qw-kit-matrix>`)}
      ${kit.missing.length ? this.section('What is missing', '', this.missing(kit)) : nothing}
      ${kit.repeats.length ? this.section('Where each strong colour comes back', 'three places make a triangle', this.repeats(kit)) : nothing}
      ${this.section(
        'What to cut',
        'mats and strips too',
        view.cuts
          ? html`<qw-cut-list .cuts=${view.cuts}></qw-cut-list>`
          : html`<p class="soft">Give the pieces their size on the page, and the cuts are worked out here.</p>`,
      )}`;
  }

  private section(title: string, aside: string, content: unknown) {
    return html`<section class="row part">
      <div class="margin" aria-hidden="true"><span>${aside}</span></div>
      <div class="text"><h3>${title}</h3>${content}</div>
    </section>`;
  }

  private missing(kit: Kit) {
    const table = inksSpokenOf(kit);
    return html`<ul class="lines">${kit.missing.map(({ says, inks }) => html`<li>${withChips(says, inks, table)}</li>`)}</ul>`;
  }

  private repeats(kit: Kit) {
    const table = inksSpokenOf(kit);
    return html`<ul class="repeats">
      ${kit.repeats.map(
        ({ word, inks, places }) => html`<li>
          <b>${word}</b> <span>${withChips(inks.map((id) => `(${id})`).join(' '), inks, table)}</span>
          <small>${places === 1 ? 'one place' : `${places} places`}${places > 2 ? ', a triangle' : ''}</small>
        </li>`,
      )}
    </ul>`;
  }

  private onPoint(event: CustomEvent<{ inks: readonly string[] }>): void {
    this.lit = event.detail.inks;
  }

  private onDragOver(event: DragEvent): void {
    if (!event.dataTransfer?.types.includes(paperType)) return;
    event.preventDefault();
    this.over = true;
  }

  private onDrop(event: DragEvent): void {
    this.over = false;
    const key = event.dataTransfer?.getData(paperType);
    if (!key) return;
    event.preventDefault();
    event.stopPropagation();
    emit(this, 'qw-drop-paper', { key, as: 'piece' });
  }
}

function styles() {
  return css`
    .page {
      padding: 34px 0 60px;
    }
    .head .margin {
      padding-top: 8px;
    }
    .lede {
      margin: 4px 0 14px;
      color: var(--qw-soft);
      font-style: italic;
    }
    .invitation {
      max-width: 34em;
      font-size: 19px;
    }
    .take {
      display: flex;
      flex-wrap: wrap;
      gap: 10px;
      margin: 16px 0 26px;
      padding: 12px;
      border: 1.5px dashed var(--qw-rule);
    }
    .over {
      border-color: var(--qw-ink);
    }
    .part {
      margin: 18px 0 8px;
    }
    h3 {
      margin-bottom: 8px;
      font: 600 17px/1.3 var(--qw-serif);
    }
    .lines li,
    .soft {
      max-width: 41em;
      padding: 3px 0;
    }
    .soft {
      color: var(--qw-soft);
      font-style: italic;
    }
    .repeats li {
      display: flex;
      flex-wrap: wrap;
      align-items: baseline;
      gap: 2px 12px;
      padding: 4px 0;
      border-bottom: 1px solid var(--qw-rule);
    }
    .repeats b {
      font-weight: 400;
      min-width: 11em;
    }
    small {
      font: 13px/1.3 var(--qw-sans);
      color: var(--qw-soft);
    }
    .words {
      margin-top: 14px;
    }
    @container (max-width: 620px) {
      .page {
        padding-top: 18px;
      }
    }
  `;
}
