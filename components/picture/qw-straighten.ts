import { css, html, nothing, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Corners, SizeMm, Spot } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { emit } from '../support/emit.ts';
import { unbroken } from '../support/unbroken.ts';
import { paperSizes, paperWords } from './lengths.ts';
import { follow } from './stage/drag.ts';
import { PictureStage } from './stage/picture-stage.ts';
import './qw-size.ts';
import { makesSheet, nudged, placeWords } from './stage/spots.ts';
import { stageStyles, toolStyles } from './stage/stage-styles.ts';

/** A side as it was straightened. */
export interface Straightened {
  readonly picture: string | null;
  readonly sizeMm: SizeMm;
}

export interface CornersDetail {
  readonly corners: Corners;
  readonly sizeMm: SizeMm;
}

/**
 * A photograph with a handle on each corner of the sheet in it. The handles are dragged, or moved by the arrow keys, with
 * Shift in larger steps; a glass enlarges what is under the finger.
 *
 * @fires qw-corners - `{ corners, sizeMm }`, when the hand says that they are right
 */
@customElement('qw-straighten')
export class QwStraighten extends PictureStage {
  static override styles = [
    controls,
    stageStyles,
    toolStyles,
    css`
      .says {
        margin: 10px 0 8px;
      }
      figure {
        display: flex;
        align-items: center;
        justify-content: center;
        width: min(260px, 100%);
        padding: 22px;
        background: var(--qw-mat);
      }
      figure img {
        display: block;
        max-width: 100%;
        max-height: 40vh;
      }
    `,
  ];

  /** Where the corners are thought to be, clockwise from the sheet's top left. Setting it moves the handles there. */
  @property({ attribute: false }) corners: Corners = wholePicture;
  @property({ attribute: false }) sizeMm: SizeMm = paperSizes[0]!.size;
  /** What came of it the last time: the address of the picture and the sheet's size; null where it is as it was taken. */
  @property({ attribute: false }) done: Straightened | null = null;
  /** One sentence on how the corners were found; shown above. */
  @property() note = '';
  @state() private moved: Corners | null = null;

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    if (changed.has('corners')) this.moved = null;
  }

  override render() {
    const now = this.moved ?? this.corners;
    const sound = makesSheet(now);
    return html`${this.note ? html`<p class="says">${this.note}</p>` : nothing}
      ${this.stage(this.over(now), `Photograph of ${this.name}`)}
      <p class="hint">
        Put each handle on a corner of the sheet. With a keyboard: Tab to a corner, arrow keys to move it, Shift for
        larger steps.
      </p>
      <p class="says" role="status">
        ${sound ? '' : 'These corners cross or lie on one line. Put each handle on its own corner of the sheet.'}
      </p>
      <div class="fields">
        <qw-size .sizeMm=${this.sizeMm} @qw-size=${this.onSize}></qw-size>
      </div>
      <div class="fields">
        <button class="slip ${this.done && !this.moved ? '' : 'main'}" ?disabled=${!sound || !this.picture} @click=${this.use}>Straighten the sheet</button>
        <button class="slip" ?disabled=${!this.moved} @click=${this.putBack}>Put the corners back</button>
        <button class="slip" @click=${this.turn}>Turn it a quarter</button>
      </div>
      <p class="says done" role="status">${this.done ? unbroken(`Straightened: ${paperWords(this.done.sizeMm)}.`) : ''}</p>
      ${this.done?.picture ? html`<figure><img src=${this.done.picture} alt=${`${this.name}, straightened`} /></figure>` : nothing}`;
  }

  private over(corners: Corners) {
    const points = corners.map(({ x, y }) => `${x * 100} ${y * 100}`).join('L');
    // The short thick line is the sheet's top edge, so that a turned sheet can be told.
    const [a, b] = corners;
    const top = `M${a.x * 100} ${a.y * 100}L${b.x * 100} ${b.y * 100}`;
    return html`<div class="ground" @pointerdown=${this.zooming.move}></div>
      <svg class="over" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
        ${svg`<path class="veil" d="M0 0H100V100H0ZM${points}Z" />
        <path class="edge under" d="M${points}Z" /><path class="edge upper" d="M${points}Z" />
        <path class="edge upper" style="stroke-width:5px" d=${top} />`}
      </svg>
      ${corners.map((spot, i) => this.handle(spot, i))}`;
  }

  private handle(spot: Spot, i: number) {
    return html`<span
      class="handle"
      role="slider"
      tabindex="0"
      aria-label=${`Corner at the sheet’s ${cornerWords[i]}`}
      aria-valuemin="0"
      aria-valuemax="100"
      aria-valuenow=${Math.round(spot.x * 100)}
      aria-valuetext=${placeWords(spot)}
      style="left:${spot.x * 100}%;top:${spot.y * 100}%"
      @pointerdown=${(event: PointerEvent) => this.grab(event, i)}
      @keydown=${(event: KeyboardEvent) => this.onKey(event, i)}
      @blur=${this.lookAway}
    ></span>`;
  }

  private grab(event: PointerEvent, i: number): void {
    if (event.button !== 0) return;
    (event.currentTarget as HTMLElement).focus({ preventScroll: true });
    const before = this.moved;
    const start = (this.moved ?? this.corners)[i]!;
    this.looking = start;
    follow(
      event,
      this.stageBox.getBoundingClientRect(),
      start,
      (spot) => this.place(i, spot),
      (done) => {
        if (!done) this.moved = before;
        this.looking = null;
      },
    );
  }

  private onKey(event: KeyboardEvent, i: number): void {
    const spot = nudged((this.moved ?? this.corners)[i]!, event, this.ratio);
    if (!spot) return;
    event.preventDefault();
    this.place(i, spot);
  }

  private place(i: number, spot: Spot): void {
    this.moved = (this.moved ?? this.corners).map((old, at) => (at === i ? spot : old)) as unknown as Corners;
    this.looking = spot;
  }

  private lookAway(): void {
    this.looking = null;
  }

  private putBack(): void {
    this.moved = null;
  }

  /** The corner that was on the bottom left becomes the top left. */
  private turn(): void {
    const [a, b, c, d] = this.moved ?? this.corners;
    this.moved = [d, a, b, c];
  }

  private onSize(event: CustomEvent<{ sizeMm: SizeMm }>): void {
    event.stopPropagation();
    this.sizeMm = event.detail.sizeMm;
  }

  private use(): void {
    emit(this, 'qw-corners', { corners: this.moved ?? this.corners, sizeMm: this.sizeMm });
  }
}

/** Nothing is known: the corners of the picture itself. */
export const wholePicture: Corners = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: 1, y: 1 },
  { x: 0, y: 1 },
];

const cornerWords = ['top left', 'top right', 'bottom right', 'bottom left'] as const;

declare global {
  interface HTMLElementTagNameMap {
    'qw-straighten': QwStraighten;
  }
  interface HTMLElementEventMap {
    'qw-corners': CustomEvent<CornersDetail>;
  }
}
