import { css, html, type PropertyValues } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { styleMap } from 'lit/directives/style-map.js';
import { QwElement } from '../support/element.ts';
import { type Band, bandsOf } from './drawer-view.ts';

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
    :host(.coming) img {
      visibility: hidden;
    }
  `;

  /** Address of the picture, or null. */
  @property({ attribute: false }) picture: string | null = null;
  @property({ attribute: false }) bands: readonly Band[] = [];

  override render() {
    return this.picture
      ? html`<img src=${this.picture} alt="" decoding="async" draggable="false" @load=${this.onLoad} />`
      : html`<div style=${styleMap({ background: bandsOf(this.bands) })}></div>`;
  }

  protected override willUpdate(changed: PropertyValues<this>): void {
    // Drawn over for another paper: the last one's picture must not stand under its name until the new one is there.
    if (changed.has('picture') && changed.get('picture') && this.picture) this.classList.add('coming');
  }

  private onLoad(): void {
    this.classList.remove('coming');
  }
}
