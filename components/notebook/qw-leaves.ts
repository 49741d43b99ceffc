import { html, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { repeat } from 'lit/directives/repeat.js';
import { byHand } from '../support/by-finger.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import { emit } from '../support/emit.ts';
import { leavesStyles } from './leaves-styles.ts';

/** One line of the list of leaves. */
export interface LeafEntry {
  readonly id: string;
  readonly title: string;
  /** What it is: "study, 3 candidates". */
  readonly about: string;
  /** Why it cannot be added now; stands in place of what it is for. */
  readonly notNow?: string;
}

/** A kind of leaf that can be added, with the one line that says what it is for. */
export interface LeafKind {
  readonly kind: string;
  readonly label: string;
  readonly about: string;
  /** Why it cannot be added now; stands in place of what it is for. */
  readonly notNow?: string;
}

/**
 * The list of leaves, in order, and a way to add one.
 * @fires qw-add-leaf - `{ kind }`
 * @fires qw-move-leaf - `{ id, to }`, its index afterwards
 * @fires qw-remove-leaf - `{ id }`
 */
@customElement('qw-leaves')
export class QwLeaves extends QwElement {
  static override styles = [controls, leavesStyles];

  @property({ attribute: false }) leaves: readonly LeafEntry[] = [];
  @property({ attribute: false }) kinds: readonly LeafKind[] = [];
  @property() current = '';
  @state() private adding = false;
  /** What takes the keyboard once a leaf has moved or gone: the first of these that is there. */
  private next: readonly string[] = [];

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (changed.has('current')) this.adding = false;
  }

  /** What was pressed may be gone or idle now. */
  protected override updated(changed: PropertyValues<this>): void {
    if (!changed.has('leaves') || this.next.length === 0) return;
    const found = this.next.map((one) => this.renderRoot.querySelector<HTMLElement>(one));
    this.next = [];
    found.find((one) => one !== null)?.focus();
  }

  override render() {
    return html`<nav aria-label="Leaves">
      ${
        this.leaves.length
          ? html`<ol>${repeat(
              this.leaves,
              ({ id }) => id,
              (leaf, index) => this.entry(leaf, index),
            )}</ol>`
          : html`<p class="none">No leaves yet. Add one, or ${byHand('drop two papers on the page', 'choose two pictures')}.</p>`
      }
      <div @keydown=${this.onKey} @focusout=${this.onLeave}>
      <button
        type="button"
        class="add"
        aria-expanded=${this.adding}
        aria-controls="kinds"
        @click=${() => (this.adding = !this.adding)}
      >
        Add a leaf
      </button>
      <ul id="kinds" ?hidden=${!this.adding}>
        ${this.kinds.map(
          ({ kind, label, about, notNow }) =>
            html`<li><button type="button" class="kind" ?disabled=${notNow !== undefined} @click=${() => this.add(kind)}><b>${label}</b><small>${notNow ?? about}</small></button></li>`,
        )}
      </ul>
      </div>
    </nav>`;
  }

  private entry({ id, title, about }: LeafEntry, index: number) {
    const current = id === this.current;
    return html`<li class="entry ${current ? 'current' : ''}">
      <a href="#${id}" aria-current=${current ? 'page' : 'false'}>
        <span class="place">${index + 1}</span>
        <span>${title || 'No title yet'}<small>${about}</small></span>
      </a>
      ${current ? this.handles(id, title, index) : nothing}
    </li>`;
  }

  private handles(id: string, title: string, index: number) {
    const last = this.leaves.length - 1;
    const move = (to: number, way: string) => () => {
      this.next = [`.${way}:enabled`, '.handles button:enabled'];
      emit(this, 'qw-move-leaf', { id, to });
    };
    const takeOut = () => {
      this.next = ['.current a', '.add'];
      emit(this, 'qw-remove-leaf', { id });
    };
    return html`<div class="handles" role="group" aria-label="Place of this leaf">
      <button type="button" class="up" ?disabled=${index === 0} aria-label="Up: ${title}" @click=${move(index - 1, 'up')}>Up</button>
      <button type="button" class="down" ?disabled=${index === last} aria-label="Down: ${title}" @click=${move(index + 1, 'down')}>Down</button>
      <button type="button" aria-label="Take out: ${title}" @click=${takeOut}>Take out</button>
    </div>`;
  }

  private onKey(event: KeyboardEvent): void {
    if (event.key !== 'Escape' || !this.adding) return;
    event.stopPropagation();
    this.adding = false;
    this.renderRoot.querySelector<HTMLElement>('.add')?.focus();
  }

  /** Shuts when the focus goes elsewhere; a press on nothing that takes the focus shuts it too. */
  private onLeave(event: FocusEvent): void {
    const box = event.currentTarget as HTMLElement;
    if (this.adding && !box.matches(':active') && !box.contains(event.relatedTarget as Node | null))
      this.adding = false;
  }

  private add(kind: string): void {
    this.adding = false;
    emit(this, 'qw-add-leaf', { kind });
  }
}
