import { css, html, type TemplateResult } from 'lit';

/** Diameter of a reason's dot in CSS pixels: from the lightest to the weightiest. A choice of ours. */
const dotPx = { least: 5, most: 17 };

/** What a dot does: `point` while it is in hand, `keep` when it is pressed. */
export interface DotDeeds {
  readonly kept: boolean;
  readonly point: (on: boolean) => void;
  readonly keep?: () => void;
}

/** A reason's dot: filled speaks for the pair, open against it; its size is what it weighs. Stepped to, it lights up the inks. */
export function reasonDot(weighs: number, { kept, point, keep }: DotDeeds): TemplateResult {
  const size = dotPx.least + (dotPx.most - dotPx.least) * Math.abs(weighs);
  return html`<button
    type="button"
    class="dot ${stanceOf(weighs)}"
    aria-pressed=${kept}
    aria-label=${spokenWeight(weighs)}
    @focus=${() => point(true)}
    @blur=${() => point(false)}
    @click=${keep}
  >
    <i style="--size:${size}px"></i>
  </button>`;
}

export function stanceOf(weighs: number): 'for' | 'against' | 'idle' {
  if (weighs === 0) return 'idle';
  return weighs > 0 ? 'for' : 'against';
}

/** "For, weighs 0.6 of 1. Keep its inks lit". */
export function spokenWeight(weighs: number): string {
  if (weighs === 0) return 'Worth knowing, weighs nothing. Keep its inks lit';
  return `${weighs > 0 ? 'For' : 'Against'}, weighs ${Math.abs(weighs).toFixed(1)} of 1. Keep its inks lit`;
}

export const dotStyles = css`
  .dot {
    position: relative;
    flex: none;
    width: 26px;
    height: 25px;
  }
  .dot::after {
    content: '';
    position: absolute;
    inset: -10px -9px;
  }
  .dot:focus-visible {
    outline-offset: 0;
    border-radius: 3px;
  }
  .dot i {
    position: absolute;
    left: 12px;
    top: 12.4px;
    width: var(--size);
    height: var(--size);
    translate: -50% -50%;
    border: 1.7px solid var(--qw-ink);
    border-radius: 50%;
  }
  .dot.for i {
    background: var(--qw-ink);
  }
  .dot.idle i {
    width: 9px;
    height: 0;
    border-width: 0 0 1.7px;
    border-radius: 0;
  }
  .dot[aria-pressed='true'] i {
    outline: 1.5px solid var(--qw-ink);
    outline-offset: 3px;
  }
`;
