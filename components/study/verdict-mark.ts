import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Verdict } from '../../src/harmony/model.ts';

/**
 * The drawn mark of a verdict: two papers that share an edge, two with a dotted bridge between, two that turn
 * away. Form alone tells them apart. `width` in CSS pixels; the height is 52/74 of it.
 */
export function verdictMark(verdict: Verdict | null, width = 74): TemplateResult {
  return html`<svg width=${width} height=${(width * 52) / 74} viewBox="0 0 74 52" aria-hidden="true" fill="none" stroke="currentColor" stroke-width="2.6">
    ${verdict === null ? unknown() : marks[verdict]()}
  </svg>`;
}

const marks = {
  'holds-together': () =>
    svg`<path d="M7 11H37V41H7Z" /><path d="M37 11H67V41H37Z" /><path d="M29 26H45" stroke-linecap="round" />`,
  'needs-a-bridge': () =>
    svg`<path d="M2 9H32V39H2Z" /><path d="M42 13H72V43H42Z" /><path d="M32 26H42" stroke-dasharray="3 3" />`,
  'pulls-apart': () =>
    svg`<path d="M3 13L30 7L36 34L9 40Z" transform="rotate(-8 18 24)" /><path d="M44 8L71 14L65 41L38 35Z" transform="rotate(8 56 26) translate(4 2)" />`,
};

function unknown() {
  return svg`<path d="M2 9H32V39H2Z" /><path d="M42 13H72V43H42Z" stroke-dasharray="5 4" />${nothing}`;
}
