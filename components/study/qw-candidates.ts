import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Surround } from '../../src/notebook/model.ts';
import '../sheet/qw-paper.ts';
import { byHand } from '../support/by-finger.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { paperType } from '../support/paper-type.ts';
import { candidateStyles } from './candidate-styles.ts';
import { type CandidateView, keepsQuiet } from './study-view.ts';
import { verdictMark } from './verdict-mark.ts';
import { verdictInSentence } from './words.ts';

/**
 * A study's candidates as small pictures, best first, each with the mark of its verdict; one is shown in full. A paper
 * dropped here is held against the anchor too.
 * @fires qw-show-candidate - `{ index }`
 * @fires qw-choose-paper - `{ as: 'candidate' }`, when another candidate is asked for
 * @fires qw-drop-paper - `{ key, as: 'candidate' }`, when a paper from the drawer is let go here
 */
@customElement('qw-candidates')
export class QwCandidates extends QwElement {
  static override styles = [controls, candidateStyles];

  @property({ attribute: false }) candidates: readonly CandidateView[] = [];
  /** Index (in the study) of the one that is shown. */
  @property({ type: Number }) shown = 0;
  @property({ type: Boolean, attribute: 'asks-first' }) asksFirst = false;
  @property() surround: Surround = 'grey';
  @state() private over = false;

  override render() {
    return html`<section aria-label="Candidates, best first">
      <ol>
        ${this.candidates.map((candidate, place) => this.thumb(candidate, place))}
        <li>
          <button
            type="button"
            class="more ${this.over ? 'over' : ''}"
            @click=${() => emit(this, 'qw-choose-paper', { as: 'candidate' })}
            @dragover=${this.onDragOver}
            @dragleave=${() => (this.over = false)}
            @drop=${this.onDrop}
          >
            <b aria-hidden="true">+</b>
            <span>${byHand('Drop or choose a paper', 'Choose a paper')}</span>
          </button>
        </li>
      </ol>
    </section>`;
  }

  private thumb(candidate: CandidateView, place: number) {
    const { name, side, picture, comparison, index } = candidate;
    const on = index === this.shown;
    const quiet = keepsQuiet(this.asksFirst, candidate);
    const says = quiet ? 'you say first' : verdictInSentence(comparison.verdict);
    return html`<li>
      <button
        type="button"
        class="thumb ${on ? 'on' : ''}"
        aria-current=${on ? 'true' : 'false'}
        aria-label="${place + 1} ${name}: ${says}"
        title="${name}: ${says}"
        @click=${() => emit(this, 'qw-show-candidate', { index })}
      >
        ${
          picture === null
            ? html`<s style="background:${side.base.hex}"></s>`
            : html`<qw-paper inert aria-hidden="true" .paper=${{ side, name }} .picture=${picture} .surround=${this.surround}></qw-paper>`
        }
        ${quiet ? html`<i>?</i>` : verdictMark(comparison.verdict, 34)}
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
