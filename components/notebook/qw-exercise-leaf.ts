import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import { surroundTones } from '../../src/drawing/surround.ts';
import { inksOf, inkWords, linkSays } from '../../src/drawing/words/says.ts';
import type { Verdict } from '../../src/harmony/model.ts';
import type { ExerciseLeaf, Surround } from '../../src/notebook/model.ts';
import type { Ink } from '../../src/sheet/model.ts';
import { exerciseStyles } from '../lesson/exercise-styles.ts';
import type { ExerciseView } from '../lesson/exercise-view.ts';
import '../sheet/qw-paper.ts';
import { chipStyle } from '../study/chip-style.ts';
import '../study/qw-reasons.ts';
import { inksSpokenOf, withChips } from '../study/sentence.ts';
import type { PaperView } from '../study/study-view.ts';
import { verdictMark } from '../study/verdict-mark.ts';
import { verdicts, verdictWords } from '../study/words.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import type { QwEvent } from '../support/events.ts';
import '../support/qw-choice.ts';
import '../support/qw-pick-ink.ts';
import '../support/qw-title.ts';
import '../support/qw-writing.ts';
import type { QwWheel } from '../wheel/qw-wheel.ts';
import '../wheel/qw-wheel.ts';

/**
 * An exercise: two papers and a question; she answers first, and the engine's finding is shown after.
 * @fires qw-retitle - `{ title }` · qw-write - `{ text }`
 * @fires qw-answer - `{ verdict }`, null to try again · qw-point-at-inks - `{ inks }`, null to try again
 * @fires qw-set-ask - `{ value }` · qw-set-pair - `{ key }`
 */
@customElement('qw-exercise-leaf')
export class QwExerciseLeaf extends QwElement {
  static override styles = [controls, ruled, chipStyle, exerciseStyles];

  /** Null where its study has no pair any more. */
  @property({ attribute: false }) view: ExerciseView | null = null;
  @property({ attribute: false }) leaf: ExerciseLeaf | null = null;
  @property({ attribute: false }) margin: readonly string[] = [];
  @property() surround: Surround = 'grey';
  @state() private picks = { anchor: '', candidate: '' };
  @state() private lit: readonly string[] = [];
  /** True from an answer, or from trying again, until what comes of it is drawn. */
  private turning = false;

  /** What was pressed is gone then: the keyboard goes on to the answer, or back to the question. */
  protected override async updated(changed: PropertyValues<this>): Promise<void> {
    const isMarked = !!this.view?.marked;
    if (!this.turning || !changed.has('view') || isMarked === !!changed.get('view')?.marked) return;
    this.turning = false;
    // The wheel comes between the papers and the answer, and would push it away again.
    await this.renderRoot.querySelector<QwWheel>('qw-wheel')?.updateComplete;
    this.renderRoot.querySelector<HTMLElement>(isMarked ? '.reveal h3' : '.asks')?.focus();
  }

  override render() {
    const { leaf, view } = this;
    if (!leaf) return nothing;
    return html`<div class="page" @qw-point=${this.onPoint}>
      <div class="row head">
        <div class="margin">${this.margin.map((line) => html`<span>${line}</span>`)}</div>
        <div class="text">
          <qw-title .value=${leaf.title} ?given=${view?.questions.some(({ title }) => title === leaf.title)} empty="What is to be found?"></qw-title>
          ${view ? html`<p class="asks" tabindex="-1">${view.asks}</p>${view.marked ? nothing : this.pair(view)}` : html`<p class="asks">The study of this exercise has no pair any more. Add another exercise from a study that has one.</p>`}
        </div>
      </div>
      ${view ? this.papers(view) : nothing}
      <div aria-live="polite">${view?.marked ? this.reveal(view, view.marked) : nothing}</div>
      ${view && !view.marked ? this.answer(view) : nothing}
      ${view ? this.change(view) : nothing}
      <div class="row words">
        <div class="margin" aria-hidden="true"><b>your words</b></div>
        <div class="text"><qw-writing label="Your words on this exercise" prompt="What to look at, what you learnt." .value=${leaf.text}></qw-writing></div>
      </div>
    </div>`;
  }

  private papers(view: ExerciseView) {
    const { mat, text, soft } = surroundTones(this.surround);
    const shown = view.marked !== null;
    return html`<div class="wide" style=${styleMap({ background: mat, '--on-mat': text, '--on-mat-soft': soft })}>
      ${this.paper(view, view.anchor, 'anchor')}
      ${
        shown
          ? html`<qw-wheel .anchor=${view.anchor} .candidate=${view.candidate} .links=${view.marked!.links.length ? view.marked!.links : view.comparison.links} .surround=${this.surround} .lit=${this.lit}></qw-wheel>`
          : nothing
      }
      ${this.paper(view, view.candidate, 'candidate')}
    </div>`;
  }

  private paper(view: ExerciseView, paper: PaperView, as: 'anchor' | 'candidate') {
    return html`<figure class=${as} @click=${() => !view.marked && view.ask !== 'verdict' && this.pickPointed(paper, as)}>
      <qw-paper .paper=${{ side: paper.side, name: paper.name }} .picture=${paper.picture} .places=${paper.places} .surround=${this.surround} .lit=${view.marked ? this.lit : []}></qw-paper>
      <figcaption>${paper.name}</figcaption>
    </figure>`;
  }

