import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';

/** One entry of the list of sources. */
export interface SourceEntry {
  readonly id: string;
  readonly short: string;
  readonly full: string;
  readonly doi?: string;
  readonly kind: string;
  /** What is taken from it. */
  readonly what: string;
}

/** Every formula and table in use, with where it was published and what is taken from it. */
@customElement('qw-sources')
export class QwSources extends QwElement {
  static override styles = [controls, ruled, styles()];

  @property({ attribute: false }) sources: readonly SourceEntry[] = [];
  /** Id of the entry that was asked for: it is scrolled to and marked. */
  @property() current = '';

  override render() {
    return html`<div class="row">
        <div class="margin"></div>
        <div class="text">
          <h2>Sources</h2>
          <p class="lede">Where every number on these leaves comes from.</p>
        </div>
      </div>
      ${this.sources.map((source) => this.entry(source))}`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!this.current || !(changed.has('current') || changed.has('sources'))) return;
    const entry = this.renderRoot.querySelector<HTMLElement>(`#${CSS.escape(this.current)}`);
    entry?.scrollIntoView({ block: 'center' });
    entry?.focus({ preventScroll: true });
  }

  private entry({ id, short, full, doi, kind, what }: SourceEntry) {
    return html`<article class="row ${id === this.current ? 'current' : ''}" id=${id} tabindex="-1" aria-label=${short}>
      <div class="margin"><b>${short}</b><span>${kind}</span></div>
      <div class="text">
        <p>${what}</p>
        <p class="full">${full}${doi ? html` <span class="doi">DOI ${doi}</span>` : nothing}</p>
      </div>
    </article>`;
  }
}

function styles() {
  return css`
    :host {
      padding: 34px 0 60px;
    }
    h2 {
      font: 500 31px/1.16 var(--qw-serif);
      letter-spacing: -0.012em;
    }
    .lede {
      margin-bottom: 18px;
      color: var(--qw-soft);
      font-style: italic;
    }
    article {
      padding: 8px 0 14px;
      scroll-margin: 80px;
    }
    article:focus {
      outline: none;
    }
    .current .text {
      box-shadow: inset 3px 0 0 var(--qw-ink);
    }
    .text p {
      max-width: 41em;
    }
    .full {
      font-size: 14.5px;
      color: var(--qw-soft);
    }
    .doi {
      font: 13px/1.3 var(--qw-sans);
      overflow-wrap: anywhere;
    }
  `;
}
