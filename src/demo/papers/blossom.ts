import { between, chance } from '../chance.ts';
import { colours } from '../colours.ts';
import { type Outline, print, type Raster } from '../raster.ts';
import { circle, leaf, petal, wobblyCircle } from '../shapes.ts';
import { smooth, stroke } from '../strokes.ts';
import { tiled } from '../tiled.ts';

/** Apple boughs in flower, drawn by hand: three boughs across, the next row moved by half. */
export function blossomBough(raster: Raster): void {
  const tile = 305 / 3;
  const shapes = {
    bough: [] as Outline[],
    leaves: [] as Outline[],
    petals: [] as Outline[],
    hearts: [] as Outline[],
  };
  tiled(tile, tile * 0.6, 0.5, (x, y) => bough(shapes, x, y));
  print(raster, shapes.bough, colours.brown);
  print(raster, shapes.leaves, colours.leaf);
  print(raster, shapes.petals, colours.coral);
  print(raster, shapes.hearts, colours.mustard);
}

/** The back of the bough paper: coral pips, a little uneven, as a stamp gives them. */
export function blossomPips(raster: Raster): void {
  const next = chance(11);
  const pips: Outline[] = [];
  tiled(15.25, 15.25, 0.5, (x, y) => {
    pips.push(
      wobblyCircle(x + between(next, -0.5, 0.5), y + between(next, -0.5, 0.5), 2.9, 0.06, next() * 6),
    );
  });
  print(raster, pips, colours.coral);
}

/** Single leaves let fall over the sheet in two greens and rust; each keeps its midrib. */
export function windfall(raster: Raster): void {
  const next = chance(31);
  const falls: [string, Outline[]][] = [
    [colours.sage, []],
    [colours.leaf, []],
    [colours.rust, []],
  ];
  const ribs: Outline[] = [];
  const pips: Outline[] = [];
  let turn = 0;
  tiled(30.5, 26, 0.5, (x, y, column, row) => {
    const angle = ((column * 97 + row * 61) % 12) * 30 + between(next, -9, 9);
    const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    const [sx, sy] = [x - cos * 9, y - sin * 9];
    falls[(turn += 1) % 3]![1].push(leaf(sx, sy, angle, 20, 10.5, 0.42));
    ribs.push(stroke([sx - cos * 3, sy - sin * 3, x, y, sx + cos * 16, sy + sin * 16], (t) => 1.1 - 0.6 * t));
    pips.push(circle(x + 15, y - 1 + between(next, -1.5, 1.5), 1.5));
  });
  for (const [ink, shapes] of falls) print(raster, shapes, ink);
  print(raster, ribs, colours.white);
  print(raster, pips, colours.mustard);
}

function bough(
  shapes: { bough: Outline[]; leaves: Outline[]; petals: Outline[]; hearts: Outline[] },
  x: number,
  y: number,
): void {
  const along = (dx: number, dy: number): [number, number] => [x + dx, y + dy];
  const main = [...along(-46, 17), ...along(-24, 9), ...along(-2, 12), ...along(20, 2), ...along(45, -6)];
  shapes.bough.push(
    stroke(smooth(main, 8), (t) => 3 - 1.7 * t),
    stroke(smooth([...along(-22, 9), ...along(-15, -1), ...along(-14, -12)], 6), (t) => 1.9 - 0.9 * t),
    stroke(smooth([...along(14, 5), ...along(22, 14), ...along(33, 19)], 6), (t) => 1.9 - 0.9 * t),
  );
  for (const [dx, dy, angle, length] of leavesOfBough) {
    shapes.leaves.push(leaf(x + dx, y + dy, angle, length, length * 0.46, 0.45));
  }
  for (const [dx, dy, size, turn] of flowersOfBough) flower(shapes, x + dx, y + dy, size, turn);
  for (const [dx, dy] of budsOfBough) shapes.petals.push(wobblyCircle(x + dx, y + dy, 2.6, 0.08, dx));
}

function flower(
  shapes: { petals: Outline[]; hearts: Outline[] },
  x: number,
  y: number,
  size: number,
  turn: number,
): void {
  for (let i = 0; i < 5; i += 1) {
    const angle = turn + i * 72;
    const [cos, sin] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
    shapes.petals.push(petal(x + cos * size * 0.12, y + sin * size * 0.12, angle, size, size * 0.98));
  }
  shapes.hearts.push(wobblyCircle(x, y, size * 0.3, 0.07, turn));
}

const leavesOfBough = [
  [-38, 14, 60, 13],
  [-31, 11, -62, 13],
  [-10, 12, 72, 15],
  [-15, -6, -165, 12],
  [-14, -11, -50, 13],
  [5, 10, -85, 13],
  [24, 15, 95, 12],
  [32, 18, 20, 14],
  [28, -1, -75, 13],
  [43, -6, -25, 12],
  [35, -3, 48, 12],
  [-33, -9, 20, 10],
  [-40, -7, 150, 10],
  [36, -15, 55, 10],
  [29, -23, -140, 10],
  [4, -18, -60, 9],
] as const;

const flowersOfBough = [
  [-24, 3, 11.5, 10],
  [9, -4, 13, 40],
  [-6, 22, 9.5, 25],
  [24, 23, 8.5, 5],
  [-37, -11, 7, 50],
  [33, -19, 7.5, 20],
] as const;

const budsOfBough = [
  [-17, -18],
  [42, 22],
  [48, -10],
  [-3, -17],
  [-44, 2],
  [13, -22],
] as const;
