import type { Drawing } from '../../src/drawing/model.ts';

/** A frame around a mark, in the drawing's units. */
export interface FocusFrame {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** How far the frame stands off its mark, and half the width of its line: so much of it is kept inside the drawing. */
const off = 3;
const halfLine = 2.5;

/** The frame of a mark that is on the page, whole within the drawing at each edge. */
export function frameAround(mark: Element, drawing: Drawing): FocusFrame {
  const box = mark.getBoundingClientRect();
  const chart = mark.closest('svg')!.getBoundingClientRect();
  const scale = drawing.width / chart.width;
  const x = Math.max(halfLine, (box.left - chart.left) * scale - off);
  const y = Math.max(halfLine, (box.top - chart.top) * scale - off);
  const right = Math.min(drawing.width - halfLine, (box.right - chart.left) * scale + off);
  const bottom = Math.min(drawing.height - halfLine, (box.bottom - chart.top) * scale + off);
  return { x, y, width: Math.max(0, right - x), height: Math.max(0, bottom - y) };
}
