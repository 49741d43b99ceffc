import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Comparison, Remedy } from '../../src/harmony/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { ownTurn } from '../support/turn.ts';
import { chipStyle } from './chip-style.ts';
import { type InkTable, inkTable, withChips } from './sentence.ts';
import { verdictInSentence } from './words.ts';

/** So many are shown before the rest is asked for. Ours. */
const first = 3;

/**
 * What scissors and glue can do for a pair, least work first.
 * @fires qw-point - `{ inks }`, the inks of the remedy that is pointed at, or none
 * @fires qw-try - `{ changes }`, a remedy is to be tried on screen
 */
@customElement('qw-remedies')
export class QwRemedies extends QwElement {
  static override styles = [controls, ruled, chipStyle, styles()];

  @property({ attribute: false }) comparison: Comparison | null = null;
  @property({ attribute: false }) remedies: readonly Remedy[] = [];

  /** True once those that are folded away were asked for. */
  @state() private all = false;

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.get('comparison')) this.all = false;
  }

  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await ownTurn();
    super.scheduleUpdate();
  }

  override render() {
    const { remedies } = this;
    if (!this.comparison || remedies.length === 0) return nothing;
    const shown = this.all ? remedies : remedies.slice(0, first);
    const more = remedies.length - shown.length;
    const cautions = [...new Set(remedies.flatMap(({ caution }) => caution ?? []))];
    const table = inkTable(this.comparison.anchor, this.comparison.candidate);
    return html`<div class="row">
      <div class="margin" aria-hidden="true"></div>
      <div class="text">
        <h3>${this.comparison.verdict === 'holds-together' ? 'What could still be done' : 'What could mend it'}</h3>
        <ol>
          ${shown.map((remedy) => this.card(remedy, table))}
        </ol>
        ${more > 0 ? html`<button type="button" class="word" @click=${() => (this.all = true)}><span>${more === 1 ? '1 more way' : `${more} more ways`}</span></button>` : nothing}
        ${cautions.map((caution) => html`<p class="care">${caution}</p>`)}
      </div>
    </div>`;
  }

  private card(remedy: Remedy, table: InkTable) {
    const changes = remedy.changes ?? [];
    const point = (inks: readonly string[]) => () => emit(this, 'qw-point', { inks });
    return html`<li @pointerenter=${point(remedy.inks)} @pointerleave=${point([])}>
      <h4>${remedy.title}</h4>
      <p>${withChips(remedy.says, remedy.inks, table)}</p>
      <small>${remedy.cost} · then: ${verdictInSentence(remedy.verdictAfter)}</small>
      ${
        changes.length > 0
          ? html`<button type="button" class="word try" aria-label="Try it on screen: ${remedy.title}" @click=${() => emit(this, 'qw-try', { changes })}><span>Try it on screen</span></button>`
          : nothing
      }
    </li>`;
  }
}

function styles() {
  return css`
    h3 {
      margin: 14px 0 10px;
      font: 600 17px/1.3 var(--qw-serif);
    }
    ol {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(min(210px, 100%), 1fr));
      gap: 14px;
    }
    li {
      display: flex;
      flex-direction: column;
      padding: 13px 15px 14px;
      border: 1px solid var(--qw-rule);
    }
    h4 {
      font: 600 15.5px/1.35 var(--qw-serif);
    }
    li p {
      font-size: 15.5px;
      line-height: 1.42;
    }
    small {
      margin-top: auto;
      padding-top: 8px;
      font: 13px/1.3 var(--qw-sans);
      color: var(--qw-soft);
    }
    .try {
      margin: 2px 0 -10px;
      font-size: 13.5px;
    }
    .care {
      margin-top: 12px;
      font: 13px/1.4 var(--qw-sans);
      color: var(--qw-soft);
    }
  `;
}
