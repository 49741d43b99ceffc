import { css, html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from './controls.ts';
import { QwElement } from './element.ts';
import { emit } from './emit.ts';

/**
 * A number that is dragged along a line, with its words beside it.
 * @fires qw-slide - `{ value, settled }`: while it is dragged, and once more, settled, when it is let go
 */
@customElement('qw-range')
export class QwRange extends QwElement {
  static override styles = [controls, styles()];

  @property() label = '';
  @property({ type: Number }) min = 0;
  @property({ type: Number }) max = 100;
  @property({ type: Number }) step = 1;
  @property({ type: Number }) value = 0;
  /** The value as it is read: "4 %". */
  @property() says = '';

  override render() {
    return html`<label>
      <span class="name">${this.label}</span>
      <input
        type="range"
        min=${this.min}
        max=${this.max}
        step=${this.step}
        .value=${live(String(this.value))}
        aria-valuetext=${this.says}
        @input=${(event: Event) => this.tell(event, false)}
        @change=${(event: Event) => this.tell(event, true)}
      />
      <output>${this.says}</output>
    </label>`;
  }

  private tell(event: Event, settled: boolean): void {
    this.value = Number((event.target as HTMLInputElement).value);
    emit(this, 'qw-slide', { value: this.value, settled });
  }
}

function styles() {
  return css`
    label {
      display: grid;
      grid-template-columns: 9.5em minmax(80px, 22em) 6.5em;
      align-items: center;
      gap: 12px;
      min-height: 44px;
      font: 14.5px/1.25 var(--qw-sans);
    }
    output {
      font-variant-numeric: tabular-nums;
      color: var(--qw-soft);
    }
    input {
      width: 100%;
      height: 44px;
      margin: 0;
      background: transparent;
      accent-color: var(--qw-ink);
      cursor: ew-resize;
    }
    :host {
      container-type: inline-size;
    }
    @container (max-width: 430px) {
      label {
        grid-template-columns: minmax(0, 1fr) auto;
        gap: 0 12px;
      }
      input {
        grid-row: 2;
        grid-column: 1 / 3;
      }
    }
  `;
}
