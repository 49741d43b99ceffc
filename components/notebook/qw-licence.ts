import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';

/**
 * What has to be said of a program of others that works inside ours, with its licence, which is fetched when asked for.
 * @fires qw-ask-licence - when the licence is opened for the first time
 */
@customElement('qw-licence')
export class QwLicence extends QwElement {
  static override styles = [
    controls,
    ruled,
    css`
      article {
        padding: 8px 0 14px;
      }
      .text p {
        max-width: 41em;
      }
      summary {
        display: flex;
        align-items: center;
        min-height: 44px;
        font: 14.5px/1.25 var(--qw-sans);
        cursor: pointer;
        text-decoration: underline;
        text-underline-offset: 3px;
      }
      pre {
        max-height: 60vh;
        margin: 0;
        padding: 12px;
        overflow: auto;
        border: 1px solid var(--qw-rule);
        font: 13px/1.45 var(--qw-sans);
        white-space: pre-wrap;
      }
    `,
  ];

  @property() name = '';
  /** One paragraph each. */
  @property({ attribute: false }) notice: readonly string[] = [];
  /** The whole licence, once it is there. */
  @property() licence = '';

  override render() {
    return html`<article class="row" aria-label=${this.name}>
      <div class="margin"><b>${this.name}</b><span>program</span></div>
      <div class="text">
        ${this.notice.map((words) => html`<p>${words}</p>`)}
        <details @toggle=${this.onToggle}>
          <summary>The whole licence</summary>
          <pre tabindex="0" aria-label=${`Licence of ${this.name}`}>${this.licence || 'One moment…'}</pre>
        </details>
      </div>
    </article>`;
  }

  private onToggle(event: Event): void {
    if ((event.target as HTMLDetailsElement).open && !this.licence) emit(this, 'qw-ask-licence', {});
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-licence': QwLicence;
  }
}
