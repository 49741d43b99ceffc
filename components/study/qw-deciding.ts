import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { letterOn } from '../../src/drawing/ladders.ts';
import type { Surround } from '../../src/notebook/model.ts';
import type { Ink } from '../../src/sheet/model.ts';
import '../sheet/qw-paper.ts';
import { controls } from '../support/controls.ts';
import { QwElement } from '../support/element.ts';
import type { CandidateView, PaperView } from './study-view.ts';

/**
 * The two colours that decide, large and edge to edge, each beside its paper with everything else veiled. Draws nothing
 * where no colour decides.
 */
@customElement('qw-deciding')
export class QwDeciding extends QwElement {
  static override styles = [controls, styles()];

  @property({ attribute: false }) anchor: PaperView | null = null;
  @property({ attribute: false }) candidate: CandidateView | null = null;
  @property() surround: Surround = 'grey';

  override render() {
    const { anchor, candidate } = this;
    if (!anchor || !candidate?.deciding) return nothing;
    const [one, other] = candidate.deciding;
    return html`<figure aria-label="The two colours that decide: ${one.name} of ${anchor.name}, ${other.name} of ${candidate.name}">
      ${this.place({ ...anchor, side: candidate.comparison.anchor }, one)}
      <div class="colours">${this.swatch(one, anchor.name)}${this.swatch(other, candidate.name)}</div>
      ${this.place({ ...candidate, side: candidate.comparison.candidate }, other)}
    </figure>`;
  }

  /** Where the colour lies: the paper in small. */
  private place({ side, name, picture, places }: PaperView, { id }: Ink) {
    if (picture === null || places === null) return html`<span class="where"></span>`;
    return html`<qw-paper class="where" inert aria-hidden="true" .paper=${{ side, name }} .picture=${picture} .places=${places} .lit=${[id]} .surround=${this.surround}></qw-paper>`;
  }

  private swatch({ id, hex, name, trade, share }: Ink, paper: string) {
    return html`<div class="swatch" style="background:${hex};color:${letterOn(hex)}">
      <b>${id}</b>
      <span>${trade ?? name}</span>
      <small>${shareWords(share)} of ${paper}</small>
    </div>`;
  }
}

function shareWords(share: number): string {
  return share < 0.01 ? 'under 1 %' : `${Math.round(share * 100)} %`;
}

function styles() {
  return css`
    :host {
      container-type: inline-size;
    }
    figure {
      display: grid;
      grid-template-columns: 132px minmax(0, 1fr) 132px;
      gap: 14px;
      align-items: stretch;
    }
    .colours {
      display: grid;
      grid-template-columns: 1fr 1fr;
      min-height: 132px;
    }
    .swatch {
      display: flex;
      flex-direction: column;
      justify-content: flex-end;
      padding: 10px 14px;
      font: 14.5px/1.3 var(--qw-sans);
      overflow: hidden;
    }
    .swatch b {
      margin-bottom: auto;
      font-size: 17px;
    }
    .swatch span {
      font-weight: 600;
    }
    .swatch small {
      font-size: 13px;
      overflow-wrap: anywhere;
    }
    .where {
      display: block;
      max-height: 132px;
      overflow: hidden;
      pointer-events: none;
    }
    @container (max-width: 620px) {
      figure {
        grid-template-columns: 68px minmax(0, 1fr) 68px;
        gap: 6px;
      }
      .colours {
        min-height: 104px;
      }
      .swatch {
        padding: 6px 8px;
        font-size: 13px;
      }
      .swatch small {
        display: none;
      }
      .where {
        align-self: center;
      }
    }
  `;
}
