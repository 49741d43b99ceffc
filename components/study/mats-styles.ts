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
    padding: 14px 14px 10px;
  }
  .mats.place-only {
    grid-template-columns: minmax(0, 380px);
    justify-content: center;
    padding-bottom: 22px;
  }
  .mats.papers-only.meet {
    column-gap: 0;
  }
  .charts {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.25fr);
    align-items: center;
    padding: 10px 14px;
  }
  .charts .strip {
    border-top: 0;
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
    .wheel {
      width: 100%;
      max-width: 540px;
      margin: 0 auto;
    }
    .mats.papers-only {
      gap: 18px;
      padding: 10px;
    }
    .charts {
      grid-template-columns: minmax(0, 1fr);
    }
  }
  @container (max-width: 560px) {
    .mats {
      gap: 14px;
      padding: 16px 16px 4px;
    }
    .mats.papers-only {
      gap: 8px;
      padding: 0 0 8px;
    }
    .mats.papers-only.meet {
      column-gap: 0;
    }
    :host([alone]) .mats {
      grid-template-columns: minmax(0, 1fr);
    }
    .strip {
      padding: 2px 10px 0;
    }
    .charts {
      padding: 10px 0;
    }
  }
`;
