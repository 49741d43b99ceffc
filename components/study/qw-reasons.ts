import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Comparison, Kit, Reason } from '../../src/harmony/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { lowered } from '../support/lowered.ts';
import { ownTurn } from '../support/turn.ts';
import { chipStyle } from './chip-style.ts';
import { reasonStyles } from './reason-styles.ts';
import { type InkTable, inksSpokenOf, withChips } from './sentence.ts';

/** Diameter of a reason's dot in CSS pixels: from the lightest to the weightiest. A choice of ours. */
const dotPx = { least: 5, most: 17 };

/**
 * Every reason with its figure and source in the margin. The size of the dot is its weight; filled is for, open
 * is against. Pointing at one, or stepping to its dot, lights up its inks; the dot keeps them lit.
 * @fires qw-point - `{ inks }`, the inks of the reason that is pointed at, or none
 */
@customElement('qw-reasons')
export class QwReasons extends QwElement {
  static override styles = [controls, ruled, chipStyle, reasonStyles];

  @property({ attribute: false }) comparison: Comparison | Kit | null = null;
  /** Ids of inks that are pointed at somewhere: the reasons that speak of them stand out. */
  @property({ attribute: false }) lit: readonly string[] = [];
  /** Start of the address of a source: its id follows. */
  @property({ attribute: 'source-href' }) sourceHref = '#sources/';
  @state() private kept: Reason | null = null;

  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await ownTurn();
    super.scheduleUpdate();
  }

  override render() {
    const { comparison } = this;
    if (!comparison) return nothing;
    const table = inksSpokenOf(comparison);
    const weighing = comparison.reasons.filter(({ weighs }) => weighs !== 0);
    const idle = comparison.reasons.filter(({ weighs }) => weighs === 0);
    return html`<h3 class="unseen">Reasons, weightiest first</h3>
      <ol @pointerleave=${() => this.point(null)}>
        ${weighing.map((reason) => this.reason(reason, table))}
      </ol>
      ${
        idle.length
          ? html`<div class="row"><span class="margin"></span><h4 class="text">Worth knowing, weighs nothing</h4></div>
              <ol @pointerleave=${() => this.point(null)}>${idle.map((reason) => this.reason(reason, table))}</ol>`
          : nothing
      }`;
  }

  private reason(reason: Reason, table: InkTable) {
    const { weighs, says, inks, figure, source, sourceIds } = reason;
    const stance = weighs > 0 ? 'for' : weighs < 0 ? 'against' : 'idle';
    const size = dotPx.least + (dotPx.most - dotPx.least) * Math.abs(weighs);
    const spoken = this.lit.length > 0 && this.lit.every((id) => inks.includes(id));
    const faded = this.lit.length > 0 && !spoken;
    return html`<li
      class="row ${stance} ${spoken ? 'lit' : ''} ${faded ? 'faded' : ''}"
      @pointerenter=${() => this.point(reason)}
      @click=${() => this.keep(reason)}
    >
      <div class="margin">
        <b>${lowered(figure)}</b>
        ${sourceIds[0] ? html`<a href="${this.sourceHref}${sourceIds[0]}" @click=${stay}>${source}</a>` : html`<span>${source}</span>`}
      </div>
      <div class="text">
        <button
          type="button"
          class="dot"
          aria-pressed=${this.kept === reason}
          aria-label=${spokenWeight(weighs)}
          @focus=${() => this.point(reason)}
          @blur=${() => this.point(null)}
        >
          <i style="--size:${size}px"></i>
        </button>
        <p>${withChips(says, inks, table)}</p>
      </div>
    </li>`;
  }

  private point(reason: Reason | null): void {
    emit(this, 'qw-point', { inks: (reason ?? this.kept)?.inks ?? [] });
  }

  private keep(reason: Reason): void {
    this.kept = this.kept === reason ? null : reason;
    this.point(reason);
  }
}

/** "For, weighs 0.6 of 1. Keep its inks lit". */
export function spokenWeight(weighs: number): string {
  if (weighs === 0) return 'Worth knowing, weighs nothing. Keep its inks lit';
  return `${weighs > 0 ? 'For' : 'Against'}, weighs ${Math.abs(weighs).toFixed(1)} of 1. Keep its inks lit`;
}

function stay(event: Event): void {
  event.stopPropagation();
}
