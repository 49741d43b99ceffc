import { describe, expect, it } from 'vitest';
import { cutListOf, matFor } from '../../../src/cutting/cut-list.ts';
import { isEdgeToEdge, type Layout, layOut, mostOf } from '../../../src/cutting/packing.ts';
import { bladeCaution } from '../../../src/harmony/words/remedy-sentences.ts';
import type { SizeMm } from '../../../src/sheet/model.ts';
import { chanceOf } from '../../support/chance.ts';

const inch = 25.4;
const inches = (width: number, height: number): SizeMm => ({ width: width * inch, height: height * inch });
const sheet = inches(12, 12);

function checkLayout({ placed, left }: Layout, on: SizeMm, pieces: readonly SizeMm[]): void {
  expect(placed.map(({ piece }) => piece)).toEqual(pieces.map((_, i) => i));
  for (const { piece, width, height, turned, x, y } of placed) {
    const { width: w, height: h } = pieces[piece]!;
    expect([width, height]).toEqual(turned ? [h, w] : [w, h]);
    expect(x >= 0 && y >= 0 && x + width <= on.width + 0.01 && y + height <= on.height + 0.01).toBe(true);
  }
  const all = [...placed, ...left];
  for (const [i, a] of all.entries()) {
    for (const b of all.slice(i + 1)) {
      const apart =
        a.x + a.width <= b.x + 0.02 ||
        b.x + b.width <= a.x + 0.02 ||
        a.y + a.height <= b.y + 0.02 ||
        b.y + b.height <= a.y + 0.02;
      expect(apart).toBe(true);
    }
  }
}

describe('more to cut than a page ever has', () => {
  it('ends in a sentence, not in a page that stands still', () => {
    const stock = [{ id: 's', name: 'Kraft', sizeMm: { width: 305, height: 305 } }];
    const wanted = [{ name: 'tag', from: 's', sizeMm: { width: 20, height: 20 }, count: 1_000_000 }];
    expect(cutListOf(stock, wanted)).toEqual({
      sheets: [],
      short: [],
      mount: [],
      says: [
        'That is 1,000,000 pieces to cut, with their mats. A cut list is worked out for up to 120: choose fewer, or spread them over several kits.',
      ],
    });
  });

  it('is worked out below that, each piece of another size', () => {
    const stock = [{ id: 's', name: 'Kraft', sizeMm: { width: 305, height: 305 }, count: 9 }];
    const wanted = Array.from({ length: 40 }, (_, i) => ({
      name: `tag ${i}`,
      from: 's',
      sizeMm: { width: 20 + ((i * 7) % 13), height: 26 + ((i * 5) % 11) },
    }));
    const { sheets, short } = cutListOf(stock, wanted);
    expect(sheets.reduce((sum, { names }) => sum + names.length, short.length)).toBe(40);
  });
});

describe('laying pieces out on a sheet', () => {
  it('gets four 5 × 7 in out of one 12 × 12 in with stopped cuts, a 2 × 2 in square left, and three from edge to edge', () => {
    const piece = inches(5, 7);
    const layout = layOut(sheet, [piece, piece, piece, piece])!;
    checkLayout(layout, sheet, [piece, piece, piece, piece]);
    expect(layout.style).toBe('stopped');
    expect(layout.left).toHaveLength(1);
    expect(layout.left[0]!.width / inch).toBeCloseTo(2, 6);
    expect(layout.left[0]!.height / inch).toBeCloseTo(2, 6);
    expect(layOut(sheet, [piece, piece, piece, piece], 'edge to edge')).toBeNull();
    expect(mostOf(sheet, piece, 'edge to edge')).toBe(3);
    expect(mostOf(sheet, piece, 'stopped')).toBe(4);
  });

  it('gets six 4 × 6 in out of it from edge to edge, with nothing left', () => {
    expect(mostOf(sheet, inches(4, 6), 'edge to edge')).toBe(6);
    expect(layOut(sheet, new Array(6).fill(inches(4, 6)))!.left).toEqual([]);
  });

  it('turns a piece where it only fits turned, and gives up where none fits', () => {
    const layout = layOut({ width: 100, height: 300 }, [{ width: 280, height: 90 }])!;
    expect(layout.placed[0]).toMatchObject({ turned: true, width: 90, height: 280 });
    expect(layOut(sheet, [inches(13, 1)])).toBeNull();
    expect(layOut(sheet, [inches(12, 12), inches(1, 1)])).toBeNull();
  });

  it('leaves the whole sheet where nothing is wanted', () => {
    expect(layOut(sheet, [])).toMatchObject({ style: 'edge to edge', placed: [], left: [{ ...sheet }] });
  });

  it('never lays one piece over another, and says edge to edge only where that is so', () => {
    const chance = chanceOf(4);
    for (let n = 0; n < 40; n++) {
      const pieces = Array.from({ length: 1 + Math.floor(chance() * 4) }, () => ({
        width: Math.round(40 + chance() * 120),
        height: Math.round(40 + chance() * 160),
      }));
      const layout = layOut(sheet, pieces);
      if (!layout) continue;
      checkLayout(layout, sheet, pieces);
      const whole = { x: 0, y: 0, ...sheet };
      expect(isEdgeToEdge(whole, layout.placed)).toBe(layout.style === 'edge to edge');
    }
  });
});

