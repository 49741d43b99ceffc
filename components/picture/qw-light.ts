import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import type { Frame } from '../../src/sheet/model.ts';
import { byHand } from '../support/by-finger.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import '../support/qw-choice.ts';
import './stage/qw-framing.ts';
import type { FrameDetail, QwFraming } from './stage/qw-framing.ts';
import { toolStyles } from './stage/stage-styles.ts';

export type CardKind = 'none' | 'white' | 'grey' | 'chart';

/** What the light is to be taken from. */
export type CardDetail =
  | { readonly kind: 'none' }
  /** `frame` in fractions of the picture; `reflectance` 0–1. */
  | { readonly kind: 'white' | 'grey'; readonly frame: Frame; readonly reflectance: number }
  /** `frame` spans the outer edges of the patches, six across and four down, however it lies. */
  | { readonly kind: 'chart'; readonly frame: Frame };

/**
 * Tells from what in a photograph the light is taken: nothing, a white or grey card, or a chart of 24 patches, and where
 * it lies. Shows the picture before and after.
 *
 * @fires qw-card - `CardDetail`, when the hand says that it is right
 * @fires qw-card-undo - when the correction is to be taken back
 */
@customElement('qw-light')
export class QwLight extends QwElement {
  static override styles = [controls, toolStyles, lightStyles()];

  /** Address of the picture as it was taken. */
  @property() picture: string | null = null;
  /** Address of the picture under corrected light, or null where it is not corrected. */
  @property() corrected: string | null = null;
  @property() name = 'the paper';
  @property() kind: CardKind = 'none';
  @property({ attribute: false }) frame: Frame | null = null;
  /** Share of light that the card reflects, 0–1; null for the usual value of its kind. */
  @property({ type: Number }) reflectance: number | null = null;
  /** What is known of the light now: one sentence. */
  @property() says = '';
  /** True where the light is known; else it is said what follows from that. */
  @property({ type: Boolean }) known = false;
  @state() private looksAfter = true;
  @query('qw-framing') private readonly framing!: QwFraming | null;

  override render() {
    const { kind } = this;
    return html`<qw-choice
        label="What in the picture tells the light"
        shows-label
        .choices=${choices}
        .value=${kind}
        @qw-choose=${this.onKind}
      ></qw-choice>
      ${kind === 'none' && this.known ? nothing : html`<p class="hint">${hints()[kind]}</p>`}
      ${kind === 'none' ? this.pictures() : this.frameOn(kind)}
      ${this.says ? html`<p class="says" role="status">${this.says}</p>` : nothing}
      <div class="fields">
        <button class="slip main" ?disabled=${kind !== 'none' && !this.frame} @click=${this.use}>
          ${kind === 'none' ? 'Leave the light as it is' : 'Correct the light'}
        </button>
        <button class="slip" ?disabled=${!this.corrected} @click=${this.undo}>Undo the correction</button>
      </div>
      ${kind !== 'none' && this.corrected ? this.pictures() : nothing}`;
  }

  private frameOn(kind: Exclude<CardKind, 'none'>) {
    return html`<qw-framing
        .picture=${this.picture}
        .name=${this.name}
        .frame=${this.frame}
        .what=${whatWords[kind]}
        ?grows=${kind !== 'chart'}
        .grid=${kind === 'chart' ? (tall(this.frame) ? [4, 6] : [6, 4]) : null}
        @qw-frame=${this.onFrame}
      ></qw-framing>
      <div class="fields">
        ${
          this.frame
            ? nothing
            : html`<button class="slip" @click=${() => this.framing?.layInMiddle()}>Lay a frame in the middle</button>`
        }
        ${
          kind === 'chart'
            ? nothing
            : html`<label
              ><span>Share of light the card reflects, %</span
              ><input
                class="field short"
                type="number"
                inputmode="decimal"
                min="2"
                max="100"
                step="any"
                .value=${live(String(Math.round((this.reflectance ?? usual[kind]) * 1000) / 10))}
                @change=${this.onReflectance}
            /></label>`
        }
      </div>`;
  }

