import { css } from 'lit';

/** How a study leaf is set: the ruled line runs behind, the mats lie across it. */
export const studyStyles = css`
  .page {
    padding: 16px 0 60px;
  }
  .head .margin {
    padding-top: 8px;
  }
  .page {
    position: relative;
    display: flex;
    flex-direction: column;
  }
  .top {
    padding-right: 270px;
  }
  qw-study-tools {
    position: absolute;
    top: 14px;
    right: 28px;
    z-index: 2;
  }
  .wide {
    position: relative;
    margin: 8px 28px 18px;
  }
  .laid {
    display: grid;
    grid-template-columns: minmax(0, 1fr) 80px;
    gap: 12px;
  }
  .deciding {
    margin-block: 2px 16px;
  }
  .invitation {
    max-width: 36em;
    padding-bottom: 24px;
    font-size: 19px;
  }
  .words {
    margin-top: 14px;
  }
  .words .margin {
    padding-top: 12px;
  }
  @container (max-width: 820px) {
    .wide {
      margin: 8px 18px 16px;
    }
  }
  @container (max-width: 620px) {
    .page {
      padding-top: 10px;
    }
    .top {
      padding-right: 18px;
    }
    /* Papers, verdict, then the rest. */
    .laid {
      display: contents;
    }
    .head,
    .laid > qw-mats {
      order: -3;
    }
    qw-verdict {
      order: -2;
      margin-top: 8px;
    }
    .deciding {
      order: -1;
    }
    .laid > qw-mats {
      margin: 6px 0;
    }
    qw-study-tools {
      position: relative;
      inset: auto;
      margin-inline: 18px;
    }
    .wide {
      margin: 6px 0 14px;
    }
    .deciding {
      margin-inline: 18px;
    }
  }
`;
