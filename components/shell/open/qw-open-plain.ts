import { html } from 'lit';
import { customElement } from 'lit/decorators.js';
import '../../picture/qw-plain-form.ts';
import { QwElement } from '../../support/element.ts';
import { colourOfText } from './known-colours.ts';

/** A plain for the drawer, by its form. */
@customElement('qw-open-plain')
export class QwOpenPlain extends QwElement {
  override render() {
    return html`<qw-plain-form .colourOf=${colourOfText}></qw-plain-form>`;
  }
}

declare global {
  interface HTMLElementTagNameMap {
    'qw-open-plain': QwOpenPlain;
  }
}
