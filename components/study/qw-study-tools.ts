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
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 0 26px;
        font: 14.5px/1.25 var(--qw-sans);
      }
      label {
        display: inline-flex;
        align-items: center;
        gap: 8px;
        min-height: 44px;
        cursor: pointer;
      }
      .board {
        display: inline-flex;
        align-items: center;
        gap: 8px;
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
    return html`<div>
      <qw-choice label="How far apart they lie" .choices=${distances} .value=${leaf.distance} @qw-choose=${this.hand('qw-set-distance')}></qw-choice>
      <qw-choice label="Which wheel" .choices=${wheels} .value=${leaf.wheel} @qw-choose=${this.hand('qw-set-wheel')}></qw-choice>
      <qw-choice label="Surround" shows-label .choices=${surrounds} .value=${this.surround} @qw-choose=${this.hand('qw-set-surround')}></qw-choice>
      <label><input type="checkbox" .checked=${leaf.asksFirst} @change=${this.onAsksFirst} />I say first</label>
      <span class="board">
        <button type="button" class="word" aria-describedby=${this.quiet ? 'why-not' : nothing} ?disabled=${!this.hasPair || this.quiet} @click=${() => emit(this, 'qw-make-board', {})}>
          <span>Make a board</span>
        </button>
        ${this.quiet ? html`<small id="why-not">once you have said yours</small>` : nothing}
      </span>
    </div>`;
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
  { value: 'touching', label: 'Touching' },
  { value: 'apart', label: 'Apart' },
];
const wheels = [
  { value: 'eye', label: 'Eye’s wheel' },
  { value: 'painter', label: 'Painter’s wheel' },
];
const surrounds = [
  { value: 'grey', label: 'grey' },
  { value: 'white', label: 'white' },
  { value: 'dark', label: 'dark' },
];
