import { css } from 'lit';

/** A paper on the mat, its caption, and the dashed place for one that is missing. */
export const mountedStyles = css`
  figure {
    color: var(--on-mat);
  }
  .over {
    outline: 2px dashed var(--on-mat);
    outline-offset: 6px;
  }
  figcaption {
    margin-block: 11px 8px;
    font: 14px/1.35 var(--qw-sans);
  }
  /* Papers may lie edge to edge; what is written under them may not. */
  figcaption,
  .inside,
  qw-palette {
    margin-right: var(--inner-end, 0);
    margin-left: var(--inner-start, 0);
  }
  figcaption span {
    display: block;
  }
  .light {
    color: var(--on-mat-soft);
    font-size: 13px;
  }
  b {
    display: block;
    font: 600 17px/1.2 var(--qw-serif);
  }
  figcaption .acts {
    display: flex;
    flex-wrap: wrap;
    /* Where they stand above each other, each keeps the 44 px of a finger. */
    gap: 14px 12px;
  }
  figcaption .table {
    margin-block: 2px 8px;
    font-weight: 600;
  }
  .table .turn {
    font-weight: inherit;
  }
  .turn {
    position: relative;
    min-height: 30px;
    white-space: nowrap;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 3px;
  }
  .turn::after {
    content: '';
    position: absolute;
    inset: -7px -6px;
  }
  b qw-title {
    font: inherit;
    color: inherit;
  }
  :focus-visible {
    outline-color: var(--on-mat);
  }
  .place {
    display: flex;
    flex-direction: column;
    align-items: center;
    justify-content: center;
    gap: 6px;
    width: 100%;
    aspect-ratio: 1;
    padding: 16px;
    border: 1.5px dashed color-mix(in oklch, var(--on-mat) 60%, transparent);
    text-align: center;
  }
  .place:hover {
    border-style: solid;
  }
  .place span {
    font: 14px/1.35 var(--qw-sans);
    max-width: 15em;
    overflow-wrap: anywhere;
  }
`;
