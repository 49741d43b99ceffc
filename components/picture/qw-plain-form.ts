import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { PlainKind, SpecialFinish, Spot } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import '../support/qw-choice.ts';
import type { ColourOf, KnownColour } from './known-colour.ts';
import './stage/qw-spotting.ts';
import type { SpotDetail } from './stage/qw-spotting.ts';
import './qw-typed-colour.ts';
import type { TypedColourDetail } from './qw-typed-colour.ts';
import { specialFinishes } from './special-finishes.ts';
import { toolStyles } from './stage/stage-styles.ts';

/** A plain as the hand gives it. */
export interface PlainDetail {
  readonly name: string;
  readonly kind: PlainKind;
  /** What was typed, or where the picture was tapped (fractions 0–1). */
  readonly from: { readonly text: string } | { readonly spot: Spot };
  /** The colour as it was shown. */
  readonly hex: string;
  readonly special?: SpecialFinish;
  readonly takesColour: boolean;
}

/**
 * A one-colour material for the drawer: what it is, what it is called, and its colour, typed or read from one tap.
 *
 * @fires qw-plain - `PlainDetail`, when it is put in the drawer
 * @fires qw-spot - `{ spot }`, while a picture is tapped, so that `spotReads` can answer
 */
@customElement('qw-plain-form')
export class QwPlainForm extends QwElement {
  static override styles = [
    controls,
    toolStyles,
    css`
      .wide {
        flex: 1 1 220px;
        max-width: 26em;
      }
      .colour {
        max-width: 34em;
        margin-top: 14px;
      }
      .read {
        display: flex;
        align-items: center;
        gap: 12px;
        min-height: 44px;
        margin-top: 10px;
        font: 14.5px/1.4 var(--qw-sans);
      }
    `,
  ];

  /** Answers what a typed colour is. */
  @property({ attribute: false }) colourOf: ColourOf = () => undefined;
  /** Address of a picture to tap, or null where there is none. */
  @property() picture: string | null = null;
  /** What lies at the spot that `qw-spot` told last. */
  @property({ attribute: false }) spotReads: KnownColour | null = null;
  @state() private kind: PlainKind = 'cardstock';
  @state() private name = '';
  @state() private way: 'typed' | 'tapped' = 'typed';
  @state() private typed: TypedColourDetail = { text: '', known: undefined };
  @state() private spot: Spot | null = null;
  @state() private special: SpecialFinish | '' = '';
  @state() private takesColour = false;

  override render() {
    const tapped = this.way === 'tapped' && this.picture !== null;
    const known = tapped ? (this.spot ? this.spotReads : null) : this.typed.known;
    return html`<div class="fields" style="margin-top:0">
        <label
          ><span>What it is</span
          ><select class="field" @change=${this.onKind}>
            ${kinds.map((kind) => html`<option ?selected=${kind === this.kind}>${kind}</option>`)}
          </select></label
        >
        <label class="wide"
          ><span>What to call it</span
          ><input
            class="field"
            type="text"
            maxlength="80"
            autocomplete="off"
            placeholder=${known ? known.says.split(/[,(]/)[0]!.trim() : `a ${this.kind}`}
            .value=${live(this.name)}
            @input=${this.onName}
        /></label>
        <label
          ><span>Finish</span
          ><select class="field" @change=${this.onSpecial}>
            <option value="" ?selected=${this.special === ''}>ordinary</option>
            ${specialFinishes.map(
              ({ value, label }) =>
                html`<option value=${value} ?selected=${value === this.special}>${label}</option>`,
            )}
          </select></label
        >
      </div>
      ${
        this.picture
          ? html`<qw-choice
            label="Its colour is"
            shows-label
            .choices=${ways}
            .value=${this.way}
            @qw-choose=${this.onWay}
          ></qw-choice>`
          : nothing
      }
      <div class="colour">${tapped ? this.tap() : this.type()}</div>
      ${
        bare.includes(this.kind)
          ? html`<label class="tick"
            ><input type="checkbox" .checked=${live(this.takesColour)} @change=${this.onTakes} />bare: it takes any
            colour of ink or mist</label
          >`
          : nothing
      }
      <div class="fields">
        <button class="slip main" ?disabled=${!known} @click=${() => known && this.keep(known, tapped)}>
          Put it in the drawer
        </button>
      </div>`;
  }

  private type() {
    return html`<qw-typed-colour .text=${this.typed.text} .colourOf=${this.colourOf} @qw-colour=${this.onTyped}></qw-typed-colour>`;
  }

  private tap() {
    return html`<qw-spotting .picture=${this.picture} name=${`the ${this.kind}`} .spot=${this.spot} @qw-spot=${this.onSpot}></qw-spotting>
      <div class="read" role="status">
        ${
          this.spot && this.spotReads
            ? html`<span class="swatch" style="background:${this.spotReads.hex}"></span> ${this.spotReads.says}`
            : this.spot
              ? nothing
              : html`<button class="slip" @click=${this.spotInMiddle}>Put the spot in the middle</button> or tap the ${this.kind}.`
        }
      </div>`;
  }

  private onKind(event: Event): void {
    this.kind = (event.target as HTMLSelectElement).value as PlainKind;
    if (!bare.includes(this.kind)) this.takesColour = false;
  }

  private onName(event: Event): void {
    this.name = (event.target as HTMLInputElement).value;
  }

  private onSpecial(event: Event): void {
    this.special = (event.target as HTMLSelectElement).value as SpecialFinish | '';
  }

  private onWay(event: CustomEvent<{ value: string }>): void {
    event.stopPropagation();
    this.way = event.detail.value === 'tapped' ? 'tapped' : 'typed';
  }

  private onTakes(event: Event): void {
    this.takesColour = (event.target as HTMLInputElement).checked;
  }

  private onTyped(event: CustomEvent<TypedColourDetail>): void {
    event.stopPropagation();
    this.typed = event.detail;
  }

  private onSpot(event: CustomEvent<SpotDetail>): void {
    this.spot = event.detail.spot;
  }

  private spotInMiddle(): void {
    this.spot = { x: 0.5, y: 0.5 };
    emit(this, 'qw-spot', { spot: this.spot });
  }

  private keep(known: KnownColour, tapped: boolean): void {
    const { kind, takesColour, special, spot } = this;
    const name = this.name.replace(/\s+/g, ' ').trim() || `${known.says.split(/[,(]/)[0]!.trim()} ${kind}`;
    const from = tapped && spot ? { spot } : { text: this.typed.text };
    const finish = special === '' ? {} : { special };
    emit(this, 'qw-plain', { name, kind, from, hex: known.hex, takesColour, ...finish });
    this.name = '';
    this.typed = { text: '', known: undefined };
    this.spot = null;
  }
}

const kinds: readonly PlainKind[] = ['cardstock', 'ink pad', 'thread', 'tape', 'letters', 'mist', 'tag'];

/** What is also sold bare, to be coloured. */
const bare: readonly PlainKind[] = ['letters', 'tag', 'cardstock', 'thread', 'tape'];

const ways = [
  { value: 'typed', label: 'typed' },
  { value: 'tapped', label: 'read from a tap' },
];

declare global {
  interface HTMLElementTagNameMap {
    'qw-plain-form': QwPlainForm;
  }
  interface HTMLElementEventMap {
    'qw-plain': CustomEvent<PlainDetail>;
  }
}
