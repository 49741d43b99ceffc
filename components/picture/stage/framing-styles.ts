import { css } from 'lit';

/** The ground that a frame is drawn on, what is offered, and handles that reach outward. */
export const framingStyles = css`
  .ground {
    position: absolute;
    inset: 0;
    cursor: crosshair;
    touch-action: pan-x pan-y;
  }
  .ground.drawn {
    touch-action: none;
  }
  .inside {
    position: absolute;
    touch-action: none;
    cursor: move;
  }
  .inside:focus-visible {
    outline: 3px solid oklch(0 0 0);
    outline-offset: 3px;
    box-shadow: 0 0 0 3px oklch(1 0 0);
  }
  .offer {
    position: absolute;
    min-width: 24px;
    min-height: 24px;
  }
  .offer:hover {
    background: oklch(1 0 0 / 0.25);
  }
  .offer:focus-visible {
    outline: 3px solid oklch(0 0 0);
  }
  /* Handles of a small frame reach outward, so that they leave each other and the inside free. */
  .handle.left {
    transform: translate(-10px, var(--lift));
  }
  .handle.right {
    transform: translate(10px, var(--lift));
  }
  .handle.top {
    --lift: -10px;
  }
  .handle.bottom {
    --lift: 10px;
  }
  .handle.left::before {
    left: 22px;
    right: 2px;
  }
  .handle.right::before {
    left: 2px;
    right: 22px;
  }
  .handle.top::before {
    top: 22px;
    bottom: 2px;
  }
  .handle.bottom::before {
    top: 2px;
    bottom: 22px;
  }
  .edge.dashed {
  stroke: oklch(1 0 0);
  stroke-width: 2.5px;
  stroke-dasharray: 7 6;
  }
  .edge.thin {
    stroke-width: 1px;
  }
  `;
