import { css } from 'lit';

/** The list of inks under the hand. */
export const handStyles = css`
  li {
    border-top: 1px solid var(--qw-rule);
  }
  ul {
    border-bottom: 1px solid var(--qw-rule);
  }
  .ink {
    display: grid;
    grid-template-columns: 52px 1.4em minmax(0, 1fr) auto;
    align-items: center;
    gap: 12px;
    padding: 7px 0;
  }
  li.ink {
    grid-template-columns: 52px minmax(0, 1fr) auto;
  }
  .ink b {
    font: 600 15px/1 var(--qw-sans);
  }
  .words {
    overflow-wrap: anywhere;
    line-height: 1.3;
  }
  small {
    display: block;
    color: var(--qw-soft);
    font: 13.5px/1.3 var(--qw-sans);
    font-variant-numeric: tabular-nums;
  }
  h3 {
    margin: 22px 0 6px;
    font: 500 18px/1.3 var(--qw-serif);
  }
  .spotting {
    margin-bottom: 22px;
  }
  .spotting .says {
    margin-bottom: 8px;
  }
  .read {
    display: flex;
    align-items: center;
    gap: 12px;
    min-height: 44px;
    margin-top: 10px;
    font: 14.5px/1.4 var(--qw-sans);
  }
  .told {
    display: grid;
    grid-template-columns: minmax(0, 24em) auto auto;
    align-items: start;
    justify-content: start;
    gap: 12px 16px;
    margin-top: 14px;
  }
  .told > button {
    margin-top: 22px;
  }
  @media (max-width: 640px) {
    .told {
      grid-template-columns: minmax(0, 1fr);
    }
    .told > button {
      margin-top: 0;
      justify-self: start;
    }
  }
`;
