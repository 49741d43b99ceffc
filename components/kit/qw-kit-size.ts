import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { limits } from '../../src/notebook/limits.ts';
import { paperLimits } from '../../src/sheet/limits.ts';
import type { SizeMm } from '../../src/sheet/model.ts';
import { fromUnit, inUnit, type LengthUnit, lengthSpan } from '../picture/lengths.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { Slip } from '../support/slip.ts';
import type { PieceChange } from './kit-view.ts';

/**
 * How large a piece is cut, in inches or millimetres, and how many of it.
 * @fires qw-kit-size - `{ sizeMm, count }`; a size of null where one of its sides was emptied
 */
@customElement('qw-kit-size')
export class QwKitSize extends QwElement {
  static override styles = [
    controls,
    css`
      div {
        display: flex;
        flex-wrap: wrap;
        gap: 8px 12px;
      }
      span {
        display: block;
        margin-bottom: 2px;
        color: var(--qw-soft);
      }
      label {
        font: 13px/1.3 var(--qw-sans);
      }
      .field {
        width: 92px;
        font: 15px/1.3 var(--qw-sans);
        background: var(--qw-leaf);
      }
      select.field {
        width: auto;
      }
    `,
  ];

  @property({ attribute: false }) sizeMm: SizeMm | null = null;
  @property({ type: Number }) count = 1;
  /** Whose size it is. */
  @property() label = '';
  @state() private unit: LengthUnit = 'in';
  private readonly slip = new Slip(this);
  private typed: { width: number; height: number } = { width: 0, height: 0 };

  override render() {
    return html`<div role="group" aria-label="Size of ${this.label} on the page">
      ${this.side('Width', 'width')} ${this.side('Height', 'height')}
      <label
        ><span>Unit</span>
        <select class="field" @change=${(event: Event) => (this.unit = (event.target as HTMLSelectElement).value as LengthUnit)}>
          <option value="in" ?selected=${this.unit === 'in'}>inches</option>
          <option value="mm" ?selected=${this.unit === 'mm'}>mm</option>
        </select></label
      >
      <label
        ><span>How many</span
        ><input class="field" type="number" min="1" max=${limits.pieceCountTyped} step="1" .value=${live(String(this.count))} @change=${this.onCount}
      /></label>
      ${this.slip.render()}
    </div>`;
  }

  private side(label: string, which: 'width' | 'height') {
    const value = this.sizeMm ? inUnit(this.sizeMm[which], this.unit) : '';
    return html`<label
      ><span>${label}</span
      ><input class="field" type="number" inputmode="decimal" min="0" step="any" .value=${live(value)} @change=${(event: Event) => this.onSide(event, which)}
    /></label>`;
  }

  private onSide(event: Event, which: 'width' | 'height'): void {
    const typed = Number((event.target as HTMLInputElement).value) || 0;
    // An emptied side takes the size away; any other must be a length that can be cut.
    if (typed !== 0 && !this.slip.takes(typed, lengthSpan(nameOf[which], paperLimits.pieceMm, this.unit)))
      return;
    const value = fromUnit(typed, this.unit);
    const before = this.sizeMm ?? this.typed;
    this.typed = { width: before.width, height: before.height, [which]: value };
    const { width, height } = this.typed;
    if (width > 0 && height > 0) this.tell({ sizeMm: { width, height } });
    else if (this.sizeMm) this.tell({ sizeMm: null });
  }

  private onCount(event: Event): void {
    const count = Math.round(Number((event.target as HTMLInputElement).value));
    const span = { what: 'The number of pieces', least: 1, most: limits.pieceCountTyped };
    if (this.slip.takes(count, span)) this.tell({ count });
  }

  private tell(change: PieceChange): void {
    emit(this, 'qw-kit-size', change);
  }
}

const nameOf = { width: 'A width', height: 'A height' } as const;
