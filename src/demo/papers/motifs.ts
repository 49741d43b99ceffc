import { between, chance } from '../chance.ts';
import { colours } from '../colours.ts';
import { type Outline, print, type Raster, sideMm } from '../raster.ts';
import { ellipse, heart, leaf, polygon, rectangle } from '../shapes.ts';
import { smooth, stroke } from '../strokes.ts';
import { tiled } from '../tiled.ts';

/** Poppy-red hearts, each between two sprigs of leaf green. */
export function pipHearts(raster: Raster): void {
  const next = chance(71);
  const [hearts, small, leaves, stems]: Outline[][] = [[], [], [], []];
  tiled(sideMm / 6, sideMm / 8, 0.5, (x, y) => {
    const tilt = between(next, -10, 10);
    hearts!.push(heart(x, y, 21, tilt));
    small!.push(heart(x + 25.4, y + 1, 6.5, -tilt));
    stems!.push(stroke(smooth([x - 9, y + 12, x - 13, y + 4, x - 12, y - 6], 6), 1.1));
    for (const [dx, dy, angle] of sprig) leaves!.push(leaf(x + dx, y + dy, angle, 7.4, 3.6, 0.45));
  });
  print(raster, stems!, colours.leaf);
  print(raster, leaves!, colours.leaf);
  print(raster, hearts!, colours.poppy);
  print(raster, small!, colours.blush);
}

/** Paper lanterns on cords, in two colours that shout. */
export function lanternRow(raster: Raster): void {
  const kinds: [string, Outline[]][] = [
    [colours.violet, []],
    [colours.lime, []],
  ];
  const [cords, ribs]: Outline[][] = [[], []];
  const pitch = sideMm / 6;
  for (let row = -1; row < 6; row += 1) {
    const y = row * 61 + 12;
    const sag: number[] = [];
    for (let i = -1; i <= 7; i += 1) {
      sag.push(i * pitch, y, (i + 0.5) * pitch, y + 6);
      const [x, top] = [(i + 0.5) * pitch, y + 6];
      const kind = kinds[(i + row + 4) % 2]![1];
      kind.push(
        ellipse(x, top + 21, 15, 17, 0),
        rectangle(x - 5, top + 3, 10, 4),
        rectangle(x - 5, top + 36, 10, 4),
      );
      for (const part of [-0.5, 0, 0.5]) {
        ribs!.push(
          stroke(smooth([x + part * 12, top + 7, x + part * 27, top + 21, x + part * 12, top + 35], 6), 1.3),
        );
      }
      cords!.push(rectangle(x - 0.6, top + 40, 1.2, 9));
    }
    cords!.push(stroke(smooth(sag, 6), 1.5));
  }
  print(raster, cords!, colours.charcoal);
  for (const [ink, shapes] of kinds) print(raster, shapes, ink);
  print(raster, ribs!, colours.coolWhite);
}

/** Squares and half squares sewn together, with stitches along the seams; some patches are printed themselves. */
export function morningQuilt(raster: Raster): void {
  const next = chance(83);
  const patch = sideMm / 6;
  const inks = [colours.coral, colours.leaf, colours.mustard, colours.sage, colours.brown] as const;
  for (let row = 0; row < 6; row += 1) {
    for (let column = 0; column < 6; column += 1) {
      const [x, y] = [column * patch, row * patch];
      const ink = inks[(column * 2 + row * 3) % 5]!;
      if ((column + row) % 2 === 0) halfSquare(raster, x, y, patch, ink, (column + row * 5) % 4);
      else print(raster, [rectangle(x, y, patch, patch)], ink);
      if ((column + row) % 2 === 1) printedPatch(raster, x, y, patch, (column * 3 + row) % 3);
    }
  }
  const stitches: Outline[] = [];
  for (let i = 0; i <= 6; i += 1) {
    for (let s = 0; s < 44; s += 1) {
      const from = s * 7 + between(next, 0, 0.8);
      stitches.push(stroke([i * patch + 2.6, from, i * patch + 2.6, from + 3.6], 0.9));
      stitches.push(stroke([from, i * patch + 2.6, from + 3.6, i * patch + 2.6], 0.9));
    }
  }
  print(raster, stitches, colours.cream);
}

function halfSquare(raster: Raster, x: number, y: number, size: number, ink: string, turn: number): void {
  const corners: [number, number][] = [
    [x, y],
    [x + size, y],
    [x + size, y + size],
    [x, y + size],
  ];
  print(raster, [polygon(corners[turn]!, corners[(turn + 1) % 4]!, corners[(turn + 2) % 4]!)], ink);
}

function printedPatch(raster: Raster, x: number, y: number, size: number, kind: number): void {
  const shapes: Outline[] = [];
  for (let i = 0; i < 4; i += 1) {
    for (let j = 0; j < 4; j += 1) {
      const [cx, cy] = [x + ((i + 0.5) * size) / 4, y + ((j + 0.5) * size) / 4];
      if (kind === 0) shapes.push(ellipse(cx, cy, 2.7, 2.7, 0));
      if (kind === 1 && j === 0) shapes.push(rectangle(cx - 1.4, y, 2.8, size));
    }
  }
  print(raster, shapes, colours.cream);
}

const sprig = [
  [-9, 12, -160],
  [-12.4, 6, -150],
  [-12.4, 6, -25],
  [-13, 0, -140],
  [-12.8, 0, -40],
  [-12, -6, -88],
] as const;
