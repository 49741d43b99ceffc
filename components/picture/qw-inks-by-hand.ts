import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { inksOf } from '../../src/drawing/words/says.ts';
import type { AsideReason, HandChange, Ink, Side, SpecialFinish, Spot } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { handStyles } from './hand-styles.ts';
import { inkWords } from './ink-words.ts';
import type { ColourOf, KnownColour } from './known-colour.ts';
import './qw-ink-hand.ts';
import { reasons, type SpotWish } from './qw-ink-hand.ts';
import './stage/qw-spotting.ts';
import type { SpotDetail } from './stage/qw-spotting.ts';
import './qw-typed-colour.ts';
import type { TypedColourDetail } from './qw-typed-colour.ts';
import { specialFinishes } from './special-finishes.ts';
import { percent } from './stage/spots.ts';
import { toolStyles } from './stage/stage-styles.ts';

/** An ink that was set aside, and why. */
export interface Aside {
  readonly ink: Ink;
  readonly reason: AsideReason;
}

/**
 * The inks of a side, each open to correction; what was set aside; and what can be added: from a spot on the picture, or
 * told where no picture shows it.
 *
 * @fires qw-hand - `{ edit }`, one correction
 * @fires qw-spot - `{ spot }`, while a spot is moved, so that `spotReads` can answer
 */
@customElement('qw-inks-by-hand')
export class QwInksByHand extends QwElement {
  static override styles = [controls, toolStyles, handStyles];

  @property({ attribute: false }) side: Side | null = null;
  /** Address of the side's picture, or null where there is none. */
  @property() picture: string | null = null;
  @property() name = 'the paper';
  /** Where each ink was read, by its id, as far as that is known. */
  @property({ attribute: false }) spots: Readonly<Record<string, Spot>> = {};
  /** Ids of the inks that a later reading leaves as they are. */
  @property({ attribute: false }) kept: readonly string[] = [];
  @property({ attribute: false }) aside: readonly Aside[] = [];
  /** What lies at the spot that `qw-spot` told last. */
  @property({ attribute: false }) spotReads: KnownColour | null = null;
  @property({ attribute: false }) colourOf: ColourOf = () => undefined;
  @state() private open: string | null = null;
  @state() private wish: SpotWish | { readonly to: 'add' } | null = null;
  @state() private spot: Spot | null = null;
  @state() private telling = false;
  @state() private typed: TypedColourDetail = { text: '', known: undefined };

  override render() {
    if (!this.side) return nothing;
    const inks = inksOf(this.side);
    return html`${this.wish ? this.spotting(this.wish, inks) : nothing}
      <ul>
        ${inks.map((ink, i) => this.row(ink, i === 0, inks))}
      </ul>
      ${this.aside.length > 0 ? this.setAside() : nothing}
      <div class="fields">
        <button class="slip" ?disabled=${!this.picture} @click=${() => this.ask({ to: 'add' })}>Add an ink from the picture</button>
        <button class="slip" aria-expanded=${this.telling} @click=${this.toggleTelling}>Add one that no picture shows</button>
      </div>
      ${this.telling ? this.tell() : nothing}`;
  }

  private row(ink: Ink, base: boolean, inks: readonly Ink[]) {
    const open = this.open === ink.id;
    const marks = [
      base ? 'base' : ink.accent ? 'accent' : '',
      ink.special ?? '',
      this.kept.includes(ink.id) ? 'kept' : ink.byHand ? 'by hand' : unsure(ink),
    ].filter((mark) => mark !== '');
    return html`<li>
      <div class="ink">
        <span class="swatch" style="background:${ink.hex}"></span>
        <b>${ink.id}</b>
        <span class="words">${inkWords(ink)}<small>${[percent(ink.share), ...marks].join(' · ')}</small></span>
        <button
          class="word"
          aria-expanded=${open}
          aria-label=${`${open ? 'Close' : 'Correct'} ${ink.id}, ${inkWords(ink)}`}
          @click=${() => this.toggle(ink.id)}
        >
          <span>${open ? 'Close' : 'Correct'}</span>
        </button>
      </div>
      ${
        open
          ? html`<qw-ink-hand
            .ink=${ink}
            .others=${inks.filter((other) => other !== ink)}
            .base=${base}
            .kept=${this.kept.includes(ink.id)}
            .hasPicture=${this.picture !== null}
            @qw-spot-wish=${this.onWish}
          ></qw-ink-hand>`
          : nothing
      }
    </li>`;
  }

