import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';

import type { AsideReason, HandChange, Ink } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { inkWords } from './ink-words.ts';
import { toolStyles } from './stage/stage-styles.ts';

export interface HandDetail {
  readonly edit: HandChange;
}

/** What a spot on the picture is wanted for. */
export interface SpotWish {
  readonly to: 'move-spot' | 'split';
  readonly ink: string;
}

/**
 * What a hand can correct in one ink of a reading.
 * @fires qw-hand - `{ edit }`
 * @fires qw-spot-wish - `{ to, ink }`, when a spot on the picture has to be shown for it
 */
@customElement('qw-ink-hand')
export class QwInkHand extends QwElement {
  static override styles = [
    controls,
    toolStyles,
    css`
      :host {
        padding: 2px 0 16px;
      }
      .wide {
        flex: 1 1 200px;
        max-width: 24em;
      }
      .joined {
        display: flex;
        align-items: end;
        gap: 8px;
      }
      .joined label {
        min-width: 0;
      }
    `,
  ];

  @property({ attribute: false }) ink: Ink | null = null;
  /** The side's other inks, base first. */
  @property({ attribute: false }) others: readonly Ink[] = [];
  /** The base can be renamed and its spot moved; it can't be merged away or set aside. */
  @property({ type: Boolean }) base = false;
  @property({ type: Boolean }) kept = false;
  @property({ type: Boolean, attribute: 'has-picture' }) hasPicture = false;

  override render() {
    const { ink } = this;
    if (!ink) return nothing;
    return html`<div class="fields">
        <label class="wide"
          ><span>Name</span
          ><input
            class="field"
            type="text"
            maxlength="60"
            autocomplete="off"
            .value=${live(inkWords(ink))}
            @change=${(event: Event) => this.rename(event, ink)}
        /></label>
        <label
          ><span>Share, %</span
          ><input
            class="field short"
            type="number"
            inputmode="decimal"
            min="0"
            max="100"
            step="any"
            .value=${live(String(Math.round(ink.share * 1000) / 10))}
            @change=${(event: Event) => this.setShare(event, ink)}
        /></label>
      </div>
      <div class="fields">
        <button class="slip" aria-pressed=${this.kept} ?disabled=${this.kept} @click=${() => this.send({ kind: 'keep', ink: ink.id })}>
          ${this.kept ? 'Kept as it is' : 'Keep it as it is'}
        </button>
        ${this.hasPicture ? html`<button class="slip" @click=${() => this.wish('move-spot', ink)}>Read it from another spot</button>` : nothing}
        <button class="slip" @click=${() => this.send({ kind: 'split', ink: ink.id })}>Split it in two</button>
        ${this.hasPicture ? html`<button class="slip" @click=${() => this.wish('split', ink)}>Split it by tapping</button>` : nothing}
      </div>
      ${this.base ? nothing : this.away(ink)}`;
  }

  private away(ink: Ink) {
    return html`<div class="fields">
      ${
        this.others.length > 0
          ? html`<div class="joined">
            <label
              ><span>It is the same as</span
              ><select class="field" id="into">
                ${this.others.map((other) => html`<option value=${other.id}>${other.id} ${inkWords(other)}</option>`)}
              </select></label
            >
            <button class="slip" @click=${() => this.send({ kind: 'merge', from: ink.id, into: this.chosen('into') })}>Merge</button>
          </div>`
          : nothing
      }
      <div class="joined">
        <label
          ><span>It is no ink, but</span
          ><select class="field" id="reason">
            ${reasons.map(({ value, label }) => html`<option value=${value}>${label}</option>`)}
          </select></label
        >
        <button
          class="slip"
          @click=${() => this.send({ kind: 'set-aside', ink: ink.id, reason: this.chosen('reason') as AsideReason })}
        >
          Set aside
        </button>
      </div>
    </div>`;
  }

  private chosen(id: string): string {
    return (this.renderRoot.querySelector(`#${id}`) as HTMLSelectElement).value;
  }

  private rename(event: Event, ink: Ink): void {
    const name = (event.target as HTMLInputElement).value.replace(/\s+/g, ' ').trim();
    if (name && name !== inkWords(ink)) this.send({ kind: 'rename', ink: ink.id, name });
    else this.requestUpdate();
  }

  private setShare(event: Event, ink: Ink): void {
    const field = event.target as HTMLInputElement;
    const share = Number(field.value) / 100;
    if (field.value !== '' && share >= 0 && share <= 1) this.send({ kind: 'set-share', ink: ink.id, share });
    else this.requestUpdate();
  }

  private wish(to: SpotWish['to'], ink: Ink): void {
    emit(this, 'qw-spot-wish', { to, ink: ink.id });
  }

  private send(edit: HandChange): void {
    emit(this, 'qw-hand', { edit });
  }
}

/** Why an ink is set aside, in words that end "It is no ink, but …". */
export const reasons: readonly { readonly value: AsideReason; readonly label: string }[] = [
  { value: 'shadow', label: 'a shadow' },
  { value: 'shine', label: 'a shine of the lamp' },
  { value: 'table', label: 'the table' },
  { value: 'dirt', label: 'a stain or dust' },
  { value: 'not printed', label: 'something else not printed' },
];

declare global {
  interface HTMLElementTagNameMap {
    'qw-ink-hand': QwInkHand;
  }
  interface HTMLElementEventMap {
    'qw-hand': CustomEvent<HandDetail>;
  }
}
