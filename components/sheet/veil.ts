import type { Places } from '../../src/sheet/model.ts';

/** The veil: the grey of the mat, nearly opaque, so that it adds no colour to what it covers. */
const veilGrey = 0xba;
const veilAlpha = 0.86;

/** Draws a veil over all places but those with a clear label, one pixel a place; the page scales and so softens it. */
export function drawVeil(canvas: HTMLCanvasElement, places: Places, clear: ReadonlySet<number>): void {
  const { width, height, labels } = places;
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d');
  if (!context) return;
  const veil = context.createImageData(width, height);
  for (let i = 0; i < labels.length; i += 1) {
    veil.data.fill(veilGrey, i * 4, i * 4 + 3);
    veil.data[i * 4 + 3] = clear.has(labels[i] ?? 255) ? 0 : Math.round(veilAlpha * 255);
  }
  context.putImageData(veil, 0, 0);
}
