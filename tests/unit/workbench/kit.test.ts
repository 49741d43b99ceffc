import { describe, expect, it } from 'vitest';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import type { KitLeaf, KitPiece } from '../../../src/notebook/model.ts';
import { findKit } from '../../../src/workbench/kit.ts';
import { bunting, corner, kraft, ledger, ledgerBack, sampleNotebook } from '../notebook/sample-notebook.ts';

const { drawer } = sampleNotebook();
const kitWith = (...pieces: KitPiece[]): KitLeaf => ({ id: 'k', kind: 'kit', title: '', text: '', pieces });
const inches = (width: number, height: number) => ({ width: width * 25.4, height: height * 25.4 });

describe('a kit leaf', () => {
  it('is judged by the engine, with its pieces by their bare names, and plains as plains', () => {
    const { kit } = findKit(
      drawer,
      kitWith({ held: bunting, areaMm2: null }, { held: kraft, areaMm2: null }),
    );
    expect(kit?.members.map(({ name, role }) => [name, role])).toEqual([
      ['Bunting', 'paper'],
      ['kraft', 'plain'],
    ]);
    expect(kit).toEqual(kitOf(kit!.members));
  });

  it('says the side where both sides of a sheet are in it, and counts a paper that is in it twice', () => {
    const both = kitWith(
      { held: ledger, areaMm2: null },
      { held: ledgerBack, areaMm2: null },
      { held: bunting, areaMm2: null },
      { held: bunting, areaMm2: null },
    );
    expect(findKit(drawer, both).kit?.members.map(({ name }) => name)).toEqual([
      'Ledger, side A',
      'Ledger, side B',
      'Bunting',
      'Bunting (2)',
    ]);
  });

  it('leaves out what has left the drawer and keeps the places of the rest', () => {
    const gone = { kind: 'sheet', id: 'gone', side: 'A' } as const;
    const { there, kit } = findKit(
      drawer,
      kitWith({ held: gone, areaMm2: null }, { held: ledger, areaMm2: null }),
    );
    expect(there.map(({ index }) => index)).toEqual([1]);
    expect(kit?.members).toHaveLength(1);
    expect(findKit(drawer, kitWith()).kit).toBeNull();
  });

  // Four 5 × 7 in from a 12 in square, round a middle that is left: common practice, no source.
  it('cuts four 5 × 7 from a 12 × 12 with stopped cuts, and mats from the plain they are of', () => {
    const pieces = kitWith(
      { held: bunting, areaMm2: null, sizeMm: inches(5, 7), count: 4 },
      { held: ledger, areaMm2: null, sizeMm: inches(4, 6), mat: { plainId: kraft.id, borderMm: 3.175 } },
    );
    const { cuts } = findKit(drawer, pieces);
    const [first, second, mat] = cuts!.sheets;
    expect([first!.stock.name, first!.layout.style, first!.names.length]).toEqual(['Bunting', 'stopped', 4]);
    expect([second!.stock.name, second!.layout.style]).toEqual(['Ledger', 'edge to edge']);
    expect(mat!.stock.name).toBe('kraft');
    const { width, height } = mat!.layout.placed[0]!;
    expect([width / 25.4, height / 25.4]).toEqual([expect.closeTo(4.25, 6), expect.closeTo(6.25, 6)]);
    expect(cuts!.says.at(-1)).toMatch(/cutting mat/);
    // Nobody said how large the kraft is.
    expect(cuts!.says[0]).toMatch(/^Taken to be 12 × 12 in, as most plains are sold: kraft\./);
    const paperOnly = findKit(drawer, kitWith({ held: bunting, areaMm2: null, sizeMm: inches(5, 7) }));
    expect(paperOnly.cuts!.says.join(' ')).not.toContain('Taken to be');
  });

  it('cuts a part from the sheet that it lies on, and a photograph from none', () => {
    const { cuts } = findKit(
      drawer,
      kitWith(
        { held: corner, areaMm2: null },
        { held: ledger, areaMm2: null, role: 'photo', sizeMm: inches(4, 6) },
      ),
    );
    const sheetOfPart = drawer.parts.find(({ id }) => id === corner.id)!.sheetId;
    expect(cuts!.sheets.map(({ stock }) => stock.id)).toContain(sheetOfPart);
    expect(cuts!.short).toEqual([]);
  });

  it('names a piece without a size as left out of the cutting, once another has one', () => {
    const { cuts } = findKit(
      drawer,
      kitWith(
        { held: bunting, areaMm2: null, sizeMm: inches(4, 6) },
        { held: ledger, areaMm2: null },
        { held: ledger, areaMm2: null, role: 'photo' },
      ),
    );
    expect(cuts!.sheets.map(({ stock }) => stock.name)).toEqual(['Bunting']);
    expect(cuts!.says).toContain('Left out, without a size: Ledger and Ledger (2).');
    expect(cuts!.short).toEqual([]);
  });

  it('has nothing to cut while no piece has a size', () => {
    expect(findKit(drawer, kitWith({ held: bunting, areaMm2: null })).cuts).toBeNull();
  });
});
