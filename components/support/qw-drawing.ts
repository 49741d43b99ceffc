import { css, html, LitElement, nothing, type PropertyValues, svg } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import type { ChartTable, Drawing, MarkRef, Surround } from '../../src/drawing/model.ts';
import { type FocusFrame, frameAround } from './focus-frame.ts';
import { markAt } from './mark-reach.ts';
import { pointEvent, standing } from './point.ts';
import { type MarkState, renderNodes } from './render-node.ts';
import { baseStyles, wearTokens } from './tokens.ts';

/**
 * Shows any drawing: its marks can be pointed at, touched, or walked through with the arrow keys, each is read as a
 * sentence, and the table behind it can be opened.
 *
 * @fires qw-point - { inks } of the mark pointed at or focused; none when that ends.
 * @csspart chart - the drawing itself
 * @csspart scroll - the box around it, for charts that scroll sideways
 * @csspart says - the line that shows the sentence of the mark pointed at
 * @csspart table - the table, once it is open
 */
@customElement('qw-drawing')
export class QwDrawing extends LitElement {
  /** What is shown. */
  @property({ attribute: false }) drawing: Drawing | null = null;
  /** Ids of the inks to light up; the others go quiet. Empty: none, or what is pointed at here. */
  @property({ attribute: false }) lit: readonly string[] = [];
  /** The neutral behind the drawing: grey, white or dark. Default grey. */
  @property({ reflect: true }) surround: Surround = 'grey';
  /** Leaves out the line below with the sentence and the table's switch. */
  @property({ type: Boolean, reflect: true }) bare = false;

  @state() private pointed: MarkRef | null = null;
  @state() private current = 0;
  @state() private open = false;
  @state() private frame: FocusFrame | null = null;
  /** Whether the focus has ever been on a mark: then the tab stop stays where it was. */
  private focused = false;

  static override styles = [baseStyles, drawingStyles()];

  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    if (!changed.has('drawing')) return;
    const refs = markRefs(this.drawing);
    const kept = this.focused && refs[this.current];
    if (!kept)
      this.current = Math.max(
        0,
        refs.findIndex((mark) => mark.kind !== 'link'),
      );
  }

  protected override updated(changed: PropertyValues<this>): void {
    // A chart laid out anew moves its marks from under the frame.
    if (changed.has('drawing') && this.frame)
      this.frame = this.frameOf((this.renderRoot as ShadowRoot).activeElement);
  }

  protected override render() {
    const { drawing } = this;
    if (!drawing) return nothing;
    let index = 0;
    const lit = this.lit.length > 0 ? this.lit : (this.pointed?.inks ?? []);
    const stateOf = (mark: MarkRef): MarkState => {
      const state = { index, className: standing(mark.inks, lit), focusable: index === this.current };
      index += 1;
      return state;
    };
    const marks = countMarks(drawing);
    return html`<figure part="figure">
      <div class="scroll" part="scroll"><svg
        part="chart"
        class=${lit.length > 0 ? 'some-lit' : ''}
        viewBox="0 0 ${drawing.width} ${drawing.height}"
        role="group"
        aria-label=${drawing.title}
        aria-describedby="about"
        @pointermove=${this.onPointer}
        @pointerdown=${this.onPointer}
        @pointerleave=${this.onLeave}
        @focusin=${this.onFocus}
        @focusout=${this.onBlur}
        @keydown=${this.onKey}
      >
        ${renderNodes(drawing.nodes, stateOf)}${this.frame ? frameShape(this.frame) : nothing}
      </svg></div>
      <span id="about" hidden
        >${drawing.description}${marks > 1 ? ' Arrow keys move from mark to mark.' : ''}</span
      >
      ${this.bare ? nothing : this.foot(drawing)}
    </figure>`;
  }

  private foot(drawing: Drawing) {
    return html`<div class="foot">
        <button type="button" aria-expanded=${this.open} aria-controls="table" @click=${this.onTable}>
          <span class="line">${this.open ? 'Hide the table' : 'Show as table'}</span>
        </button>
        <p part="says" aria-hidden="true">${this.pointed?.label ?? ''}</p>
      </div>
      ${
        // Focusable, because it scrolls sideways where it is wider than the page.
        html`<div id="table" part="table" tabindex="0" role="region" aria-label=${drawing.table.caption}
          ?hidden=${!this.open}>${this.open ? tableOf(drawing.table) : nothing}</div>`
      }`;
  }

  private readonly onTable = (): void => {
    this.open = !this.open;
  };

  private readonly onPointer = (event: PointerEvent): void => {
    this.point(markAt(this.renderRoot as ShadowRoot, event.clientX, event.clientY));
  };

  // A finger that lifts leaves too; what it touched stays lit until it touches elsewhere.
  private readonly onLeave = (event: PointerEvent): void => {
    if (event.pointerType === 'mouse') this.point(null);
  };

  private readonly onFocus = (event: FocusEvent): void => {
    const mark = (event.target as Element).closest<SVGGElement>('.mark');
    if (!mark) return;
    this.current = Number(mark.dataset.mark);
    this.focused = true;
    this.frame = this.frameOf(mark);
    this.point(mark);
  };

  private readonly onBlur = (event: FocusEvent): void => {
    this.frame = null;
    const next = event.relatedTarget as Element | null;
    if (!next || !this.renderRoot.contains(next) || !next.closest('.mark')) this.point(null);
  };

  private readonly onKey = (event: KeyboardEvent): void => {
    const order = this.walkOrder();
    const at = order.findIndex((mark) => Number(mark.dataset.mark) === this.current);
    const to = target(event.key, at, order.length);
    if (to === null) return;
    event.preventDefault();
    order[to]?.focus();
  };

  /** The frame of a mark that shows its focus, or null. */
  private frameOf(mark: Element | null): FocusFrame | null {
    return this.drawing && mark?.matches('.mark:focus-visible') ? frameAround(mark, this.drawing) : null;
  }

  /** Inks first, then links, each in the order they are drawn. */
  private walkOrder(): SVGGElement[] {
    const marks = [...this.renderRoot.querySelectorAll<SVGGElement>('.mark')];
    return [...marks.filter((m) => !m.matches('.link')), ...marks.filter((m) => m.matches('.link'))];
  }

  private point(element: SVGGElement | null): void {
    const mark = element ? markRefs(this.drawing)[Number(element.dataset.mark)] : undefined;
    if (mark === (this.pointed ?? undefined)) return;
    this.pointed = mark ?? null;
    this.dispatchEvent(pointEvent(mark?.inks ?? []));
  }
}

