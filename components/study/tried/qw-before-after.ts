import { css, html, nothing, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { surroundTones } from '../../../src/drawing/surround.ts';
import type { Surround } from '../../../src/notebook/model.ts';
import { controls, ruled } from '../../support/controls.ts';
import { QwElement } from '../../support/element.ts';
import { emit } from '../../support/emit.ts';
import { verdictMark } from '../verdict-mark.ts';
import { verdictWords } from '../words.ts';
import { drawTried, type Pictures } from './draw-tried.ts';
import type { TriedPair, TriedPaper, TriedView } from './tried-view.ts';

/**
 * A change to a pair, drawn: the papers as they are and as they would be, side by side, with both verdicts, what is done
 * and what that lifts. Nothing is kept unless she says so.
 * @fires qw-keep-supposed - `{ picture }`, what is tried is kept as a note, with the two pairs as one picture
 * @fires qw-leave-it - nothing: all as it was · qw-look-further - `{ way: 'what-if' }`, changes are to be made by hand
 */
@customElement('qw-before-after')
export class QwBeforeAfter extends QwElement {
  static override styles = [controls, ruled, styles()];

  @property({ attribute: false }) view: TriedView | null = null;
  @property() surround: Surround = 'grey';
  /** True while the panel stands open with which changes are made by hand. */
  @property({ type: Boolean, attribute: 'by-hand' }) byHand = false;
  private readonly pictures: Pictures = new Map();
  private drawing: Promise<void> = Promise.resolve();
  /** What the canvases show, or soon will. */
  private last: TriedView | null = null;

  /** Takes the keyboard to its head, when something was tried. */
  override focus(options?: FocusOptions): void {
    this.renderRoot.querySelector<HTMLElement>('h3')?.focus(options);
  }

  protected override updated(changed: PropertyValues<this>): void {
    // The page makes its view anew with whatever happens on it; the papers are drawn again where they differ.
    if (
      !changed.has('surround') &&
      this.last !== null &&
      this.view !== null &&
      sameDrawing(this.last, this.view)
    )
      return;
    this.last = this.view;
    this.drawing = this.drawing.then(() => this.drawn());
  }

  /** Resolves once both pairs are drawn. */
  async pictured(): Promise<void> {
    await this.updateComplete;
    await this.drawing;
  }

  override render() {
    const { view } = this;
    if (!view) return nothing;
    const { mat, text } = surroundTones(this.surround);
    const gone = view.lifts.length > 0 ? `No longer against them: ${view.lifts.join(', ')}.` : '';
    return html`<section class="row" aria-labelledby="head" style="--mat:${mat};--on-mat:${text}">
      <div class="margin" aria-hidden="true"><b>tried</b><span>nothing is kept</span></div>
      <div class="text">
        <h3 id="head" tabindex="-1">${sentence(view.clauses)}</h3>
        <div class="two">${this.pair('before', 'As it is', view.before)}${this.pair('after', 'Tried', view.after)}</div>
        ${gone ? html`<p class="gone">${gone}</p>` : nothing}
        <div class="ways">
          <button type="button" class="slip main" @click=${this.keep}>Keep it</button>
          <button type="button" class="slip" @click=${() => emit(this, 'qw-leave-it', {})}>Leave it</button>
          ${this.byHand ? nothing : html`<button type="button" class="word" @click=${() => emit(this, 'qw-look-further', { way: 'what-if' })}><span>Change something else too</span></button>`}
        </div>
        <div class="unseen" aria-live="polite">Tried: ${verdictWords[view.after.verdict]}. ${view.after.summary} ${gone}</div>
      </div>
    </section>`;
  }

  private pair(which: 'before' | 'after', label: string, { verdict, summary, anchor, candidate }: TriedPair) {
    return html`<figure class=${which}>
      <canvas role="img" aria-label="${label}: ${anchor.name} and ${candidate.name}"></canvas>
      <figcaption>
        <small>${label}</small>
        <b>${verdictMark(verdict, 34)} ${verdictWords[verdict]}.</b>
        <span>${summary}</span>
      </figcaption>
    </figure>`;
  }

  private async drawn(): Promise<void> {
    const { view } = this;
    if (!view) return;
    const { mat } = surroundTones(this.surround);
    const [before, after] = this.renderRoot.querySelectorAll('canvas');
    // An address that no paper has any more is let go.
    const held = [view.before, view.after].flatMap(({ anchor, candidate }) => [
      anchor.picture,
      candidate.picture,
    ]);
    for (const address of this.pictures.keys()) if (!held.includes(address)) this.pictures.delete(address);
    if (before && after) {
      await Promise.all([
        drawTried(before, view.before, mat, this.pictures),
        drawTried(after, view.after, mat, this.pictures),
      ]);
    }
  }

  private async keep(): Promise<void> {
    await this.pictured();
    const picture = await this.asPicture().catch(() => null);
    emit(this, 'qw-keep-supposed', { picture });
  }

  /** Both pairs beside each other, on the mat. */
  private asPicture(): Promise<Blob | null> {
    const [before, after] = this.renderRoot.querySelectorAll('canvas');
    const canvas = document.createElement('canvas');
    const gap = 40;
    canvas.width = before!.width + after!.width + 3 * gap;
    canvas.height = Math.max(before!.height, after!.height) + 2 * gap;
    const context = canvas.getContext('2d')!;
    context.fillStyle = surroundTones(this.surround).mat;
    context.fillRect(0, 0, canvas.width, canvas.height);
    context.drawImage(before!, gap, gap);
    context.drawImage(after!, before!.width + 2 * gap, gap);
    return new Promise((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.92));
  }
}

/** Whether two views would be drawn alike. */
function sameDrawing(one: TriedView, other: TriedView): boolean {
  const pairs = [
    [one.before, other.before],
    [one.after, other.after],
  ] as const;
  return pairs.every(
    ([a, b]) =>
      a.distance === b.distance &&
      a.between?.as === b.between?.as &&
      a.between?.hex === b.between?.hex &&
      samePaper(a.anchor, b.anchor) &&
      samePaper(a.candidate, b.candidate),
  );
}

function samePaper(a: TriedPaper, b: TriedPaper): boolean {
  return (
    a.picture === b.picture &&
    a.places === b.places &&
    a.side === b.side &&
    a.changes.length === b.changes.length &&
    a.changes.every((change, i) => change === b.changes[i])
  );
}

/** "Rose (b) is covered with cream, and a strip of kraft lies between them." */
function sentence(clauses: readonly string[]): string {
  const all =
    clauses.length > 1 ? `${clauses.slice(0, -1).join(', ')}, and ${clauses.at(-1)}` : (clauses[0] ?? '');
  return `${all.charAt(0).toUpperCase()}${all.slice(1)}.`;
}

function styles() {
  return css`
    :host {
      scroll-margin: 64px 0 12px;
    }
    .margin {
      padding-top: 10px;
    }
    section {
      margin: 10px 0 14px;
    }
    h3 {
      font: 600 17px/1.35 var(--qw-serif);
      margin-bottom: 8px;
    }
    h3:focus {
      outline: none;
    }
    .two {
      display: grid;
      grid-template-columns: 1fr 1fr;
      gap: 14px;
    }
    figure {
      padding: 12px 12px 8px;
      background: var(--mat);
    }
    .after {
      outline: 1.5px dashed var(--qw-ink);
      outline-offset: -1.5px;
    }
    canvas {
      display: block;
      width: 100%;
      height: auto;
    }
    figcaption {
      margin-top: 8px;
      color: var(--on-mat);
      font: 14px/1.35 var(--qw-sans);
    }
    figcaption b {
      display: flex;
      align-items: center;
      gap: 10px;
      font: 600 18px/1.3 var(--qw-serif);
    }
    figcaption small {
      font-size: 13px;
    }
    .gone {
      margin-top: 8px;
      font-size: 16px;
    }
    .ways {
      display: flex;
      flex-wrap: wrap;
      gap: 10px;
      margin-top: 10px;
    }
    @container (max-width: 620px) {
      .two {
        grid-template-columns: 1fr;
        gap: 6px;
        margin-inline: -18px;
      }
      figure {
        display: grid;
        grid-template-columns: 1.35fr 1fr;
        gap: 10px;
        padding: 8px 10px;
      }
      figcaption {
        margin-top: 0;
      }
      figcaption b {
        align-items: flex-start;
        font-size: 16px;
      }
      figcaption span {
        display: none;
      }
    }
  `;
}
