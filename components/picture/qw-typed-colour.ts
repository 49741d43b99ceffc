import { css, html, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import type { ColourOf, KnownColour } from './known-colour.ts';
import { toolStyles } from './stage/stage-styles.ts';

export interface TypedColourDetail {
  readonly text: string;
  /** Undefined where the text is no colour. */
  readonly known: KnownColour | undefined;
}

/**
 * A colour as text, in whatever notation `colourOf` understands, or picked in the browser's own way.
 * @fires qw-colour - `{ text, known }`, at every stroke
 */
@customElement('qw-typed-colour')
export class QwTypedColour extends QwElement {
  static override styles = [
    controls,
    toolStyles,
    css`
      .row {
        display: flex;
        gap: 8px;
      }
      .row .field {
        flex: 1;
        min-width: 0;
      }
      input[type='color'] {
        flex: none;
        width: 52px;
        height: 44px;
        padding: 3px;
        border: 1px solid var(--qw-hair);
        border-radius: 3px;
        background: none;
        cursor: pointer;
      }
      .says {
        margin-top: 4px;
      }
    `,
  ];

  @property() text = '';
  @property({ attribute: false }) colourOf: ColourOf = () => undefined;
  /** Starts complaining only once the field was left. */
  @state() private left = false;

  override render() {
    const known = this.colourOf(this.text);
    const wrong = this.left && this.text.trim() !== '' && !known;
    return html`<label for="text" class="label">Colour</label>
      <div class="row">
        <input
          id="text"
          class="field"
          type="text"
          maxlength="60"
          autocomplete="off"
          autocapitalize="off"
          spellcheck="false"
          placeholder="#e2725b"
          aria-describedby="says"
          aria-invalid=${wrong}
          .value=${live(this.text)}
          @input=${this.onText}
          @blur=${this.onLeft}
        />
        <input type="color" aria-label="Pick the colour" .value=${live(known?.hex ?? '#808080')} @input=${this.onText} />
      </div>
      <p class="says" id="says" role="status">
        ${known ? known.says : wrong ? (this.colourOf.whyNot?.(this.text) ?? 'This is no colour that can be understood here.') : nothing}
        ${known ? nothing : html`Hex (#e2725b), Lab 60 42 33, OKLCH 0.67 0.15 35 or Munsell 10R 6/10.`}
      </p>`;
  }

  private onText(event: Event): void {
    this.text = (event.target as HTMLInputElement).value;
    emit(this, 'qw-colour', { text: this.text, known: this.colourOf(this.text) });
  }

  private onLeft(): void {
    this.left = true;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-typed-colour': QwTypedColour;
  }
}
