import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';

/** One way to look further, with the line that says what it is for. */
export interface FurtherWay {
  readonly way: string;
  readonly label: string;
  readonly about: string;
}

/**
 * Ways to look further at a pair, one line each.
 * @fires qw-look-further - `{ way }`
 */
@customElement('qw-further')
export class QwFurther extends QwElement {
  static override styles = [
    controls,
    ruled,
    css`
      .row {
        margin: 14px 0 18px;
      }
      .margin {
        padding-top: 12px;
      }
      h3 {
        margin-bottom: 2px;
        font: 600 17px/1.3 var(--qw-serif);
      }
      li {
        display: flex;
        flex-wrap: wrap;
        align-items: baseline;
        gap: 0 14px;
        border-bottom: 1px solid var(--qw-rule);
      }
      li .word {
        min-width: 152px;
      }
      small {
        padding: 2px 0 8px;
        font: 14px/1.35 var(--qw-sans);
        color: var(--qw-soft);
      }
    `,
  ];

  @property({ attribute: false }) ways: readonly FurtherWay[] = [];
  /** The ways that are open now. */
  @property({ attribute: false }) open: readonly string[] = [];

  /** Takes the keyboard back to a way's button: after what it opened was shut. */
  focusWay(way: string): void {
    const at = this.ways.findIndex((one) => one.way === way);
    this.renderRoot.querySelectorAll<HTMLElement>('li .word')[at]?.focus();
  }

  override render() {
    return html`<section class="row" aria-labelledby="head">
      <div class="margin" aria-hidden="true"></div>
      <div class="text">
        <h3 id="head">Look further</h3>
        <ul>
          ${this.ways.map(
            ({ way, label, about }) => html`<li>
              <button type="button" class="word" aria-expanded=${this.open.includes(way)} @click=${() => emit(this, 'qw-look-further', { way })}><span>${label}</span></button>
              <small>${about}</small>
            </li>`,
          )}
        </ul>
      </div>
    </section>`;
  }
}
