import { css } from 'lit';

/** Candidates in small: down the side of the papers, or in a row below them where it is narrow. */
export const candidateStyles = css`
  :host {
    height: 100%;
    font: 12.5px/1.25 var(--qw-sans);
  }
  section {
    height: 100%;
    overflow-y: auto;
    scrollbar-width: thin;
  }
  ol {
    display: grid;
    gap: 10px;
    padding: 3px 3px 3px 0;
  }
  .thumb,
  .more {
    display: flex;
    flex-direction: column;
    align-items: center;
    gap: 5px;
    width: 76px;
    padding: 6px;
    border: 1px solid transparent;
  }
  .thumb:hover,
  .more:hover {
    border-color: var(--qw-hair);
  }
  .thumb.on {
    border: 2px solid var(--qw-ink);
    padding: 5px;
  }
  qw-paper {
    display: block;
    width: 100%;
    max-height: 64px;
    overflow: hidden;
    pointer-events: none;
  }
  s {
    width: 100%;
    height: 62px;
  }
  i {
    height: 18px;
    font: 600 15px/18px var(--qw-serif);
  }
  .more {
    border: 1px dashed var(--qw-hair);
    text-align: center;
    color: var(--qw-soft);
  }
  .more b {
    font: 400 22px/1 var(--qw-sans);
    color: var(--qw-ink);
  }
  .more.over {
    outline: 2px dashed var(--qw-ink);
    outline-offset: 2px;
  }
  @media (max-width: 900px) {
    section {
      overflow: auto hidden;
    }
    ol {
      display: flex;
      padding: 6px 18px;
    }
    .more {
      width: 92px;
      min-height: 76px;
    }
  }
`;
