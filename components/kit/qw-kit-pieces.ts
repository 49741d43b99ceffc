import { html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { letterOn } from '../../src/drawing/ladders.ts';
import { inksOf } from '../../src/drawing/words/says.ts';
import type { Kit } from '../../src/harmony/model.ts';
import { paperLimits } from '../../src/sheet/limits.ts';
import '../drawer/qw-miniature.ts';
import { inUnit, sizeWords } from '../picture/lengths.ts';
import { chipStyle } from '../study/chip-style.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { pointEvent } from '../support/point.ts';
import { Slip } from '../support/slip.ts';
import { kitPiecesStyles } from './kit-pieces-styles.ts';
import type { KitView, PieceChange, PieceView } from './kit-view.ts';
import './qw-kit-size.ts';

/**
 * The pieces of a kit, numbered: each with its inks, what is cut of it, and the mat under it.
 * @fires qw-change-piece - `{ index, change }`
 * @fires qw-remove-piece - `{ index }`, it is put back
 * @fires qw-point - `{ inks }`
 */
@customElement('qw-kit-pieces')
export class QwKitPieces extends QwElement {
  static override styles = [controls, chipStyle, kitPiecesStyles];

  @property({ attribute: false }) view: KitView | null = null;
  @property({ attribute: false }) lit: readonly string[] = [];
  private readonly slip = new Slip(this);

  override render() {
    const { view } = this;
    if (!view) return nothing;
    return html`<ol>${view.pieces.map((piece, at) => this.piece(view, piece, at))}</ol>`;
  }

  private piece(view: KitView, piece: PieceView, at: number) {
    const { paper, index } = piece;
    const member = view.kit?.members[at];
    return html`<li>
      <qw-miniature .picture=${paper.picture} .bands=${paper.bands}></qw-miniature>
      <div class="what">
        <p><b>${at + 1} ${paper.name}</b> <small>${piece.isPhoto ? 'photograph' : paper.about}</small></p>
        ${member ? this.inks(member) : nothing}
        <details>
          <summary class="word"><span>${sizeSays(view, piece)}</span></summary>
          <div class="fields">
            <qw-kit-size .sizeMm=${piece.sizeMm} .count=${piece.count} label=${paper.name} @qw-kit-size=${this.change(index)}></qw-kit-size>
            ${piece.sizeMm && view.mats.length ? this.mat(view, piece) : nothing}
            ${
              piece.canBePhoto
                ? html`<label class="tick"><input type="checkbox" .checked=${piece.isPhoto} @change=${(event: Event) => this.tell(index, { isPhoto: (event.target as HTMLInputElement).checked })} />It is a photograph: judge only how it stands out</label>`
                : nothing
            }
          </div>
        </details>
      </div>
      <button type="button" class="word back" aria-label="Put back: ${paper.name}" @click=${() => emit(this, 'qw-remove-piece', { index })}><span>Put back</span></button>
    </li>`;
  }

  private inks(member: Kit['members'][number]) {
    return html`<div class="inks" @pointerleave=${() => this.dispatchEvent(pointEvent([]))}>
      ${inksOf(member.side).map(
        ({ id, hex, share }) => html`<span
          class="chip ${this.lit.includes(id) ? 'lit' : this.lit.length ? 'quiet' : ''}"
          style="background:${hex};color:${letterOn(hex)};flex-grow:${Math.max(0.02, share)}"
          @pointerenter=${() => this.dispatchEvent(pointEvent([id]))}
        >${id.replace(/^\d+/, '')}</span>`,
      )}
    </div>`;
  }

  private mat(view: KitView, { index, mat, paper }: PieceView) {
    const onPlain = (event: Event) => {
      const plainId = (event.target as HTMLSelectElement).value;
      this.tell(index, { mat: plainId ? { plainId, borderMm: mat?.borderMm ?? usualBorderMm } : null });
    };
    const onBorder = (event: Event) => {
      const borderMm = Number((event.target as HTMLInputElement).value);
      if (mat && this.slip.takes(borderMm, { what: 'A border', unit: 'mm', ...paperLimits.borderMm }))
        this.tell(index, { mat: { ...mat, borderMm } });
    };
    return html`<div class="mat">
      <label><span>Mat under it</span>
        <select class="field" aria-label="Mat under ${paper.name}" @change=${onPlain}>
          <option value="" ?selected=${!mat}>none</option>
          ${view.mats.map(({ id, name }) => html`<option value=${id} ?selected=${mat?.plainId === id}>${name}</option>`)}
        </select></label>
      ${mat ? html`<label><span>Border, mm</span><input class="field short" type="number" min=${paperLimits.borderMm.least} max=${paperLimits.borderMm.most} step="0.5" .value=${live(inUnit(mat.borderMm, 'mm'))} @change=${onBorder} /></label>${this.slip.render()}` : nothing}
    </div>`;
  }

  private change(index: number) {
    return (event: CustomEvent<PieceChange>): void => {
      event.stopPropagation();
      this.tell(index, event.detail);
    };
  }

  private tell(index: number, change: PieceChange): void {
    emit(this, 'qw-change-piece', { index, change });
  }
}

/** ⅛ inch on every side. Common practice, no source. */
const usualBorderMm = 3.2;

function sizeSays(view: KitView, { sizeMm, count, mat }: PieceView): string {
  if (!sizeMm) return 'Size on the page: not set';
  const plain = mat ? view.mats.find(({ id }) => id === mat.plainId) : undefined;
  const border = mat && plain ? `, on a mat of ${plain.name}` : '';
  return `${count > 1 ? `${count} pieces, each ` : ''}${sizeWords(sizeMm)}${border}`;
}
