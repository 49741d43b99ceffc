import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { paperLimits } from '../../src/sheet/limits.ts';
import type { Finish, Motif, MotifFamily, Sheet, Side, SizeMm, Tags } from '../../src/sheet/model.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { Slip } from '../support/slip.ts';
import '../support/qw-choice.ts';
import '../support/qw-writing.ts';
import './qw-size.ts';
import './qw-weight.ts';
import type { GivenWeight } from './qw-weight.ts';
import { toolStyles } from './stage/stage-styles.ts';

/** What of a sheet has been told anew: one thing at a time. */
export interface SheetDetails {
  readonly name?: string;
  readonly sizeMm?: SizeMm;
  readonly weight?: GivenWeight | null;
  readonly count?: number;
  readonly note?: string;
  /** What is drawn on a side, and how: the whole of both lists. */
  readonly side?: 'A' | 'B';
  readonly motifs?: readonly Motif[];
  readonly finishes?: readonly Finish[];
}

/**
 * What a sheet is, apart from its inks. Every change is told at once, so that it is one step of undo.
 *
 * @fires qw-sheet-details - `{ change }`, a `SheetDetails` with the one thing that changed
 * @fires qw-other-side - when a picture of the other side is to be added
 */
@customElement('qw-sheet-form')
export class QwSheetForm extends QwElement {
  static override styles = [controls, toolStyles, formStyles()];

  @property({ attribute: false }) sheet: Sheet | null = null;
  /** The weight in words, where somebody has some. */
  @property({ attribute: 'weight-says' }) weightSays = '';
  private readonly slip = new Slip(this);
  @state() private side: 'A' | 'B' = 'A';

  override render() {
    const { sheet } = this;
    if (!sheet) return nothing;
    return html`<div class="fields" style="margin-top:0">
        <label class="wide"
          ><span>Name</span
          ><input
            class="field"
            type="text"
            maxlength="80"
            autocomplete="off"
            .value=${live(sheet.name)}
            @change=${this.onName}
        /></label>
        <label
          ><span>How many there are</span
          ><input
            class="field short"
            type="number"
            inputmode="numeric"
            min="0"
            step="1"
            .value=${live(String(sheet.count))}
            @change=${this.onCount}
        /></label>
        ${this.slip.render()}
      </div>
      <div class="fields"><qw-size .sizeMm=${sheet.sizeMm} @qw-size=${this.onSize}></qw-size></div>
      <div class="fields"><qw-weight .weight=${sheet.weight} .sizeMm=${sheet.sizeMm} .says=${this.weightSays} @qw-weight=${this.onWeight}></qw-weight></div>
      ${this.sides(sheet)}
      <div class="note">
        <span class="label">Note</span>
        <qw-writing
          label="Note on this sheet"
          prompt="Where it is from, what it is kept for."
          .value=${sheet.note}
          @qw-write=${this.onNote}
        ></qw-writing>
      </div>`;
  }

  private sides(sheet: Sheet) {
    const side = sheet.sides.B ? this.side : 'A';
    const kept = side === 'B' ? sheet.sides.B : sheet.sides.A;
    const tags: Tags = kept?.reading.tags ?? {};
    return html`<div class="sides">
        ${
          sheet.sides.B
            ? html`<qw-choice
              label="What is printed on"
              shows-label
              .choices=${sideChoices}
              .value=${side}
              @qw-choose=${this.onSide}
            ></qw-choice>`
            : html`<span class="label">One side is known.</span>
              <button class="word" @click=${this.askOther}><span>Add the other side’s picture</span></button>`
        }
      </div>
      ${this.ticks('Motifs', motifs, tags.motifs ?? [], (chosen) => this.tell({ side, motifs: chosen }))}
      ${this.guess(side, kept?.reading)}
      ${this.ticks('How it is drawn', finishes, tags.finishes ?? [], (chosen) => this.tell({ side, finishes: chosen }))}`;
  }

  /** What the reading takes the print for, until somebody has said what it shows. */
  private guess(side: 'A' | 'B', reading: Side | undefined) {
    if (!reading?.motif || reading.tags?.motifs?.length) return nothing;
    const { family, sure } = reading.motif;
    const tag = tagOf[family];
    return html`<p class="hint">
      At first glance the reading takes this for ${looksLike[family]} (${Math.round(100 * sure)} % sure).
      ${
        tag === undefined
          ? 'Tick what it shows.'
          : html`<button class="word" @click=${() => this.tell({ side, motifs: [tag] })}><span>That is right</span></button>
            <span>If not, tick what it shows.</span>`
      }
    </p>`;
  }