  private pictures() {
    if (!this.picture) return nothing;
    if (!this.corrected)
      return html`<figure class="mat"><img src=${this.picture} alt=${`${this.name} as it was taken`} /></figure>`;
    const shown = this.looksAfter;
    return html`<div class="pair">
      <figure class=${shown ? 'away' : ''}>
        <div class="mat"><img src=${this.picture} alt=${`${this.name} as it was taken`} /></div>
        <figcaption>as it was taken</figcaption>
      </figure>
      <figure class=${shown ? '' : 'away'}>
        <div class="mat"><img src=${this.corrected} alt=${`${this.name} under corrected light`} /></div>
        <figcaption>light corrected</figcaption>
      </figure>
      <button class="word swap" aria-pressed=${shown} @click=${this.swap}>
        <span>${shown ? 'Show it as it was taken' : 'Show it with the light corrected'}</span>
      </button>
    </div>`;
  }

  private onKind(event: CustomEvent<{ value: string }>): void {
    event.stopPropagation();
    this.kind = event.detail.value as CardKind;
    this.reflectance = null;
  }

  private onFrame(event: CustomEvent<FrameDetail>): void {
    event.stopPropagation();
    this.frame = event.detail.frame;
  }

  private onReflectance(event: Event): void {
    const percent = Number((event.target as HTMLInputElement).value);
    if (percent >= 2 && percent <= 100) this.reflectance = percent / 100;
    else this.requestUpdate();
  }

  private swap(): void {
    this.looksAfter = !this.looksAfter;
  }

  private undo(): void {
    emit(this, 'qw-card-undo', {});
  }

  private use(): void {
    const { kind, frame } = this;
    if (kind === 'none') emit(this, 'qw-card', { kind });
    else if (frame && kind === 'chart') emit(this, 'qw-card', { kind, frame });
    else if (frame && kind !== 'chart') {
      emit(this, 'qw-card', { kind, frame, reflectance: this.reflectance ?? usual[kind] });
    }
  }
}

/** Share of light that a card reflects where nothing is said of it. Common practice, no source. */
const usual = { white: 0.9, grey: 0.18, chart: 0.9 } as const;

const choices = [
  { value: 'none', label: 'No card' },
  { value: 'white', label: 'White card' },
  { value: 'grey', label: 'Grey card' },
  { value: 'chart', label: 'Chart of 24 patches' },
];

const whatWords = { white: 'the white card', grey: 'the grey card', chart: 'the chart' } as const;

/** What is said of cards here is common practice, no source. */
const hints = (): Readonly<Record<CardKind, string>> => ({
  none: 'A white card in the picture tells the light, so that whites and creams can be put right.',
  white: `${byHand('Draw a frame inside the white card, or tap it.', 'Tap the white card.')} Plain white printer paper in the same light will do, but it often glows bluish; a card made for the purpose is better.`,
  grey: `${byHand('Draw a frame inside the grey card, or tap it.', 'Tap the grey card.')} Cards made for photographers reflect 18 % of the light; what is printed on yours counts.`,
  chart: 'Lay the frame on the outer edges of the 24 patches, so that each square of it holds one patch.',
});

function tall(frame: Frame | null): boolean {
  return frame !== null && frame.height > frame.width;
}

function lightStyles() {
  return css`
    :host {
      container-type: inline-size;
    }
    .hint {
      margin: 0 0 12px;
    }
    .says {
      margin-top: 12px;
    }
    .mat {
      display: flex;
      justify-content: center;
      padding: 22px;
      background: var(--qw-mat);
    }
    .mat img {
      display: block;
      max-width: 100%;
      max-height: 56vh;
    }
    .pair {
      display: grid;
      grid-template-columns: 1fr 1fr;
      gap: 12px;
      margin-top: 14px;
    }
    figure {
      min-width: 0;
    }
    figcaption {
      margin-top: 4px;
      color: var(--qw-soft);
      font: 14px/1.3 var(--qw-sans);
    }
    .swap {
      display: none;
    }
    @container (max-width: 560px) {
      .pair {
        display: block;
      }
      .pair .away {
        display: none;
      }
      .swap {
        display: inline-flex;
      }
    }
  `;
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-light': QwLight;
  }
  interface HTMLElementEventMap {
    'qw-card': CustomEvent<CardDetail>;
    'qw-card-undo': CustomEvent<Record<string, never>>;
  }
}