  private answer(view: ExerciseView) {
    return html`<section class="row" aria-label="Your answer">
      <div class="margin" aria-hidden="true"><b>you first</b><span>then the reading</span></div>
      <div class="text">${view.ask === 'verdict' ? this.verdicts() : this.pointing(view)}</div>
    </section>`;
  }

  private verdicts() {
    return html`<div class="answers" role="group" aria-label="Your verdict">
      ${verdicts.map(
        (verdict) =>
          html`<button type="button" class="slip" @click=${() => this.say(verdict)}>${verdictMark(verdict, 34)} ${verdictWords[verdict]}</button>`,
      )}
    </div>`;
  }

  private pointing(view: ExerciseView) {
    const group = (as: 'anchor' | 'candidate') => html`<qw-pick-ink
      label="An ink of ${view[as].name}"
      .inks=${inksOf(view[as].side).map((ink: Ink) => ({ value: ink.id, hex: ink.hex, words: inkWords(ink), letter: ink.id }))}
      .value=${this.picks[as]}
      @qw-pick=${(event: CustomEvent<{ value: string }>) => (this.picks = { ...this.picks, [as]: event.detail.value })}
    ></qw-pick-ink>`;
    const { anchor, candidate } = this.picks;
    return html`<p class="soft">Point at the papers, or pick the inks here.</p>
      ${group('anchor')} ${group('candidate')}
      <div class="answers">
        <button type="button" class="slip main" ?disabled=${!anchor || !candidate} @click=${() => this.point([anchor, candidate])}>These two</button>
        <button type="button" class="slip" @click=${() => this.point([])}>There are none</button>
      </div>`;
  }

  private reveal(view: ExerciseView, { right, says, links }: NonNullable<ExerciseView['marked']>) {
    const table = inksSpokenOf(view.comparison);
    const sentence = (anchorInk: string, candidateInk: string) => {
      const [a, b] = [table.get(anchorInk), table.get(candidateInk)];
      const link = links.find((one) => one.anchorInk === anchorInk && one.candidateInk === candidateInk);
      return a && b && link ? linkSays(link, a, b) : '';
    };
    return html`<section class="row reveal" aria-label="The reading’s answer">
      <div class="margin" aria-hidden="true"><b>${right ? 'found' : 'look again'}</b><span>by the reading</span></div>
      <div class="text">
        <h3 tabindex="-1">${view.ask === 'verdict' ? html`${verdictMark(view.comparison.verdict, 44)} ` : nothing}${withChips(says, [...table.keys()], table)}</h3>
        <ul class="links">
          ${links.map(
            ({ anchorInk, candidateInk }) =>
              html`<li @pointerenter=${() => (this.lit = [anchorInk, candidateInk])} @pointerleave=${() => (this.lit = [])}>${withChips(sentence(anchorInk, candidateInk), [anchorInk, candidateInk], table)}</li>`,
          )}
        </ul>
        <div class="answers">
          <button type="button" class="slip" @click=${this.again}>Try again</button>
          <a class="word" href="#${view.leaf.studyId}"><span>Look at the study</span></a>
        </div>
      </div>
    </section>
    ${view.ask === 'verdict' ? html`<qw-reasons .comparison=${view.comparison} .lit=${this.lit}></qw-reasons>` : nothing}`;
  }

  private change(view: ExerciseView) {
    return html`<div class="row">
      <div class="margin" aria-hidden="true"></div>
      <details class="text">
        <summary class="word"><span>Ask something else</span></summary>
        <qw-choice
          label="What is asked"
          .choices=${view.questions.map(({ ask, title }) => ({ value: ask, label: title }))}
          .value=${view.ask}
          @qw-choose=${this.onAsk}
        ></qw-choice>
        ${view.marked ? this.pair(view) : nothing}
      </details>
    </div>`;
  }

  /** Under the question while it is not answered; afterwards beside what else can be asked. */
  private pair({ pairs }: ExerciseView) {
    return html`<label class="pair"><span>Of which pair</span>
      <select class="field" @change=${this.onPair}>
        ${pairs.map(({ key, name, on }) => html`<option value=${key} ?selected=${on}>${name}</option>`)}
      </select></label>`;
  }

  private onPair(event: Event): void {
    this.picks = { anchor: '', candidate: '' };
    emit(this, 'qw-set-pair', { key: (event.target as HTMLSelectElement).value });
  }

  private pickPointed(paper: PaperView, as: 'anchor' | 'candidate'): void {
    const [id] = this.lit;
    if (id && inksOf(paper.side).some((ink) => ink.id === id)) this.picks = { ...this.picks, [as]: id };
  }

  private readonly again = (): void => {
    this.picks = { anchor: '', candidate: '' };
    this.lit = [];
    if (this.view?.ask === 'verdict') this.say(null);
    else this.point(null);
  };

  private say(verdict: Verdict | null): void {
    this.turning = true;
    emit(this, 'qw-answer', { verdict });
  }

  private point(inks: readonly string[] | null): void {
    this.turning = true;
    emit(this, 'qw-point-at-inks', { inks });
  }

  private onAsk(event: QwEvent<'qw-set-ask'>): void {
    event.stopPropagation();
    this.picks = { anchor: '', candidate: '' };
    emit(this, 'qw-set-ask', event.detail);
  }

  private onPoint(event: CustomEvent<{ inks: readonly string[] }>): void {
    this.lit = event.detail.inks;
  }
}