  private ticks<T extends string>(
    label: string,
    all: readonly T[],
    chosen: readonly T[],
    tell: (chosen: readonly T[]) => void,
  ) {
    const toggled = (value: T) => all.filter((one) => (one === value) !== chosen.includes(one));
    return html`<fieldset>
      <legend class="label">${label}</legend>
      ${all.map(
        (value) =>
          html`<label class="tick"
            ><input type="checkbox" .checked=${live(chosen.includes(value))} @change=${() => tell(toggled(value))} />${value}</label
          >`,
      )}
    </fieldset>`;
  }

  private onName(event: Event): void {
    const name = (event.target as HTMLInputElement).value.replace(/\s+/g, ' ').trim();
    if (name && name !== this.sheet?.name) this.tell({ name });
    else this.requestUpdate();
  }

  private onCount(event: Event): void {
    const field = event.target as HTMLInputElement;
    const count = Number(field.value);
    const span = { what: 'The number of sheets', least: 0, most: paperLimits.countTyped };
    if (field.value === '' || !Number.isInteger(count)) this.requestUpdate();
    else if (this.slip.takes(count, span)) this.tell({ count });
  }

  private onSize(event: CustomEvent<{ sizeMm: SizeMm }>): void {
    event.stopPropagation();
    this.tell({ sizeMm: event.detail.sizeMm });
  }

  private onWeight(event: CustomEvent<{ given: GivenWeight | null }>): void {
    event.stopPropagation();
    this.tell({ weight: event.detail.given });
  }

  private onSide(event: CustomEvent<{ value: string }>): void {
    event.stopPropagation();
    this.side = event.detail.value === 'B' ? 'B' : 'A';
  }

  private onNote(event: CustomEvent<{ text: string }>): void {
    event.stopPropagation();
    this.tell({ note: event.detail.text });
  }

  private askOther(): void {
    emit(this, 'qw-other-side', {});
  }

  private tell(change: SheetDetails): void {
    emit(this, 'qw-sheet-details', { change });
  }
}

const sideChoices = [
  { value: 'A', label: 'side A' },
  { value: 'B', label: 'side B' },
];

const motifs: readonly Motif[] = [
  'floral',
  'leaf',
  'dot',
  'stripe',
  'chevron',
  'grid',
  'text',
  'heart',
  'star',
  'wood grain',
  'patchwork',
  'bird',
  'fruit',
  'map',
  'abstract',
];

/** The reader's families in words, and the motif that each is where it is one. */
const looksLike: Readonly<Record<MotifFamily, string>> = {
  plain: 'a plain sheet',
  dots: 'dots',
  stripe: 'stripes',
  grid: 'a grid',
  chevron: 'chevrons',
  text: 'text',
  organic: 'free shapes, such as flowers or leaves',
};
const tagOf: Partial<Record<MotifFamily, Motif>> = {
  dots: 'dot',
  stripe: 'stripe',
  grid: 'grid',
  chevron: 'chevron',
  text: 'text',
};

const finishes: readonly Finish[] = ['hand-drawn', 'watercolour', 'flat', 'distressed', 'photographic'];

function formStyles() {
  return css`
    .wide {
      flex: 1 1 260px;
      max-width: 30em;
    }
    .sides {
      margin-top: 10px;
    }
    fieldset {
      display: flex;
      flex-wrap: wrap;
      gap: 0 20px;
      margin: 8px 0 0;
      padding: 0;
      border: 0;
      min-width: 0;
    }
    legend {
      padding: 0;
      margin: 0;
    }
    .note {
      margin-top: 14px;
      padding-left: 12px;
    }
    .note .label {
      margin-left: -12px;
    }
  `;
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-sheet-form': QwSheetForm;
  }
  interface HTMLElementEventMap {
    'qw-sheet-details': CustomEvent<{ readonly change: SheetDetails }>;
    'qw-other-side': CustomEvent<Record<string, never>>;
  }
}
