import { css, html, LitElement, nothing, type PropertyValues } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { Drawing, NamedSide, Surround } from '../../src/drawing/model.ts';
import { lightnessStrip } from '../../src/drawing/strip.ts';
import type { ColourRegion } from '../../src/harmony/model.ts';
import { RoomController } from '../support/room.ts';
import { baseStyles, wearTokens } from '../support/tokens.ts';
import '../support/qw-drawing.ts';
import { ownTurn } from '../support/turn.ts';

/**
 * The lightness strip: CIELAB L* from dark to light, a lane for each paper, and the stretch that none of them fills.
 * It is laid out for the room there is, so that letters keep their size.
 *
 * @fires qw-point - { inks } of the mark pointed at or focused; none when that ends.
 * @csspart drawing - the chart with its foot
 */
@customElement('qw-strip')
export class QwStrip extends LitElement {
  /** The paper that the study starts from, with the name to speak of it. */
  @property({ attribute: false }) anchor: NamedSide | null = null;
  /** The paper held against it. */
  @property({ attribute: false }) candidate: NamedSide | null = null;
  /** Further candidates, in outline. */
  @property({ attribute: false }) others: readonly NamedSide[] = [];
  /** Stretches of colour to outline. */
  @property({ attribute: false }) regions: readonly ColourRegion[] = [];
  /** Default 'grey'. */
  @property({ reflect: true }) surround: Surround = 'grey';
  /** Ids of the inks to light up. */
  @property({ attribute: false }) lit: readonly string[] = [];

  @state() private room = 700;
  private drawing: Drawing | null = null;

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
    super();
    new RoomController(this, (room) => (this.room = room));
  }

  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
  }

  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await ownTurn();
    super.scheduleUpdate();
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // Lighting up is the chart's own affair: the drawing is made again only when something else changes.
    if (changed.size === 1 && changed.has('lit')) return;
    const { anchor, candidate, others, surround, regions } = this;
    this.drawing =
      anchor &&
      lightnessStrip(
        { anchor, ...(candidate ? { candidate } : {}), others, regions },
        { surround, width: drawnWidth(this.room) },
      );
  }

  protected override render() {
    if (!this.drawing) return nothing;
    return html`<qw-drawing
      part="drawing"
      .drawing=${this.drawing}
      .lit=${this.lit}
      surround=${this.surround}
    ></qw-drawing>`;
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
