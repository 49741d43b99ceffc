import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { live } from 'lit/directives/live.js';
import { limits } from '../../src/notebook/limits.ts';
import { controls } from './controls.ts';
import { QwElement } from './element.ts';
import { emit } from './emit.ts';

/** How long the pen has to rest before what was written is handed on, in milliseconds. A choice of ours. */
const restMs = 500;

/** The page is left, for good or for now. */
const leaving = ['pagehide', 'visibilitychange'] as const;

/**
 * A place to write plain text, which grows with what is written.
 * @fires qw-write - `{ text }`, when the pen rests or the place is left
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
  private resting: ReturnType<typeof setTimeout> | undefined;
  private pending: string | null = null;

  override connectedCallback(): void {
    super.connectedCallback();
    // On the way down, so that it is handed on before whoever keeps it stores what there is.
    for (const name of leaving) window.addEventListener(name, this.onLeave, true);
  }

  override disconnectedCallback(): void {
    for (const name of leaving) window.removeEventListener(name, this.onLeave, true);
    this.handOn();
    super.disconnectedCallback();
  }

  override render() {
    return html`<textarea
      aria-label=${this.label}
      placeholder=${this.prompt}
      maxlength=${limits.text}
      .value=${live(this.pending ?? this.value)}
      @input=${this.onInput}
      @blur=${this.handOn}
    ></textarea>
    ${
      (this.pending ?? this.value).length >= limits.text
        ? html`<p role="alert">This place is full: it holds ${limits.text.toLocaleString('en')} letters. Go on in another leaf.</p>`
        : nothing
    }`;
  }

  private onInput(event: Event): void {
    this.pending = (event.target as HTMLTextAreaElement).value;
    if (this.pending.length >= limits.text) this.requestUpdate();
    clearTimeout(this.resting);
    this.resting = setTimeout(() => this.handOn(), restMs);
  }

  private readonly onLeave = (): void => this.handOn();

  private handOn(): void {
    clearTimeout(this.resting);
    const text = this.pending;
    this.pending = null;
    if (text === null || text === this.value) return;
    this.value = text;
    emit(this, 'qw-write', { text });
  }
}
