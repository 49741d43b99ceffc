import { css } from 'lit';

/** Where papers and charts lie on the mat: three in a row, or two with the wheel below where it is narrow. */
export const matsStyles = css`
  :host {
    container-type: inline-size;
  }
  .surround {
    background: var(--mat);
    color: var(--on-mat);
  }
  .mats {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.5fr) minmax(0, 1fr);
    gap: 10px;
    align-items: start;
    padding: 18px 24px 4px;
  }
  .mats.papers-only {
    grid-template-columns: repeat(2, minmax(0, 1fr));
    gap: 28px;
    max-width: 820px;
    padding-bottom: 18px;
    margin: 0 auto;
  }
  .mats.place-only {
    grid-template-columns: minmax(0, 380px);
    justify-content: center;
    padding-bottom: 22px;
  }
  .mats.meet {
    grid-template-columns: minmax(0, 1fr) minmax(0, 1fr) minmax(0, 1.5fr);
    gap: 10px 0;
  }
  .mats.meet.papers-only {
    grid-template-columns: repeat(2, minmax(0, 1fr));
  }
  .meet .wheel {
    order: 3;
    margin-left: 10px;
  }
  :host([alone]) .mats {
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.3fr);
    gap: 24px;
  }
  .wheel {
    margin: 0;
  }
  .strip {
    padding: 2px 24px 0;
    border-top: 1px solid var(--mat-line);
  }
  .meet .anchor {
    --inner-end: 8px;
  }
  .meet .candidate {
    --inner-start: 8px;
  }
  @container (max-width: 780px) {
    .mats {
      grid-template-columns: repeat(2, minmax(0, 1fr));
      gap: 10px 24px;
    }
    .mats.meet,
    .mats.meet.papers-only {
      grid-template-columns: repeat(2, minmax(0, 1fr));
      column-gap: 0;
    }
    .wheel {
      grid-column: 1 / -1;
      order: 3;
      width: 100%;
      max-width: 540px;
      margin: 0 auto;
    }
    .meet .wheel {
      margin: 0 auto;
    }
    :host([alone]) .wheel {
      grid-column: auto;
    }
  }
  @container (max-width: 560px) {
    .mats,
    .mats.papers-only {
      gap: 14px;
      padding: 16px 16px 4px;
    }
    .mats.meet,
    .mats.meet.papers-only {
      column-gap: 0;
    }
    :host([alone]) .mats {
      grid-template-columns: minmax(0, 1fr);
    }
    .strip {
      padding: 2px 10px 0;
    }
  }
`;
