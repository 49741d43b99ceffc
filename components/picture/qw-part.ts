import { css, html, nothing } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { oval } from '../../src/drawing/outlines.ts';
import type { Frame, SizeMm, Spot } from '../../src/sheet/model.ts';
import { byHand } from '../support/by-finger.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import '../support/qw-choice.ts';
import { paperSizes, sizeWords } from './lengths.ts';
import './stage/qw-framing.ts';
import type { FrameDetail, QwFraming } from './stage/qw-framing.ts';
import { toolStyles } from './stage/stage-styles.ts';

export interface PartDetail {
  /** Fractions 0–1 of the sheet's picture. */
  readonly frame: Frame;
  /** Corners of its shape in fractions of the frame, where it is not the whole frame. */
  readonly outline?: readonly Spot[];
  readonly name: string;
  readonly sizeMm: SizeMm;
}

/** A block that was found on the sheet and can be taken as a part. */
export interface PartOffer {
  readonly frame: Frame;
  readonly name?: string;
}

/**
 * Marks a part of a sheet to be looked at by itself: a frame drawn on its picture, or one of the blocks that were found.
 * @fires qw-part - `{ frame, outline, name, sizeMm }`, when the part is kept
 */
@customElement('qw-part')
export class QwPart extends QwElement {
  static override styles = [
    controls,
    toolStyles,
    css`
      .fields > .name {
        flex: 1 1 220px;
        max-width: 26em;
      }
      .says {
        margin-top: 10px;
      }
    `,
  ];

  /** Address of the sheet's picture. */
  @property() picture: string | null = null;
  /** What the sheet is called. */
  @property() name = 'the sheet';
  @property({ attribute: false }) sizeMm: SizeMm = paperSizes[0]!.size;
  /** Blocks that were found on the sheet. */
  @property({ attribute: false }) offers: readonly PartOffer[] = [];
  @state() private frame: Frame | null = null;
  @state() private partName = '';
  @state() private shape: Shape = 'frame';
  @state() private drawn: readonly Spot[] | null = null;
  @query('qw-framing') private readonly framing!: QwFraming;

  override render() {
    const offers = this.offers.map(({ frame, name }, i) => ({ frame, name: name ?? `block ${i + 1}` }));
    return html`<p class="hint" style="margin:0 0 12px">
        ${hints()[this.shape]}
        ${offers.length > 0 ? `The dashed outlines are ${offers.length === 1 ? 'a block' : `${offers.length} blocks`} found on this sheet: pick one.` : ''}
      </p>
      <qw-choice
        label="Its shape"
        shows-label
        .choices=${shapes}
        .value=${this.shape}
        @qw-choose=${this.onShape}
      ></qw-choice>
      <qw-framing
        .picture=${this.picture}
        .name=${this.name}
        .frame=${this.frame}
        .outline=${this.outline}
        ?by-hand=${this.shape === 'by hand'}
        .offers=${offers}
        what="the part"
        veiled
        @qw-frame=${this.onFrame}
      ></qw-framing>
      <p class="says" role="status">${this.frame ? sizeWords(this.sizeOf(this.frame)) : 'No part is marked yet.'}</p>
      <div class="fields">
        <label class="name"
          ><span>What to call it</span
          ><input
            class="field"
            type="text"
            maxlength="80"
            autocomplete="off"
            .value=${live(this.partName)}
            placeholder=${this.usualName(offers)}
            @input=${this.onName}
        /></label>
      </div>
      <div class="fields">
        <button class="slip main" ?disabled=${!this.frame} @click=${() => this.keep(offers)}>Keep this part</button>
        ${
          this.frame
            ? html`<button class="slip" @click=${this.clear}>Take the frame away</button>`
            : this.shape === 'by hand'
              ? nothing
              : html`<button class="slip" ?disabled=${!this.picture} @click=${() => this.framing.layInMiddle()}>
              Lay a frame in the middle
            </button>`
        }
      </div>`;
  }

  private get outline(): readonly Spot[] | null {
    return this.shape === 'oval' ? oval : this.shape === 'by hand' ? this.drawn : null;
  }

  private sizeOf({ width, height }: Frame): SizeMm {
    return { width: this.sizeMm.width * width, height: this.sizeMm.height * height };
  }

  private usualName(offers: readonly { frame: Frame; name: string }[]): string {
    const picked = offers.find(({ frame }) => frame === this.frame);
    return `${this.name}, ${picked?.name ?? 'a part'}`;
  }

  private onFrame(event: CustomEvent<FrameDetail>): void {
    event.stopPropagation();
    const { frame, outline } = event.detail;
    this.frame = frame;
    if (outline) this.drawn = outline;
  }

  private onShape(event: CustomEvent<{ value: string }>): void {
    event.stopPropagation();
    this.shape = event.detail.value as Shape;
    // A frame says nothing yet of what lies within it.
    if (this.shape === 'by hand') {
      this.frame = null;
      this.drawn = null;
    }
  }

  private onName(event: Event): void {
    this.partName = (event.target as HTMLInputElement).value;
  }

  private clear(): void {
    this.frame = null;
  }

  private keep(offers: readonly { frame: Frame; name: string }[]): void {
    const { frame, outline } = this;
    if (!frame) return;
    const name = this.partName.trim() || this.usualName(offers);
    emit(this, 'qw-part', {
      frame,
      ...(outline ? { outline } : {}),
      name,
      sizeMm: this.sizeOf(frame),
    });
    this.frame = null;
    this.drawn = null;
    this.partName = '';
  }
}

type Shape = 'frame' | 'oval' | 'by hand';

const shapes: readonly { value: Shape; label: string }[] = [
  { value: 'frame', label: 'straight sides' },
  { value: 'oval', label: 'oval' },
  { value: 'by hand', label: 'drawn by hand' },
];

/** A finger scrolls the page by the picture, so it taps where a mouse draws. */
const hints = (): Readonly<Record<Shape, string>> => ({
  frame: byHand('Draw a frame around the piece.', 'Tap the piece, and pull the corners.'),
  oval: byHand(
    'Draw a frame around the piece: the oval that fills it is kept.',
    'Tap the piece, and pull the corners: the oval that fills the frame is kept.',
  ),
  'by hand': 'Draw a line round the piece, as scissors would go; the ends are joined for you.',
});

declare global {
  interface HTMLElementTagNameMap {
    'qw-part': QwPart;
  }
  interface HTMLElementEventMap {
    'qw-part': CustomEvent<PartDetail>;
  }
}
