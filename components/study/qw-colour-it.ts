import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import type { Wheel } from '../../src/colour/model.ts';
import { gapIn } from '../../src/drawing/strip-gap.ts';
import { surroundTones } from '../../src/drawing/surround.ts';
import { regionSays } from '../../src/drawing/words/region-says.ts';
import type { ColourIt, Comparison } from '../../src/harmony/model.ts';
import type { Surround } from '../../src/notebook/model.ts';
import '../strip/qw-strip.ts';
import { controls, ruled } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { withSubscript } from '../support/subscript.ts';
import '../wheel/qw-wheel.ts';
import { chipStyle } from './chip-style.ts';
import { inksSpokenOf, withChips } from './sentence.ts';

export interface ColourItView {
  readonly names: { readonly anchor: string; readonly candidate: string };
  readonly comparison: Comparison;
  readonly found: ColourIt;
  /** What can be coloured; one of them is meant. */
  readonly things: readonly { readonly id: string; readonly name: string }[];
  readonly thing: string;
}

/**
 * Colour it yourself: where on wheel and strip a colour would tie the two most, for a thing that takes any colour, and
 * which of the reader's own inks comes nearest on it.
 * @fires qw-colour-what - `{ value }`, another thing is to be coloured
 */
@customElement('qw-colour-it')
export class QwColourIt extends QwElement {
  static override styles = [controls, ruled, chipStyle, styles()];

  @property({ attribute: false }) view: ColourItView | null = null;
  @property() wheel: Wheel = 'eye';
  @property() surround: Surround = 'grey';

  override render() {
    const { view } = this;
    if (!view) return nothing;
    const { found, comparison, names } = view;
    const table = inksSpokenOf(comparison);
    const anchor = { side: comparison.anchor, name: names.anchor };
    const candidate = { side: comparison.candidate, name: names.candidate };
    const { mat, text } = surroundTones(this.surround);
    return html`<section class="row" aria-labelledby="head">
      <div class="margin" aria-hidden="true"><b>colour it</b><span>a stretch, not one colour</span></div>
      <div class="text">
        <h3 id="head">Colour it yourself</h3>
        <p class="lede">For bare letters, a blank tag or a scrap of white under mist, ink or paint.</p>
        <label><span>What is to be coloured</span>
          <select class="field" @change=${(event: Event) => emit(this, 'qw-colour-what', { value: (event.target as HTMLSelectElement).value })}>
            ${view.things.map(({ id, name }) => html`<option value=${id} ?selected=${id === view.thing}>${name}</option>`)}
          </select></label>
        <p class="says" aria-live="polite">${withChips(found.says, [...table.keys()], table)}</p>
        ${
          found.nearest
            ? html`<p class="near"><i style="background:${found.nearest.onBase.hex}"></i><span>${found.nearest.plain.name} as it would look on it, ${withSubscript(`ΔE₀₀ ${found.nearest.deltaE00.toFixed(1)}`)} from the middle of the stretch.</span></p>`
            : nothing
        }
        ${
          found.regions.length
            ? html`<div class="charts" style=${styleMap({ background: mat, color: text })}>
                <qw-wheel .anchor=${anchor} .candidate=${candidate} .regions=${found.regions} .wheel=${this.wheel} .surround=${this.surround}></qw-wheel>
                <qw-strip .anchor=${anchor} .candidate=${candidate} .gap=${gapIn(comparison.reasons)} .regions=${found.regions} .surround=${this.surround}></qw-strip>
              </div>
              <p class="soft">The dashed outline on wheel and strip is where such a colour lies.</p>
              <ul>${found.regions.map((region) => html`<li>${regionSays(region)}</li>`)}</ul>`
            : nothing
        }
        <p class="care">Use mists, sprays and solvents with a window open, as the maker’s label says.</p>
      </div>
    </section>`;
  }
}

function styles() {
  return css`
    section {
      padding: 8px 0 20px;
    }
    h3 {
      font: 500 25px/1.2 var(--qw-serif);
    }
    .lede {
      margin: 2px 0 10px;
      color: var(--qw-soft);
      font-style: italic;
    }
    label span {
      display: block;
      margin-bottom: 2px;
      font: 13px/1.3 var(--qw-sans);
      color: var(--qw-soft);
    }
    .field {
      width: auto;
      max-width: 100%;
      font: 15px/1.3 var(--qw-sans);
      background: var(--qw-leaf);
    }
    .says {
      max-width: 39em;
      margin: 14px 0 6px;
    }
    .near {
      display: flex;
      align-items: center;
      gap: 10px;
      font: 14.5px/1.35 var(--qw-sans);
    }
    .near i {
      flex: none;
      width: 44px;
      height: 34px;
      box-shadow: 0 0 0 0.5px oklch(0.5 0 0 / 0.5);
    }
    .charts {
      display: grid;
      grid-template-columns: minmax(260px, 1fr) minmax(260px, 1.3fr);
      align-items: center;
      gap: 14px;
      margin: 14px 0 8px;
      padding: 16px;
    }
    ul,
    .soft,
    .care {
      font: 13.5px/1.45 var(--qw-sans);
      color: var(--qw-soft);
    }
    .care {
      margin-top: 10px;
    }
    @container (max-width: 760px) {
      .charts {
        grid-template-columns: minmax(0, 1fr);
      }
    }
  `;
}
