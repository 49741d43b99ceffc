import { css } from 'lit';

/** The mat, the picture on it, and what a hand takes hold of: 44 px wide, drawn as a ring that shows on any paper. */
export const stageStyles = css`
  .mat {
    display: flex;
    justify-content: safe center;
    padding: 26px;
    background: var(--qw-mat);
  }
  .mat.near {
    display: block;
    overflow: auto;
    overscroll-behavior: contain;
    scrollbar-width: thin;
    cursor: grab;
  }
  .near .stage {
    margin-inline: auto;
  }
  .zoom {
    display: flex;
    align-items: center;
    font: 14px/1.3 var(--qw-sans);
    font-variant-numeric: tabular-nums;
  }
  .zoom button {
    width: 44px;
    height: 44px;
    font-size: 20px;
    text-align: center;
  }
  .zoom output {
    padding-left: 8px;
    color: var(--qw-soft);
  }
  .stage {
    position: relative;
    flex: none;
    width: calc(min(100%, calc(min(var(--tall, 64vh), 620px) * var(--ratio))) * var(--zoom));
    user-select: none;
    -webkit-user-select: none;
    -webkit-touch-callout: none;
  }
  img {
    display: block;
    width: 100%;
    height: auto;
    box-shadow: 0 1px 2px oklch(0 0 0 / 0.28), 0 6px 16px oklch(0 0 0 / 0.14);
  }
  .none {
    padding: 40px 20px;
    color: oklch(0.22 0 0);
    text-align: center;
  }
  svg.over {
    position: absolute;
    inset: 0;
    width: 100%;
    height: 100%;
    overflow: visible;
    pointer-events: none;
  }
  .ground {
    position: absolute;
    inset: 0;
    touch-action: pan-x pan-y;
  }
  .veil {
    fill: oklch(0 0 0 / 0.42);
    fill-rule: evenodd;
  }
  .edge {
    fill: none;
    vector-effect: non-scaling-stroke;
  }
  .edge.under {
    stroke: oklch(0 0 0 / 0.75);
    stroke-width: 4px;
  }
  .edge.upper {
    stroke: oklch(1 0 0);
    stroke-width: 1.75px;
  }
  .handle {
    position: absolute;
    width: 44px;
    height: 44px;
    margin: -22px 0 0 -22px;
    border-radius: 50%;
    touch-action: none;
    cursor: grab;
  }
  .handle::before {
    content: '';
    position: absolute;
    inset: 12px;
    border-radius: 50%;
    border: 3px solid oklch(1 0 0);
    box-shadow: 0 0 0 1.5px oklch(0 0 0 / 0.85), inset 0 0 0 1.5px oklch(0 0 0 / 0.85);
  }
  .handle:active {
    cursor: grabbing;
  }
  .handle:focus-visible {
    outline: none;
  }
  .handle:focus-visible::before {
    outline: 3.5px solid oklch(0 0 0);
    outline-offset: 5px;
    box-shadow: 0 0 0 1.5px oklch(0 0 0 / 0.85), inset 0 0 0 1.5px oklch(0 0 0 / 0.85), 0 0 0 5px oklch(1 0 0);
  }
  .glass {
    position: absolute;
    z-index: 2;
    width: 120px;
    height: 120px;
    margin: -60px 0 0 -60px;
    border: 3px solid oklch(1 0 0);
    border-radius: 50%;
    background-color: var(--qw-mat);
    background-repeat: no-repeat;
    background-origin: border-box;
    box-shadow: 0 0 0 1.5px oklch(0 0 0 / 0.8), 0 4px 16px oklch(0 0 0 / 0.4);
    pointer-events: none;
  }
  .glass::before,
  .glass::after {
    content: '';
    position: absolute;
    background: oklch(0 0 0);
    outline: 1px solid oklch(1 0 0 / 0.9);
  }
  .glass::before {
    left: calc(50% - 0.5px);
    top: calc(50% - 13px);
    width: 1px;
    height: 26px;
  }
  .glass::after {
    top: calc(50% - 0.5px);
    left: calc(50% - 13px);
    height: 1px;
    width: 26px;
  }
  @media (max-width: 520px) {
    .mat {
      padding: 24px 22px;
    }
  }
`;

/** Labels, hints and rows of fields in the tools. */
export const toolStyles = css`
  .hint {
    max-width: 46em;
    margin: 10px 0 0;
    color: var(--qw-soft);
    font: 14.5px/1.4 var(--qw-sans);
  }
  .says {
    font: 14.5px/1.4 var(--qw-sans);
    font-variant-numeric: tabular-nums;
  }
  .fields {
    display: flex;
    flex-wrap: wrap;
    align-items: end;
    gap: 12px 16px;
    margin-top: 14px;
  }
  .fields > label,
  .fields > div {
    min-width: 0;
  }
  label > span:first-child,
  .label {
    display: block;
    margin-bottom: 3px;
    color: var(--qw-soft);
    font: 14px/1.3 var(--qw-sans);
  }
  .field {
    font: 16px/1.3 var(--qw-sans);
    font-variant-numeric: tabular-nums;
  }
  select.field {
    width: auto;
    max-width: 100%;
    background: var(--qw-leaf);
  }
  .field.short {
    width: 6.5em;
  }
  .field[aria-invalid='true'] {
    border: 2px dashed var(--qw-ink);
  }
  .tick {
    display: inline-flex;
    align-items: center;
    gap: 10px;
    min-height: 44px;
    font: 14.5px/1.25 var(--qw-sans);
    cursor: pointer;
  }
  .tick input {
    width: 20px;
    height: 20px;
    margin: 0;
    accent-color: var(--qw-ink);
  }
  .swatch {
    display: inline-block;
    flex: none;
    width: 52px;
    height: 44px;
    border: solid var(--qw-mat);
    border-width: 7px 9px;
    vertical-align: middle;
  }
`;
