import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import type { NamedSide, Surround } from '../../src/drawing/model.ts';
import { paperStandIn } from '../../src/drawing/paper.ts';
import { inksOf, inkTag, paperSays } from '../../src/drawing/words/says.ts';
import type { Ink, Places } from '../../src/sheet/model.ts';
import { pointEvent } from '../support/point.ts';
import { baseStyles, wearTokens } from '../support/tokens.ts';
import { drawVeil } from './veil.ts';
import '../support/qw-drawing.ts';

/**
 * A paper as it looks, with the places of its inks: while inks are lit, their places stay clear and the rest is veiled;
 * pointing at the paper, with mouse or finger, tells which ink lies there. With a keyboard the same is done from the
 * paper's palette. Without a picture, strips of the inks stand in.
 *
 * @fires qw-point - { inks } of the ink under the pointer; none when that ends.
 * @csspart picture - the picture of the paper
 * @csspart tag - the ink's letter and words beside the pointer
 */
@customElement('qw-paper')
export class QwPaper extends LitElement {
  /** The paper and the name to speak of it. */
  @property({ attribute: false }) paper: NamedSide | null = null;
  /** Address of the picture (blob: or data:), or null where there is none. */
  @property() picture: string | null = null;
  /** Where each ink lies, over the whole picture. */
  @property({ attribute: false }) places: Places | null = null;
  /** Ids of the inks to light up. */
  @property({ attribute: false }) lit: readonly string[] = [];
  /** Default 'grey'. */
  @property({ reflect: true }) surround: Surround = 'grey';

  @state() private pointed: { ink: Ink; x: number; y: number } | null = null;
  @query('canvas') private readonly veil!: HTMLCanvasElement | null;

  static override styles = [baseStyles, paperStyles()];

  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
  }

  protected override render() {
    const { paper } = this;
    if (!paper) return nothing;
    if (!this.picture) {
      return html`<qw-drawing bare .drawing=${paperStandIn(paper)} .lit=${this.lit}></qw-drawing>`;
    }
    return html`<div
      class="sheet"
      @pointermove=${this.onPointer}
      @pointerdown=${this.onPointer}
      @pointerleave=${this.onLeave}
    >
      <img part="picture" src=${this.picture} alt=${paperSays(paper.side, paper.name)} draggable="false" />
      <canvas aria-hidden="true" class=${this.litHere().length > 0 ? 'on' : ''}></canvas>
      ${this.tag()}
    </div>`;
  }

  protected override updated(_changed: PropertyValues<this>): void {
    if (!this.veil || !this.paper || !this.places) return;
    const lit = this.litHere();
    if (lit.length === 0) return;
    const inks = inksOf(this.paper.side);
    drawVeil(this.veil, this.places, new Set(inks.flatMap((ink, i) => (lit.includes(ink.id) ? [i] : []))));
  }

  /** What is lit from outside or, where nothing is, the ink under the pointer. */
  private litHere(): readonly string[] {
    if (!this.places) return [];
    return this.lit.length > 0 ? this.lit : this.pointed ? [this.pointed.ink.id] : [];
  }

  private tag() {
    if (!this.pointed) return nothing;
    const { ink, x, y } = this.pointed;
    return html`<span part="tag" class="tag" aria-hidden="true" style="left:${x}%;top:${y}%">${inkTag(ink)}</span>`;
  }

  private readonly onPointer = (event: PointerEvent): void => {
    const found = this.inkAt(event);
    if (found?.ink.id !== this.pointed?.ink.id) this.dispatchEvent(pointEvent(found ? [found.ink.id] : []));
    this.pointed = found;
  };

  // A finger that lifts leaves too; what it touched stays lit until it touches elsewhere.
  private readonly onLeave = (event: PointerEvent): void => {
    if (event.pointerType !== 'mouse' || !this.pointed) return;
    this.pointed = null;
    this.dispatchEvent(pointEvent([]));
  };

  private inkAt(event: PointerEvent): { ink: Ink; x: number; y: number } | null {
    const { places, paper } = this;
    if (!places || !paper) return null;
    const box = (event.currentTarget as HTMLElement).getBoundingClientRect();
    const fx = (event.clientX - box.left) / box.width;
    const fy = (event.clientY - box.top) / box.height;
    const column = Math.floor(fx * places.width);
    const row = Math.floor(fy * places.height);
    if (column < 0 || row < 0 || column >= places.width || row >= places.height) return null;
    const label = places.labels[row * places.width + column] ?? 255;
    const ink = inksOf(paper.side)[label];
    return ink ? { ink, x: fx * 100, y: fy * 100 } : null;
  }
}

function paperStyles() {
  return css`
    .sheet {
      position: relative;
      touch-action: pan-y;
      box-shadow: 0 1px 2px oklch(0 0 0 / 0.28), 0 6px 16px oklch(0 0 0 / 0.14);
    }
    qw-drawing {
      box-shadow: 0 1px 2px oklch(0 0 0 / 0.28), 0 6px 16px oklch(0 0 0 / 0.14);
    }
    img {
      display: block;
      width: 100%;
      height: auto;
      user-select: none;
    }
    canvas {
      position: absolute;
      inset: 0;
      width: 100%;
      height: 100%;
      pointer-events: none;
      opacity: 0;
      transition: opacity var(--qw-quick) ease-out;
    }
    canvas.on {
      opacity: 1;
    }
    .tag {
      position: absolute;
      transform: translate(-50%, calc(-100% - 16px));
      padding: 4px 9px;
      background: oklch(0.98 0 0);
      color: oklch(0.2 0 0);
      box-shadow: 0 1px 4px oklch(0 0 0 / 0.4);
      font: var(--qw-small) / 1.3 var(--qw-sans);
      white-space: nowrap;
      pointer-events: none;
    }
  `;
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-paper': QwPaper;
  }
}
