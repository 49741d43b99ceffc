import { html, type TemplateResult } from 'lit';
import { verdictMarkBox, verdictMark as verdictNodes } from '../../src/drawing/verdict-mark.ts';
import type { Verdict } from '../../src/harmony/model.ts';
import { renderNodes } from '../support/render-node.ts';

/** The drawn mark of a verdict in the colour of the text around it. `width` in CSS pixels; the height follows. */
export function verdictMark(verdict: Verdict | null, width: number = verdictMarkBox.width): TemplateResult {
  const { width: w, height: h } = verdictMarkBox;
  return html`<svg width=${width} height=${(width * h) / w} viewBox="0 0 ${w} ${h}" aria-hidden="true">
    ${renderNodes(verdictNodes(verdict, 'currentColor'), noState)}
  </svg>`;
}

/** Nothing in it can be pointed at. */
const noState = () => ({ index: 0, className: '', focusable: false });
