import { css, html, nothing } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import { QwElement } from '../support/element.ts';
import { bandsOf, type DrawerPaper } from './drawer-view.ts';

/** A paper in small: its picture, or its inks as bands. Only a picture: whatever names it stands beside it. */
@customElement('qw-miniature')
export class QwMiniature extends QwElement {
  static override styles = css`
    :host {
      display: block;
      aspect-ratio: 1;
      overflow: hidden;
      box-shadow: 0 1px 3px oklch(0 0 0 / 0.3);
    }
    div,
    img {
      display: block;
      width: 100%;
      height: 100%;
    }
    img {
      object-fit: cover;
    }
  `;

  @property({ attribute: false }) paper: DrawerPaper | null = null;

  override render() {
    const { paper } = this;
    if (!paper) return nothing;
    return paper.picture
      ? html`<img src=${paper.picture} alt="" draggable="false" />`
      : html`<div style=${styleMap({ background: bandsOf(paper.bands) })}></div>`;
  }
}
