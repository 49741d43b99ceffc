import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Spot } from '../../../src/sheet/model.ts';
import { controls } from '../../support/controls.ts';
import { emit } from '../../support/emit.ts';
import { follow } from './drag.ts';
import { PictureStage } from './picture-stage.ts';
import { nudged, placeWords, spotAt } from './spots.ts';
import { stageStyles } from './stage-styles.ts';

export interface SpotDetail {
  readonly spot: Spot;
}

/** What is averaged at a spot, as a part of the picture's longer side. Source: `windowPart` of src/sheet/hand, to both hands. */
const averagedPart = 0.008;
const leastRingPx = 9;

/**
 * A picture with one spot to read a colour from: tapped, dragged or moved by the arrow keys, with a glass that enlarges.
 * @fires qw-spot - `{ spot }` in fractions of the picture, whenever it comes to rest somewhere else
 */
@customElement('qw-spotting')
export class QwSpotting extends PictureStage {
  static override styles = [
    controls,
    stageStyles,
    css`
      .ground {
        position: absolute;
        inset: 0;
        cursor: crosshair;
        touch-action: pan-x pan-y;
      }
      .handle::before {
        inset: calc(22px - var(--ring) / 2 - 2px);
        border-width: 2px;
      }
    `,
  ];

  @property({ attribute: false }) spot: Spot | null = null;

  override render() {
    return this.stage(
      html`<div class="ground" @pointerdown=${this.zooming.move} @click=${this.tap}></div>
        ${this.spot ? this.handle(this.spot) : nothing}`,
      `Picture of ${this.name}`,
    );
  }

  private handle(spot: Spot) {
    return html`<span
      class="handle"
      role="slider"
      tabindex="0"
      aria-label="Spot that the colour is read from"
      aria-valuemin="0"
      aria-valuemax="100"
      aria-valuenow=${Math.round(spot.x * 100)}
      aria-valuetext=${placeWords(spot)}
      style="left:${spot.x * 100}%;top:${spot.y * 100}%;--ring:${this.ringPx()}px"
      @pointerdown=${(event: PointerEvent) => this.grab(event, spot)}
      @keydown=${(event: KeyboardEvent) => this.onKey(event, spot)}
      @blur=${this.lookAway}
    ></span>`;
  }

  /** As wide as what is averaged there, but never so small that it is not seen. */
  private ringPx(): number {
    const wide = this.stageBox?.getBoundingClientRect().width ?? 0;
    return Math.max(leastRingPx, averagedPart * Math.max(wide, wide / this.ratio));
  }

  private tap(event: MouseEvent): void {
    if (this.zooming.wasMoved) return;
    this.rest(spotAt(event, this.stageBox.getBoundingClientRect()));
  }

  private grab(event: PointerEvent, start: Spot): void {
    if (event.button !== 0) return;
    (event.currentTarget as HTMLElement).focus({ preventScroll: true });
    this.looking = start;
    follow(
      event,
      this.stageBox.getBoundingClientRect(),
      start,
      (spot) => {
        this.spot = spot;
        this.looking = spot;
      },
      (done) => {
        this.looking = null;
        if (!done) this.spot = start;
        else if (this.spot && this.spot !== start) this.rest(this.spot);
      },
    );
  }

  private onKey(event: KeyboardEvent, from: Spot): void {
    const spot = nudged(from, event, this.ratio);
    if (!spot) return;
    event.preventDefault();
    this.looking = spot;
    this.rest(spot);
  }

  private rest(spot: Spot): void {
    this.spot = spot;
    emit(this, 'qw-spot', { spot });
  }

  private lookAway(): void {
    this.looking = null;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-spotting': QwSpotting;
  }
  interface HTMLElementEventMap {
    'qw-spot': CustomEvent<SpotDetail>;
  }
}
