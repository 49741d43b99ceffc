import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { byHand } from '../support/by-finger.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { paperType } from '../support/paper-type.ts';
import { candidateStyles } from './candidate-styles.ts';
import { type CandidateView, keepsQuiet } from './study-view.ts';
import { verdictInSentence } from './words.ts';

/**
 * A study's candidates, best first, each with its verdict; one is shown in full. A paper dropped here is held
 * against the anchor too.
 * @fires qw-show-candidate - `{ index }`
 * @fires qw-remove-candidate - `{ index }`, when the shown one is put back into the drawer
 * @fires qw-choose-paper - `{ as }`, when another candidate or another anchor is asked for
 * @fires qw-drop-paper - `{ key, as: 'candidate' }`, when a paper from the drawer is let go here
 */
@customElement('qw-candidates')
export class QwCandidates extends QwElement {
  static override styles = [controls, candidateStyles];

  @property({ attribute: false }) candidates: readonly CandidateView[] = [];
  /** Index (in the study) of the one that is shown. */
  @property({ type: Number }) shown = 0;
  @property({ type: Boolean, attribute: 'asks-first' }) asksFirst = false;
  /** True while another paper may be shown in its place: then none is put back, for its name would be the wrong one. */
  @property({ type: Boolean }) supposed = false;
  @state() private over = false;

  override render() {
    const shown = this.candidates.find(({ index }) => index === this.shown);
    return html`<section aria-label="Candidates, best first">
      <h3 class="head">Candidates</h3>
      <ol>
        ${this.candidates.map((candidate, place) => this.tab(candidate, place))}
      </ol>
      <div class="end">
        <button type="button" class="word" @click=${() => emit(this, 'qw-choose-paper', { as: 'anchor' })}>
          <span>Another anchor</span>
        </button>
        ${
          shown && !this.supposed
            ? html`<button type="button" class="word" @click=${() => emit(this, 'qw-remove-candidate', { index: shown.index })}>
                <span>Put ${shown.name} back</span>
              </button>`
            : nothing
        }
        <button
          type="button"
          class="word drop ${this.over ? 'over' : ''}"
          @click=${() => emit(this, 'qw-choose-paper', { as: 'candidate' })}
          @dragover=${this.onDragOver}
          @dragleave=${() => (this.over = false)}
          @drop=${this.onDrop}
        >
          <span>${byHand('Drop or choose a paper', 'Choose a paper')}</span>
        </button>
      </div>
    </section>`;
  }

  private tab(candidate: CandidateView, place: number) {
    const on = candidate.index === this.shown;
    const quiet = keepsQuiet(this.asksFirst, candidate);
    return html`<li>
      <button
        type="button"
        class="tab ${on ? 'on' : ''}"
        aria-current=${on ? 'true' : 'false'}
        @click=${() => emit(this, 'qw-show-candidate', { index: candidate.index })}
      >
        <b>${place + 1} ${candidate.name}</b>
        <small>${quiet ? 'you say first' : verdictInSentence(candidate.comparison.verdict)}</small>
      </button>
    </li>`;
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
    emit(this, 'qw-drop-paper', { key, as: 'candidate' });
  }
}
