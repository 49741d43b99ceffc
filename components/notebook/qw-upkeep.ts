import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import '../support/qw-choice.ts';

/** What the upkeep of a notebook shows. */
export interface UpkeepState {
  /** What would be undone: "add a candidate"; null where there is nothing. */
  readonly undoes: string | null;
  readonly redoes: string | null;
  /** "2 March 2027", or null for never. */
  readonly lastBackup: string | null;
  readonly theme: 'system' | 'light' | 'dark';
  readonly hand: 'left' | 'right';
}

/**
 * Undo and redo, sources, backups, a fresh start, and how the page looks.
 * @fires qw-undo, qw-redo, qw-save-backup, qw-open-backup, qw-clear, qw-open-demo - nothing
 * @fires qw-prefer - `{ theme }` or `{ hand }`
 */
@customElement('qw-upkeep')
export class QwUpkeep extends QwElement {
  static override styles = [controls, styles()];

  @property({ attribute: false }) value: UpkeepState = {
    undoes: null,
    redoes: null,
    lastBackup: null,
    theme: 'system',
    hand: 'right',
  };

  override render() {
    const { undoes, redoes, lastBackup, theme, hand } = this.value;
    return html`<div class="pair">
        ${this.button('qw-undo', 'Undo', undoes === null, undoes ? `Undo: ${undoes}` : nothing)}
        ${this.button('qw-redo', 'Redo', redoes === null, redoes ? `Redo: ${redoes}` : nothing)}
        <a class="word" href="#sources"><span>Sources</span></a>
      </div>
      <details>
        <summary class="word"><span>Keep or begin again</span></summary>
        <p>${lastBackup ? `Last backup: ${lastBackup}.` : 'No backup yet. The notebook lives in this browser only: a backup is one file.'}</p>
        ${this.button('qw-save-backup', 'Save a backup')} ${this.button('qw-open-backup', 'Open a backup')}
        ${this.button('qw-clear', 'Start an empty notebook')} ${this.button('qw-open-demo', 'Open the demo again')}
      </details>
      <details>
        <summary class="word"><span>How it looks</span></summary>
        <qw-choice label="Light" shows-label .choices=${lights} .value=${theme} @qw-choose=${this.prefer('theme')}></qw-choice>
        <qw-choice label="Drawer at my" shows-label .choices=${hands} .value=${hand} @qw-choose=${this.prefer('hand')}></qw-choice>
      </details>`;
  }

  private button(event: string, words: string, off = false, title: string | typeof nothing = nothing) {
    return html`<button type="button" class="word" ?disabled=${off} title=${title} @click=${() => emit(this, event, {})}>
      <span>${words}</span>
    </button>`;
  }

  private prefer(what: 'theme' | 'hand') {
    return (event: CustomEvent<{ value: string }>): void => {
      event.stopPropagation();
      emit(this, 'qw-prefer', { [what]: event.detail.value });
    };
  }
}

const lights = [
  { value: 'system', label: 'device’s' },
  { value: 'light', label: 'light' },
  { value: 'dark', label: 'dark' },
];
const hands = [
  { value: 'left', label: 'left' },
  { value: 'right', label: 'right' },
];

function styles() {
  return css`
    :host {
      font: 14px/1.35 var(--qw-sans);
    }
    .pair {
      display: flex;
      flex-wrap: wrap;
      gap: 0 18px;
    }
    .word {
      font-size: 14px;
    }
    a.word {
      text-decoration: none;
    }
    details > .word:not(summary) {
      display: flex;
    }
    summary {
      cursor: pointer;
      list-style: none;
    }
    summary::-webkit-details-marker {
      display: none;
    }
    p {
      margin: 2px 0 6px;
      font-size: 13px;
    }
  `;
}
