import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { surroundTones } from '../../src/drawing/surround.ts';
import type { Surround } from '../../src/notebook/model.ts';
import '../palette/qw-palette.ts';
import '../sheet/qw-paper.ts';
import { byHand } from '../support/by-finger.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { paperType } from '../support/paper-type.ts';
import type { QwTitle } from '../support/qw-title.ts';
import '../support/qw-title.ts';
import { inksInside, inksInsideStyles } from './inks-inside.ts';
import { mountedStyles } from './mounted-styles.ts';
import type { PaperView } from './study-view.ts';

/**
 * One paper on the mat with what is known of it and its torn chips; or the empty place where one can be put.
 * @fires qw-turn-over - `{ as, index, side }` · qw-look-closer - `{ held }`
 * @fires qw-paper-is - `{ held, is: 'ask' }`
 * @fires qw-choose-paper - `{ as }` · qw-drop-paper - `{ key, as }` · qw-remove-candidate - `{ index }`
 * @fires qw-rename-paper - `{ held, name }`, the caption was written over
 */
@customElement('qw-mounted')
export class QwMounted extends QwElement {
  static override styles = [controls, mountedStyles, inksInsideStyles];

  @property() as: 'anchor' | 'candidate' = 'anchor';
  @property({ attribute: false }) paper: PaperView | null = null;
  /** Of a candidate, among the study's candidates. */
  @property({ type: Number }) index = -1;
  @property() surround: Surround = 'grey';
  @property({ attribute: false }) lit: readonly string[] = [];
  /** Leaves out the chips: the reader looks for herself first. */
  @property({ type: Boolean }) quiet = false;
  /** Looked at by itself: not to be exchanged. */
  @property({ type: Boolean }) alone = false;
  /** File name of the picture that is being read for the empty place; '' where none is. */
  @property() reading = '';
  @state() private over = false;

  override render() {
    const { text, soft } = surroundTones(this.surround);
    return html`<figure
      class=${this.over ? 'over' : ''}
      style="--on-mat:${text};--on-mat-soft:${soft}"
      aria-label=${this.alone ? 'Sheet' : this.as === 'anchor' ? 'Anchor' : 'Candidate'}
      @dragover=${this.onDragOver}
      @dragleave=${() => (this.over = false)}
      @drop=${this.onDrop}
    >
      ${this.paper ? this.shown(this.paper) : this.place()}
    </figure>`;
  }

  private shown(paper: PaperView) {
    const { side, name, picture, places } = paper;
    const named = { side, name };
    return html`<qw-paper .paper=${named} .picture=${picture} .places=${places} .surround=${this.surround} .lit=${this.lit}></qw-paper>
      <figcaption>
        ${this.named(paper)}
        ${this.alone ? this.about(paper) : nothing}
        ${this.table(paper)}
        ${this.acts(paper)}
      </figcaption>
      ${this.quiet ? nothing : html`<qw-palette bare .paper=${named} .surround=${this.surround} .lit=${this.lit}></qw-palette>${this.alone ? inksInside(side) : nothing}`}`;
  }

  /** What is known of the paper, and of the light that it was taken in. */
  private about({ facts, side }: PaperView) {
    return html`<span>${facts.join(' · ')}</span><span class="light">${side.light.note}</span>`;
  }

  /** Its name, which can be written over; a sheet's own leaf has a form for that. */
  private named({ held, name }: PaperView) {
    if (this.alone) return html`<b>${name}</b>`;
    return html`<b><qw-title plain label="Name of this paper" .value=${name} @qw-retitle=${(event: CustomEvent<{ title: string }>) => this.rename(event, held, name)}></qw-title></b>`;
  }

  private rename(event: CustomEvent<{ title: string }>, held: PaperView['held'], name: string): void {
    // The same event from a leaf's title names the leaf.
    event.stopPropagation();
    const { title } = event.detail;
    // A paper without a name could not be spoken of.
    if (title === '') (event.target as QwTitle).value = name;
    else emit(this, 'qw-rename-paper', { held, name: title });
  }

  /** What was done unasked is told where the paper is, with the way back. */
  private table({ cutOut, held, name }: PaperView) {
    if (!cutOut) return nothing;
    const ask = () => emit(this, 'qw-paper-is', { held, is: 'ask' });
    return html`<span class="table">Cut out of its table · <button type="button" class="turn" aria-label="Cut out of its table: not right? ${name}" @click=${ask}>not right?</button></span>`;
  }

  /** What can be done with it, on a line of its own: two that stood above each other would be hard to hit apart. */
  private acts(paper: PaperView) {
    if (this.alone) return nothing;
    return html`<span class="acts">
      ${this.closer(paper)}
      <details>
        <summary class="turn">more</summary>
        <span class="deeds">${this.turn(paper)} ${this.exchange(paper)}</span>
        ${this.about(paper)} ${this.quiet ? nothing : inksInside(paper.side)}
      </details>
    </span>`;
  }

  /** The anchor is exchanged for another; a candidate goes back into the drawer. */
  private exchange({ name }: PaperView) {
    return this.as === 'anchor'
      ? html`<button type="button" class="turn" aria-label="Another anchor instead of ${name}" @click=${this.choose}>use another</button>`
      : html`<button type="button" class="turn" aria-label="Put ${name} back" @click=${() => emit(this, 'qw-remove-candidate', { index: this.index })}>put back</button>`;
  }

  private turn({ turnsTo }: PaperView) {
    if (!turnsTo) return nothing;
    const turn = () => emit(this, 'qw-turn-over', { as: this.as, index: this.index, side: turnsTo });
    return html`<button type="button" class="turn" @click=${turn}>turn to side ${turnsTo}</button>`;
  }

  private closer({ held, name }: PaperView) {
    if (this.alone || held.kind === 'plain') return nothing;
    const look = () => emit(this, 'qw-look-closer', { held });
    return html`<button type="button" class="turn" aria-label="Look closer at ${name}" @click=${look}>look closer</button>`;
  }

  private place() {
    return html`<button type="button" class="place" @click=${this.choose}>
      <b>${this.as === 'anchor' ? 'The anchor' : 'A candidate'}</b>
      <span>${this.reading ? `Reading ${this.reading} …` : byHand('Drop a picture of a paper here, or choose one', 'Choose a paper, or a picture of one')}</span>
    </button>`;
  }

  private choose(): void {
    emit(this, 'qw-choose-paper', { as: this.as });
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
    emit(this, 'qw-drop-paper', { key, as: this.as });
  }
}
