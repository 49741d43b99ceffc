import { css, html, nothing } from 'lit';
import { customElement, property, query } from 'lit/decorators.js';
import { sheetById } from '../../../src/drawer/by-id.ts';
import type { Session, SessionState } from '../../../src/workbench/session-types.ts';
import { controls } from '../../support/controls.ts';
import { QwElement } from '../../support/element.ts';
import { emit } from '../../support/emit.ts';
import '../../support/qw-title.ts';
import type { PlacesShelf } from './places-shelf.ts';
import './qw-open-sheet.ts';

/**
 * One sheet looked at closely, over the open leaf: the same element as a sheet's own leaf. The keyboard stays inside;
 * Escape, "Done" and the browser's way back shut it.
 * @fires qw-done-looking - nothing, when it is shut
 * @fires qw-rename-paper - `{ held, name }` · qw-undo - nothing
 * @slot - what the notebook has to tell meanwhile
 */
@customElement('qw-close-view')
export class QwCloseView extends QwElement {
  static override styles = [
    controls,
    css`
      dialog {
        width: min(1180px, 100vw - 32px);
        max-width: none;
        height: calc(100dvh - 32px);
        max-height: none;
        padding: 0;
        border: 1px solid var(--qw-hair);
        background: var(--qw-leaf);
        color: inherit;
        overflow: hidden auto;
        overscroll-behavior: contain;
      }
      dialog::backdrop {
        background: oklch(0 0 0 / 0.5);
      }
      header {
        position: sticky;
        top: 0;
        z-index: 3;
        display: flex;
        flex-wrap: wrap;
        align-items: center;
        gap: 4px 20px;
        padding: 10px 28px;
        background: var(--qw-leaf);
        border-bottom: 1px solid var(--qw-rule);
      }
      qw-title {
        flex: 1 1 200px;
        min-width: 0;
      }
      @media (max-width: 620px) {
        dialog {
          width: 100vw;
          height: 100dvh;
          border: 0;
        }
        header {
          padding: 6px 18px;
        }
      }
    `,
  ];

  @property() sheetId = '';
  /** The tool that it opens with; '' to look only. */
  @property() tool = '';
  /** The side that is asked for, by the sheet's id. */
  @property({ attribute: false }) faces: Map<string, 'A' | 'B'> = new Map();
  @property({ attribute: false }) session: Session | null = null;
  @property({ attribute: false }) shelf: PlacesShelf | null = null;
  @property({ attribute: false }) book: SessionState | null = null;
  @property({ type: Number }) placed = 0;
  @query('dialog') private readonly dialog!: HTMLDialogElement | null;

  override connectedCallback(): void {
    super.connectedCallback();
    window.addEventListener('popstate', this.shut);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    window.removeEventListener('popstate', this.shut);
  }

  protected override firstUpdated(): void {
    if (!this.dialog) return;
    this.dialog.showModal();
    // A step of its own, so that the browser's way back leads to the leaf that it lies over.
    history.pushState({ near: this.sheetId }, '');
  }

  protected override updated(): void {
    // What is looked at may be undone from here.
    if (!this.dialog) emit(this, 'qw-done-looking', {});
  }

  override render() {
    const { book, sheetId } = this;
    const sheet = book && sheetById(book.notebook.drawer, sheetId);
    if (!book || !sheet) return nothing;
    return html`<dialog aria-label="${sheet.name}, looked at closely" @cancel=${this.onCancel} @keydown=${this.onKey}>
      <header>
        <qw-title label="Name of this paper" .value=${sheet.name} @qw-retitle=${this.rename}></qw-title>
        <button type="button" class="word" ?disabled=${!book.canUndo} @click=${() => emit(this, 'qw-undo', {})}><span>Undo</span></button>
        <button type="button" class="slip main" autofocus @click=${this.leave}>Done</button>
      </header>
      <qw-open-sheet
        near
        .tool=${this.tool}
        .sheetId=${sheetId}
        .faces=${this.faces}
        .session=${this.session}
        .shelf=${this.shelf}
        .book=${book}
        .placed=${this.placed}
      ></qw-open-sheet>
      <slot></slot>
    </dialog>`;
  }

  private rename(event: CustomEvent<{ title: string }>): void {
    event.stopPropagation();
    const name = event.detail.title;
    // A paper without a name could not be spoken of.
    if (name !== '')
      emit(this, 'qw-rename-paper', { held: { kind: 'sheet', id: this.sheetId, side: 'A' }, name });
  }

  private onCancel(event: Event): void {
    event.preventDefault();
    this.leave();
  }

  /** Escape shuts this and nothing that lies under it. */
  private onKey(event: KeyboardEvent): void {
    if (event.key === 'Escape') event.stopPropagation();
  }

  private leave(): void {
    history.back();
  }

  private readonly shut = (): void => {
    // Said while the keyboard is still in here, so that the page sees to where it goes.
    emit(this, 'qw-done-looking', {});
    this.dialog?.close();
  };
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-close-view': QwCloseView;
  }
}
