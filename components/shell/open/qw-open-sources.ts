import { css, html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { sources } from '../../../src/colour/sources.ts';
import { heifLicence, heifNotice } from '../../../src/workers/libheif/notice.ts';
import '../../notebook/qw-licence.ts';
import '../../notebook/qw-sources.ts';
import { controls, ruled } from '../../support/controls.ts';
import { QwElement } from '../../support/element.ts';

/** The list of sources with the entries that the engine keeps, and what others' programs ask to have said. */
@customElement('qw-open-sources')
export class QwOpenSources extends QwElement {
  static override styles = [controls, ruled, styles()];

  @property() current = '';
  @state() private licence = '';

  override render() {
    return html`<qw-sources .sources=${sources} .current=${this.current}></qw-sources>
      <qw-licence name="libheif" .notice=${heifNotice} .licence=${this.licence} @qw-ask-licence=${this.fetch}></qw-licence>
      <article class="row" aria-label="All licences">
        <div class="margin"><b>All parts</b><span>programs and fonts</span></div>
        <div class="text">
          <a href="licences.txt" target="_blank" rel="noopener">Everything that this page is made of, with its licences</a>
        </div>
      </article>`;
  }

  private fetch(): void {
    heifLicence().then(
      (text) => {
        this.licence = text;
      },
      () => {
        this.licence = 'The licence could not be loaded just now. Close this and open it again.';
      },
    );
  }
}

function styles() {
  return css`
    article {
      padding: 8px 0 60px;
    }
    a {
      display: flex;
      align-items: center;
      min-height: 44px;
      font: 14.5px/1.25 var(--qw-sans);
      color: inherit;
      text-underline-offset: 3px;
    }
  `;
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-open-sources': QwOpenSources;
  }
}
