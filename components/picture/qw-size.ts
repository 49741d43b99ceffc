import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { paperLimits } from '../../src/sheet/limits.ts';
import type { SizeMm } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { Slip } from '../support/slip.ts';
import { fromUnit, inUnit, type LengthUnit, lengthSpan, paperIndex, paperSizes } from './lengths.ts';
import { toolStyles } from './stage/stage-styles.ts';

/**
 * How large a sheet is: one of the sizes that papers are sold in, or any other in inches or millimetres.
 * @fires qw-size - `{ sizeMm }`, when another size is chosen or typed
 */
@customElement('qw-size')
export class QwSize extends QwElement {
  static override styles = [controls, toolStyles];

  @property({ attribute: false }) sizeMm: SizeMm = paperSizes[0]!.size;
  @property() label = 'Size of the sheet';
  @state() private other = false;
  @state() private unit: LengthUnit = 'in';
  private readonly slip = new Slip(this);

  override render() {
    const index = this.other ? -1 : paperIndex(this.sizeMm);
    const { width, height } = this.sizeMm;
    return html`<div class="fields" style="margin-top:0">
      <label
        ><span>${this.label}</span>
        <select class="field" @change=${this.onPaper}>
          ${paperSizes.map(({ label }, i) => html`<option value=${i} ?selected=${i === index}>${label}</option>`)}
          <option value="-1" ?selected=${index < 0}>another size</option>
        </select></label
      >
      ${
        index < 0
          ? html`${this.side('Width', 'width')} ${this.side('Height', 'height')}
            <label
              ><span>Unit</span
              ><select class="field" @change=${this.onUnit}>
                ${(['in', 'mm'] as const).map(
                  (unit) =>
                    html`<option value=${unit} ?selected=${unit === this.unit}>
                      ${unit === 'in' ? 'inches' : 'millimetres'}
                    </option>`,
                )}
              </select></label
            >`
          : nothing
      }
      ${
        Math.abs(width - height) > 1
          ? html`<label class="tick"
            ><input type="checkbox" .checked=${live(width > height)} @change=${this.turn} />on its side</label
          >`
          : nothing
      }
      ${this.slip.render()}
    </div>`;
  }

  private side(label: string, which: 'width' | 'height') {
    return html`<label
      ><span>${label}</span
      ><input
        class="field short"
        type="number"
        inputmode="decimal"
        min="0"
        step="any"
        .value=${live(inUnit(this.sizeMm[which], this.unit))}
        @change=${(event: Event) => this.onSide(event, which)}
    /></label>`;
  }

  private onPaper(event: Event): void {
    const index = Number((event.target as HTMLSelectElement).value);
    const paper = paperSizes[index];
    this.other = paper === undefined;
    if (paper) this.set(paper.size);
  }

  private onUnit(event: Event): void {
    this.unit = (event.target as HTMLSelectElement).value as LengthUnit;
  }

  private onSide(event: Event, which: 'width' | 'height'): void {
    const typed = Number((event.target as HTMLInputElement).value);
    const mm = fromUnit(typed, this.unit);
    // A side of nothing, or of more than a room, is a slip of the pen: the old one stays.
    if (this.slip.takes(typed, lengthSpan(nameOf[which], paperLimits.sheetMm, this.unit)))
      this.set({ ...this.sizeMm, [which]: mm });
  }

  private turn(): void {
    this.set({ width: this.sizeMm.height, height: this.sizeMm.width });
  }

  private set(sizeMm: SizeMm): void {
    this.sizeMm = sizeMm;
    emit(this, 'qw-size', { sizeMm });
  }
}

const nameOf = { width: 'A width', height: 'A height' } as const;

declare global {
  interface HTMLElementTagNameMap {
    'qw-size': QwSize;
  }
}