describe('a mat', () => {
  it('adds its border on every side: 4 × 6 in with ⅛ in is 4¼ × 6¼', () => {
    const mat = matFor(inches(4, 6), inch / 8);
    expect(mat.width / inch).toBeCloseTo(4.25, 9);
    expect(mat.height / inch).toBeCloseTo(6.25, 9);
  });
});

describe('a cut list', () => {
  const stock = [
    { id: 'bunting', name: 'Regatta bunting', sizeMm: sheet, gsm: 110 },
    { id: 'kraft', name: 'kraft cardstock', sizeMm: sheet, count: 2, gsm: 216 },
  ];

  it('takes pieces, mats and strips from their sheets and says what is left', () => {
    const list = cutListOf(stock, [
      { name: 'ground', from: 'bunting', sizeMm: inches(6, 8), mat: { from: 'kraft', borderMm: inch / 8 } },
      { name: 'strip', from: 'bunting', sizeMm: { width: 12 * inch, height: 20 }, count: 2 },
    ]);
    expect(list.sheets.map(({ stock: { id }, names }) => [id, ...names])).toEqual([
      ['bunting', 'ground', 'strip 1', 'strip 2'],
      ['kraft', 'mat for ground'],
    ]);
    expect(list.short).toEqual([]);
    expect(list.mount).toEqual(['Regatta bunting']);
    expect(list.says[0]).toContain(
      'From Regatta bunting: ground, strip 1 and strip 2. Every cut runs from edge to edge.',
    );
    expect(list.says[1]).toContain('From kraft cardstock, sheet 1: mat for ground.');
    expect(list.says.at(-2)).toContain('mount on cardstock');
    expect(list.says.at(-1)).toBe(bladeCaution);
  });

  it('goes on to the next sheet, and names what there is no paper for', () => {
    const list = cutListOf(stock, [
      { name: 'panel', from: 'kraft', sizeMm: inches(11, 11), count: 3 },
      { name: 'tag', from: 'linen', sizeMm: inches(2, 3) },
    ]);
    expect(list.sheets.map(({ number, names }) => [number, ...names])).toEqual([
      [1, 'panel 1'],
      [2, 'panel 2'],
    ]);
    expect(list.short).toEqual(['tag', 'panel 3']);
    expect(list.says.join(' ')).toContain('There is no paper left for tag and panel 3.');
  });

  it('says where a trimmer will not do, and where nothing is left', () => {
    const list = cutListOf(stock, [{ name: 'photo mat', from: 'kraft', sizeMm: inches(5, 7), count: 4 }]);
    expect(list.says[0]).toContain('a knife and a rule, not a trimmer');
    const full = cutListOf(stock, [{ name: 'ground', from: 'bunting', sizeMm: sheet }]);
    expect(full.says[0]).toContain('Nothing is left.');
  });

  it('says the largest piece left in whole millimetres, and in inches to the eighth', () => {
    const left = (width: number, height: number) =>
      cutListOf(stock, [{ name: 'ground', from: 'bunting', sizeMm: { width, height } }]).says[0]!;
    expect(left(305 - 0.2, 152)).toContain('The largest piece left is 305 × 153 mm (12 × 6 in).');
    expect(left(304.8, 200)).toContain('305 × 105 mm (12 × 4⅛ in)');
    expect(left(304.8, 290)).toContain('305 × 15 mm (12 × ⅝ in)');
    expect(left(304.8, 304)).toContain('305 × 1 mm (12 × under ⅛ in)');
  });

  it('says so where a piece is simply larger than its sheet, and not that none is left', () => {
    const list = cutListOf(stock, [
      { name: 'banner', from: 'bunting', sizeMm: inches(14, 3) },
      { name: 'tag', from: 'bunting', sizeMm: inches(2, 3) },
    ]);
    expect(list.sheets.map(({ names }) => names)).toEqual([['tag']]);
    expect(list.short).toEqual(['banner']);
    expect(list.says).toContain(
      'Larger than the sheet to cut from, Regatta bunting of 305 × 305 mm (12 × 12 in): banner.',
    );
    expect(list.says.join(' ')).not.toContain('no paper left');
  });

  it('names a piece without a size as left out', () => {
    const list = cutListOf(stock, [
      { name: 'tag', from: 'bunting', sizeMm: inches(2, 3) },
      { name: 'ground', from: 'kraft', sizeMm: null, mat: { from: 'kraft', borderMm: 3 } },
    ]);
    expect(list.sheets.map(({ names }) => names)).toEqual([['tag']]);
    expect(list.says).toContain('Left out, without a size: ground.');
  });

  it('is empty, and warns of nothing, where nothing is wanted', () => {
    expect(cutListOf(stock, [])).toEqual({ sheets: [], short: [], mount: [], says: [] });
  });
});
