import { css } from 'lit';

/**
 * The look as custom properties: all achromatic, in both themes. Include it once on the page (`tokensCss` on :root),
 * or let an element that stands alone bring its own fallbacks by `tokens`. The mat behind samples is the same grey in
 * either theme, so its letters are always dark.
 *
 * `[data-look="light"|"dark"]` on the root overrides what the system asks for.
 */
export const lightTones = `
  --qw-table: oklch(.76 0 0); --qw-leaf: oklch(.965 0 0); --qw-raised: oklch(.985 0 0);
  --qw-ink: oklch(.22 0 0); --qw-soft: oklch(.44 0 0); --qw-rule: oklch(.86 0 0); --qw-hair: oklch(.56 0 0);
  --qw-lift: oklch(0 0 0 / .18); color-scheme: light;`;

export const darkTones = `
  --qw-table: oklch(.20 0 0); --qw-leaf: oklch(.27 0 0); --qw-raised: oklch(.31 0 0);
  --qw-ink: oklch(.93 0 0); --qw-soft: oklch(.76 0 0); --qw-rule: oklch(.37 0 0); --qw-hair: oklch(.62 0 0);
  --qw-lift: oklch(0 0 0 / .5); color-scheme: dark;`;

/** What does not change with the theme. */
export const steadyTones = `
  --qw-mat: #bababa; --qw-mat-white: #ffffff; --qw-mat-dark: #2c2c2c;
  --qw-serif: 'Literata Variable', Literata, Georgia, serif;
  --qw-sans: 'Atkinson Hyperlegible Next Variable', 'Atkinson Hyperlegible Next', 'Literata Variable', Literata, Verdana, sans-serif;
  --qw-text: 16.5px; --qw-label: 14px; --qw-small: 13px; --qw-target: 44px; --qw-quick: 140ms;`;

/** A style sheet for the page. */
export const tokensCss = `
:root { ${lightTones} ${steadyTones} }
@media (prefers-color-scheme: dark) { :root { ${darkTones} } }
:root[data-look='light'] { ${lightTones} }
:root[data-look='dark'] { ${darkTones} }
@media (prefers-reduced-motion: reduce) { :root { --qw-quick: 0ms; } }
`;

/** Puts the custom properties on the page, once. Elements call it when they are first connected. */
export function wearTokens(page: Document): void {
  if (page.getElementById('qw-tokens')) return;
  const style = page.createElement('style');
  style.id = 'qw-tokens';
  style.textContent = tokensCss;
  // First in the head, so that whatever the page says itself wins.
  page.head.prepend(style);
}

/** What every element starts from. */
export const baseStyles = css`
  :host {
    display: block;
    color: var(--qw-ink);
    font: var(--qw-text) / 1.5 var(--qw-serif);
    font-optical-sizing: auto;
  }
  :host([hidden]) {
    display: none;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  button {
    font: var(--qw-label) / 1.3 var(--qw-sans);
    color: inherit;
    background: none;
    border: 0;
    padding: 0 10px;
    min-height: var(--qw-target);
    min-width: var(--qw-target);
    cursor: pointer;
    text-align: start;
  }
  button > span.line {
    border-bottom: 1.5px solid currentColor;
    padding-bottom: 1px;
  }
  :focus {
    outline: none;
  }
  :focus-visible {
    outline: 2.5px solid currentColor;
    outline-offset: 2px;
  }
  .aside {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`;
