import { html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { grownFrame } from '../../../src/drawing/grown-frame.ts';
import { outlineOf } from '../../../src/drawing/outlines.ts';
import type { Frame, Spot } from '../../../src/sheet/model.ts';
import { controls } from '../../support/controls.ts';
import { emit } from '../../support/emit.ts';
import { follow } from './drag.ts';
import {
  boxStyle,
  type Corner,
  cornerOf,
  corners,
  framePath,
  gridPath,
  least,
  shapePath,
  withCorner,
} from './frame-corners.ts';
import { framingStyles } from './framing-styles.ts';
import { PictureStage } from './picture-stage.ts';
import { frameBetween, frameMoved, nudged, percent, placeWords, spotAt } from './spots.ts';
import { stageStyles } from './stage-styles.ts';

export interface FrameDetail {
  /** Fractions 0–1 of the picture, or null where there is no frame any more. */
  readonly frame: Frame | null;
  /** The corners of a shape that was drawn by hand, in fractions of the frame. */
  readonly outline?: readonly Spot[];
}

/** Longer side of the picture on which a frame is grown, in pixels. */
const grownOn = 600;

/** How wide the frame is that a tap lays, as a fraction of the picture. */
const tapped = 0.2;

/**
 * A picture on which a rectangular frame is laid: drawn with a mouse or pen, or laid by a tap and pulled at its corners,
 * or moved by the arrow keys. Outlines that are offered can be picked instead.
 *
 * @fires qw-frame - `{ frame }` in fractions of the picture, when the frame was laid, moved or picked
 */
@customElement('qw-framing')
export class QwFraming extends PictureStage {
  static override styles = [controls, stageStyles, framingStyles];

  @property({ attribute: false }) frame: Frame | null = null;
  /** Corners of the shape that the frame holds, in fractions of it; null for the frame itself. */
  @property({ attribute: false }) outline: readonly Spot[] | null = null;
  /** A line is drawn round something in place of a frame. */
  @property({ type: Boolean, attribute: 'by-hand' }) byHand = false;
  /** Frames to pick from, with what to call each. */
  @property({ attribute: false }) offers: readonly { readonly frame: Frame; readonly name: string }[] = [];
  /** What the frame is of: "the card". */
  @property() what = 'the frame';
  /** Columns and rows drawn inside the frame, for a chart of patches. */
  @property({ attribute: false }) grid: readonly [columns: number, rows: number] | null = null;
  /** Darkens what lies outside the frame. */
  @property({ type: Boolean }) veiled = false;
  /** A tap lays its frame on what is of one colour there: a card. */
  @property({ type: Boolean }) grows = false;
  @state() private drawing: Frame | null = null;
  @state() private line: readonly Spot[] = [];
  private touched = false;

  override render() {
    const frame = this.drawing ?? this.frame;
    return this.stage(
      html`<div
          class="ground ${this.byHand ? 'drawn' : ''}"
          @pointerdown=${this.byHand ? this.drawLine : this.draw}
          @click=${this.tap}
        ></div>
        ${this.line.length > 1 ? this.lineSoFar() : frame ? this.drawnFrame(frame) : nothing} ${this.offered()}
        ${frame ? this.handles(frame) : nothing}`,
      `Picture of ${this.name}`,
    );
  }

  private offered() {
    if (this.offers.length === 0) return nothing;
    const d = this.offers.map(({ frame }) => framePath(frame)).join('');
    return html`<svg class="over" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        ${svg`<path class="edge under" d=${d} /><path class="edge dashed" d=${d} />`}
      </svg>
      ${this.offers.map(
        ({ frame, name }) =>
          html`<button
            class="offer"
            aria-label=${`Take ${name}`}
            title=${name}
            style=${boxStyle(frame)}
            @click=${() => this.lay(frame)}
          ></button>`,
      )}`;
  }

  private lineSoFar() {
    const d = `M${this.line.map(({ x, y }) => `${x * 100} ${y * 100}`).join('L')}`;
    return html`<svg class="over" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
      ${svg`<path class="edge under" d=${d} /><path class="edge upper" d=${d} />`}
    </svg>`;
  }

  private drawnFrame(frame: Frame) {
    const d = this.outline ? shapePath(frame, this.outline) : framePath(frame);
    return html`<svg class="over" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        ${this.veiled ? svg`<path class="veil" d="M0 0H100V100H0Z${d}" />` : nothing}
        ${svg`<path class="edge under" d=${d} /><path class="edge upper" d=${d} />
        ${this.grid ? svg`<path class="edge upper thin" d=${gridPath(frame, this.grid)} />` : nothing}`}
      </svg>`;
  }

  private handles(frame: Frame) {
    const { x, y, width, height } = frame;
    return html`<span
        class="inside"
        role="slider"
        tabindex="0"
        aria-label=${`Place of ${this.what}`}
        aria-valuemin="0"
        aria-valuemax="100"
        aria-valuenow=${Math.round(x * 100)}
        aria-valuetext=${`${placeWords({ x, y })}, ${percent(width)} wide, ${percent(height)} high`}
        style=${boxStyle(frame)}
        @pointerdown=${(event: PointerEvent) => this.grab(event, frame, null)}
        @keydown=${(event: KeyboardEvent) => this.onKey(event, frame, null)}
      ></span>
      ${corners.map((corner) => {
        const spot = cornerOf(frame, corner);
        return html`<span
          class="handle ${corner.right ? 'right' : 'left'} ${corner.bottom ? 'bottom' : 'top'}"
          role="slider"
          tabindex="0"
          aria-label=${`Corner at the ${corner.words} of ${this.what}`}
          aria-valuemin="0"
          aria-valuemax="100"
          aria-valuenow=${Math.round(spot.x * 100)}
          aria-valuetext=${placeWords(spot)}
          style="left:${spot.x * 100}%;top:${spot.y * 100}%"
          @pointerdown=${(event: PointerEvent) => this.grab(event, frame, corner)}
          @keydown=${(event: KeyboardEvent) => this.onKey(event, frame, corner)}
          @blur=${this.lookAway}
        ></span>`;
      })}`;
  }

  /** Mouse and pen draw; a finger taps, so that the page can still be scrolled by the picture. */
  private draw(event: PointerEvent): void {
    // A click of some browsers does not say what clicked.
    this.touched = event.pointerType === 'touch';
    if (event.button === 1) this.zooming.move(event);
    if (event.button !== 0 || this.touched) return;
    const box = this.stageBox.getBoundingClientRect();
    const start = spotAt(event, box);
    follow(
      event,
      box,
      start,
      (spot) => {
        this.drawing = frameBetween(start, spot);
      },
      (done) => {
        const drawn = this.drawing;
        this.drawing = null;
        if (!done) return;
        if (drawn && drawn.width >= least && drawn.height >= least) this.lay(drawn);
        else this.layGrown(start);
      },
    );
  }

  /** A finger draws here too: it has been asked to. */
  private drawLine(event: PointerEvent): void {
    if (event.button !== 0) return;
    this.touched = false;
    const box = this.stageBox.getBoundingClientRect();
    const start = spotAt(event, box);
    this.line = [start];
    follow(
      event,
      box,
      start,
      (spot) => {
        this.line = [...this.line, spot];
      },
      (done) => {
        const drawn = outlineOf(this.line);
        this.line = [];
        if (done && drawn && drawn.frame.width >= least && drawn.frame.height >= least)
          this.lay(drawn.frame, drawn.outline);
      },
    );
  }

  private tap(event: MouseEvent): void {
    if (!this.touched) return;
    const spot = spotAt(event, this.stageBox.getBoundingClientRect());
    if (this.layGrown(spot)) return;
    const { x, y } = spot;
    const width = this.frame?.width ?? tapped;
    const height = this.frame?.height ?? Math.min(1, tapped * this.ratio);
    this.lay(frameMoved({ x: 0, y: 0, width, height }, { x: x - width / 2, y: y - height / 2 }));
  }

  /** Lays a frame on what is of one colour with a spot. @returns false where there is no such piece, or it is not asked for. */
  private layGrown(spot: Spot): boolean {
    const grown = this.grows ? this.grownAt(spot) : null;
    if (grown) this.lay(grown);
    return grown !== null;
  }

  private grownAt(spot: Spot): Frame | null {
    const image = this.renderRoot.querySelector('img');
    if (!image?.naturalWidth) return null;
    const factor = Math.min(1, grownOn / Math.max(image.naturalWidth, image.naturalHeight));
    const width = Math.max(1, Math.round(image.naturalWidth * factor));
    const height = Math.max(1, Math.round(image.naturalHeight * factor));
    const context = new OffscreenCanvas(width, height).getContext('2d', { willReadFrequently: true });
    if (!context) return null;
    context.drawImage(image, 0, 0, width, height);
    return grownFrame(context.getImageData(0, 0, width, height), spot);
  }

  private grab(event: PointerEvent, frame: Frame, corner: Corner | null): void {
    if (event.button !== 0) return;
    event.stopPropagation();
    (event.currentTarget as HTMLElement).focus({ preventScroll: true });
    const start = corner ? cornerOf(frame, corner) : { x: frame.x, y: frame.y };
    if (corner) this.looking = start;
    follow(
      event,
      this.stageBox.getBoundingClientRect(),
      start,
      (spot) => {
        this.drawing = corner ? withCorner(frame, corner, spot) : frameMoved(frame, spot);
        if (corner) this.looking = spot;
      },
      (done) => {
        const drawn = this.drawing;
        this.drawing = null;
        this.looking = null;
        if (done && drawn) this.lay(drawn);
      },
    );
  }

  private onKey(event: KeyboardEvent, frame: Frame, corner: Corner | null): void {
    const spot = nudged(corner ? cornerOf(frame, corner) : frame, event, this.ratio);
    if (!spot) return;
    event.preventDefault();
    if (corner) this.looking = spot;
    this.lay(corner ? withCorner(frame, corner, spot) : frameMoved(frame, spot));
  }

  /** Lays a frame in the middle, for whoever has no pointer. */
  layInMiddle(): void {
    const height = Math.min(0.9, tapped * this.ratio);
    this.lay({ x: (1 - tapped) / 2, y: (1 - height) / 2, width: tapped, height });
    void this.updateComplete.then(() => this.renderRoot.querySelector<HTMLElement>('.inside')?.focus());
  }

  private lay(frame: Frame, outline?: readonly Spot[]): void {
    this.frame = frame;
    emit(this, 'qw-frame', outline ? { frame, outline } : { frame });
  }

  private lookAway(): void {
    this.looking = null;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-framing': QwFraming;
  }
  interface HTMLElementEventMap {
    'qw-frame': CustomEvent<FrameDetail>;
  }
}
