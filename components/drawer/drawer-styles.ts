import { css } from 'lit';

/** The rail is part of the table; the open drawer lies over the page on the side of the hand. */
export const drawerStyles = css`
  :host {
    font: 14px/1.3 var(--qw-sans);
  }
  aside {
    height: 100%;
  }
  .rail {
    display: flex;
    flex-direction: column;
    align-items: center;
    height: 100%;
    padding: 14px 0 0;
  }
  .pull {
    display: grid;
    place-items: center;
    width: 60px;
    min-height: 84px;
    border-radius: 3px;
  }
  .pull:hover {
    background: color-mix(in oklch, var(--qw-ink) 6%, transparent);
  }
  .pull span {
    writing-mode: vertical-rl;
    font: 500 16px/1 var(--qw-serif);
  }
  .papers {
    width: 100%;
    min-height: 0;
    padding: 8px 0 20px;
    overflow-y: auto;
    overflow-anchor: none;
    scrollbar-width: none;
  }
  .papers ul,
  .grid {
    display: flow-root;
  }
  .mini {
    display: block;
    width: 60px;
    margin: 0 auto;
  }
  .mini:hover {
    outline: 2px solid var(--qw-ink);
    outline-offset: 2px;
  }
  .panel {
    display: flex;
    flex-direction: column;
    height: 100%;
    padding: 0 18px var(--foot, 0);
    background: var(--qw-leaf);
    box-shadow: 0 0 24px var(--qw-lift);
    overflow-y: auto;
    overflow-anchor: none;
  }
  .head {
    flex: none;
    padding: 10px 0 4px;
  }
  .top {
    display: flex;
    justify-content: space-between;
    align-items: center;
  }
  h2 {
    font: 500 22px/1.2 var(--qw-serif);
  }
  .find {
    display: grid;
    gap: 10px;
    margin: 8px 0 14px;
  }
  .grid {
    flex: none;
    margin-bottom: 32px;
  }
  .row {
    display: grid;
    grid-template-columns: repeat(3, minmax(0, 1fr));
    gap: 14px;
  }
  .one {
    display: block;
    width: 100%;
  }
  .one:hover qw-miniature {
    outline: 2px solid var(--qw-hair);
    outline-offset: 2px;
  }
  .picked {
    margin-bottom: 16px;
    padding-bottom: 14px;
    border-bottom: 1px solid var(--qw-rule);
  }
  .picked,
  .picked .one {
    display: grid;
    grid-template-columns: minmax(0, 1fr) minmax(0, 1.2fr);
    grid-template-rows: auto 1fr;
    column-gap: 16px;
  }
  .picked .one {
    grid-area: 1 / 1 / 3 / 3;
  }
  .picked qw-miniature {
    grid-row: 1 / 3;
  }
  .picked .one b {
    margin-top: 0;
  }
  .picked b {
    font: 600 17px/1.2 var(--qw-serif);
  }
  b {
    display: block;
    margin-top: 6px;
    font-weight: 600;
    line-height: 1.25;
  }
  small {
    display: block;
    color: var(--qw-soft);
    font-size: 12.5px;
  }
  .ways {
    position: relative;
    grid-area: 1 / 2 / 3 / 3;
    display: flex;
    flex-direction: column;
    align-items: start;
    padding-top: 52px;
    pointer-events: none;
  }
  .ways .word {
    pointer-events: auto;
  }
  .ways .out {
    color: var(--qw-soft);
  }
  .lies {
    padding-bottom: 8px;
    font: 13px/1.35 var(--qw-sans);
    color: var(--qw-soft);
  }
  .empty {
    font: italic 16px/1.5 var(--qw-serif);
    color: var(--qw-soft);
  }
`;
