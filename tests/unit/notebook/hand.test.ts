import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sideOfHeld } from '../../../src/drawer/find.ts';
import { applyEdit, type HandEdit } from '../../../src/notebook/edits.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { bunting, corner, kraft, sampleNotebook } from './sample-notebook.ts';

const book = sampleNotebook();
const readingAfter = (...edits: HandEdit[]): Side => {
  const side = sideOfHeld(edits.reduce(applyEdit, book).drawer, bunting);
  if (side === null) throw new Error('the sample holds it');
  return side;
};
const sum = (side: Side) => [side.base, ...side.inks].reduce((all, ink) => all + ink.share, 0);

describe('the user’s hand on a reading', () => {
  it('changes a colour, and its names with it', () => {
    const side = readingAfter({ do: 'change ink', of: bunting, inkId: 'B', change: { hex: '#c23b4e' } });
    const fresh = inkFromHex('#c23b4e');
    expect(side.inks[0]).toMatchObject({
      hex: '#c23b4e',
      oklch: fresh.oklch,
      name: fresh.name,
      byHand: true,
    });
  });

  it('keeps a name that was given with the colour', () => {
    const side = readingAfter({
      do: 'change ink',
      of: bunting,
      inkId: 'B',
      change: { hex: '#c23b4e', name: 'my red' },
    });
    expect(side.inks[0]?.name).toBe('my red');
  });

  it('joins two inks and sets one aside without losing area', () => {
    const joined = readingAfter({ do: 'merge inks', of: bunting, from: 'C', into: 'B' });
    expect(joined.inks).toHaveLength(1);
    expect(joined.inks[0]?.share).toBeCloseTo(0.21, 12);
    const aside = readingAfter({ do: 'remove ink', of: bunting, inkId: 'B' });
    expect(aside.inks.map((ink) => ink.id)).toEqual(['C']);
    expect(aside.base.share / aside.inks[0]!.share).toBeCloseTo(0.79 / 0.1, 9);
  });

  it('joins an ink into the base', () => {
    const joined = readingAfter({ do: 'merge inks', of: bunting, from: 'C', into: 'A' });
    expect(joined.base.share).toBeCloseTo(0.89, 12);
  });

  it('corrects a part and a plain likewise', () => {
    const edit = { do: 'change ink', inkId: 'B', change: { name: 'teal' } } as const;
    const parts = applyEdit(book, { ...edit, of: corner }).drawer.parts;
    expect(parts[0]?.reading.inks[0]?.name).toBe('teal');
    const plains = applyEdit(book, {
      do: 'change ink',
      of: kraft,
      inkId: 'A',
      change: { hex: '#a07040', share: 0.2 },
    }).drawer.plains;
    expect(plains[0]?.ink).toMatchObject({ hex: '#a07040', share: 1 });
  });

  it('leaves shares that sum to 1, whatever it does', () => {
    const id = fc.constantFrom('A', 'B', 'C', 'X');
    const share = fc.double({ noNaN: false });
    const edit = fc.oneof(
      fc.record({
        do: fc.constant('change ink' as const),
        of: fc.constant(bunting),
        inkId: id,
        change: fc.record({ share }),
      }),
      fc.record({ do: fc.constant('remove ink' as const), of: fc.constant(bunting), inkId: id }),
      fc.record({ do: fc.constant('merge inks' as const), of: fc.constant(bunting), from: id, into: id }),
      fc.record({
        do: fc.constant('add ink' as const),
        of: fc.constant(bunting),
        ink: share.map((s) => inkFromHex('#8040a0', 'X', s)),
      }),
    );
    fc.assert(
      fc.property(fc.array(edit, { maxLength: 6 }), (edits) => {
        const side = readingAfter(...edits);
        expect(sum(side)).toBeCloseTo(1, 9);
        for (const ink of [side.base, ...side.inks]) expect(ink.share).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});
