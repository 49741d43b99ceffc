import { between, chance } from '../chance.ts';
import { colours } from '../colours.ts';
import { type Outline, print, type Raster, sideMm } from '../raster.ts';
import { circle, leaf, rectangle, star, wobblyCircle } from '../shapes.ts';
import { stroke } from '../strokes.ts';
import { tiled } from '../tiled.ts';

/** A ledger's squares with a pair of margin lines, and an apple entered here and there. */
export function pressLedger(raster: Raster): void {
  const pitch = sideMm / 16;
  const [lines, apples, leaves, stems]: Outline[][] = [[], [], [], []];
  for (let i = 0; i < 16; i += 1) {
    const at = (i + 0.5) * pitch - 0.9;
    lines!.push(rectangle(at, 0, 1.8, sideMm), rectangle(0, at, sideMm, 1.8));
  }
  tiled(pitch * 4, pitch * 2, 0.5, (x, y) => {
    const [cx, cy] = [x - pitch, y];
    apples!.push(wobblyCircle(cx, cy + 0.8, 4.6, 0.05, 1.3));
    stems!.push(stroke([cx, cy - 3.4, cx + 0.4, cy - 5, cx + 1.2, cy - 6.2], 1.3));
    leaves!.push(leaf(cx + 0.6, cy - 4.4, -18, 5.4, 2.8));
  });
  print(raster, lines!, colours.sage);
  print(raster, apples!, colours.coral);
  print(raster, stems!, colours.brown);
  print(raster, leaves!, colours.leaf);
}

/** Broad leaf green and cream with a coral cord and a brown thread beside it: a repeat of an eighth of the sheet. */
export function ladderStripe(raster: Raster): void {
  const repeat = sideMm / 8;
  for (let i = -1; i < 9; i += 1) {
    const x = i * repeat;
    print(raster, [rectangle(x, 0, repeat * 0.36, sideMm)], colours.leaf);
    print(raster, [rectangle(x + repeat * 0.5, 0, repeat * 0.12, sideMm)], colours.coral);
    print(raster, [rectangle(x + repeat * 0.7, 0, repeat * 0.06, sideMm)], colours.brown);
    print(raster, [rectangle(x + repeat * 0.86, 0, repeat * 0.06, sideMm)], colours.brown);
  }
}

/** Fine navy lines on white, for the back of the night paper. */
export function nightLines(raster: Raster): void {
  const lines: Outline[] = [];
  for (let x = 0; x < sideMm; x += sideMm / 40) lines.push(rectangle(x + 2, 0, 2, sideMm));
  print(raster, lines, colours.navy);
}

/** Woven zigzags on kraft: white broad, brown narrow. */
export function basketChevron(raster: Raster): void {
  const [wave, rise] = [sideMm / 12, 12.5];
  const zigzag = (y: number, thick: number): Outline => {
    const top: number[] = [];
    const under: number[] = [];
    for (let i = -1; i <= 25; i += 1) {
      const [x, up] = [(i * wave) / 2, i % 2 === 0 ? 0 : rise];
      top.push(x, y + up);
      under.unshift(x, y + up + thick);
    }
    return [...top, ...under];
  };
  for (let y = -30; y < sideMm + 20; y += sideMm / 12) {
    print(raster, [zigzag(y, 9)], colours.white);
    print(raster, [zigzag(y + 13.5, 3)], colours.brown);
  }
}

/** Mustard rounds and small charcoal ones between them. */
export function beeDots(raster: Raster): void {
  const [large, small]: Outline[][] = [[], []];
  const pitch = sideMm / 10;
  tiled(pitch, pitch, 0.5, (x, y) => {
    large!.push(circle(x, y, 7.6));
    small!.push(circle(x + pitch / 2, y, 2.3));
  });
  print(raster, large!, colours.mustard);
  print(raster, small!, colours.charcoal);
}

/** White stars over a night that is printed to the edge, one in seven of them mustard. */
export function starlingNight(raster: Raster): void {
  const next = chance(53);
  const [white, gold, specks]: Outline[][] = [[], [], []];
  let count = 0;
  tiled(25.4, 22, 0.5, (x, y) => {
    const [sx, sy] = [x + between(next, -3, 3), y + between(next, -3, 3)];
    const kind = (count += 1) % 7 === 3 ? gold! : white!;
    kind.push(star(sx, sy, between(next, 4.4, 6.2), 5, between(next, -20, 20)));
    specks!.push(circle(sx + 11, sy + between(next, 6, 10), 1), circle(sx - 7, sy + 9, 0.8));
  });
  print(raster, specks!, colours.white);
  print(raster, white!, colours.white);
  print(raster, gold!, colours.mustard);
}
