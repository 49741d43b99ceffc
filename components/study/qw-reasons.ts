import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Comparison, Kit, Reason } from '../../src/harmony/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { withSubscript } from '../support/subscript.ts';
import { ownTurn } from '../support/turn.ts';
import { unbroken } from '../support/unbroken.ts';
import { chipStyle } from './chip-style.ts';
import { dotStyles, reasonDot, stanceOf } from './reason-dot.ts';
import { reasonStyles } from './reason-styles.ts';
import { type InkTable, inksSpokenOf, withChips } from './sentence.ts';

/** Reasons that weigh less lie folded behind one line. Of 1; a choice of ours. */
const standsFrom = 0.2;

/**
 * Every reason with its figure and source in the margin. The size of the dot is its weight; filled is for, open
 * is against. Pointing at one, or stepping to its dot, lights up its inks; the dot keeps them lit.
 * @fires qw-point - `{ inks }`, the inks of the reason that is pointed at, or none
 */
@customElement('qw-reasons')
export class QwReasons extends QwElement {
  static override styles = [controls, ruled, chipStyle, dotStyles, reasonStyles];

  @property({ attribute: false }) comparison: Comparison | Kit | null = null;
  /** Ids of inks that are pointed at somewhere: the reasons that speak of them stand out. */
  @property({ attribute: false }) lit: readonly string[] = [];
  /** Start of the address of a source: its id follows. */
  @property({ attribute: 'source-href' }) sourceHref = '#sources/';
  /** Leaves out what turned the verdict: it is told with it. */
  @property({ type: Boolean, attribute: 'without-turned' }) withoutTurned = false;
  @state() private kept: Reason | null = null;
  @state() private open: readonly Fold[] = [];

  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await ownTurn();
    super.scheduleUpdate();
  }

  override render() {
    const { comparison } = this;
    if (!comparison) return nothing;
    const table = inksSpokenOf(comparison);
    const { stand, lighter, idle } = folded(
      comparison,
      this.withoutTurned ? comparison.decision.turnedBy : [],
    );
    return html`<h3 class="unseen">Reasons, weightiest first</h3>
      <ol @pointerleave=${() => this.point(null)}>
        ${stand.map((reason) => this.reason(reason, table))}
      </ol>
      ${
        lighter.length + idle.length === 0
          ? nothing
          : html`<div class="row fold">
              <span class="margin"></span>
              <div class="text">
                ${lighter.length ? this.fold('lighter', lighter.length === 1 ? '1 smaller reason' : `${lighter.length} smaller reasons`, lighter) : nothing}
                ${idle.length ? this.fold('idle', idle.length === 1 ? '1 note that does not count' : `${idle.length} notes that do not count`, idle) : nothing}
              </div>
            </div>`
      }
      ${this.behind('lighter', lighter, table)} ${this.behind('idle', idle, table)}`;
  }

  /** What opens the reasons that are folded away. */
  private fold(which: Fold, words: string, reasons: readonly Reason[]) {
    const isOpen = this.open.includes(which);
    const spoken = isOpen ? 0 : reasons.filter(({ inks }) => this.speaksOf(inks)).length;
    const turn = () => {
      this.open = isOpen ? this.open.filter((one) => one !== which) : [...this.open, which];
    };
    return html`<h4>
      <button type="button" class="word" aria-expanded=${isOpen} aria-controls=${which} @click=${turn}><span>${words}</span></button>
      ${spoken ? html`<small>${spoken === 1 ? 'one of them speaks' : `${spoken} of them speak`} of this ink</small>` : nothing}
    </h4>`;
  }

  /** They open below the line; on paper all of them stand open. */
  private behind(which: Fold, reasons: readonly Reason[], table: InkTable) {
    if (reasons.length === 0) return nothing;
    return html`<ol id=${which} class="folded ${this.open.includes(which) ? 'open' : ''}" @pointerleave=${() => this.point(null)}>
      ${reasons.map((reason) => this.reason(reason, table))}
    </ol>`;
  }

  private speaksOf(inks: readonly string[]): boolean {
    return this.lit.length > 0 && this.lit.every((id) => inks.includes(id));
  }

  private reason(reason: Reason, table: InkTable) {
    const { weighs, says, inks, figure, source, sourceIds } = reason;
    const spoken = this.speaksOf(inks);
    const faded = this.lit.length > 0 && !spoken;
    return html`<li
      class="row ${stanceOf(weighs)} ${spoken ? 'lit' : ''} ${faded ? 'faded' : ''} ${this.kept === reason ? 'kept' : ''}"
      @pointerenter=${() => this.point(reason)}
      @click=${() => this.keep(reason)}
    >
      <div class="margin">
        <b>${withSubscript(unbroken(figure))}</b>
        ${sourceIds[0] ? html`<a href="${this.sourceHref}${sourceIds[0]}" @click=${stay}>${source}</a>` : html`<span>${source}</span>`}
      </div>
      <div class="text">
        ${reasonDot(weighs, { kept: this.kept === reason, point: (on) => this.point(on ? reason : null) })}
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

type Fold = 'lighter' | 'idle';

/**
 * Those that stand, the lighter ones and those that weigh nothing: of a pair the few that lead stand; of a kit those that weigh
 * most, and a single lighter one is not worth folding.
 */
function folded(
  { reasons, decision }: Comparison | Kit,
  without: readonly number[],
): Readonly<Record<'stand' | Fold, readonly Reason[]>> {
  const { leads } = decision;
  if (leads !== undefined) {
    const rest = reasons.slice(leads).filter((_, i) => !without.includes(i + leads));
    return {
      stand: reasons.slice(0, leads).filter((_, i) => !without.includes(i)),
      lighter: rest.filter(({ weighs }) => weighs !== 0),
      idle: rest.filter(({ weighs }) => weighs === 0),
    };
  }
  const weighing = reasons.filter(({ weighs }) => weighs !== 0);
  const idle = reasons.filter(({ weighs }) => weighs === 0);
  const stand = weighing.filter(({ weighs }) => Math.abs(weighs) >= standsFrom);
  const lighter = weighing.filter((reason) => !stand.includes(reason));
  return stand.length === 0 || lighter.length < 2
    ? { stand: weighing, lighter: [], idle }
    : { stand, lighter, idle };
}

function stay(event: Event): void {
  event.stopPropagation();
}
