import { css } from 'lit';

/** One line a tool, ruled like the page. */
export const sheetToolsStyles = css`
  :host {
    margin: 8px 0 26px;
  }
  details {
    border-bottom: 1px solid var(--qw-rule);
  }
  summary {
    display: flex;
    flex-wrap: wrap;
    align-items: baseline;
    gap: 0 14px;
    min-height: 44px;
    padding: 11px 0;
    cursor: pointer;
    list-style: none;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  summary b {
    font: 600 15.5px/1.3 var(--qw-sans);
    border-bottom: 1.5px solid var(--qw-hair);
  }
  summary:hover b {
    border-color: var(--qw-ink);
  }
  summary small {
    color: var(--qw-soft);
    font: 14px/1.3 var(--qw-sans);
  }
  .tool {
    padding: 6px 0 22px;
  }
  .parts {
    margin-bottom: 4px;
  }
  .parts li {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0 20px;
    min-height: 44px;
    border-bottom: 1px solid var(--qw-rule);
  }
  .parts span:first-child {
    flex: 1 1 200px;
  }
  .parts small {
    display: block;
    color: var(--qw-soft);
    font: 14px/1.3 var(--qw-sans);
  }
  .hint {
    margin: 6px 0 14px;
  }
  :host([near]) {
    margin-top: 0;
  }
  .near {
    padding: 0 28px;
  }
  .tabs {
    display: flex;
    flex-wrap: wrap;
    gap: 0 4px;
    margin: 0 -12px 12px;
    border-bottom: 1px solid var(--qw-rule);
  }
  .tabs button {
    min-height: 44px;
    padding: 9px 12px 7px;
    border-bottom: 3px solid transparent;
    font: 14px/1.3 var(--qw-sans);
  }
  .tabs button[aria-pressed='true'] {
    border-color: var(--qw-ink);
  }
  .tabs b,
  .tabs small {
    display: block;
  }
  .tabs b {
    font-weight: 600;
  }
  .tabs small {
    color: var(--qw-soft);
    font-size: 13px;
  }
  @container (max-width: 620px) {
    .near {
      padding: 0 18px;
    }
    .tabs small {
      display: none;
    }
    .tabs button {
      padding-inline: 9px;
    }
    .margin {
      padding-bottom: 6px;
    }
  }
`;
