import { html } from 'lit';
import { customElement, property, state } from 'lit/decorators.js';
import { sources } from '../../src/colour/sources.ts';
import { heifLicence, heifNotice } from '../../src/workers/libheif/notice.ts';
import '../notebook/qw-licence.ts';
import '../notebook/qw-sources.ts';
import { QwElement } from '../support/element.ts';

/** The list of sources with the entries that the engine keeps, and what others' programs ask to have said. */
@customElement('qw-open-sources')
export class QwOpenSources extends QwElement {
  @property() current = '';
  @state() private licence = '';

  override render() {
    return html`<qw-sources .sources=${sources} .current=${this.current}></qw-sources>
      <qw-licence name="libheif" .notice=${heifNotice} .licence=${this.licence} @qw-ask-licence=${this.fetch}></qw-licence>`;
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

declare global {
  interface HTMLElementTagNameMap {
    'qw-open-sources': QwOpenSources;
  }
}
