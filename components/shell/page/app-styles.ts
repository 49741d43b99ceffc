import { css } from 'lit';

/** The worktable: leaves on the left, the open leaf in the middle, the drawer on the side of the hand. */
export const appStyles = css`
  .table {
    display: grid;
    grid-template-columns: 212px minmax(0, 1fr) 88px;
    grid-template-areas: 'side leaf drawer';
    min-height: 100vh;
  }
  .table.left {
    grid-template-columns: 88px minmax(0, 1fr) 212px;
    grid-template-areas: 'drawer leaf side';
  }
  .bar {
    display: none;
  }
  .side {
    grid-area: side;
    position: sticky;
    top: 0;
    height: 100vh;
    overflow-y: auto;
    padding: 26px 14px 20px 22px;
    scrollbar-width: thin;
    font: 14px/1.35 var(--qw-sans);
  }
  h1 {
    margin: 0;
    font: 600 21px/1.2 var(--qw-serif);
  }
  .side qw-title {
    font: 14.5px/1.3 var(--qw-sans);
    margin-bottom: 18px;
  }
  .side qw-upkeep {
    margin-top: 22px;
  }
  main {
    grid-area: leaf;
    min-width: 0;
    padding-bottom: var(--foot, 0);
    outline: none;
    container-type: inline-size;
  }
  .leaf {
    position: relative;
    min-height: 100vh;
    background: var(--qw-leaf);
    box-shadow: 0 0 0 1px oklch(0 0 0 / 0.06), 0 2px 14px var(--qw-lift);
  }
  .leaf::before {
    content: '';
    position: absolute;
    inset: 0 auto 0 196px;
    border-left: 1px solid var(--qw-rule);
  }
  .leaf > * {
    position: relative;
  }
  .demo {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 4px 20px;
    padding: 6px 40px 6px 28px;
    background: var(--qw-leaf);
    border-bottom: 1px solid var(--qw-rule);
    font: 14px/1.35 var(--qw-sans);
  }
  .demo p {
    flex: 1 1 150px;
  }
  .demo b {
    font: 600 16px/1.3 var(--qw-serif);
  }
  .demo.name {
    flex-wrap: nowrap;
  }
  .demo.name p {
    flex: 0 1 auto;
  }
  .demo.name qw-title {
    min-width: 0;
  }
  .demo.name .slip {
    flex: none;
  }
  .demo qw-title {
    flex: 1 1 100px;
    max-width: 340px;
    margin-right: auto;
    padding: 8px 10px;
    border: 1px solid var(--qw-hair);
    border-radius: 3px;
    font: 15px/1.4 var(--qw-sans);
  }
  qw-drawer {
    grid-area: drawer;
    position: sticky;
    top: 0;
    height: 100vh;
  }
  qw-drawer[open] {
    position: fixed;
    inset: 0 0 0 auto;
    z-index: 3;
    width: min(400px, 100vw);
    height: auto;
    animation: from-right 0.16s ease-out;
  }
  .left qw-drawer[open] {
    inset: 0 auto 0 0;
    animation-name: from-left;
  }
  .panel {
    position: relative;
    scroll-margin-top: 12px;
  }
  .panel > p {
    position: absolute;
    top: 0;
    right: 40px;
  }
  .new {
    margin: 4px 0 14px;
    border-bottom: 1px solid var(--qw-rule);
  }
  .new summary {
    cursor: pointer;
    list-style: none;
  }
  .new summary::-webkit-details-marker {
    display: none;
  }
  .new qw-open-plain {
    display: block;
    padding: 6px 0 18px;
  }
  qw-messages {
    position: fixed;
    bottom: 16px;
    left: 50%;
    translate: -50% 0;
    z-index: 4;
    width: min(560px, calc(100vw - 24px));
  }
  .zone {
    position: fixed;
    inset: 12px;
    z-index: 5;
    display: grid;
    place-items: center;
    border: 2px dashed var(--qw-ink);
    background: color-mix(in oklch, var(--qw-leaf) 88%, transparent);
    pointer-events: none;
  }
  .zone p {
    font: 500 24px/1.3 var(--qw-serif);
    text-align: center;
    padding: 24px;
  }
  @keyframes from-right {
    from {
      transform: translateX(40px);
      opacity: 0;
    }
  }
  @keyframes from-left {
    from {
      transform: translateX(-40px);
      opacity: 0;
    }
  }
  @container (max-width: 820px) {
    .leaf::before {
      left: 156px;
    }
  }
  @media (prefers-reduced-motion: reduce) {
    qw-drawer[open] {
      animation: none;
    }
  }
  @media (max-width: 1100px) {
    .table {
      grid-template-columns: 192px minmax(0, 1fr) 78px;
    }
    .table.left {
      grid-template-columns: 78px minmax(0, 1fr) 192px;
    }
    .side {
      padding-left: 18px;
    }
  }
  @media (max-width: 900px) {
    .table,
    .table.left {
      display: block;
    }
    .bar {
      position: sticky;
      top: 0;
      z-index: 2;
      display: flex;
      justify-content: space-between;
      align-items: center;
      padding: 2px 18px;
      background: var(--qw-leaf);
      border-bottom: 1px solid var(--qw-rule);
    }
    .bar h1 {
      font: 600 17px/1.2 var(--qw-serif);
    }
    .leaf::before {
      display: none;
    }
    .demo {
      padding: 6px 18px;
    }
    .demo .slip {
      padding-inline: 10px;
    }
    .panel {
      scroll-margin-top: 60px;
    }
    .panel > p {
      right: 18px;
    }
    .side,
    qw-drawer {
      display: none;
    }
    .opened-leaves .side {
      display: block;
      position: fixed;
      inset: 49px 0 0;
      z-index: 2;
      height: auto;
      padding: 18px 18px calc(40px + var(--foot, 0px));
      background: var(--qw-table);
    }
    .side h1 {
      display: none;
    }
    qw-drawer[open] {
      display: block;
    }
  }
`;
