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
  .fold .text {
    display: flex;
    flex-wrap: wrap;
    gap: 0 26px;
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
    /* The number comes after its sentence, once it is asked for. */
    li.row {
      display: flex;
      flex-direction: column-reverse;
    }
    li .margin {
      display: none;
      padding: 2px 18px 4px 38px;
    }
    li.kept .margin {
      display: block;
    }
    .margin a {
      display: inline-block;
      text-decoration-color: var(--qw-hair);
      padding: 4px 0;
    }
  }
`;
