import { css } from 'lit';

/** What every element of the page wears: type, buttons, fields, the focus line. Greys only; sizes fit a finger. */
export const controls = css`
  :host {
    display: block;
    color: var(--qw-ink);
    font: 16.5px/1.5 var(--qw-serif);
  }
  :host([hidden]),
  [hidden] {
    display: none !important;
  }
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }
  h2,
  h3,
  h4,
  p,
  figure,
  ol,
  ul {
    margin: 0;
    padding: 0;
  }
  ol,
  ul {
    list-style: none;
  }
  button,
  input,
  select,
  textarea {
    font: inherit;
    color: inherit;
  }
  button {
    background: none;
    border: 0;
    padding: 0;
    text-align: inherit;
    cursor: pointer;
  }
  button:disabled {
    cursor: default;
    opacity: 0.5;
  }
  /* The browser's own is blue. */
  ::selection {
    background: color-mix(in oklch, var(--qw-ink) 24%, transparent);
  }
  :focus-visible {
    outline: 2px solid var(--qw-ink);
    outline-offset: 2px;
  }
  a {
    color: inherit;
    text-decoration-thickness: 1px;
    text-underline-offset: 3px;
  }
  sub {
    font-size: 0.72em;
    line-height: 0;
    vertical-align: -0.22em;
  }
  .word {
    display: inline-flex;
    align-items: center;
    min-height: 44px;
    font: 14.5px/1.25 var(--qw-sans);
  }
  .word > span {
    border-bottom: 1.5px solid var(--qw-hair);
    padding-bottom: 1px;
  }
  .word:hover:not(:disabled) > span {
    border-color: var(--qw-ink);
  }
  .slip {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    gap: 8px;
    min-height: 44px;
    padding: 8px 16px;
    border: 1px solid var(--qw-hair);
    border-radius: 3px;
    font: 14.5px/1.25 var(--qw-sans);
  }
  .slip:hover:not(:disabled) {
    background: color-mix(in oklch, var(--qw-ink) 6%, transparent);
    border-color: var(--qw-ink);
  }
  .slip.main {
    border: 1.5px solid var(--qw-ink);
    font-weight: 600;
  }
  .field {
    display: block;
    width: 100%;
    min-height: 44px;
    padding: 9px 12px;
    background: transparent;
    border: 1px solid var(--qw-hair);
    border-radius: 3px;
  }
  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }
`;

/** A leaf's ruled page: the margin on the left for figures and sources, the text on the right; stacked when narrow. */
export const ruled = css`
  :host {
    container-type: inline-size;
  }
  .row {
    display: grid;
    grid-template-columns: var(--margin, 196px) minmax(0, 1fr);
  }
  .margin {
    padding: 3px 18px 0 6px;
    color: var(--qw-soft);
    font: 13px/1.35 var(--qw-sans);
    font-variant-numeric: tabular-nums;
    text-align: right;
    text-wrap: balance;
  }
  .margin b {
    display: block;
    color: var(--qw-ink);
    font-weight: 600;
  }
  .margin span,
  .margin a {
    display: block;
  }
  .text {
    padding: 0 40px 0 28px;
  }
  @container (max-width: 820px) {
    .row {
      grid-template-columns: var(--margin, 156px) minmax(0, 1fr);
    }
    .text {
      padding: 0 28px 0 22px;
    }
  }
  @container (max-width: 620px) {
    .row {
      display: block;
    }
    .margin {
      padding: 2px 18px;
      text-align: left;
    }
    .margin b,
    .margin span,
    .margin a {
      display: inline;
      margin-right: 8px;
    }
    .text {
      padding: 0 18px;
    }
  }
`;
