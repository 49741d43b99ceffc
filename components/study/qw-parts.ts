import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property, query, state } from 'lit/decorators.js';
import { inkWords } from '../../src/drawing/words/says.ts';
import type { Comparison, JudgedParts, JudgedSquare } from '../../src/harmony/model.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { chipStyle } from './chip-style.ts';
import { type InkTable, inksSpokenOf, withChips } from './sentence.ts';

export interface PartsView {
  readonly name: string;
  readonly anchorName: string;
  readonly picture: string | null;
  readonly comparison: Comparison;
  /** Null while it is not known where the inks lie. */
  readonly shading: JudgedParts | null;
  /** How thickly each place is veiled, 0–255, row by row. */
  readonly veil: Uint8ClampedArray | null;
  /** True where parts of it can be kept in the drawer. */
  readonly canKeep: boolean;
}

/** The grey of the mat: the veil adds no colour to what it covers. */
const veilGrey = 0xba;

/**
 * Which parts of a busy sheet hold with the anchor: what does not is veiled in grey, squares worth cutting out are
 * numbered, and each says what it answers.
 * @fires qw-keep-part - `{ frame, name }`, frame as fractions 0–1 of the picture
 */
@customElement('qw-parts')
export class QwParts extends QwElement {
  static override styles = [controls, ruled, chipStyle, styles()];

  @property({ attribute: false }) view: PartsView | null = null;
  @state() private pointed = -1;
  @query('canvas') private readonly canvas!: HTMLCanvasElement | null;

  override render() {
    const { view } = this;
    if (!view) return nothing;
    return html`<section class="row" aria-labelledby="head">
      <div class="margin" aria-hidden="true"><b>which parts</b><span>of ${view.name}</span></div>
      <div class="text">
        <h3 id="head">Which parts?</h3>
        ${view.picture && view.shading ? this.found(view, view.picture, view.shading) : html`<p class="soft">${view.picture ? 'Looking where the inks lie…' : `There is no picture of ${view.name}, so its parts can’t be told apart.`}</p>`}
      </div>
    </section>`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('view')) return;
    const { shading, veil } = this.view ?? {};
    const context = this.canvas?.getContext('2d');
    if (!this.canvas || !context || !shading || !veil) return;
    this.canvas.width = shading.width;
    this.canvas.height = shading.height;
    const image = context.createImageData(shading.width, shading.height);
    for (let i = 0; i < veil.length; i += 1) {
      image.data.fill(veilGrey, i * 4, i * 4 + 3);
      image.data[i * 4 + 3] = veil[i]!;
    }
    context.putImageData(image, 0, 0);
  }

  private found(view: PartsView, picture: string, shading: JudgedParts) {
    const table = inksSpokenOf(view.comparison);
    const worth = shading.squares.filter(({ worthCutting }) => worthCutting);
    const ids = [...table.keys()];
    return html`<p class="lede">What holds with ${view.anchorName} is clear; what is alone or nearly misses lies under the grey.</p>
      <div class="two">
        <div class="sheet">
          <img src=${picture} alt="${view.name}, with what does not hold veiled" draggable="false" />
          <canvas aria-hidden="true"></canvas>
          ${worth.map((square, at) => html`<i class=${this.pointed === at ? 'on' : ''} style=${place(square)} aria-hidden="true"><b>${at + 1}</b></i>`)}
        </div>
        <div>
          <ul class="says">${shading.says.map((line) => html`<li>${withChips(line, ids, table)}</li>`)}</ul>
          ${worth.length && worth.length < shading.squares.length ? this.list(view, worth, table) : nothing}
          ${shading.caution ? html`<p class="care">${shading.caution}</p>` : nothing}
        </div>
      </div>`;
  }

  private list(view: PartsView, worth: readonly JudgedSquare[], table: InkTable) {
    return html`<details>
      <summary class="word"><span>${worth.length === 1 ? 'The square' : `The ${worth.length} squares`} worth cutting out</span></summary>
      <ol>
        ${worth.map((square, at) => {
          const answers = square.answers.slice(0, 3);
          const words = answers
            .map((id) => `${table.get(id) ? inkWords(table.get(id)!) : ''} (${id})`)
            .join(', ');
          const name = `${view.name}, square ${at + 1}`;
          return html`<li @pointerenter=${() => (this.pointed = at)} @pointerleave=${() => (this.pointed = -1)}>
            <span><b>${at + 1}</b> answers ${withChips(words, answers, table)}</span>
            ${view.canKeep ? html`<button type="button" class="word" aria-label="Keep as a part: ${name}" @click=${() => emit(this, 'qw-keep-part', { frame: square.frame, name })}><span>Keep as a part</span></button>` : nothing}
          </li>`;
        })}
      </ol>
    </details>`;
  }
}

function place({ frame }: JudgedSquare): string {
  const percent = (value: number) => `${(value * 100).toFixed(2)}%`;
  return `left:${percent(frame.x)};top:${percent(frame.y)};width:${percent(frame.width)};height:${percent(frame.height)}`;
}

function styles() {
  return css`
    section {
      padding: 8px 0 20px;
    }
    h3 {
      font: 500 25px/1.2 var(--qw-serif);
    }
    .lede,
    .soft {
      margin: 2px 0 12px;
      color: var(--qw-soft);
      font-style: italic;
    }
    .two {
      display: grid;
      grid-template-columns: minmax(0, 360px) minmax(0, 1fr);
      gap: 24px;
    }
    .sheet {
      position: relative;
      align-self: start;
      box-shadow: 0 1px 2px oklch(0 0 0 / 0.28), 0 6px 16px oklch(0 0 0 / 0.14);
    }
    img,
    canvas {
      display: block;
      width: 100%;
      height: auto;
    }
    canvas {
      position: absolute;
      inset: 0;
      height: 100%;
    }
    i {
      position: absolute;
      border: 1px solid oklch(1 0 0);
      outline: 1px solid oklch(0.15 0 0);
      outline-offset: -2px;
      font-style: normal;
    }
    i.on {
      border-width: 3px;
      outline-offset: -5px;
      outline-width: 2px;
    }
    i b {
      position: absolute;
      left: 4px;
      top: 4px;
      min-width: 18px;
      padding: 0 3px;
      background: oklch(0.98 0 0);
      color: oklch(0.15 0 0);
      font: 600 12px/18px var(--qw-sans);
      text-align: center;
    }
    .says li {
      padding: 0 0 6px;
    }
    summary {
      list-style: none;
      cursor: pointer;
    }
    summary::-webkit-details-marker {
      display: none;
    }
    ol li {
      display: flex;
      flex-wrap: wrap;
      justify-content: space-between;
      align-items: center;
      gap: 0 12px;
      border-bottom: 1px solid var(--qw-rule);
      font-size: 15.5px;
    }
    .care {
      margin-top: 12px;
      font: 13px/1.4 var(--qw-sans);
      color: var(--qw-soft);
    }
    @container (max-width: 720px) {
      .two {
        grid-template-columns: minmax(0, 1fr);
      }
    }
  `;
}
