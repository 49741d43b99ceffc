import { html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { tornChips } from '../../src/drawing/chips.ts';
import type { Drawing, NamedSide, Surround } from '../../src/drawing/model.ts';
import { RoomController } from '../support/room.ts';
import { baseStyles, wearTokens } from '../support/tokens.ts';
import '../support/qw-drawing.ts';

/**
 * A paper's inks as torn chips, each as wide as its share. They are laid out for the room there is, so that letters keep
 * their size.
 *
 * @fires qw-point - { inks } of the chip pointed at or focused; none when that ends.
 * @csspart drawing - the chart with its foot
 */
@customElement('qw-palette')
export class QwPalette extends LitElement {
  /** The paper and the name to speak of it. */
  @property({ attribute: false }) paper: NamedSide | null = null;
  /** Default 'grey'. */
  @property() surround: Surround = 'grey';
  /** Ids of the inks to light up. */
  @property({ attribute: false }) lit: readonly string[] = [];
  /** Leaves out the line below with the sentence and the table's switch. */
  @property({ type: Boolean, reflect: true }) bare = false;

  @state() private room = 300;
  private drawing: Drawing | null = null;

  constructor() {
    super();
    new RoomController(this, (room) => (this.room = room));
  }

  static override styles = [baseStyles];

  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // Lighting up is the chart's own affair: the drawing is made again only when something else changes.
    if (changed.size === 1 && changed.has('lit')) return;
    const { paper, room, surround } = this;
    this.drawing = paper && tornChips(paper, { width: room, height: 44, surround });
  }

  protected override render() {
    if (!this.drawing) return nothing;
    return html`<qw-drawing
      part="drawing"
      .drawing=${this.drawing}
      .lit=${this.lit}
      .bare=${this.bare}
      surround=${this.surround}
    ></qw-drawing>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-palette': QwPalette;
  }
}
