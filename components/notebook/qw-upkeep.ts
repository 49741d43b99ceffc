import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
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
  /** What of the notebook could not be read: what it is called, and why. */
  readonly setAside: readonly { readonly name: string; readonly why: string }[];
}

/** Another notebook that is kept in this browser. */
export interface KeptLine {
  readonly id: string;
  readonly title: string;
  /** When it was saved: "2 March 2027, 14:05". */
  readonly saved: string;
  /** False where it can't be opened any more. */
  readonly sound: boolean;
}

/**
 * Undo and redo, sources, backups, a fresh start, and how the page looks.
 * @fires qw-undo, qw-redo, qw-save-backup, qw-open-backup, qw-clear, qw-open-demo - nothing
 * @fires qw-ask-kept - when the other notebooks that are kept are wanted
 * @fires qw-open-kept, qw-remove-kept, qw-save-kept - `{ id }`
 * @fires qw-save-set-aside - nothing: what could not be read is wanted as a file
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
    setAside: [],
  };

  /** Other notebooks that are kept in this browser, newest first. */
  @state() private sure: string | null = null;
  @property({ attribute: false }) kept: readonly KeptLine[] = [];

  override render() {
    const { undoes, redoes, lastBackup, theme, hand, setAside } = this.value;
    return html`<div class="pair">
        ${this.button('qw-undo', 'Undo', undoes === null, undoes ? `Undo: ${undoes}` : nothing)}
        ${this.button('qw-redo', 'Redo', redoes === null, redoes ? `Redo: ${redoes}` : nothing)}
        <a class="word" href="#sources"><span>Sources</span></a>
      </div>
      ${setAside.length > 0 ? this.unread(setAside) : nothing}
      <details @toggle=${this.onKeep}>
        <summary class="word"><span>Back up or start over</span></summary>
        <p>${lastBackup ? `Last backup: ${lastBackup}.` : 'No backup yet. The notebook lives in this browser only: a backup is one file.'}</p>
        ${this.button('qw-save-backup', 'Save a backup')} ${this.button('qw-open-backup', 'Open a backup')}
        ${this.button('qw-clear', 'Start your own notebook')} ${this.button('qw-open-demo', 'Open the demo again')}
        ${this.kept.length > 0 ? this.others() : nothing}
      </details>
      <details>
        <summary class="word"><span>How it looks</span></summary>
        <qw-choice label="Page" shows-label .choices=${lights} .value=${theme} @qw-choose=${this.prefer('theme')}></qw-choice>
        <qw-choice label="Drawer at my" shows-label .choices=${hands} .value=${hand} @qw-choose=${this.prefer('hand')}></qw-choice>
      </details>`;
  }

  private unread(setAside: UpkeepState['setAside']) {
    const one = setAside.length === 1;
    return html`<section aria-label="What could not be read">
      <p>
        ${one ? 'One thing' : `${setAside.length} things`} in this notebook could not be read.
        ${one ? 'It is kept as it is.' : 'They are kept as they are.'}
      </p>
      ${this.button('qw-save-set-aside', one ? 'Save it as a file' : 'Save them as a file')}
      <details>
        <summary class="word"><span>${one ? 'Which one it is' : 'Which they are'}</span></summary>
        <ul>
          ${setAside.slice(0, mostListed).map(({ name, why }) => html`<li><span>${name}<small>${why}</small></span></li>`)}
          ${setAside.length > mostListed ? html`<li><span>And ${setAside.length - mostListed} more.</span></li>` : nothing}
        </ul>
      </details>
    </section>`;
  }

  private others() {
    return html`<h3>Other notebooks in this browser</h3>
      <ul>
        ${this.kept.map(
          ({ id, title, saved, sound }) =>
            html`<li>
              <span>${title}<small>${saved}</small></span>
              ${
                sound
                  ? html`<button type="button" class="word" aria-label="Open ${title}, ${saved}" @click=${() => emit(this, 'qw-open-kept', { id })}>
                    <span>Open</span>
                  </button>`
                  : html`<button type="button" class="word" aria-label="Save ${title}, ${saved}, as a file" @click=${() => emit(this, 'qw-save-kept', { id })}>
                    <span>Save as a file</span>
                  </button>`
              }
              <button type="button" class="word" aria-label=${this.sure === id ? `Remove ${title} for good` : `Remove ${title}`} @click=${() => this.askRemoval(id)}>
                <span>${this.sure === id ? 'Remove for good' : 'Remove'}</span>
              </button>
            </li>`,
        )}
      </ul>`;
  }

  private onKeep(event: Event): void {
    if ((event.target as HTMLDetailsElement).open) emit(this, 'qw-ask-kept', {});
  }

  /** What is removed can't be brought back, so it is asked twice. */
  private askRemoval(id: string): void {
    if (this.sure !== id) {
      this.sure = id;
      return;
    }
    this.sure = null;
    emit(this, 'qw-remove-kept', { id });
  }

  private button(event: Plainly, words: string, off = false, title: string | typeof nothing = nothing) {
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

/** What a button here says, which carries nothing. */
type Plainly =
  | 'qw-undo'
  | 'qw-redo'
  | 'qw-save-backup'
  | 'qw-open-backup'
  | 'qw-clear'
  | 'qw-open-demo'
  | 'qw-save-set-aside';
/** What could not be read is listed up to here; the file has all of it. */
const mostListed = 50;

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
    section {
      margin-top: 6px;
      padding-left: 10px;
      border-left: 2px solid var(--qw-ink);
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
    h3 {
      margin: 10px 0 2px;
      font: 600 13px/1.3 var(--qw-sans);
    }
    li {
      display: flex;
      flex-wrap: wrap;
      align-items: center;
      gap: 0 14px;
      border-top: 1px solid var(--qw-rule);
    }
    li > span {
      flex: 1 1 100%;
      padding-top: 6px;
      overflow-wrap: anywhere;
    }
    li small {
      display: block;
      color: var(--qw-soft);
      font-size: 13px;
    }
  `;
}
