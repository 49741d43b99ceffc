import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { BoardLeaf } from '../../src/notebook/model.ts';
import '../board/qw-board.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import type { QwEvent } from '../support/events.ts';
import type { Choice } from '../support/qw-choice.ts';
import '../support/qw-choice.ts';
import '../support/qw-title.ts';
import '../support/qw-writing.ts';

/**
 * A board: the picture as it will be shared, its words and size, and the ways to save it.
 * @fires qw-retitle - `{ title }` · qw-write - `{ text }` · qw-set-size, qw-set-kind - `{ value }`
 * @fires qw-save-board - `{ as: 'png' | 'svg' | 'pdf' }`
 */
@customElement('qw-board-leaf')
export class QwBoardLeaf extends QwElement {
  static override styles = [controls, ruled, styles()];

  @property({ attribute: false }) leaf: BoardLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  /** Title of the study that it is made of, which a board is given at first. */
  @property({ attribute: false }) studyTitle: string | null = null;
  /** Kinds of board to choose from; with one there is nothing to choose. */
  @property({ attribute: false }) kinds: readonly Choice[] = [];
  /** The drawn board, or null where its study has no pair. */
  @property({ attribute: false }) svg: string | null = null;

  override render() {
    const { leaf, svg } = this;
    if (!leaf) return nothing;
    return html`<div class="row head">
        <div class="margin">${this.margin.map((line) => html`<span>${line}</span>`)}</div>
        <div class="text">
          <qw-title .value=${leaf.title} ?given=${leaf.title === this.studyTitle} empty="Title of the board"></qw-title>
          <p class="lede">One picture of the comparison, to share or print.</p>
          <div class="tools">
            ${
              this.kinds.length > 1
                ? html`<qw-choice label="Shows" shows-label .choices=${this.kinds} .value=${leaf.shows ?? 'pair'} @qw-choose=${this.onKind}></qw-choice>`
                : nothing
            }
            <qw-choice
              label="Size"
              shows-label
              .choices=${sizes}
              .value=${leaf.size}
              @qw-choose=${this.onSize}
            ></qw-choice>
            ${svg ? html`<div class="ways" role="group" aria-label="Save the board">${ways.map((way) => this.way(way))}</div>` : nothing}
          </div>
        </div>
      </div>
      <div class="wide ${leaf.size}">
        ${
          svg
            ? html`<qw-board .svg=${svg} label="Board: ${leaf.title || 'comparison'}. All that it says stands on the study it was made from."></qw-board>`
            : html`<p class="none">Nothing to show yet: give the study of this board an anchor and a candidate.</p>`
        }
      </div>
      <div class="row">
        <div class="margin" aria-hidden="true"><b>your words</b><span>stand on the board</span></div>
        <div class="text">
          <qw-writing label="Your words on the board" prompt="A line or two for those who will see it." .value=${leaf.words}></qw-writing>
        </div>
      </div>`;
  }

  private way({ as, words, about }: Way) {
    return html`<button type="button" class="slip" title=${about} @click=${() => emit(this, 'qw-save-board', { as })}>${words}</button>`;
  }

  private onKind(event: QwEvent<'qw-set-kind'>): void {
    event.stopPropagation();
    emit(this, 'qw-set-kind', event.detail);
  }

  private onSize(event: QwEvent<'qw-set-size'>): void {
    event.stopPropagation();
    emit(this, 'qw-set-size', event.detail);
  }
}

interface Way {
  readonly as: 'png' | 'svg' | 'pdf';
  readonly words: string;
  readonly about: string;
}

const ways: readonly Way[] = [
  { as: 'png', words: 'Save as picture (PNG)', about: 'To post or send' },
  { as: 'pdf', words: 'Save to print (PDF)', about: 'Real text, true size' },
  { as: 'svg', words: 'Save as drawing (SVG)', about: 'To open in a drawing program' },
];
const sizes = [
  { value: 'square', label: 'square' },
  { value: 'a4', label: 'A4' },
  { value: 'letter', label: 'letter' },
];

function styles() {
  return css`
    :host {
      padding: 34px 0 60px;
    }
    .head .margin {
      padding-top: 8px;
    }
    .lede {
      margin: 4px 0 8px;
      color: var(--qw-soft);
      font-style: italic;
    }
    .tools,
    .ways {
      display: flex;
      flex-wrap: wrap;
      gap: 8px 26px;
    }
    .ways {
      gap: 8px 10px;
    }
    .wide {
      margin: 20px 40px 26px 28px;
    }
    qw-board {
      max-width: 980px;
      margin: 0 auto;
    }
    .a4 qw-board,
    .letter qw-board {
      max-width: 760px;
    }
    .none {
      padding: 30px;
      border: 1.5px dashed var(--qw-hair);
      text-align: center;
      font-style: italic;
    }
    @container (max-width: 620px) {
      :host {
        padding-top: 18px;
      }
      .wide {
        margin: 16px 14px 20px;
      }
    }
  `;
}
