import { css } from 'lit';

/** How the pieces of a kit are set: a paper in small, what it is, and what is cut of it. */
export const kitPiecesStyles = css`
  li {
    display: grid;
    grid-template-columns: 84px minmax(0, 1fr) auto;
    gap: 0 18px;
    align-items: start;
    padding: 12px 0 4px;
    border-bottom: 1px solid var(--qw-rule);
  }
  b {
    font: 600 16.5px/1.3 var(--qw-serif);
  }
  small {
    margin-left: 6px;
    font: 13px/1.3 var(--qw-sans);
    color: var(--qw-soft);
  }
  .inks {
    display: flex;
    gap: 2px;
    max-width: 26em;
    margin-top: 6px;
  }
  .chip {
    min-width: 20px;
    margin: 0;
    padding: 0 3px;
  }
  .chip.quiet {
    opacity: 0.35;
  }
  .chip.lit {
    outline: 2px solid var(--qw-ink);
    outline-offset: 1px;
  }
  summary {
    list-style: none;
    cursor: pointer;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  .fields {
    display: grid;
    gap: 12px;
    padding: 2px 0 12px;
  }
  .mat {
    display: flex;
    flex-wrap: wrap;
    gap: 12px;
  }
  .mat label {
    font: 13px/1.3 var(--qw-sans);
  }
  .mat label span {
    display: block;
    margin-bottom: 2px;
    color: var(--qw-soft);
  }
  .field {
    width: auto;
    min-width: 160px;
    font: 15px/1.3 var(--qw-sans);
    background: var(--qw-leaf);
  }
  .field.short {
    min-width: 0;
    width: 92px;
  }
  .tick {
    display: inline-flex;
    align-items: center;
    gap: 9px;
    min-height: 44px;
    font: 14px/1.3 var(--qw-sans);
    cursor: pointer;
  }
  .tick input {
    width: 17px;
    height: 17px;
    margin: 0;
    flex: none;
    accent-color: var(--qw-ink);
  }
  .back {
    margin-top: -8px;
  }
  @media (max-width: 620px) {
    li {
      grid-template-columns: 60px minmax(0, 1fr);
    }
    .back {
      grid-column: 2;
      margin: -6px 0 0;
    }
  }
`;
