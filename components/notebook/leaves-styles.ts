import { css } from 'lit';

/** The list of leaves: the open one lies on top like a leaf of paper, the others are words on the table. */
export const leavesStyles = css`
  :host {
    font: 14.5px/1.35 var(--qw-sans);
  }
  a {
    display: grid;
    grid-template-columns: 26px minmax(0, 1fr);
    align-items: start;
    min-height: 44px;
    padding: 8px 10px 8px 8px;
    text-decoration: none;
  }
  a span {
    overflow-wrap: anywhere;
  }
  .place {
    font-variant-numeric: tabular-nums;
  }
  small {
    display: block;
    font-size: 12.5px;
  }
  .entry {
    margin: 0 -8px 2px;
    border-radius: 3px;
  }
  .entry:not(.current):hover {
    background: color-mix(in oklch, var(--qw-ink) 6%, transparent);
  }
  .current {
    background: var(--qw-leaf);
    box-shadow: 0 1px 2px var(--qw-lift);
  }
  .current small {
    color: var(--qw-soft);
  }
  .handles {
    display: flex;
    gap: 6px;
    padding: 0 4px 2px 26px;
  }
  @media (min-width: 901px) and (max-width: 1100px) {
    .handles {
      gap: 0;
      padding: 0 8px 2px 12px;
    }
  }
  .handles button {
    min-height: 44px;
    min-width: 44px;
    font-size: 12.5px;
    white-space: nowrap;
    color: var(--qw-soft);
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-decoration-color: var(--qw-hair);
    text-underline-offset: 3px;
  }
  .handles button:hover:not(:disabled) {
    color: var(--qw-ink);
  }
  .handles button:disabled {
    text-decoration: none;
    opacity: 0.45;
  }
  .add {
    width: 100%;
    min-height: 44px;
    margin-top: 14px;
    padding: 10px;
    border: 1.5px dashed color-mix(in oklch, var(--qw-ink) 55%, transparent);
    border-radius: 3px;
    text-align: center;
  }
  .add:hover,
  .add[aria-expanded='true'] {
    border-style: solid;
  }
  #kinds {
    margin-top: 6px;
    background: var(--qw-leaf);
    box-shadow: 0 1px 3px var(--qw-lift);
    border-radius: 3px;
  }
  .kind {
    width: 100%;
    min-height: 44px;
    padding: 8px 12px;
  }
  .kind:hover {
    background: color-mix(in oklch, var(--qw-ink) 6%, transparent);
  }
  .kind small {
    color: var(--qw-soft);
  }
  b {
    display: block;
    font-weight: 600;
  }
  .none {
    font-size: 14.5px;
  }
`;
