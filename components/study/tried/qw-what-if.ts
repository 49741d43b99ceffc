import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Change } from '../../../src/harmony/model.ts';
import type { Ink } from '../../../src/sheet/model.ts';
import { controls, ruled } from '../../support/controls.ts';
import { QwElement } from '../../support/element.ts';
import { emit } from '../../support/emit.ts';
import './qw-what-if-knobs.ts';
import { type WhatIfView, withChange } from './what-if-view.ts';

/**
 * What if? Changes to a pair that are tried on screen before the scissors. What is supposed stands in a dashed frame;
 * nothing of it is kept unless she says so.
 * @fires qw-suppose - `{ changes, settled }`: all changes that now hold; one step unless it is still being dragged
 * @fires qw-step-back - nothing: the last step is taken back
 * @fires qw-leave-it - nothing: all as it was, and the panel shut
 */
@customElement('qw-what-if')
export class QwWhatIf extends QwElement {
  static override styles = [controls, ruled, styles()];

  @property({ attribute: false }) view: WhatIfView | null = null;
  /** An ink of an OKLCH colour, named. */
  @property({ attribute: false }) inkOf: ((l: number, c: number, h: number) => Ink) | null = null;

  /** Takes the keyboard to the panel when it has been opened. */
  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>('h3')?.focus(options);
  }

  override render() {
    const { view } = this;
    if (!view) return nothing;
    return html`<section class="row" aria-labelledby="head">
      <div class="margin" aria-hidden="true"><b>what if</b><span>nothing is kept</span></div>
      <div class="text">
        <div class="frame">
          <h3 id="head" tabindex="-1">What if?</h3>
          <p class="lede">Try it here before the scissors: the papers, the verdict and the charts follow.</p>
          <qw-what-if-knobs .view=${view} .inkOf=${this.inkOf} @qw-try-change=${this.onTry}></qw-what-if-knobs>
          ${view.clauses.length ? this.supposed(view) : nothing}
          <div class="ways">
            <button type="button" class="word" ?disabled=${view.steps === 0} @click=${() => emit(this, 'qw-step-back', {})}><span>One step back</span></button>
            <button type="button" class="word" @click=${() => emit(this, 'qw-leave-it', {})}><span>Leave it as it is</span></button>
          </div>
        </div>
      </div>
    </section>`;
  }

  private supposed(view: WhatIfView) {
    return html`<ol>
        ${view.clauses.map(
          (clause, place) => html`<li>
            <span>${clause}</span>
            <button type="button" class="word" aria-label="Leave out: ${clause}" @click=${() => this.suppose(view.changes.toSpliced(place, 1), true)}><span>leave out</span></button>
          </li>`,
        )}
      </ol>`;
  }

  private onTry(event: CustomEvent<{ change: Change; settled: boolean }>): void {
    event.stopPropagation();
    const { change, settled } = event.detail;
    this.suppose(withChange(this.view?.changes ?? [], change), settled);
  }

  private suppose(changes: readonly Change[], settled: boolean): void {
    emit(this, 'qw-suppose', { changes, settled });
  }
}

function styles() {
  return css`
    .margin {
      padding-top: 14px;
    }
    .frame {
      margin: 0 0 24px -14px;
      padding: 10px 14px 6px;
      border: 1.5px dashed var(--qw-hair);
    }
    h3 {
      font: 500 25px/1.2 var(--qw-serif);
    }
    h3:focus {
      outline: none;
    }
    .lede {
      color: var(--qw-soft);
      font-style: italic;
      margin-bottom: 4px;
    }
    ol {
      margin: 12px 0 4px;
      border-top: 1px solid var(--qw-rule);
    }
    li {
      display: flex;
      align-items: center;
      justify-content: space-between;
      gap: 12px;
      border-bottom: 1px solid var(--qw-rule);
      font-size: 16px;
    }
    .ways {
      display: flex;
      flex-wrap: wrap;
      align-items: center;
      gap: 4px 26px;
    }
    @container (max-width: 620px) {
      .frame {
        margin: 0 -6px 20px;
        padding: 8px 10px 4px;
      }
    }
  `;
}
