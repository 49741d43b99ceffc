import { html } from 'lit';
import { customElement, property } from 'lit/decorators.js';
import { sources } from '../../src/colour/sources.ts';
import '../notebook/qw-sources.ts';
import { QwElement } from '../support/element.ts';

/** The list of sources with the entries that the engine keeps. */
@customElement('qw-open-sources')
export class QwOpenSources extends QwElement {
  @property() current = '';

  override render() {
    return html`<qw-sources .sources=${sources} .current=${this.current}></qw-sources>`;
  }
}
