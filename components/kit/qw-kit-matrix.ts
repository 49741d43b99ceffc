import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Kit, KitPair } from '../../src/harmony/model.ts';
import { chipStyle } from '../study/chip-style.ts';
import { inksSpokenOf, withChips } from '../study/sentence.ts';
import { verdictMark } from '../study/verdict-mark.ts';
import { verdictInSentence } from '../study/words.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { withSubscript } from '../support/subscript.ts';

/**
 * Every two pieces of a kit as a matrix of drawn marks; a mark that is pressed tells its pair below. Rows and columns
 * are numbered as the pieces are.
 */
@customElement('qw-kit-matrix')
export class QwKitMatrix extends QwElement {
  static override styles = [controls, chipStyle, styles()];

  @property({ attribute: false }) kit: Kit | null = null;
  /** Start of the address of a source: its id follows. */
  @property({ attribute: 'source-href' }) sourceHref = '#sources/';
  @state() private open = '';

  override render() {
    const { kit } = this;
    if (!kit || kit.pairs.length === 0) return nothing;
    const places = [...new Set(kit.pairs.flatMap(({ one, other }) => [one, other]))].sort((a, b) => a - b);
    const rows = places.slice(0, -1);
    const columns = places.slice(1);
    const told = kit.pairs.find((pair) => keyOf(pair) === this.open);
    return html`<div class="scroll">
        <table>
          <caption class="unseen">Every two pieces and whether they hold together</caption>
          <thead>
            <tr>
              <td></td>
              ${columns.map((at) => html`<th scope="col" title=${kit.members[at]!.name}><abbr title=${kit.members[at]!.name}>${at + 1}</abbr></th>`)}
            </tr>
          </thead>
          <tbody>
            ${rows.map(
              (row) => html`<tr>
                <th scope="row"><b>${row + 1}</b> ${kit.members[row]!.name}</th>
                ${columns.map((column) => html`<td>${column > row ? this.mark(kit, row, column) : nothing}</td>`)}
              </tr>`,
            )}
          </tbody>
        </table>
      </div>
      <p class="last"><b>${places.at(-1)! + 1}</b> ${kit.members[places.at(-1)!]!.name}</p>
      <div aria-live="polite">${told ? this.pair(kit, told) : nothing}</div>`;
  }

  private mark(kit: Kit, row: number, column: number) {
    const pair = kit.pairs.find(({ one, other }) => one === row && other === column);
    if (!pair) return nothing;
    const key = keyOf(pair);
    return html`<button
      type="button"
      aria-expanded=${this.open === key}
      aria-label="${kit.members[row]!.name} and ${kit.members[column]!.name}: ${verdictInSentence(pair.verdict)}"
      @click=${() => (this.open = this.open === key ? '' : key)}
    >
      ${verdictMark(pair.verdict, 36)}
    </button>`;
  }

  private pair(kit: Kit, { one, other, verdict, summary, weightiest }: KitPair) {
    const [a, b] = [kit.members[one]!, kit.members[other]!];
    const table = inksSpokenOf(kit);
    const ids = [...table.keys()];
    return html`<div class="pair">
      <p>${verdictMark(verdict, 34)} <b>${a.name} and ${b.name}: ${verdictInSentence(verdict)}.</b></p>
      <p>${withChips(summary, ids, table)}</p>
      ${
        weightiest
          ? html`<p>Weightiest: ${withChips(weightiest.says, ids, table)}</p>
            <small><b>${withSubscript(weightiest.figure)}</b> · ${weightiest.sourceIds[0] ? html`<a href="${this.sourceHref}${weightiest.sourceIds[0]}">${weightiest.source}</a>` : weightiest.source}</small>`
          : nothing
      }
    </div>`;
  }
}

function keyOf({ one, other }: KitPair): string {
  return `${one}-${other}`;
}

function styles() {
  return css`
    .scroll {
      overflow-x: auto;
    }
    table {
      border-collapse: collapse;
      font: 14px/1.25 var(--qw-sans);
    }
    th {
      font-weight: 400;
      text-align: left;
      padding: 4px 14px 4px 0;
      min-width: 90px;
    }
    thead th {
      min-width: 0;
      padding: 0 0 4px;
      text-align: center;
    }
    abbr {
      text-decoration: none;
      font-weight: 600;
    }
    td {
      padding: 0;
    }
    tbody td {
      border: 1px solid var(--qw-rule);
    }
    tbody td:empty {
      border-color: transparent;
    }
    button {
      display: grid;
      place-items: center;
      width: 56px;
      height: 46px;
    }
    button:hover,
    button[aria-expanded='true'] {
      background: color-mix(in oklch, var(--qw-ink) 8%, transparent);
    }
    button[aria-expanded='true'] {
      box-shadow: inset 0 0 0 2px var(--qw-ink);
    }
    .last {
      margin: 4px 0 0;
      font: 14px/1.25 var(--qw-sans);
    }
    .pair {
      display: grid;
      gap: 4px;
      margin: 12px 0 0;
      padding: 10px 14px;
      border: 1px solid var(--qw-rule);
    }
    .pair p:first-child {
      display: flex;
      align-items: center;
      gap: 10px;
    }
    .pair svg {
      flex: none;
    }
    small {
      font: 13px/1.3 var(--qw-sans);
      color: var(--qw-soft);
      font-variant-numeric: tabular-nums;
    }
  `;
}
