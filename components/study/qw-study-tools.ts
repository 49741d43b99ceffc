import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { StudyLeaf, Surround } from '../../src/notebook/model.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import type { QwEvent } from '../support/events.ts';
import '../support/qw-choice.ts';

/**
 * How a study is looked at: distance, wheel, surround; who speaks first; and a board made of it.
 * @fires qw-set-distance, qw-set-wheel, qw-set-surround, qw-set-asks-first - `{ value }`
 * @fires qw-make-board - nothing
 */
@customElement('qw-study-tools')
export class QwStudyTools extends QwElement {
  static override styles = [
    controls,
    css`
      :host {
        position: relative;
        font: 14.5px/1.25 var(--qw-sans);
      }
      .tools {
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 0 18px;
      }
      summary {
        cursor: pointer;
        list-style: none;
      }
      summary::-webkit-details-marker {
        display: none;
      }
      .panel {
        position: absolute;
        top: 100%;
        right: 0;
        z-index: 2;
        display: grid;
        gap: 2px;
        width: max-content;
        max-width: min(420px, 86vw);
        padding: 10px 18px;
        background: var(--qw-leaf);
        border: 1px solid var(--qw-hair);
        border-radius: 3px;
        box-shadow: 0 6px 20px var(--qw-lift);
      }
      label {
        display: inline-flex;
        align-items: center;
        gap: 8px;
        min-height: 44px;
        cursor: pointer;
      }
      small {
        font-size: 13px;
        color: var(--qw-soft);
      }
      input {
        width: 17px;
        height: 17px;
        margin: 0;
        accent-color: var(--qw-ink);
      }
      @media (max-width: 900px) {
        .panel {
          right: auto;
          left: 0;
        }
      }
    `,
  ];

  @property({ attribute: false }) leaf: StudyLeaf | null = null;
  @property() surround: Surround = 'grey';
  /** True where there is a pair to make a board of. */
  @property({ type: Boolean, attribute: 'has-pair' }) hasPair = false;
  /** True while the reading keeps quiet: a board would give away what it found. */
  @property({ type: Boolean }) quiet = false;

  override render() {
    const { leaf } = this;
    if (!leaf) return nothing;
    return html`<div class="tools">
      <button type="button" class="word" aria-describedby=${this.quiet ? 'why-not' : nothing} ?disabled=${!this.hasPair || this.quiet} @click=${() => emit(this, 'qw-make-board', {})}>
        <span>Make a board</span>
      </button>
      ${this.quiet ? html`<small id="why-not">after you answer</small>` : nothing}
      <details @keydown=${this.onKey}>
        <summary class="word"><span>How it is judged</span></summary>
        <div class="panel">
          <qw-choice label="The papers lie" shows-label .choices=${distances} .value=${leaf.distance} @qw-choose=${this.hand('qw-set-distance')}></qw-choice>
          <qw-choice label="Hues by the" shows-label .choices=${wheels} .value=${leaf.wheel} @qw-choose=${this.hand('qw-set-wheel')}></qw-choice>
          <qw-choice label="Surround" shows-label .choices=${surrounds} .value=${this.surround} @qw-choose=${this.hand('qw-set-surround')}></qw-choice>
          <label><input type="checkbox" .checked=${leaf.asksFirst} @change=${this.onAsksFirst} />Let me answer first</label>
        </div>
      </details>
    </div>`;
  }

  /** Escape shuts the settings, and the keyboard stays on what opened them. */
  private onKey(event: KeyboardEvent): void {
    const details = event.currentTarget as HTMLDetailsElement;
    if (event.key !== 'Escape' || !details.open) return;
    event.stopPropagation();
    details.open = false;
    details.querySelector('summary')?.focus();
  }

  private hand<Name extends Setting>(name: Name) {
    return (event: QwEvent<Name>): void => {
      event.stopPropagation();
      emit(this, name, event.detail);
    };
  }

  private onAsksFirst(event: Event): void {
    emit(this, 'qw-set-asks-first', { value: (event.target as HTMLInputElement).checked });
  }
}

/** What a choice here sets, under the name that it goes on by. */
type Setting = 'qw-set-distance' | 'qw-set-wheel' | 'qw-set-surround';

const distances = [
  { value: 'touching', label: 'touching' },
  { value: 'apart', label: 'apart' },
];
const wheels = [
  { value: 'eye', label: 'eye’s wheel' },
  { value: 'painter', label: 'painter’s wheel' },
];
const surrounds = [
  { value: 'grey', label: 'grey' },
  { value: 'white', label: 'white' },
  { value: 'dark', label: 'dark' },
];
