import { css, html, nothing, svg } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { paperWords, sizeWords } from '../picture/lengths.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { unbroken } from '../support/unbroken.ts';
import type { CutSheetView, CutView } from './kit-view.ts';

/**
 * What to cut from what: each sheet drawn to scale with its pieces numbered, and the same as sentences, the caution
 * about blades last.
 */
@customElement('qw-cut-list')
export class QwCutList extends QwElement {
  static override styles = [controls, styles()];

  @property({ attribute: false }) cuts: CutView | null = null;

  override render() {
    const { cuts } = this;
    if (!cuts) return nothing;
    return html`${cuts.sheets.length ? html`<ul class="sheets">${cuts.sheets.map((sheet) => html`<li>${this.sheet(sheet)}</li>`)}</ul>` : nothing}
      <ul class="says">${cuts.says.map((line) => html`<li>${unbroken(line)}</li>`)}</ul>`;
  }

  private sheet({ stock, number, layout, names }: CutSheetView) {
    const { width, height } = stock.sizeMm;
    const left = layout.left.filter((rect) => Math.min(rect.width, rect.height) >= leastLeftMm).slice(0, 3);
    const many = this.cuts!.sheets.filter(({ stock: other }) => other.name === stock.name).length > 1;
    return html`<figure>
      <svg viewBox="-1 -1 ${width + 2} ${height + 2}" role="img" aria-label="${stock.name}: ${names.join(', ')}">
        <rect class="sheet" width=${width} height=${height} />
        ${layout.placed.map(
          (rect, at) =>
            svg`<rect class="piece" x=${rect.x} y=${rect.y} width=${rect.width} height=${rect.height} />
              <text x=${rect.x + rect.width / 2} y=${rect.y + rect.height / 2} font-size=${letterMm(rect)}>${at + 1}</text>`,
        )}
      </svg>
      <figcaption>
        <b>${stock.name}${many ? `, sheet ${number}` : ''}</b>
        <small>${unbroken(paperWords(stock.sizeMm))} · ${layout.style === 'stopped' ? 'with stopped cuts' : 'cut edge to edge'}</small>
        <ol>
          ${layout.placed.map((rect, at) => html`<li>${names[at]} <small>${unbroken(sizeWords(rect))}</small></li>`)}
        </ol>
        ${left.length ? html`<small>left: ${unbroken(left.map(sizeWords).join('; '))}</small>` : nothing}
      </figcaption>
    </figure>`;
  }
}

/** Narrower strips are not worth keeping, in mm. A choice of ours. */
const leastLeftMm = 6;

/** Height of a number on a piece, in mm of the sheet, so that it fits a narrow strip. A choice of ours. */
function letterMm({ width, height }: { readonly width: number; readonly height: number }): number {
  return Math.min(26, Math.max(7, Math.min(width, height) * 0.6));
}

function styles() {
  return css`
    .sheets {
      display: grid;
      grid-template-columns: repeat(auto-fill, minmax(min(230px, 100%), 1fr));
      gap: 18px;
      margin-bottom: 14px;
    }
    svg {
      display: block;
      width: 100%;
      max-height: 260px;
    }
    rect {
      vector-effect: non-scaling-stroke;
    }
    .sheet {
      fill: none;
      stroke: var(--qw-hair);
      stroke-dasharray: 4 3;
    }
    .piece {
      fill: color-mix(in oklch, var(--qw-ink) 9%, transparent);
      stroke: var(--qw-ink);
      stroke-width: 1.5px;
    }
    text {
      fill: var(--qw-ink);
      font-family: var(--qw-sans);
      font-weight: 600;
      text-anchor: middle;
      dominant-baseline: central;
    }
    figcaption {
      margin-top: 8px;
      font: 14px/1.35 var(--qw-sans);
    }
    figcaption > small {
      display: block;
    }
    small {
      color: var(--qw-soft);
      font: 13px/1.35 var(--qw-sans);
    }
    ol {
      margin: 6px 0;
      padding-left: 20px;
      list-style: decimal;
    }
    .says li {
      max-width: 41em;
      padding: 4px 0;
    }
  `;
}
