import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { baseStyles, wearTokens } from '../support/tokens.ts';

/**
 * A comparison board as the very picture that is exported: the SVG is shown as an image, so it can be looked at, saved
 * or dragged away, and says on screen what it says on paper.
 *
 * @csspart picture - the board's image
 */
@customElement('qw-board')
export class QwBoard extends LitElement {
  /** The board's SVG, with its fonts embedded. Empty: nothing is shown. */
  @property({ attribute: false }) svg = '';
  /** What the picture shows, for those who do not see it. */
  @property() label = 'Comparison board';

  @state() private address = '';

  static override styles = [
    baseStyles,
    css`
      img {
        display: block;
        width: 100%;
        height: auto;
        box-shadow: 0 1px 3px var(--qw-lift), 0 6px 22px var(--qw-lift);
      }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
    if (this.svg && !this.address) this.hold();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.release();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('svg')) return;
    this.release();
    this.hold();
  }

  protected override render() {
    return this.address ? html`<img part="picture" src=${this.address} alt=${this.label} />` : nothing;
  }

  private hold(): void {
    if (this.svg) this.address = URL.createObjectURL(new Blob([this.svg], { type: 'image/svg+xml' }));
  }

  private release(): void {
    if (this.address) URL.revokeObjectURL(this.address);
    this.address = '';
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-board': QwBoard;
  }
}
