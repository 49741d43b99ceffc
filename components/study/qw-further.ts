import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';

/** One way to look further, with the line that says what it is for: shown when it is pointed at. */
export interface FurtherWay {
  readonly way: string;
  readonly label: string;
  readonly about: string;
}

/**
 * Ways to look further at a pair.
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
      ul {
        display: flex;
        flex-wrap: wrap;
        gap: 0 26px;
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
              <button type="button" class="word" title=${about} aria-expanded=${this.open.includes(way)} @click=${() => emit(this, 'qw-look-further', { way })}><span>${label}</span></button>
            </li>`,
          )}
        </ul>
      </div>
    </section>`;
  }
}
