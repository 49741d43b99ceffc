import { css } from 'lit';

/** How a list of reasons is set: the dot hangs before the sentence, the figure stands level with its first line. */
export const reasonStyles = css`
  li {
    position: relative;
    padding-bottom: 13px;
  }
  li .text {
    display: grid;
    grid-template-columns: 26px minmax(0, 1fr);
    padding-left: 24px;
  }
  li p {
    max-width: 39em;
  }
  .dot {
    position: relative;
    width: 26px;
    height: 25px;
  }
  .dot::after {
    content: '';
    position: absolute;
    inset: -10px -9px;
  }
  .dot:focus-visible {
    outline-offset: 0;
    border-radius: 3px;
  }
  .dot i {
    position: absolute;
    left: 12px;
    top: 12.4px;
    width: var(--size);
    height: var(--size);
    translate: -50% -50%;
    border: 1.7px solid var(--qw-ink);
    border-radius: 50%;
  }
  .for .dot i {
    background: var(--qw-ink);
  }
  .idle .dot i {
    width: 9px;
    height: 0;
    border-width: 0 0 1.7px;
    border-radius: 0;
  }
  .dot[aria-pressed='true'] i {
    outline: 1.5px solid var(--qw-ink);
    outline-offset: 3px;
  }
  li p {
    transition: opacity 0.12s;
  }
  .faded p {
    opacity: 0.72;
  }
  .lit p {
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-decoration-color: var(--qw-hair);
    text-underline-offset: 5px;
  }
  .margin a {
    text-decoration-color: transparent;
  }
  .margin a:hover,
  .margin a:focus-visible,
  li:hover .margin a {
    text-decoration-color: currentColor;
  }
  h4 {
    font: inherit;
  }
  .fold small {
    margin-left: 14px;
    font: 13px/1.3 var(--qw-sans);
    color: var(--qw-soft);
  }
  .fold + .folded {
    padding-top: 6px;
  }
  .folded:not(.open) {
    display: none;
  }
  @media print {
    .folded:not(.open) {
      display: block;
    }
  }
  @media (prefers-reduced-motion: reduce) {
    li p {
      transition: none;
    }
  }
  @container (max-width: 620px) {
    li .text {
      padding-left: 12px;
    }
    li .margin {
      padding-left: 38px;
    }
    .margin a {
      display: inline-block;
      text-decoration-color: var(--qw-hair);
      padding: 4px 0;
    }
  }
`;
