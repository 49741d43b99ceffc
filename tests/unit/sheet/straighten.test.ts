import { describe, expect, it } from 'vitest';
import type { Corners, PixelImage } from '../../../src/sheet/model.ts';
import { homographyOf, movedBy, turnOf } from '../../../src/sheet/outline/homography.ts';
import { straighten } from '../../../src/sheet/outline/straighten.ts';
import { dice } from '../../support/sheets/dice.ts';
import { drawSheet, toImage } from '../../support/sheets/draw-sheet.ts';
import { onTable } from '../../support/sheets/on-table.ts';

const square: Corners = [
  { x: 0, y: 0 },
  { x: 1, y: 0 },
  { x: 1, y: 1 },
  { x: 0, y: 1 },
];

const whole = square;

describe('the map between two sets of corners', () => {
  it('is the same plane where the corners are the same, and a scale and a shift where they are moved', () => {
    expect(homographyOf(square, square)!.map((n) => Math.round(n * 1e12) / 1e12 + 0)).toEqual([
      1, 0, 0, 0, 1, 0, 0, 0, 1,
    ]);
    const box: Corners = [
      { x: 10, y: 20 },
      { x: 40, y: 20 },
      { x: 40, y: 80 },
      { x: 10, y: 80 },
    ];
    homographyOf(square, box)!.forEach((n, i) => {
      expect(n).toBeCloseTo([30, 0, 10, 0, 60, 20, 0, 0, 1][i]!, 9);
    });
  });

  it('takes the meeting of the diagonals to the meeting of the diagonals, as every projection does', () => {
    // Diagonals (0,0)–(4,4) and (6,0)–(0,3) meet at (2, 2), worked out by hand.
    const to: Corners = [
      { x: 0, y: 0 },
      { x: 6, y: 0 },
      { x: 4, y: 4 },
      { x: 0, y: 3 },
    ];
    const middle = movedBy(homographyOf(square, to)!, { x: 0.5, y: 0.5 });
    expect(middle.x).toBeCloseTo(2, 10);
    expect(middle.y).toBeCloseTo(2, 10);
  });

  it('goes to any four corners and back to within a millionth', () => {
    const roll = dice(4);
    for (let n = 0; n < 200; n++) {
      const near = (x: number, y: number) => ({
        x: x + roll.between(-0.3, 0.3),
        y: y + roll.between(-0.3, 0.3),
      });
      const to: Corners = [near(0, 0), near(1, 0), near(1, 1), near(0, 1)];
      if (turnOf(to) !== 1) continue;
      const there = homographyOf(square, to)!;
      const back = homographyOf(to, square)!;
      square.forEach((corner, i) => {
        expect(
          Math.hypot(movedBy(there, corner).x - to[i]!.x, movedBy(there, corner).y - to[i]!.y),
        ).toBeLessThan(1e-6);
      });
      const spot = { x: roll.next(), y: roll.next() };
      const again = movedBy(back, movedBy(there, spot));
      expect(Math.hypot(again.x - spot.x, again.y - spot.y)).toBeLessThan(1e-6);
    }
  });

  it('is nothing where corners cross or lie on one line', () => {
    const crossed: Corners = [square[0], square[2], square[1], square[3]];
    const flat: Corners = [square[0], { x: 0.5, y: 0 }, square[1], square[3]];
    expect(homographyOf(square, crossed)).toBeNull();
    expect(homographyOf(square, flat)).toBeNull();
  });
});

describe('straightening', () => {
  it('leaves a picture as it is, to the last bit, where the corners are its own', () => {
    const image = toImage(drawSheet(3, { width: 90, height: 60 }));
    const { image: back } = straighten(image, whole);
    expect([back.width, back.height, back.data.length]).toEqual([90, 60, image.data.length]);
    expect(back.data.every((v, i) => v === image.data[i])).toBe(true);
    expect(straighten(image, whole, { sizeMm: { width: 180, height: 120 } }).mmPerPixel).toBeCloseTo(2, 9);
  });

  it('takes the mean in linear light where it shrinks: a fine black and white grid becomes #bcbcbc, without moiré', () => {
    // 50 % of linear light is 188 in sRGB (IEC 61966-2-1).
    const image = picture(400, 400, (x, y) => ((x + y) % 2 ? 255 : 0));
    const { image: small } = straighten(image, whole, { widthPx: 137, heightPx: 91 });
    const inner = shades(small, 1);
    expect(Math.min(...inner)).toBeGreaterThan(180);
    expect(Math.max(...inner)).toBeLessThan(196);
    expect(inner.reduce((s, v) => s + v, 0) / inner.length).toBeCloseTo(188, 0);
  });

  it('keeps the proportion of the sheet that it is told', () => {
    const image = picture(400, 300, () => 128);
    const { image: sheet } = straighten(image, whole, { sizeMm: { width: 210, height: 297 }, widthPx: 210 });
    expect([sheet.width, sheet.height]).toEqual([210, 297]);
  });

  it('brings a photographed sheet back: nine values in ten within 16 of 255 of the sheet that was drawn', () => {
    for (const seed of [1, 8]) {
      const drawn = drawSheet(seed, { width: 420, pattern: 'floral' });
      const { image, corners } = onTable(drawn, 'grey', seed);
      const { image: back } = straighten(image, corners, { widthPx: 60, heightPx: 60 });
      const truth = straighten(toImage(drawn), whole, { widthPx: 60, heightPx: 60 }).image;
      // Light falls off over the photograph, so the two are held together after a gain by place and channel: medians.
      const ratios = [0, 1, 2].map((c) => {
        const t = channel(truth, c);
        return median(channel(back, c).map((v, i) => v / Math.max(8, t[i]!)));
      });
      const far = [0, 1, 2].flatMap((c) => {
        const t = channel(truth, c);
        return channel(back, c).map((v, i) => Math.abs(v / ratios[c]! - t[i]!));
      });
      expect(far.filter((d) => d > 16).length / far.length, `sheet ${seed}`).toBeLessThan(0.1);
    }
  });

  it('leaves what lies outside the photograph transparent', () => {
    const image = picture(100, 100, () => 200);
    const out: Corners = [
      { x: -0.5, y: 0 },
      { x: 1, y: 0 },
      { x: 1, y: 1 },
      { x: -0.5, y: 1 },
    ];
    const { image: sheet } = straighten(image, out);
    expect(sheet.data[3]).toBe(0);
    expect(sheet.data[(sheet.width - 1) * 4 + 3]).toBe(255);
  });

  it('refuses corners that make no sheet, in one sentence', () => {
    const crossed: Corners = [whole[0], whole[2], whole[1], whole[3]];
    expect(() =>
      straighten(
        picture(9, 9, () => 1),
        crossed,
      ),
    ).toThrow(RangeError);
  });
});

function picture(width: number, height: number, shade: (x: number, y: number) => number): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4).fill(255);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) data.fill(shade(x, y), (y * width + x) * 4, (y * width + x) * 4 + 3);
  return { data, width, height };
}

function shades({ data, width, height }: PixelImage, margin: number): number[] {
  const out: number[] = [];
  for (let y = margin; y < height - margin; y++)
    for (let x = margin; x < width - margin; x++) out.push(data[(y * width + x) * 4]!);
  return out;
}

function channel({ data }: PixelImage, c: number): number[] {
  return Array.from({ length: data.length / 4 }, (_, i) => data[i * 4 + c]!);
}

function median(list: readonly number[]): number {
  return [...list].sort((p, q) => p - q)[list.length >> 1]!;
}
