import { html, type TemplateResult } from 'lit';

/** Words with "₀₀" set as a withSubscript 00 of the same face: the bundled faces have no withSubscript figures of their own. */
export function withSubscript(words: string): TemplateResult {
  return html`${words.split(/(₀+)/).map((part) => (part.startsWith('₀') ? html`<sub>${'0'.repeat(part.length)}</sub>` : part))}`;
}
