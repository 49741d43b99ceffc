import type { Corners } from '../../src/sheet/model.ts';

/** A stand-in for a photograph: a sheet lying askew on a table with a white card beside it, in a warm light. */
export function photographed(sheet: CanvasImageSource): { picture: string; corners: Corners } {
  const width = 960;
  const height = 720;
  const canvas = document.createElement('canvas');
  canvas.width = width;
  canvas.height = height;
  const context = canvas.getContext('2d')!;
  context.fillStyle = '#6d6259';
  context.fillRect(0, 0, width, height);
  context.setTransform(0.98, 0.13, -0.11, 0.97, 130, 40);
  context.shadowColor = 'rgb(0 0 0 / .5)';
  context.shadowBlur = 18;
  context.drawImage(sheet, 0, 0, 560, 560);
  const at = context.getTransform();
  const corners = [
    [0, 0],
    [560, 0],
    [560, 560],
    [0, 560],
  ].map(([x = 0, y = 0]) => {
    const { x: px, y: py } = at.transformPoint({ x, y });
    return { x: px / width, y: py / height };
  });
  context.setTransform(1, 0, 0, 1, 0, 0);
  context.fillStyle = '#eee9e2';
  context.fillRect(760, 120, 130, 90);
  context.shadowColor = 'transparent';
  context.globalCompositeOperation = 'multiply';
  context.fillStyle = '#ffe3c2';
  context.fillRect(0, 0, width, height);
  return { picture: canvas.toDataURL('image/jpeg', 0.9), corners: corners as unknown as Corners };
}
