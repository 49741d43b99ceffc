import { css } from 'lit';

/** How a study leaf is set: the ruled line runs behind, the mats lie across it. */
export const studyStyles = css`
  .page {
    padding: 24px 0 60px;
  }
  .head .margin {
    padding-top: 8px;
  }
  .lede {
    margin: 4px 0 8px;
    color: var(--qw-soft);
    font-style: italic;
  }
  .found {
    position: relative;
    font: 600 1em/1.4 var(--qw-serif);
    color: var(--qw-ink);
    text-decoration: underline;
    text-decoration-thickness: 1px;
    text-underline-offset: 4px;
  }
  .found::after {
    content: '';
    position: absolute;
    inset: -11px -4px;
  }
  .wide {
    position: relative;
    margin: 8px 40px 26px 28px;
  }
  .supposed {
    outline: 1.5px dashed var(--qw-hair);
    outline-offset: 5px;
  }
  .flag {
    padding: 6px 2px 10px;
    font: 14.5px/1.35 var(--qw-sans);
    color: var(--qw-soft);
  }
  .flag b {
    color: var(--qw-ink);
  }
  qw-study-tools {
    margin: 0 -2px;
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
      margin: 8px 28px 24px;
    }
  }
  @container (max-width: 620px) {
    .page {
      padding-top: 18px;
    }
    .head .margin {
      padding-top: 0;
    }
    .wide {
      margin: 8px 0 20px;
    }
    .flag {
      padding-inline: 18px;
    }
  }
`;
