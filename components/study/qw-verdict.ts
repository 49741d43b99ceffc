import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { turnedWords } from '../../src/drawing/words/kind-words.ts';
import type { Comparison, Kit } from '../../src/harmony/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { withSubscript } from '../support/subscript.ts';
import { chipStyle } from './chip-style.ts';
import { inksSpokenOf, withChips } from './sentence.ts';
import { verdictMark } from './verdict-mark.ts';
import { verdictInSentence, verdictWords } from './words.ts';

/**
 * The verdict: its drawn mark, its words, the one sentence under it, and how it was decided.
 * Draws nothing without a comparison.
 */
@customElement('qw-verdict')
export class QwVerdict extends QwElement {
  static override styles = [controls, ruled, chipStyle, styles()];

  @property({ attribute: false }) comparison: Comparison | Kit | null = null;
  /** Says what turned it, or weighs most, in full: for where the reasons stand further down. */
  @property({ type: Boolean, attribute: 'with-reason', reflect: true }) withReason = false;
  /** Stands before the verdict: "What if: ". */
  @property() lead = '';

  /** Takes the keyboard to the verdict: after it has been revealed. */
  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>('h3')?.focus(options);
  }

  override render() {
    const { comparison } = this;
    if (!comparison) return nothing;
    const { verdict, decision } = comparison;
    const turned = decision.turnedBy.map((index) => comparison.reasons[index]).filter((found) => !!found);
    const table = inksSpokenOf(comparison);
    const weightiest = comparison.reasons.find(({ weighs }) => weighs !== 0);
    const first = this.withReason ? (turned[0] ?? weightiest) : undefined;
    return html`<div class="row">
      <div class="margin" aria-hidden="true">
        ${turned.length ? html`<b>decided by</b>${turnedWords(turned).map((words) => html`<span>${words}</span>`)}` : nothing}
      </div>
      <div class="text">
        <div class="verdict">
          ${verdictMark(verdict)}
          <div>
            <h3 tabindex="-1">${this.lead ? this.lead + verdictInSentence(verdict) : verdictWords[verdict]}.</h3>
            <p>${withChips(decision.summary, [...table.keys()], table)}</p>
            ${decision.arguable ? html`<p class="arguable">${decision.arguable}</p>` : nothing}
            ${first ? html`<p class="first">${withChips(first.says, first.inks, table)}</p>` : nothing}
          </div>
        </div>
        <details>
          <summary class="word"><span>How was this decided?</span></summary>
          <p>${withChips(decision.rule, [...table.keys()], table)}</p>
          ${
            turned.length
              ? html`<p>What turned it:</p>
                  <ul>
                    ${turned.map(({ says, inks, figure }) => html`<li>${withChips(says, inks, table)} <small>${withSubscript(figure)}</small></li>`)}
                  </ul>`
              : nothing
          }
          <p class="soft">
            There is no score. A filled dot speaks for the pair, an open ring against it; bigger counts more. Whether
            it stands out, and whether you like it, are other questions.
          </p>
        </details>
      </div>
    </div>`;
  }
}

function styles() {
  return css`
    :host {
      scroll-margin-top: 64px;
    }
    .margin {
      padding-top: 10px;
    }
    :host([with-reason]) .margin {
      padding-top: 6px;
    }
    :host([with-reason]) h3 {
      font-size: 29px;
    }
    :host([with-reason]) svg {
      align-self: flex-start;
      margin-top: 3px;
      width: 62px;
      height: auto;
    }
    :host([with-reason]) details {
      margin: 0 0 2px;
    }
    .verdict {
      display: flex;
      gap: 20px;
      align-items: center;
    }
    svg {
      flex: none;
    }
    h3:focus {
      outline: none;
    }
    h3 {
      font: 500 35px/1.1 var(--qw-serif);
      letter-spacing: -0.015em;
    }
    .verdict p {
      margin-top: 4px;
      max-width: 37em;
    }
    :host([with-reason]) .verdict p {
      max-width: 44em;
    }
    .verdict .arguable {
      color: var(--qw-soft);
    }
    .verdict .first {
      margin-top: 1px;
      color: var(--qw-soft);
    }
    details {
      margin: 4px 0 14px;
      max-width: 40em;
    }
    summary {
      cursor: pointer;
      list-style: none;
    }
    summary::-webkit-details-marker {
      display: none;
    }
    details p,
    details ul {
      margin: 0 0 10px;
      font-size: 15.5px;
    }
    details li {
      padding-left: 16px;
      text-indent: -16px;
    }
    details li::before {
      content: '–';
      display: inline-block;
      width: 16px;
      text-indent: 0;
    }
    small {
      font: 13px/1.3 var(--qw-sans);
      color: var(--qw-soft);
      font-variant-numeric: tabular-nums;
    }
    .soft {
      color: var(--qw-soft);
      font-style: italic;
    }
    /* The papers are to be seen below it, and all of this can be opened or stands further down. */
    @container (max-width: 820px) {
      .verdict .arguable {
      color: var(--qw-soft);
    }
    .verdict .first {
        display: none;
      }
    }
    @container (max-width: 620px) {
      .verdict {
        align-items: flex-start;
        gap: 16px;
      }
      .verdict svg {
        width: 58px;
        height: auto;
      }
      h3 {
        font-size: 29px;
      }
      :host([with-reason]) h3 {
        font-size: 25px;
      }
      :host([with-reason]) .margin {
        display: none;
      }
    }
  `;
}
