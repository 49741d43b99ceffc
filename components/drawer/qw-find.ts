import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { inkWords } from '../../src/drawing/words/says.ts';
import type { Verdict } from '../../src/harmony/model.ts';
import { chipStyle } from '../study/chip-style.ts';
import { inkTable, withChips } from '../study/sentence.ts';
import { verdictMark } from '../study/verdict-mark.ts';
import { verdictInSentence } from '../study/words.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import type { QwEvent } from '../support/events.ts';
import '../support/qw-choice.ts';
import '../support/qw-pick-ink.ts';
import { findStyles } from './find-styles.ts';
import type { FindFilter, FindView, PlaceView } from './find-view.ts';
import './qw-miniature.ts';

/**
 * The drawer held against a study's anchor, best first, with a line for every place; or looked through for an ink, or
 * for something to stand between two papers.
 * @fires qw-find-by - `{ value }` · qw-find-ink - `{ value }` · qw-find-filter - `{ filter }` · qw-find-more - nothing
 * @fires qw-take - `{ key, as: 'candidate' }`, a paper is to be held against the anchor
 */
@customElement('qw-find')
export class QwFind extends QwElement {
  static override styles = [controls, ruled, chipStyle, findStyles];

  @property({ attribute: false }) view: FindView | null = null;

  override render() {
    const { view } = this;
    if (!view) return nothing;
    return html`<section class="row" aria-labelledby="head">
      <div class="margin" aria-hidden="true"><b>the drawer</b><span>${isWaiting(view) ? nothing : counted(view.all)}</span></div>
      <div class="text">
        <h3 id="head" tabindex="-1">What else have I?</h3>
        <qw-choice
          label="Look for"
          .choices=${[
            { value: 'anchor', label: `What holds with ${view.anchorName}` },
            { value: 'ink', label: 'What repeats an ink' },
            ...(view.candidateName ? [{ value: 'bridge', label: 'A bridge between the two' }] : []),
          ]}
          .value=${view.by}
          @qw-choose=${this.onBy}
        ></qw-choice>
        ${view.by === 'ink' ? this.inks(view) : nothing} ${this.filters(view)}
        <p class="unseen" aria-live="polite">${isWaiting(view) ? nothing : counted(view.all)}</p>
        ${view.places.length ? html`<ol aria-busy=${view.state === 'looking'}>${view.places.map((place, at) => this.place(view, place, at))}</ol>` : html`<p class="none" aria-live="polite">${this.nothing(view)}</p>`}
        ${
          view.all > view.places.length
            ? html`<button type="button" class="word" @click=${() => emit(this, 'qw-find-more', {})}><span>Show more of the ${view.all}</span></button>`
            : nothing
        }
      </div>
    </section>`;
  }

  private inks(view: FindView) {
    return html`<qw-pick-ink
      label="The ink that is to come back"
      .inks=${view.inks.map((ink) => ({ value: ink.id, hex: ink.hex, words: inkWords(ink), letter: ink.id }))}
      .value=${view.ink}
      @qw-pick=${this.onInk}
    ></qw-pick-ink>`;
  }

  private filters({ filter, choices }: FindView) {
    const select = (
      label: string,
      name: keyof FindFilter,
      values: readonly (readonly [value: string | number, words: string])[],
    ) =>
      values.length > 0
        ? html`<label><span>${label}</span>
            <select class="field" @change=${(event: Event) => this.onFilter(name, (event.target as HTMLSelectElement).value)}>
              <option value=${name === 'count' ? '0' : ''}>any</option>
              ${values.map(([value, words]) => html`<option value=${value} ?selected=${String(filter[name]) === String(value)}>${words}</option>`)}
            </select></label>`
        : nothing;
    const counts = [2, 3, 5].filter((count) => count <= choices.mostCount);
    return html`<div class="filters" role="group" aria-label="Only">
      ${select('What', 'kind', [
        ['sheet', 'sheets'],
        ['part', 'parts'],
        ['plain', 'plains'],
      ])}
      ${select(
        'Base',
        'base',
        choices.bases.map((base) => [base, base] as const),
      )}
      ${select(
        'Print scale',
        'scale',
        choices.scales.map((scale) => [scale, scale] as const),
      )}
      ${select(
        'Motif',
        'motif',
        choices.motifs.map((motif) => [motif, motif] as const),
      )}
      ${select(
        'How many left',
        'count',
        counts.map((count) => [count, `${count} or more`] as const),
      )}
    </div>`;
  }

  private place(view: FindView, { paper, verdict, toCandidate, says, of, held }: PlaceView, at: number) {
    const to = (found: Verdict, name: string) =>
      html`<span class="verdict">${verdictMark(found, 28)} ${name ? `${name}: ` : ''}${verdictInSentence(found)}</span> `;
    const table = of ? inkTable(of.anchor, of.candidate) : inkTable();
    return html`<li>
      <qw-miniature .picture=${paper.picture} .bands=${paper.bands}></qw-miniature>
      <div>
        <p class="name">
          <b>${at + 1} ${paper.name}</b> <small>${paper.about}</small>
        </p>
        <p>${verdict ? to(verdict, toCandidate ? view.anchorName : '') : nothing}${toCandidate ? to(toCandidate, view.candidateName ?? '') : nothing}${withChips(says, [...table.keys()], table)}</p>
      </div>
      ${
        held
          ? html`<small class="held">on this study</small>`
          : html`<button type="button" class="word" aria-label="Hold against it: ${paper.name}" @click=${() => emit(this, 'qw-take', { key: paper.key, as: 'candidate' })}><span>Hold against it</span></button>`
      }
    </li>`;
  }

  private nothing({ by, state }: FindView): string {
    if (state === 'looking') return 'Looking through the drawer…';
    if (state === 'stopped') return 'The drawer could not be looked through. Choose once more to try again.';
    if (by === 'ink') return 'Nothing in the drawer repeats this ink with these conditions.';
    if (by === 'bridge') return 'Nothing in the drawer would stand between the two with these conditions.';
    return 'Nothing in the drawer fits these conditions.';
  }

  private onBy(event: QwEvent<'qw-find-by'>): void {
    event.stopPropagation();
    emit(this, 'qw-find-by', event.detail);
  }

  private onInk(event: CustomEvent<{ value: string }>): void {
    event.stopPropagation();
    emit(this, 'qw-find-ink', event.detail);
  }

  private onFilter(name: keyof FindFilter, value: string): void {
    if (!this.view) return;
    const filter = { ...this.view.filter, [name]: name === 'count' ? Number(value) : value };
    emit(this, 'qw-find-filter', { filter });
  }
}

/** True while there is nothing to tell yet. */
function isWaiting({ places, state }: FindView): boolean {
  return places.length === 0 && state !== 'found';
}

function counted(all: number): string {
  return all === 1 ? 'one paper fits' : `${all === 0 ? 'no' : all} papers fit`;
}
