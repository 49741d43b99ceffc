import { css } from 'lit';

/** How a drawer that is looked through is set: conditions in one row, places in order. */
export const findStyles = css`
  section {
    padding: 8px 0 20px;
  }
  h3 {
    font: 500 25px/1.2 var(--qw-serif);
  }
  h3:focus {
    outline: none;
  }
  .filters {
    display: flex;
    flex-wrap: wrap;
    gap: 6px 14px;
    margin: 8px 0 6px;
  }
  label span {
    display: block;
    margin-bottom: 2px;
    font: 13px/1.3 var(--qw-sans);
    color: var(--qw-soft);
  }
  .field {
    width: auto;
    min-width: 96px;
    font: 15px/1.3 var(--qw-sans);
    background: var(--qw-leaf);
  }
  li {
    display: grid;
    grid-template-columns: 64px minmax(0, 1fr) auto;
    gap: 4px 16px;
    align-items: start;
    padding: 12px 0;
    border-bottom: 1px solid var(--qw-rule);
  }
  li p {
    max-width: 38em;
    font-size: 15.5px;
    line-height: 1.42;
  }
  .name b {
    font: 600 16px/1.3 var(--qw-serif);
  }
  small {
    font: 13px/1.3 var(--qw-sans);
    color: var(--qw-soft);
  }
  .held {
    padding-top: 4px;
  }
  .verdict {
    display: inline-flex;
    align-items: center;
    gap: 7px;
    margin-right: 4px;
    font: 600 13.5px/1.3 var(--qw-sans);
    vertical-align: -5px;
  }
  li .word {
    margin-top: -8px;
  }
  .none {
    padding: 14px 0;
    font-style: italic;
    color: var(--qw-soft);
  }
  @container (max-width: 620px) {
    li {
      grid-template-columns: 56px minmax(0, 1fr);
    }
    li .word,
    .held {
      grid-column: 2;
      margin: 0;
    }
  }
`;
