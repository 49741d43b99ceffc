import type { Frame, PixelImage } from '../../../src/sheet/model.ts';
import { type Dice, dice } from './dice.ts';
import { drawSheet, toImage } from './draw-sheet.ts';
import { linearOf, type Rgb3 } from './truth-colour.ts';

/** A sheet pieced together of others: a grid, or cut again and again; with a gutter, or edge to edge. */
export function patchwork(
  seed: number,
  how: { readonly grid?: readonly [columns: number, rows: number]; readonly gutter: number },
  size = 480,
): { image: PixelImage; blocks: readonly Frame[] } {
  const roll = dice(seed * 613 + 11);
  const inner: Frame = {
    x: how.gutter,
    y: how.gutter,
    width: size - 2 * how.gutter,
    height: size - 2 * how.gutter,
  };
  const blocks = how.grid ? gridded(inner, how.grid, how.gutter) : cut(inner, how.gutter, roll, 0);
  const linear = new Float32Array(size * size * 3);
  const ground = linearOf([250, 248, 244] as Rgb3);
  for (let i = 0; i < linear.length; i++) linear[i] = ground[i % 3]!;
  blocks.forEach((block, n) => {
    const { linear: from, width } = drawSheet(seed * 40 + n, { width: 260, samples: 1 });
    for (let y = 0; y < block.height; y++)
      for (let x = 0; x < block.width * 3; x++)
        linear[((block.y + y) * size + block.x) * 3 + x] = from[(y % width) * width * 3 + (x % (width * 3))]!;
  });
  const part = (f: Frame): Frame => ({
    x: f.x / size,
    y: f.y / size,
    width: f.width / size,
    height: f.height / size,
  });
  return { image: toImage({ width: size, height: size, linear }), blocks: blocks.map(part) };
}

function gridded(whole: Frame, [columns, rows]: readonly [number, number], gutter: number): Frame[] {
  const width = Math.floor((whole.width - (columns - 1) * gutter) / columns);
  const height = Math.floor((whole.height - (rows - 1) * gutter) / rows);
  return Array.from({ length: columns * rows }, (_, i) => ({
    x: whole.x + (i % columns) * (width + gutter),
    y: whole.y + Math.floor(i / columns) * (height + gutter),
    width,
    height,
  }));
}

function cut(box: Frame, gutter: number, roll: Dice, depth: number): Frame[] {
  const long = Math.max(box.width, box.height);
  if (depth > 2 || long < 200) return [box];
  const at = Math.round(long * roll.between(0.38, 0.62));
  const upright = box.width >= box.height;
  const first = upright ? { ...box, width: at } : { ...box, height: at };
  const second = upright
    ? { ...box, x: box.x + at + gutter, width: box.width - at - gutter }
    : { ...box, y: box.y + at + gutter, height: box.height - at - gutter };
  return [...cut(first, gutter, roll, depth + 1), ...cut(second, gutter, roll, depth + 1)];
}
