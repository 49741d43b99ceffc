import { html, LitElement, nothing } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { tornChips } from '../../src/drawing/chips.ts';
import type { NamedSide, Surround } from '../../src/drawing/model.ts';
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
  private readonly watcher = new ResizeObserver(([entry]) => {
    const width = Math.round(entry?.contentRect.width ?? 0);
    // In the next frame: a new height inside the same one would be reported as a loop.
    if (width > 0) requestAnimationFrame(() => (this.room = width));
  });

  static override styles = [baseStyles];

  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
    this.watcher.observe(this);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.watcher.disconnect();
  }

  protected override render() {
    if (!this.paper) return nothing;
    return html`<qw-drawing
      part="drawing"
      .drawing=${tornChips(this.paper, { width: this.room, height: 44, surround: this.surround })}
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
