import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { turnedWords } from '../../src/drawing/words/kind-words.ts';
import type { Comparison, Kit, Reason } from '../../src/harmony/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { withSubscript } from '../support/subscript.ts';
import { unbroken } from '../support/unbroken.ts';
import { chipStyle } from './chip-style.ts';
import { dotStyles, reasonDot } from './reason-dot.ts';
import { type InkTable, inksSpokenOf, withChips } from './sentence.ts';
import { verdictMark } from './verdict-mark.ts';
import { verdictInSentence, verdictWords } from './words.ts';

/**
 * The verdict: its drawn mark, its words, the one sentence under it, and how it was decided.
 * Draws nothing without a comparison.
 * @fires qw-point - `{ inks }`, of the sentence that is pointed at, or none
 */
@customElement('qw-verdict')
export class QwVerdict extends QwElement {
  static override styles = [controls, ruled, chipStyle, dotStyles, styles()];

  @property({ attribute: false }) comparison: Comparison | Kit | null = null;
  /** Tells in full what turned it: on a leaf whose reasons leave that out. */
  @property({ type: Boolean }) tells = false;
  /** Start of the address of a source: its id follows. */
  @property({ attribute: 'source-href' }) sourceHref = '#sources/';
  /** Stands before the verdict: "What if: ". */
  @property() lead = '';

  @state() private kept: Reason | null = null;

  /** Takes the keyboard to the verdict: after it has been revealed. */
  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>('h3')?.focus(options);
  }

  /** Pointing at it, or stepping to its dot, lights up its inks; the dot keeps them lit. */
  private sentence(reason: Reason, table: InkTable) {
    const { says, inks, weighs } = reason;
    const kept = this.kept === reason;
    const keep = () => {
      this.kept = kept ? null : reason;
      this.point(this.kept);
    };
    return html`<div class="said" @pointerenter=${() => this.point(reason)} @pointerleave=${() => this.point(null)}>
      ${reasonDot(weighs, { kept, point: (on) => this.point(on ? reason : null), keep })}
      <p>${withChips(says, inks, table)}</p>
    </div>`;
  }

  private point(reason: Reason | null): void {
    emit(this, 'qw-point', { inks: (reason ?? this.kept)?.inks ?? [] });
  }

  override render() {
    const { comparison } = this;
    if (!comparison) return nothing;
    const { verdict, decision } = comparison;
    const turned = decision.turnedBy.map((index) => comparison.reasons[index]).filter((found) => !!found);
    const table = inksSpokenOf(comparison);
    return html`<div class="row">
      <div class="margin">
        ${turned.map(
          ({ figure, source, sourceIds }) => html`<b>${withSubscript(unbroken(figure))}</b>
            ${sourceIds[0] ? html`<a href="${this.sourceHref}${sourceIds[0]}">${source}</a>` : html`<span>${source}</span>`}`,
        )}
      </div>
      <div class="text">
        <div class="verdict">
          ${verdictMark(verdict)}
          <div>
            <h3 tabindex="-1">${this.lead ? this.lead + verdictInSentence(verdict) : verdictWords[verdict]}.</h3>
            ${
              this.tells && turned.length
                ? turned.map((reason) => this.sentence(reason, table))
                : html`<p>${withChips(decision.summary, [...table.keys()], table)}</p>`
            }
          </div>
        </div>
        <details>
          <summary class="word"><span>${decision.arguable ? 'A close call. How was this decided?' : 'How was this decided?'}</span></summary>
          ${decision.arguable ? html`<p>${decision.arguable}</p>` : nothing}
          ${turned.length ? html`<p>What turned it: ${turnedWords(turned).join(', ')}.</p>` : nothing}
          <p>${withChips(decision.rule, [...table.keys()], table)}</p>
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
      padding-top: 8px;
    }
    .margin a {
      margin-bottom: 6px;
      text-decoration-color: transparent;
    }
    .margin a:hover,
    .margin a:focus-visible {
      text-decoration-color: currentColor;
    }
    .verdict svg {
      align-self: flex-start;
      margin-top: 3px;
      width: 62px;
      height: auto;
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
      font: 500 30px/1.1 var(--qw-serif);
      letter-spacing: -0.015em;
    }
    .verdict p {
      margin-top: 4px;
      max-width: 44em;
      font-size: 18px;
      line-height: 1.4;
    }
    .said {
      display: flex;
      margin: 6px 0 0 -3px;
      padding-bottom: 13px;
    }
    details {
      margin: 0 0 8px;
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
    @container (max-width: 620px) {
      .verdict {
        align-items: flex-start;
        gap: 14px;
      }
      .verdict svg {
        width: 46px;
      }
      h3 {
        font-size: 25px;
      }
      .verdict p {
        font-size: 16.5px;
      }
      .margin {
        display: none;
      }
    }
  `;
}
