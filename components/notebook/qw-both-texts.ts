import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';

/** A text that was written in two tabs at once. */
export interface BothTexts {
  readonly id: string;
  readonly of: 'text' | 'title';
  /** What stands on the leaf. */
  readonly here: string;
  /** What was written in the other tab. */
  readonly other: string;
}

/**
 * Shows two texts of one leaf, and lets the reader choose. Until she does, both are kept.
 * @fires qw-choose-text - `{ id, keep: 'this' | 'that' | 'both' }`
 */
@customElement('qw-both-texts')
export class QwBothTexts extends QwElement {
  static override styles = [controls, styles()];

  @property({ attribute: false }) value: BothTexts | null = null;

  override render() {
    const { value } = this;
    if (!value) return html``;
    const { id, of, here, other } = value;
    const keep = (what: 'this' | 'that' | 'both') => () => emit(this, 'qw-choose-text', { id, keep: what });
    return html`<section aria-label="Written in two tabs">
      <p>
        ${of === 'title' ? 'This title was also written' : 'This was also written'} in another tab.
        Both are kept until you choose.
      </p>
      <div class="two">
        <div>
          <h3>On this leaf now</h3>
          <blockquote tabindex="0">${here === '' ? html`<i>Nothing.</i>` : here}</blockquote>
          <button type="button" class="word" @click=${keep('this')}><span>Keep this</span></button>
        </div>
        <div>
          <h3>In the other tab</h3>
          <blockquote tabindex="0">${other === '' ? html`<i>Nothing.</i>` : other}</blockquote>
          <button type="button" class="word" @click=${keep('that')}><span>Keep that</span></button>
        </div>
      </div>
      <button type="button" class="word" @click=${keep('both')}><span>Keep both, one after the other</span></button>
    </section>`;
  }
}

function styles() {
  return css`
    :host {
      display: block;
      font: 14.5px/1.4 var(--qw-sans);
    }
    section {
      margin-top: 22px;
      padding: 12px 16px;
      background: var(--qw-leaf);
      border: 2px solid var(--qw-ink);
      border-radius: 3px;
    }
    .two {
      display: grid;
      grid-template-columns: repeat(auto-fit, minmax(min(240px, 100%), 1fr));
      gap: 6px 24px;
      margin-top: 8px;
    }
    h3 {
      font: 600 13px/1.3 var(--qw-sans);
    }
    blockquote {
      max-height: 12em;
      margin: 4px 0;
      padding: 6px 10px;
      overflow: auto;
      border: 1px solid var(--qw-rule);
      font: 15px/1.5 var(--qw-serif);
      white-space: pre-wrap;
      overflow-wrap: anywhere;
    }
  `;
}
