import { css, html, type PropertyValues } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { limits } from '../../src/notebook/limits.ts';
import { controls } from './controls.ts';
import { QwElement } from './element.ts';
import { emit } from './emit.ts';
import { Slip, type Span } from './slip.ts';

const span: Span = { what: 'A title', least: 0, most: limits.name, unit: 'letters' };

/**
 * A leaf's title, written in place and told with every letter; Escape puts the words back that stood there first. A title that
 * was given is marked as a whole when it is gone into, so that what is typed takes its place.
 * @fires qw-retitle - `{ title }`, when the words have changed
 */
@customElement('qw-title')
export class QwTitle extends QwElement {
  static override styles = [
    controls,
    css`
      .holder:focus {
        outline: none;
      }
      h2 {
        font: 500 31px/1.16 var(--qw-serif);
        letter-spacing: -0.012em;
        text-wrap: balance;
      }
      span {
        display: inline-block;
        min-width: 3em;
        padding: 2px 6px;
        margin: -2px -6px;
        border-radius: 3px;
        overflow-wrap: anywhere;
        cursor: text;
      }
      span:not(.kept):hover {
        background: color-mix(in oklch, var(--qw-ink) 6%, transparent);
      }
      span:empty::before {
        content: attr(data-empty);
        color: var(--qw-soft);
      }
      @media (max-width: 1100px) {
        h2 {
          font-size: 27px;
        }
      }
      @media (max-width: 900px) {
        h2 {
          font-size: 23px;
        }
      }
    `,
  ];

  @property() value = '';
  /** Stands where nothing is written yet. */
  @property() empty = 'No title yet';
  @property() label = 'Title of this leaf';
  /** True where it is not the heading of a leaf. */
  @property({ type: Boolean }) plain = false;
  /** True where nobody has written it: it came with the leaf. */
  @property({ type: Boolean }) given = false;
  @query('span') private words!: HTMLSpanElement;
  @query('.holder') private holder!: HTMLElement;

  private readonly slip = new Slip(this);
  /** True once the words were pressed since they were gone into. */
  private pressed = false;
  /** What stood here when the words were gone into. */
  private first = '';

  override render() {
    const words = html`<span
        role="textbox"
        tabindex="0"
        contenteditable="plaintext-only"
        spellcheck="true"
        aria-label=${this.label}
        data-empty=${this.empty}
        @keydown=${this.onKey}
        @input=${this.onInput}
        @blur=${this.keep}
        @focus=${this.onFocus}
        @click=${this.onClick}
        @pointerleave=${this.wake}
      ></span>`;
    const says = this.slip.render();
    return this.plain
      ? html`<div class="holder" tabindex="-1">${words}</div>${says}`
      : html`<h2 class="holder" tabindex="-1">${words}</h2>${says}`;
  }

  protected override updated(changed: PropertyValues<this>): void {
    // While it is written, the words stand here as they are typed, with a space at their end.
    if (changed.has('value') && this.written() !== this.value) this.words.textContent = this.value;
  }

  /** Goes into the words, to write. */
  override focus(options?: FocusOptions): void {
    this.words.focus(options);
  }

  /** Takes the keyboard to the heading, not into its words. */
  focusHeading(): void {
    this.holder.focus({ preventScroll: true });
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key === 'Enter') {
      event.preventDefault();
      this.focusHeading();
      // The pointer still rests on the words, but they are written.
      this.words.classList.add('kept');
    } else if (event.key === 'Escape') {
      this.words.textContent = this.first;
      this.tell();
      this.focusHeading();
    }
  }

  private onFocus(): void {
    this.first = this.value;
    this.wake();
    this.words.classList.add('fresh');
    if (this.given) this.mark();
  }

  /** A press puts the pen where it falls, after the words were gone into: the first one marks them again. */
  private onClick(): void {
    const isFresh = this.words.classList.contains('fresh');
    if (isFresh && this.given && getSelection()?.isCollapsed !== false) this.mark();
    this.pressed = true;
  }

  private mark(): void {
    if (!this.pressed) getSelection()?.selectAllChildren(this.words);
  }

  private onInput(): void {
    this.words.classList.remove('fresh');
    this.tell();
  }

  private wake(): void {
    this.words.classList.remove('kept');
  }

  private keep(): void {
    this.pressed = false;
    this.words.classList.remove('fresh');
    const title = this.written();
    this.words.textContent = title;
    this.tell();
  }

  private tell(): void {
    const title = this.written();
    // What is too long stays on the page to be shortened, and the last title stays kept.
    if (!this.slip.takes(title.length, span)) return;
    if (title === this.value) return;
    this.value = title;
    emit(this, 'qw-retitle', { title });
  }

  private written(): string {
    return (this.words.textContent ?? '').replace(/\s+/g, ' ').trim();
  }
}
