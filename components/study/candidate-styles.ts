import { css } from 'lit';

/** The row of tabs above the mats. */
export const candidateStyles = css`
  section {
    background: var(--qw-leaf);
    display: flex;
    flex-wrap: wrap;
    align-items: stretch;
    border: 1px solid var(--qw-rule);
    border-bottom: 0;
    font: 14px/1.3 var(--qw-sans);
  }
  .head {
    display: flex;
    align-items: center;
    padding: 9px 12px 9px 16px;
    color: var(--qw-soft);
    font: italic 15px/1.3 var(--qw-serif);
  }
  ol {
    display: flex;
    flex-wrap: wrap;
  }
  li:first-child {
    border-left: 1px solid var(--qw-rule);
  }
  li {
    display: flex;
    border-right: 1px solid var(--qw-rule);
  }
  .tab {
    min-height: 48px;
    padding: 9px 16px;
  }
  .tab:hover {
    background: color-mix(in oklch, var(--qw-ink) 6%, transparent);
  }
  .tab.on {
    box-shadow: inset 0 -3px 0 var(--qw-ink);
  }
  .tab:focus-visible {
    outline-offset: -3px;
  }
  b {
    display: block;
    font-weight: 600;
    font-variant-numeric: tabular-nums;
  }
  small {
    display: block;
    font-size: 12.5px;
    color: var(--qw-soft);
  }
  .end {
    display: flex;
    flex-wrap: wrap;
    gap: 0 18px;
    margin-left: auto;
    padding: 2px 16px;
  }
  .word {
    font-size: 14px;
  }
  .drop.over {
    outline: 2px dashed var(--qw-ink);
    outline-offset: 4px;
  }
  @media (max-width: 640px) {
    .head {
      display: none;
    }
    section {
      border-inline: 0;
    }
    ol {
      width: 100%;
    }
    li:first-child {
      border-left: 0;
    }
    li {
      flex: 1 1 50%;
      border-bottom: 1px solid var(--qw-rule);
    }
    .tab {
      width: 100%;
    }
    .end {
      margin-left: 0;
    }
  }
`;
