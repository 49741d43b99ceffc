import { css, html, LitElement, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Wheel } from '../../src/colour/model.ts';
import type { NamedSide, Surround } from '../../src/drawing/model.ts';
import { hueWheel } from '../../src/drawing/wheel.ts';
import type { Link } from '../../src/harmony/model.ts';
import { baseStyles, wearTokens } from '../support/tokens.ts';
import '../support/qw-drawing.ts';

/**
 * The hue wheel of one paper, or of an anchor and a candidate with their links; other candidates as outlines.
 *
 * @fires qw-point - { inks } of the mark pointed at or focused; none when that ends.
 * @csspart drawing - the chart with its foot
 */
@customElement('qw-wheel')
export class QwWheel extends LitElement {
  /** The paper that the study starts from, with the name to speak of it. */
  @property({ attribute: false }) anchor: NamedSide | null = null;
  /** The paper held against it, drawn in full. */
  @property({ attribute: false }) candidate: NamedSide | null = null;
  /** Further candidates, drawn as outlines. */
  @property({ attribute: false }) others: readonly NamedSide[] = [];
  /** What was found between anchor and candidate. */
  @property({ attribute: false }) links: readonly Link[] = [];
  /** Hue by angle for the eye, or by the pigment wheel's twelve steps. Default 'eye'. */
  @property() wheel: Wheel = 'eye';
  /** Default 'grey'. */
  @property() surround: Surround = 'grey';
  /** Ids of the inks to light up. */
  @property({ attribute: false }) lit: readonly string[] = [];

  static override styles = [
    baseStyles,
    css`
      qw-drawing {
        padding: 0 4px;
      }
    `,
  ];

  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
  }

  protected override render() {
    if (!this.anchor) return nothing;
    const drawing = hueWheel(
      {
        anchor: this.anchor,
        ...(this.candidate ? { candidate: this.candidate } : {}),
        others: this.others,
        links: this.links,
      },
      { wheel: this.wheel, surround: this.surround },
    );
    return html`<qw-drawing
      part="drawing"
      .drawing=${drawing}
      .lit=${this.lit}
      surround=${this.surround}
    ></qw-drawing>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-wheel': QwWheel;
  }
}
