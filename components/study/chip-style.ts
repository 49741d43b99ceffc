import { css } from 'lit';

/** A letter on its ink, the size of a word. */
export const chipStyle = css`
  .chip {
    display: inline-block;
    min-width: 21px;
    padding: 0 5px;
    margin: 0 1px;
    font: 600 13px/21px var(--qw-sans);
    text-align: center;
    text-indent: 0;
    vertical-align: 1px;
    box-shadow: 0 0 0 0.5px oklch(0.5 0 0 / 0.35);
  }
`;
