import { html, nothing, type PropertyValues } from 'lit';
import { property, state } from 'lit/decorators.js';
import type { Drawing, Surround } from '../../src/drawing/model.ts';
import { QwElement } from './element.ts';
import { RoomController } from './room.ts';
import { ownTurn } from './turn.ts';
import './qw-drawing.ts';

/** A chart laid out for the room there is, so that letters keep their size; each time it is drawn it waits its turn. */
export abstract class ChartElement extends QwElement {
  /** Ids of the inks to light up. */
  @property({ attribute: false }) lit: readonly string[] = [];
  abstract surround: Surround;

  /** Width there is, in CSS pixels. */
  @state() protected room: number;
  @state() private drawing: Drawing | null = null;
  private drawn: Promise<void> | null = null;

  constructor(room: number) {
    super();
    this.room = room;
    new RoomController(this, (width) => (this.room = width));
  }

  /** The chart of what is held, or null where there is nothing to draw. */
  protected abstract draw(): Drawing | null;

  protected override willUpdate(changed: PropertyValues<this>): void {
    // Lighting up is the chart's own affair: the drawing is made again only when something else changes.
    const isStale = [...changed.keys()].some((name) => name !== 'lit' && name !== 'drawing');
    if (isStale) this.drawn ??= this.drawInTurn();
  }

  private async drawInTurn(): Promise<void> {
    await ownTurn();
    this.drawn = null;
    this.drawing = this.draw();
  }

  protected override async getUpdateComplete(): Promise<boolean> {
    await super.getUpdateComplete();
    await this.drawn;
    return super.getUpdateComplete();
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
