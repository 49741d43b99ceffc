import { css } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Wheel } from '../../src/colour/model.ts';
import type { Drawing, NamedSide, Surround } from '../../src/drawing/model.ts';
import { hueWheel, type WheelOptions, type WheelPapers } from '../../src/drawing/wheel.ts';
import type { ColourRegion, Link } from '../../src/harmony/model.ts';
import { ChartElement } from '../support/chart-element.ts';
import { baseStyles } from '../support/tokens.ts';

/**
 * The hue wheel of one paper, or of an anchor and a candidate with their links; other candidates as outlines.
 *
 * @fires qw-point - { inks } of the mark pointed at or focused; none when that ends.
 * @csspart drawing - the chart with its foot
 */
@customElement('qw-wheel')
export class QwWheel extends ChartElement {
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
  /** Stretches of colour to outline. */
  @property({ attribute: false }) regions: readonly ColourRegion[] = [];
  /** Default 'grey'. */
  @property() surround: Surround = 'grey';

  static override styles = [
    baseStyles,
    css`
      qw-drawing {
        padding: 0 4px;
      }
    `,
  ];

  constructor() {
    super(480);
  }

  protected override draw(): Drawing | null {
    return this.anchor && hueWheel(this.papers(this.anchor), this.options());
  }

  private papers(anchor: NamedSide): WheelPapers {
    const { candidate, others, links, regions } = this;
    return { anchor, ...(candidate ? { candidate } : {}), others, links, regions };
  }

  private options(): WheelOptions {
    return { wheel: this.wheel, surround: this.surround, width: Math.min(480, this.room - 8) };
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-wheel': QwWheel;
  }
}
