import { css, html } from 'lit';
import { customElement } from 'lit/decorators.js';
import { byHand } from '../support/by-finger.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';

/**
 * A notebook without leaves: what to do first, in one line.
 * @fires qw-add-pictures - `{ as: null }` · qw-open-demo - nothing
 */
@customElement('qw-empty')
export class QwEmpty extends QwElement {
  static override styles = [
    controls,
    ruled,
    css`
      :host {
        padding: 90px 0 60px;
      }
      h2 {
        font: 500 31px/1.16 var(--qw-serif);
        letter-spacing: -0.012em;
        text-wrap: balance;
        max-width: 19em;
      }
      p {
        margin: 12px 0 22px;
        max-width: 34em;
        color: var(--qw-soft);
        font-style: italic;
      }
      div div div {
        display: flex;
        flex-wrap: wrap;
        gap: 12px;
      }
      svg {
        display: block;
        margin-bottom: 22px;
      }
      @container (max-width: 620px) {
        :host {
          padding-top: 40px;
        }
        h2 {
          font-size: 26px;
        }
      }
    `,
  ];

  override render() {
    return html`<div class="row">
      <div class="margin" aria-hidden="true"></div>
      <div class="text">
        <svg width="112" height="66" viewBox="0 0 112 66" fill="none" stroke="currentColor" stroke-width="2" stroke-dasharray="5 4" aria-hidden="true">
          <path d="M2 6H54V58H2Z" />
          <path d="M62 10H110V60H62Z" />
        </svg>
        <h2>${byHand('Drop two photographs of paper here, or choose them.', 'Choose two photographs of paper.')}</h2>
        <p>The first is the anchor, the second is held against it. Both stay on this device.</p>
        <div>
          <button type="button" class="slip main" @click=${() => emit(this, 'qw-add-pictures', { as: null })}>Choose pictures</button>
          <button type="button" class="slip" @click=${() => emit(this, 'qw-open-demo', {})}>Look at the demo</button>
        </div>
      </div>
    </div>`;
  }
}
