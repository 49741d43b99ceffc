import { html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { paperLimits } from '../../src/sheet/limits.ts';
import type { PaperWeight, SizeMm, WeightGrade } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { Slip, type Span } from '../support/slip.ts';
import { toolStyles } from './stage/stage-styles.ts';

/** A weight as it was told; what it is in g/m² is for others to say. Null where it is not known. */
export type GivenWeight =
  | { readonly by: 'gsm'; readonly gsm: number }
  | { readonly by: 'pounds'; readonly lb: number; readonly grade: WeightGrade }
  /** Grams of one whole sheet of the size that the sheet has. */
  | { readonly by: 'scales'; readonly grams: number };

/**
 * How heavy a paper is: grams a square metre, pounds with the grade that makes sense of them, or weighed at home.
 * @fires qw-weight - `{ given }`, a `GivenWeight` or null
 */
@customElement('qw-weight')
export class QwWeight extends QwElement {
  static override styles = [controls, toolStyles];

  @property({ attribute: false }) weight: PaperWeight | null = null;
  /** The weight in words, where somebody has some: "216 g/m² (80 lb cover)". */
  @property() says = '';
  /** Of the sheet that is weighed. */
  @property({ attribute: false }) sizeMm: SizeMm = { width: 305, height: 305 };
  private readonly slip = new Slip(this);
  @state() private way: GivenWeight['by'] | 'unknown' | null = null;
  @state() private grade: WeightGrade | null = null;

  override render() {
    const way = this.way ?? wayOf(this.weight);
    const known = this.weight ? this.says || `${Math.round(this.weight.gsm)} g/m²` : '';
    return html`<div class="fields" style="margin-top:0">
        <label
          ><span>Weight</span
          ><select class="field" @change=${this.onWay}>
            ${ways.map(({ value, label }) => html`<option value=${value} ?selected=${value === way}>${label}</option>`)}
          </select></label
        >
        ${way === 'gsm' ? this.number('Grams a square metre', this.weight?.gsm, (gsm) => ({ by: 'gsm', gsm })) : nothing}
        ${way === 'pounds' ? this.pounds() : nothing}
        ${way === 'scales' ? this.number('Grams of one sheet', undefined, (grams) => ({ by: 'scales', grams })) : nothing}
      </div>
      ${this.slip.render()}
      <p class="hint" role="status">${way === 'unknown' ? '' : [known, hints[way]].filter((part) => part).join('. ')}</p>`;
  }

  private pounds() {
    const grade = this.grade ?? this.weight?.grade ?? 'cover';
    return html`${this.number('Pounds', this.weight?.lb, (lb) => ({ by: 'pounds', lb, grade }))}
      <label
        ><span>Grade</span
        ><select class="field" @change=${this.onGrade}>
          ${grades.map(({ value, label }) => html`<option value=${value} ?selected=${value === grade}>${label}</option>`)}
        </select></label
      >`;
  }

  private number(label: string, value: number | undefined, given: (value: number) => GivenWeight) {
    const shown = value === undefined ? '' : String(Math.round(value * 10) / 10);
    return html`<label
      ><span>${label}</span
      ><input
        class="field short"
        type="number"
        inputmode="decimal"
        min="0"
        step="any"
        .value=${live(shown)}
        @change=${(event: Event) => this.onNumber(event, given)}
    /></label>`;
  }

  private span(by: GivenWeight['by']): Span {
    if (by === 'gsm') return { what: 'A weight', least: 1, most: paperLimits.gsm, unit: 'g/m²' };
    if (by === 'pounds') return { what: 'A weight', least: 1, most: paperLimits.lbTyped, unit: 'lb' };
    const areaM2 = (this.sizeMm.width * this.sizeMm.height) / 1e6;
    return { what: 'A sheet of that size', least: 0.01, most: paperLimits.gsm * areaM2, unit: 'g' };
  }

  private onWay(event: Event): void {
    this.way = (event.target as HTMLSelectElement).value as GivenWeight['by'] | 'unknown';
    if (this.way === 'unknown' && this.weight) emit(this, 'qw-weight', { given: null });
  }

  private onGrade(event: Event): void {
    this.grade = (event.target as HTMLSelectElement).value as WeightGrade;
    const lb = this.weight?.lb;
    if (lb !== undefined) emit(this, 'qw-weight', { given: { by: 'pounds', lb, grade: this.grade } });
  }

  private onNumber(event: Event, given: (value: number) => GivenWeight): void {
    const value = Number((event.target as HTMLInputElement).value);
    const weight = given(value);
    if (this.slip.takes(value, this.span(weight.by))) emit(this, 'qw-weight', { given: weight });
  }
}

function wayOf(weight: PaperWeight | null): GivenWeight['by'] | 'unknown' {
  if (!weight) return 'unknown';
  return weight.weighed ? 'scales' : weight.lb !== undefined ? 'pounds' : 'gsm';
}

const ways = [
  { value: 'unknown', label: 'not known' },
  { value: 'gsm', label: 'g/m²' },
  { value: 'pounds', label: 'pounds and grade' },
  { value: 'scales', label: 'I weighed it' },
] as const;

const grades: readonly { readonly value: WeightGrade; readonly label: string }[] = [
  { value: 'cover', label: 'cover (cardstock)' },
  { value: 'text', label: 'text' },
  { value: 'bond', label: 'bond (writing, printer)' },
  { value: 'index', label: 'index' },
];

const hints: Readonly<Record<GivenWeight['by'], string>> = {
  gsm: '',
  pounds: 'Pounds mean nothing without their grade: the same number is a different paper in each.',
  scales: 'Lay one whole sheet on the scales; the size above says how large it is.',
};

declare global {
  interface HTMLElementTagNameMap {
    'qw-weight': QwWeight;
  }
}
