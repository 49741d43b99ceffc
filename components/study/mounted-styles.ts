import { css } from 'lit';

/** A paper on the mat, its caption, and the dashed place for one that is missing. */
export const mountedStyles = css`
  :host {
    container-type: inline-size;
  }
  figure {
    color: var(--on-mat);
  }
  .over {
    outline: 2px dashed var(--on-mat);
    outline-offset: 6px;
  }
  figcaption {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 14px;
    margin-block: 8px 4px;
    font: 14px/1.35 var(--qw-sans);
  }
  figcaption > :not(b, .acts) {
    flex-basis: 100%;
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
    gap: 14px 16px;
    margin-left: auto;
  }
  .deeds {
    display: flex;
    flex-wrap: wrap;
    gap: 14px 16px;
  }
  details > :not(summary) {
    margin-top: 6px;
  }
  details[open] {
    flex-basis: 100%;
  }
  summary {
    cursor: pointer;
    list-style: none;
    width: max-content;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  figcaption .table {
    margin-block: 2px 8px;
  }
  .turn {
    position: relative;
    display: inline-flex;
    align-items: center;
    min-height: 30px;
    white-space: nowrap;
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 3px;
  }
  .turn::after {
    content: '';
    position: absolute;
    inset: -12px -7px;
  }
  @container (max-width: 260px) {
    figcaption {
      margin-block: 6px 2px;
      padding-inline: 10px;
      font-size: 13px;
    }
    figcaption > b {
      font-size: 15px;
    }
    .acts {
      margin-left: 0;
    }
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
