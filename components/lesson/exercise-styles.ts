import { css } from 'lit';

/** How an exercise is set: two papers on the mat, the question over them, the answer below. */
export const exerciseStyles = css`
  .page {
    padding: 34px 0 60px;
  }
  .head .margin {
    padding-top: 8px;
  }
  .asks:focus,
  h3:focus {
    outline: none;
  }
  .asks {
    max-width: 36em;
    margin: 6px 0 4px;
    font-size: 18.5px;
  }
  .wide {
    display: flex;
    flex-wrap: wrap;
    justify-content: center;
    align-items: flex-start;
    gap: 24px;
    margin: 14px 40px 26px 28px;
    padding: 24px;
    color: var(--on-mat);
  }
  figure {
    flex: 1 1 220px;
    max-width: 340px;
  }
  figcaption {
    margin-top: 8px;
    font: 600 16px/1.3 var(--qw-serif);
  }
  qw-wheel {
    flex: 1 1 260px;
    max-width: 380px;
    min-width: 240px;
  }
  qw-pick-ink {
    margin-bottom: 10px;
  }
  .soft {
    margin-bottom: 8px;
    color: var(--qw-soft);
    font-style: italic;
  }
  .answers {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 10px 18px;
    margin: 12px 0 20px;
  }
  h3 {
    display: flex;
    align-items: center;
    gap: 14px;
    max-width: 34em;
    font: 500 22px/1.3 var(--qw-serif);
  }
  h3 svg {
    flex: none;
  }
  .links {
    margin-top: 10px;
  }
  .links li {
    max-width: 40em;
    padding: 5px 0;
  }
  a.word {
    text-decoration: none;
  }
  summary {
    list-style: none;
    cursor: pointer;
  }
  summary::-webkit-details-marker {
    display: none;
  }
  .pair span {
    display: block;
    margin: 6px 0 2px;
    font: 13.5px/1.3 var(--qw-sans);
    color: var(--qw-soft);
  }
  .field {
    width: auto;
    max-width: 100%;
    margin-bottom: 16px;
    font: 15px/1.3 var(--qw-sans);
    background: var(--qw-leaf);
  }
  .words {
    margin-top: 10px;
  }
  @container (max-width: 620px) {
    .page {
      padding-top: 18px;
    }
    .wide {
      gap: 14px;
      margin: 12px 0 20px;
      padding: 18px;
    }
    figure {
      flex: 1 1 0;
      min-width: 0;
    }
    qw-wheel {
      order: 3;
      flex-basis: 100%;
    }
  }
`;