/** Drawn last, so that no neighbour covers it; a wider line of the other tone under it shows it on any ink. */
function frameShape({ x, y, width, height }: FocusFrame) {
  const edge = (name: string) =>
    svg`<rect class=${name} x=${x} y=${y} width=${width} height=${height} rx="3"></rect>`;
  return svg`<g class="frame" aria-hidden="true">${edge('under')}${edge('over')}</g>`;
}

function target(key: string, at: number, count: number): number | null {
  switch (key) {
    case 'ArrowRight':
    case 'ArrowDown':
      return Math.min(count - 1, at + 1);
    case 'ArrowLeft':
    case 'ArrowUp':
      return Math.max(0, at - 1);
    case 'Home':
      return 0;
    case 'End':
      return count - 1;
    default:
      return null;
  }
}

/** All marks of a drawing, in the order they are drawn. */
function markRefs(drawing: Drawing | null): MarkRef[] {
  const refs: MarkRef[] = [];
  const visit = (nodes: Drawing['nodes']): void => {
    for (const node of nodes) {
      if (node.mark) refs.push(node.mark);
      if (node.type === 'group') visit(node.children);
    }
  };
  if (drawing) visit(drawing.nodes);
  return refs;
}

function countMarks(drawing: Drawing | null): number {
  return markRefs(drawing).length;
}

function tableOf(table: ChartTable) {
  return html`<table>
    <caption>${table.caption}</caption>
    <thead><tr>${table.columns.map((column) => html`<th scope="col">${column}</th>`)}</tr></thead>
    <tbody>
      ${table.rows.map(
        (row) =>
          html`<tr>${row.map((text, i) => (i === 0 ? html`<th scope="row">${text}</th>` : html`<td>${text}</td>`))}</tr>`,
      )}
    </tbody>
  </table>`;
}

function drawingStyles() {
  return css`
    :host {
      --on-mat: #151515;
      --under: #f2f2f2;
      background: var(--qw-mat);
      color: var(--on-mat);
    }
    :host([surround='white']) {
      background: var(--qw-mat-white);
    }
    :host([surround='dark']) {
      --on-mat: #f2f2f2;
      --under: #151515;
      background: var(--qw-mat-dark);
    }
    figure {
      margin: 0;
    }
    svg {
      display: block;
      width: 100%;
      height: auto;
      touch-action: pan-y;
      font-variant-numeric: tabular-nums;
    }
    .mark {
      cursor: default;
      transition: opacity var(--qw-quick) ease-out;
    }
    .mark.quiet {
      opacity: 0.16;
    }
    .mark.link.quiet {
      opacity: 0.1;
    }
    .some-lit .leader {
      opacity: 0;
    }
    /* Drawn as a shape: WebKit paints no outline on a group of an SVG, and elsewhere the chart's edge cuts it off. */
    .mark:focus-visible {
      outline: none;
    }
    .frame {
      fill: none;
      pointer-events: none;
    }
    .frame .under {
      stroke: var(--under);
      stroke-width: 5;
    }
    .frame .over {
      stroke: var(--on-mat);
      stroke-width: 2.5;
    }
    .mark text {
      pointer-events: none;
      user-select: none;
    }
    .foot {
      display: flex;
      align-items: center;
      gap: 18px;
      min-height: var(--qw-target);
      font: var(--qw-small) / 1.35 var(--qw-sans);
    }
    .foot p {
      margin: 0;
      font-variant-numeric: tabular-nums;
    }
    .foot button {
      flex: none;
      font-size: var(--qw-small);
    }
    [part='table'] {
      overflow-x: auto;
      padding-bottom: 10px;
    }
    table {
      border-collapse: collapse;
      font: var(--qw-small) / 1.35 var(--qw-sans);
      font-variant-numeric: tabular-nums;
      width: 100%;
    }
    caption {
      text-align: start;
      font-weight: 600;
      padding: 4px 0 6px;
    }
    th,
    td {
      text-align: start;
      padding: 6px 14px 6px 0;
      border-top: 1px solid color-mix(in oklch, var(--on-mat) 22%, transparent);
      font-weight: 400;
      vertical-align: top;
    }
    th {
      font-weight: 600;
    }
  `;
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-drawing': QwDrawing;
  }
}
