import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sideOfHeld } from '../../../src/drawer/held.ts';
import { correctedBy } from '../../../src/notebook/apply-hand.ts';
import { applyEdit, type HandEdit } from '../../../src/notebook/edits.ts';
import type { HandChange, HandMade, Ink, Side } from '../../../src/sheet/model.ts';
import { inkFromHex } from '../../../src/sheet/plain.ts';
import { bunting, corner, kraft, sampleNotebook } from './sample-notebook.ts';

const book = sampleNotebook();
const before = sideOfHeld(book.drawer, bunting)!;
const inksOf = (side: Side): readonly Ink[] => [side.base, ...side.inks];
const sum = (side: Side) => inksOf(side).reduce((all, ink) => all + ink.share, 0);

/** A correction of the sample's reading, with the inks that it names. */
function made(change: HandChange, more: Partial<HandMade> = {}): HandMade {
  const ids = ['ink', 'from', 'into'].flatMap(
    (key) => (change as unknown as Record<string, string>)[key] ?? [],
  );
  const named = ids.flatMap((id) => inksOf(before).filter((ink) => ink.id === id));
  return { change, inks: Object.fromEntries(named.map((ink) => [ink.id, ink])), ...more };
}
const edits = (changes: readonly HandMade[]): HandEdit[] =>
  changes.map((one) => ({ do: 'correct', of: bunting, made: one }));
const handled = (...changes: HandMade[]): Side =>
  sideOfHeld(edits(changes).reduce(applyEdit, book).drawer, bunting)!;
const spot = { x: 0.25, y: 0.5 };

