import { html, nothing, type TemplateResult } from 'lit';
import { property, query, state } from 'lit/decorators.js';
import type { Spot } from '../../../src/sheet/model.ts';
import { QwElement } from '../../support/element.ts';
import { within } from './spots.ts';
import { mostZoom, Zooming } from './zooming.ts';

/** What every tool that works on a sheet's picture starts from: the picture on its mat, and a glass that enlarges. */
export abstract class PictureStage extends QwElement {
  /** Address of the picture (blob: or data:). */
  @property() picture: string | null = null;
  /** What to call the picture's paper. */
  @property() name = 'the paper';
  /** Width over height, known once the picture is there. */
  @state() protected ratio = 1;
  /** Where the glass looks, while something is moved. */
  @state() protected looking: Spot | null = null;
  @query('.stage') protected readonly stageBox!: HTMLElement;
  @query('.mat') private readonly mat!: HTMLElement;
  protected readonly zooming: Zooming = new Zooming(this, () => ({
    frame: this.mat,
    picture: this.stageBox,
  }));

  /** The picture with something over it. */
  protected stage(over: unknown, alt: string): TemplateResult {
    const { zoom } = this.zooming;
    return html`<div class="mat ${zoom > 1 ? 'near' : ''}" tabindex=${this.picture ? 0 : -1} role="group" aria-label=${`${alt}: + and − enlarge it, arrow keys move it`}>
      <div class="stage" style="--ratio:${this.ratio};--zoom:${zoom}">
        ${
          this.picture
            ? html`<img src=${this.picture} alt=${alt} draggable="false" @load=${this.onLoad} />`
            : html`<p class="none">There is no picture of ${this.name}.</p>`
        }
        ${this.picture ? over : nothing} ${this.glass()}
      </div>
    </div>
    ${this.picture ? this.zoomKeys(zoom) : nothing}`;
  }

  private zoomKeys(zoom: number) {
    return html`<div class="zoom">
      <button type="button" aria-label="Smaller" ?disabled=${zoom === 1} @click=${this.zooming.out}>−</button>
      <button type="button" aria-label="Larger" ?disabled=${zoom === mostZoom} @click=${this.zooming.in}>+</button>
      <output aria-label="Size of the picture">${zoom === 1 ? 'whole picture' : `${zoom.toFixed(1)} ×`}</output>
    </div>`;
  }

  /** An enlarged round of the picture beside the finger, with a cross at the spot itself. */
  private glass() {
    if (!this.looking || !this.picture) return nothing;
    const { x, y } = this.looking;
    const box = this.stageBox.getBoundingClientRect();
    const [px, py] = [x * box.width, y * box.height];
    // Above the finger; near the top beside it, on the side with more room, for below lies the hand.
    const above = py > glassSize + 44;
    const aside = px > box.width / 2 ? -1 : 1;
    const left = above
      ? within(px, glassSize / 2, box.width - glassSize / 2)
      : px + aside * (glassSize / 2 + 44);
    const top = above ? py - glassSize / 2 - 44 : Math.max(py, glassSize / 2 - 20);
    // What is enlarged already needs less of it.
    const glass = Math.max(1.5, glassZoom / this.zooming.zoom);
    const wide = box.width * glass;
    const tall = box.height * glass;
    const style = [
      `left:${left}px`,
      `top:${top}px`,
      `background-image:url("${this.picture}")`,
      `background-size:${wide}px ${tall}px`,
      `background-position:${glassSize / 2 - x * wide}px ${glassSize / 2 - y * tall}px`,
    ];
    return html`<span class="glass" aria-hidden="true" style=${style.join(';')}></span>`;
  }

  private onLoad(event: Event): void {
    const { naturalWidth, naturalHeight } = event.target as HTMLImageElement;
    if (naturalWidth > 0 && naturalHeight > 0) this.ratio = naturalWidth / naturalHeight;
  }
}

const glassZoom = 4;
const glassSize = 120;
