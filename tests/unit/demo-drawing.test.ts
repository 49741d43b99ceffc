import { describe, expect, it } from 'vitest';
import { encodedFromLinear, hexFromRgb } from '../../src/colour/spaces.ts';
import { writing, writingWidth } from '../../src/demo/letters.ts';
import { blankRaster, print, type Raster, sideMm } from '../../src/demo/raster.ts';
import { circle, heart, leaf, petal, rectangle, star } from '../../src/demo/shapes.ts';
import { demoSheets, drawDemoSheet } from '../../src/demo/sheets.ts';
import { stroke } from '../../src/demo/strokes.ts';

/** Share of a black-on-white raster that is covered, in square millimetres. */
function printedMm2(raster: Raster): number {
  let sum = 0;
  for (let i = 0; i < raster.light.length; i += 3) sum += 1 - raster.light[i]!;
  return sum * (sideMm / raster.px) ** 2;
}

function printed(...outlines: (readonly number[])[]): Raster {
  const raster = blankRaster(244, '#ffffff');
  print(raster, outlines, '#000000');
  return raster;
}

describe('printing a shape', () => {
  it('covers exactly the area of a circle, wherever it lies between the pixels', () => {
    // A polygon of 28 sides has n/2·sin(2π/n)·r²; by geometry.
    const area = 14 * Math.sin((2 * Math.PI) / 28) * 20 ** 2;
    expect(printedMm2(printed(circle(100, 100, 20)))).toBeCloseTo(area, 1);
    expect(printedMm2(printed(circle(100.37, 99.71, 20)))).toBeCloseTo(area, 1);
  });

  it('covers a rectangle exactly, also where it hangs over an edge of the sheet', () => {
    expect(printedMm2(printed(rectangle(10.3, 20.7, 40, 25)))).toBeCloseTo(1000, 1);
    expect(printedMm2(printed(rectangle(-10, -10, 40, 25)))).toBeCloseTo(30 * 15, 1);
    expect(printedMm2(printed(rectangle(295, 295, 40, 25)))).toBeCloseTo(100, 1);
    expect(printedMm2(printed(rectangle(400, 10, 40, 25)))).toBe(0);
  });

  it('counts what two overlapping outlines share only once', () => {
    expect(printedMm2(printed(rectangle(10, 10, 50, 50), rectangle(30, 10, 50, 50)))).toBeCloseTo(70 * 50, 0);
  });

  it('leaves its scratch clean, so that the next shape is not touched by the last', () => {
    const raster = printed(circle(304, 150, 30), leaf(0, 0, 45, 60, 20), stroke([0, 300, 305, 300], 9));
    expect(raster.cover.every((value) => Math.abs(value) < 1e-6)).toBe(true);
  });

  it('averages its edges in linear light, as a scanner does', () => {
    const raster = blankRaster(305, '#ffffff');
    print(raster, [rectangle(100.5, 0, 50, 305)], '#000000');
    const edge = raster.light[(150 * 305 + 100) * 3]!;
    expect(edge).toBeCloseTo(0.5, 3);
    // Half the light of white is 188 of 255 in sRGB (IEC 61966-2-1), not 128.
    const v = encodedFromLinear(edge);
    expect(hexFromRgb({ r: v, g: v, b: v })).toBe('#bcbcbc');
  });

  it.each([
    ['heart', heart(100, 100, 40, 0)],
    ['star', star(100, 100, 20, 5, 0)],
    ['leaf', leaf(80, 100, 0, 40, 20)],
    ['petal', petal(80, 100, 0, 40, 36)],
  ])('keeps a %s inside its size and near its place', (_, outline) => {
    const xs = outline.filter((_value, i) => i % 2 === 0);
    const ys = outline.filter((_value, i) => i % 2 === 1);
    expect(Math.max(...xs) - Math.min(...xs)).toBeLessThanOrEqual(41);
    expect(Math.max(...ys) - Math.min(...ys)).toBeLessThanOrEqual(41);
    expect(Math.min(...xs)).toBeGreaterThan(75);
    expect(Math.max(...xs)).toBeLessThan(125);
  });

  it('writes every letter of the alphabet, and advances by what it says', () => {
    for (const letter of 'abcdefghijklmnopqrstuvwxyz.,') {
      expect(writing(letter, 10, 10, 5, 1).length, letter).toBeGreaterThan(0);
    }
    expect(writingWidth('ab', 5)).toBeCloseTo(writingWidth('a', 5) + writingWidth('b', 5), 9);
    expect(writing(' ', 0, 0, 5, 1)).toEqual([]);
  });
});

describe('the demo sheets', () => {
  it('are about a dozen, on white, cream, kraft and dark, old and new, some with two sides', () => {
    expect(demoSheets.length).toBeGreaterThanOrEqual(12);
    expect(new Set(demoSheets.map((sheet) => sheet.id)).size).toBe(demoSheets.length);
    expect(demoSheets.filter((sheet) => sheet.sides.B).length).toBeGreaterThanOrEqual(3);
    expect(demoSheets.filter((sheet) => sheet.stock.yellowed > 0).length).toBeGreaterThanOrEqual(2);
  });

  it('show all the motifs that were asked of the demo', () => {
    const motifs = new Set(
      demoSheets.flatMap(({ sides }) => [sides.A, sides.B].flatMap((s) => s?.tags.motifs ?? [])),
    );
    const wanted = [
      'floral',
      'dot',
      'stripe',
      'chevron',
      'grid',
      'text',
      'heart',
      'wood grain',
      'patchwork',
    ] as const;
    for (const motif of wanted) expect(motifs, motif).toContain(motif);
    const finishes = demoSheets.flatMap(({ sides }) => sides.A.tags.finishes ?? []);
    expect(finishes).toContain('watercolour');
  });

  it('draw the same pixels every time, opaque and in full', () => {
    for (const { id, sides } of demoSheets) {
      for (const side of sides.B ? (['A', 'B'] as const) : (['A'] as const)) {
        const [first, again] = [drawDemoSheet(id, side, 90), drawDemoSheet(id, side, 90)];
        expect(first.data.length).toBe(90 * 90 * 4);
        expect(again.data.length).toBe(first.data.length);
        expect(first.data.every((value, i) => value === again.data[i])).toBe(true);
        expect(first.data.every((value, i) => i % 4 !== 3 || value === 255)).toBe(true);
      }
    }
  });

  it('refuse a sheet or a side that is not there', () => {
    expect(() => drawDemoSheet('no-such-sheet', 'A', 50)).toThrow(RangeError);
    expect(() => drawDemoSheet('pip-hearts', 'B', 50)).toThrow(/no side B/);
  });
});
