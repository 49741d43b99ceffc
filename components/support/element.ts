import { LitElement } from 'lit';
import { wearTokens } from './tokens.ts';

/** What an element of the page starts from: the greys and typefaces are on the page before it is drawn. */
export class QwElement extends LitElement {
  override connectedCallback(): void {
    super.connectedCallback();
    wearTokens(this.ownerDocument);
  }
}
