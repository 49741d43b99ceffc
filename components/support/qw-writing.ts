import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { limits } from '../../src/notebook/limits.ts';
import { controls } from './controls.ts';
import { QwElement } from './element.ts';
import { emit } from './emit.ts';

/**
 * A place to write plain text, which grows with what is written.
 * @fires qw-write - `{ text }`, with every letter: what is written stands nowhere else, and another tab may write here too
 */
@customElement('qw-writing')
export class QwWriting extends QwElement {
  static override styles = [
    controls,
    css`
      textarea {
        display: block;
        width: calc(100% + 24px);
        min-height: calc(var(--lines, 3) * 1.6em + 20px);
        field-sizing: content;
        padding: 9px 12px;
        margin-inline: -12px;
        background: transparent;
        border: 1px solid transparent;
        border-radius: 3px;
        font: 16.5px/1.6 var(--qw-serif);
        resize: none;
      }
      textarea::placeholder {
        color: var(--qw-soft);
        font-style: italic;
        opacity: 1;
      }
      textarea:hover {
        border-color: var(--qw-rule);
      }
      textarea:focus {
        border-color: var(--qw-hair);
      }
    `,
  ];

  @property() value = '';
  @property() label = 'Text';
  /** One line that tells a newcomer what to write. */
  @property() prompt = '';
  @query('textarea') private readonly area!: HTMLTextAreaElement;

  override render() {
    return html`<textarea
      aria-label=${this.label}
      placeholder=${this.prompt}
      maxlength=${limits.text}
      .value=${live(this.value)}
      @input=${this.onInput}
    ></textarea>
    ${
      this.value.length >= limits.text
        ? html`<p role="alert">This place is full: it holds ${limits.text.toLocaleString('en')} letters. Go on in another leaf.</p>`
        : nothing
    }`;
  }

  /** Where the browser does not let it grow with its text, it is made as tall as that. */
  protected override updated(): void {
    if (CSS.supports('field-sizing', 'content')) return;
    const { style } = this.area;
    style.height = 'auto';
    style.height = `${this.area.scrollHeight + 2}px`;
  }

  private onInput(event: Event): void {
    this.value = (event.target as HTMLTextAreaElement).value;
    emit(this, 'qw-write', { text: this.value });
  }
}
