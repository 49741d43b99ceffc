import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { letterOn } from '../../src/drawing/ladders.ts';
import { controls } from './controls.ts';
import { QwElement } from './element.ts';
import { emit } from './emit.ts';

/** A colour that can be picked: an ink of a paper, or a plain. */
export interface Pickable {
  readonly value: string;
  readonly hex: string;
  /** In words: "coral". */
  readonly words: string;
  /** Stands on the colour; '' for none. */
  readonly letter: string;
}

/**
 * Colours that lie on papers, of which one is picked: a group of radio buttons, the picked one in a double line. Arrow
 * keys move as in any such group.
 * @fires qw-pick - `{ value }`, when another one is picked
 */
@customElement('qw-pick-ink')
export class QwPickInk extends QwElement {
  static override styles = [controls, styles()];

  @property() label = '';
  @property({ type: Boolean, attribute: 'hides-label' }) hidesLabel = false;
  @property({ attribute: false }) inks: readonly Pickable[] = [];
  @property() value = '';

  override render() {
    return html`<fieldset>
      <legend class=${this.hidesLabel ? 'unseen' : ''}>${this.label}</legend>
      <div class="inks">
        ${this.inks.map(
          ({ value, hex, words, letter }) => html`<label title=${words}>
            <input type="radio" name="ink" class="unseen" .value=${value} .checked=${value === this.value} @change=${() => this.pick(value)} />
            <span class="ink" style="background:${hex};color:${letterOn(hex)}">${letter || nothing}</span>
            <span class="words">${words}${letter ? html`<span class="unseen"> (${letter})</span>` : nothing}</span>
          </label>`,
        )}
      </div>
    </fieldset>`;
  }

  private pick(value: string): void {
    this.value = value;
    emit(this, 'qw-pick', { value });
  }
}

function styles() {
  return css`
    :host {
      font: 13px/1.2 var(--qw-sans);
    }
    fieldset {
      margin: 0;
      padding: 0;
      border: 0;
      min-width: 0;
    }
    legend {
      padding: 0 0 4px;
      color: var(--qw-soft);
      font-size: 13.5px;
    }
    .inks {
      display: flex;
      flex-wrap: wrap;
      gap: 8px 6px;
    }
    label {
      position: relative;
      display: grid;
      justify-items: center;
      align-content: start;
      gap: 4px;
      width: 66px;
      min-height: 44px;
      cursor: pointer;
    }
    .ink {
      display: grid;
      place-items: center;
      width: 44px;
      height: 34px;
      margin: 5px 0 1px;
      font-weight: 600;
      font-size: 14px;
      box-shadow: 0 0 0 0.5px oklch(0.5 0 0 / 0.5);
    }
    .words {
      max-width: 100%;
      overflow-wrap: anywhere;
      text-align: center;
      color: var(--qw-soft);
    }
    label:hover .words {
      color: var(--qw-ink);
    }
    input:checked + .ink {
      box-shadow: 0 0 0 2px var(--qw-leaf), 0 0 0 4.5px var(--qw-ink);
    }
    input:checked ~ .words {
      color: var(--qw-ink);
      font-weight: 600;
    }
    input:focus-visible + .ink {
      outline: 2px solid var(--qw-ink);
      outline-offset: 6px;
    }
  `;
}
