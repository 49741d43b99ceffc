import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from './controls.ts';
import { QwElement } from './element.ts';
import { emit } from './emit.ts';

export interface Choice {
  readonly value: string;
  readonly label: string;
}

/**
 * A few words of which one holds; the one that holds stands bold over a full line. Arrow keys move as in any
 * group of radio buttons.
 * @fires qw-choose - `{ value }`, when another one is chosen
 */
@customElement('qw-choice')
export class QwChoice extends QwElement {
  static override styles = [controls, styles()];

  /** Says what is chosen. */
  @property() label = '';
  @property({ type: Boolean, attribute: 'shows-label' }) showsLabel = false;
  @property({ attribute: false }) choices: readonly Choice[] = [];
  @property() value = '';

  override render() {
    return html`<fieldset>
      <legend class="unseen">${this.label}</legend>
      ${this.showsLabel ? html`<span class="label" aria-hidden="true">${this.label}</span>` : nothing}
      <div class="words">
        ${this.choices.map(
          ({ value, label }) =>
            html`<label>
              <input
                type="radio"
                name="choice"
                class="unseen"
                .value=${value}
                .checked=${value === this.value}
                @change=${() => this.choose(value)}
              /><span>${label}</span>
            </label>`,
        )}
      </div>
    </fieldset>`;
  }

  private choose(value: string): void {
    this.value = value;
    emit(this, 'qw-choose', { value });
  }
}

function styles() {
  return css`
    :host {
      font: 14.5px/1.25 var(--qw-sans);
    }
    fieldset {
      display: flex;
      align-items: center;
      gap: 0 12px;
      margin: 0;
      padding: 0;
      border: 0;
      min-width: 0;
    }
    /* A legend that shows would stand on a line of its own in some browsers. */
    .label {
      color: var(--qw-soft);
    }
    .words {
      display: flex;
      flex-wrap: wrap;
      gap: 0 12px;
    }
    label {
      position: relative;
      display: inline-flex;
      align-items: center;
      min-height: 44px;
      justify-content: center;
      min-width: 44px;
      cursor: pointer;
    }
    label span {
      padding-bottom: 2px;
      border-bottom: 2px solid transparent;
      color: var(--qw-soft);
    }
    label:hover span {
      border-bottom-color: var(--qw-hair);
    }
    input:checked + span {
      border-bottom-color: var(--qw-ink);
      color: var(--qw-ink);
      font-weight: 600;
    }
    input:focus-visible + span {
      outline: 2px solid var(--qw-ink);
      outline-offset: 3px;
    }
  `;
}