  private setAside() {
    return html`<h3>Set aside</h3>
      <ul>
        ${this.aside.map(
          ({ ink, reason }) =>
            html`<li class="ink">
              <span class="swatch" style="background:${ink.hex}"></span>
              <span class="words">${inkWords(ink)}<small>${reasons.find(({ value }) => value === reason)?.label}</small></span>
              <button class="word" aria-label=${`Take it back: ${inkWords(ink)}`} @click=${() => this.send({ kind: 'keep', ink: ink.id })}>
                <span>Take it back</span>
              </button>
            </li>`,
        )}
      </ul>`;
  }

  private spotting(wish: SpotWish | { readonly to: 'add' }, inks: readonly Ink[]) {
    const ink = wish.to === 'add' ? undefined : inks.find(({ id }) => id === wish.ink);
    const words = ink ? `${ink.id}, ${inkWords(ink)}` : '';
    return html`<section class="spotting">
      <p class="says">
        ${{ add: 'Tap the ink that was missed.', 'move-spot': `Tap where ${words} should be read.`, split: `Tap the second colour that ${words} hides.` }[wish.to]}
      </p>
      <qw-spotting .picture=${this.picture} .name=${this.name} .spot=${this.spot} @qw-spot=${this.onSpot}></qw-spotting>
      <div class="read" role="status">
        ${this.spotReads ? html`<span class="swatch" style="background:${this.spotReads.hex}"></span> ${this.spotReads.says}` : nothing}
      </div>
      <div class="fields">
        <button class="slip main" ?disabled=${!this.spot} @click=${() => this.useSpot(wish)}>
          ${{ add: 'Add this ink', 'move-spot': 'Read it here', split: 'Split it here' }[wish.to]}
        </button>
        <button class="slip" @click=${this.leave}>Leave it</button>
      </div>
    </section>`;
  }

  private tell() {
    const { known } = this.typed;
    return html`<div class="told">
      <qw-typed-colour .text=${this.typed.text} .colourOf=${this.colourOf} @qw-colour=${this.onTyped}></qw-typed-colour>
      <label
        ><span>Finish</span
        ><select class="field" id="finish">
          ${specialFinishes.map(
            ({ value, label }, i) => html`<option value=${value} ?selected=${i === 0}>${label}</option>`,
          )}
          <option value="">an ordinary ink</option>
        </select></label
      >
      <button class="slip main" ?disabled=${!known} @click=${() => known && this.addTold(known)}>Add it</button>
    </div>`;
  }

  private toggle(id: string): void {
    this.open = this.open === id ? null : id;
  }

  private toggleTelling(): void {
    this.telling = !this.telling;
  }

  private onWish(event: CustomEvent<SpotWish>): void {
    event.stopPropagation();
    this.ask(event.detail);
  }

  private ask(wish: SpotWish | { readonly to: 'add' }): void {
    this.wish = wish;
    const spot = (wish.to === 'add' ? undefined : this.spots[wish.ink]) ?? { x: 0.5, y: 0.5 };
    this.spot = spot;
    emit(this, 'qw-spot', { spot });
    void this.updateComplete.then(() =>
      this.renderRoot.querySelector('.spotting')?.scrollIntoView({ block: 'nearest' }),
    );
  }

  private onSpot(event: CustomEvent<SpotDetail>): void {
    this.spot = event.detail.spot;
  }

  private useSpot(wish: SpotWish | { readonly to: 'add' }): void {
    const { spot } = this;
    if (!spot) return;
    this.send(wish.to === 'add' ? { kind: 'add', spot } : { kind: wish.to, ink: wish.ink, spot });
    this.leave();
  }

  private leave(): void {
    this.wish = null;
    this.spot = null;
  }

  private onTyped(event: CustomEvent<TypedColourDetail>): void {
    event.stopPropagation();
    this.typed = event.detail;
  }

  private addTold({ hex }: KnownColour): void {
    const finish = (this.renderRoot.querySelector('#finish') as HTMLSelectElement).value as
      | SpecialFinish
      | '';
    this.send({ kind: 'add', hex, ...(finish === '' ? {} : { special: finish }) });
    this.typed = { text: '', known: undefined };
    this.telling = false;
  }

  private send(edit: HandChange): void {
    emit(this, 'qw-hand', { edit });
  }
}

/** Said where the picture shows little of an ink. Ours. */
const hardlySure = 0.6;

function unsure({ sure }: Ink): string {
  return sure === undefined || sure >= hardlySure ? '' : `only ${percent(sure)} sure`;
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-inks-by-hand': QwInksByHand;
  }
}