describe('the user’s hand on a reading', () => {
  it('reads an ink from another spot, and its names with it', () => {
    const side = handled(made({ kind: 'move-spot', ink: 'B', spot }, { hex: '#c23b4e' }));
    const { oklch, name } = inkFromHex('#c23b4e');
    expect(side.inks[0]).toMatchObject({ hex: '#c23b4e', oklch, name, byHand: true });
  });

  it('renames an ink and leaves the name of its colour', () => {
    const side = handled(made({ kind: 'rename', ink: 'B', name: 'my red' }));
    expect(side.inks[0]).toMatchObject({ trade: 'my red', name: before.inks[0]!.name });
  });

  it('merges two inks and sets one aside without losing area', () => {
    const merged = handled(made({ kind: 'merge', from: 'C', into: 'B' }));
    expect(merged.inks).toHaveLength(1);
    expect(merged.inks[0]?.share).toBeCloseTo(0.21, 12);
    const aside = handled(made({ kind: 'set-aside', ink: 'B', reason: 'shadow' }));
    expect(aside.inks.map((ink) => ink.hex)).toEqual([before.inks[1]!.hex]);
    // What was the shadow of the base is base again.
    expect(aside.base.share).toBeCloseTo(0.79 + 0.11, 9);
    expect(aside.inks[0]?.share).toBeCloseTo(0.1, 9);
  });

  it('merges an ink into the base, and never sets the base aside', () => {
    expect(handled(made({ kind: 'merge', from: 'C', into: 'A' })).base.share).toBeCloseTo(0.89, 12);
    expect(handled(made({ kind: 'set-aside', ink: 'A', reason: 'table' }))).toBe(before);
  });

  it('adds what was missed, and splits one ink that is two', () => {
    const added = handled(made({ kind: 'add', spot }, { hex: '#1f3a5f', share: 0.04 }));
    expect(added.inks.at(-1)).toMatchObject({ id: 'D', hex: '#1f3a5f', accent: true, byHand: true });
    const foil = handled(made({ kind: 'add', hex: '#c0a060', special: 'foil' }));
    expect(foil.inks.at(-1)).toMatchObject({ special: 'foil' });
    const halves = handled(made({ kind: 'split', ink: 'B', spot }, { hex: '#1f3a5f' }));
    expect(halves.inks.map(({ id, hex }) => [id, hex])).toEqual([
      ['B', before.inks[0]!.hex],
      ['C', '#1f3a5f'],
      ['D', before.inks[1]!.hex],
    ]);
    expect(halves.inks[0]!.share).toBeCloseTo(before.inks[0]!.share / 2, 12);
  });

  it('corrects a part too; a plain has nothing to read again', () => {
    const one = made({ kind: 'rename', ink: 'B', name: 'teal' });
    const { parts } = applyEdit(book, { do: 'correct', of: corner, made: { ...one, inks: {} } }).drawer;
    expect(parts[0]?.reading.inks[0]?.trade).toBe('teal');
    expect(applyEdit(book, { do: 'correct', of: kraft, made: one })).toBe(book);
  });

  it('takes one correction back and keeps the others', () => {
    const both = edits([
      made({ kind: 'rename', ink: 'B', name: 'my red' }),
      made({ kind: 'set-aside', ink: 'C', reason: 'shine' }),
    ]).reduce(applyEdit, book);
    const back = applyEdit(both, { do: 'take back', of: bunting, index: 1 });
    const side = sideOfHeld(back.drawer, bunting)!;
    expect(side.inks).toHaveLength(before.inks.length);
    expect(side.inks[0]?.trade).toBe('my red');
    const none = applyEdit(back, { do: 'take back', of: bunting, index: 0 });
    expect(sideOfHeld(none.drawer, bunting)).toEqual(before);
    expect(none.drawer.sheets[0]?.sides.A.hand).toBeUndefined();
    expect(applyEdit(none, { do: 'take back', of: bunting, index: 4 })).toBe(none);
  });

  it('is made again on a fresh reading, though ids and colours have moved a little', () => {
    const [b, c] = before.inks as [Ink, Ink];
    const nudged = ({ oklch: [l, chroma, h], ...ink }: Ink, id: string): Ink => ({
      ...ink,
      id,
      hex: '#123456',
      oklch: [l + 0.02, chroma, h],
    });
    const fresh: Side = { ...before, inks: [nudged(c, 'B'), nudged(b, 'C')] };
    const hand = [
      made({ kind: 'rename', ink: 'B', name: 'my red' }),
      made({ kind: 'set-aside', ink: 'C', reason: 'shine' }),
    ];
    const { reading, asRead } = correctedBy(fresh, hand);
    expect(reading.inks.map((ink) => ink.trade)).toEqual(['my red']);
    expect(asRead).toBe(fresh);
  });

  it('brings back what was to be kept where a fresh reading has lost it', () => {
    const fresh: Side = { ...before, base: { ...before.base, share: 1 }, inks: [] };
    const { reading } = correctedBy(fresh, [made({ kind: 'keep', ink: 'B' })]);
    expect(reading.inks[0]).toMatchObject({ hex: before.inks[0]!.hex, byHand: true });
    expect(reading.inks[0]!.share).toBeCloseTo(before.inks[0]!.share, 12);
    expect(sum(reading)).toBeCloseTo(1, 12);
  });

  it('leaves shares that sum to 1 and ids in order, whatever it does', () => {
    const ink = fc.constantFrom('A', 'B', 'C', 'X');
    const share = fc.double({ noNaN: false });
    const change: fc.Arbitrary<HandChange> = fc.oneof(
      fc.record({ kind: fc.constant('set-share' as const), ink, share }),
      fc.record({ kind: fc.constant('set-aside' as const), ink, reason: fc.constant('dirt' as const) }),
      fc.record({ kind: fc.constant('merge' as const), from: ink, into: ink }),
      fc.record({ kind: fc.constant('split' as const), ink }),
      fc.record({ kind: fc.constant('keep' as const), ink }),
      fc.record({ kind: fc.constant('add' as const), hex: fc.constant('#8040a0') }),
    );
    fc.assert(
      fc.property(fc.array(fc.tuple(change, share), { maxLength: 8 }), (list) => {
        const side = handled(...list.map(([one, at]) => made(one, { share: at })));
        expect(sum(side)).toBeCloseTo(1, 9);
        for (const one of inksOf(side)) expect(one.share).toBeGreaterThanOrEqual(0);
        expect(new Set(inksOf(side).map(({ id }) => id)).size).toBe(inksOf(side).length);
      }),
    );
  });
});
