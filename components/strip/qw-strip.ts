import { css } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import type { Drawing, NamedSide, Surround } from '../../src/drawing/model.ts';
import { lightnessStrip } from '../../src/drawing/strip.ts';
import type { Stretch } from '../../src/drawing/strip-gap.ts';
import type { ColourRegion } from '../../src/harmony/model.ts';
import { ChartElement } from '../support/chart-element.ts';
import { baseStyles } from '../support/tokens.ts';

/**
 * The lightness strip: CIELAB L* from dark to light, a lane for each paper, and the stretch that none of them fills.
 * It is laid out for the room there is, so that letters keep their size.
 *
 * @fires qw-point - { inks } of the mark pointed at or focused; none when that ends.
 * @csspart drawing - the chart with its foot
 */
@customElement('qw-strip')
export class QwStrip extends ChartElement {
  /** The paper that the study starts from, with the name to speak of it. */
  @property({ attribute: false }) anchor: NamedSide | null = null;
  /** The paper held against it. */
  @property({ attribute: false }) candidate: NamedSide | null = null;
  /** Further candidates, in outline. */
  @property({ attribute: false }) others: readonly NamedSide[] = [];
  /** Stretches of colour to outline. */
  @property({ attribute: false }) regions: readonly ColourRegion[] = [];
  /** The stretch of lightness that the pair leaves empty, as its reasons tell it. */
  @property({ attribute: false }) gap: Stretch | null = null;
  /** Default 'grey'. */
  @property({ reflect: true }) surround: Surround = 'grey';

  static override styles = [
    baseStyles,
    css`
      :host {
        background: var(--qw-mat);
      }
      :host([surround='white']) {
        background: var(--qw-mat-white);
      }
      :host([surround='dark']) {
        background: var(--qw-mat-dark);
      }
    `,
  ];

  constructor() {
    super(700);
  }

  protected override draw(): Drawing | null {
    const { anchor, candidate, others, surround, regions, gap } = this;
    return (
      anchor &&
      lightnessStrip(
        { anchor, ...(candidate ? { candidate } : {}), others, regions },
        { surround, gap, width: drawnWidth(this.room) },
      )
    );
  }
}

/** One unit a pixel on a phone; a little larger where there is room. */
function drawnWidth(room: number): number {
  return Math.round(room / Math.min(1.3, Math.max(1, room / 600)));
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-strip': QwStrip;
  }
}
