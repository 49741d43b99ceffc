import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/difference.ts';
import { labFromHex } from '../../../src/colour/spaces.ts';
import { UnknownInk, withHand } from '../../../src/sheet/hand/hand.ts';
import type { HandChange, HandMade, Ink, PixelImage, Reading } from '../../../src/sheet/model.ts';
import { readWithPlaces } from '../../../src/sheet/read-side.ts';

const cream = '#f3e8ce';
const coral = '#e26f57';
const navy = '#22355a';
const leaf = '#6c9a4f';

/** Cream, with a coral half of the right half, a navy stripe, and a small leaf-green square. */
const paper = (x: number, y: number): string => {
  if (x >= 150 && y < 12) return leaf;
  if (x >= 80 && y >= 60) return coral;
  return x >= 20 && x < 36 ? navy : cream;
};
const image = painted(160, 120, paper);
const reading = readWithPlaces(image);
const idOf = (hex: string, from = reading): string =>
  inksOf(from).reduce((best, ink) => (far(ink.hex, hex) < far(best.hex, hex) ? ink : best)).id;

describe('corrections by hand', () => {
  it('rename an ink, and mark it as set by hand', () => {
    const { side } = withHand(reading, [{ kind: 'rename', ink: idOf(coral), name: 'old barn' }]);
    expect(inksOf(side).find((ink) => ink.trade === 'old barn')).toMatchObject({ byHand: true });
  });

  it('merge two inks: shares add, places follow, the one it becomes part of keeps its colour', () => {
    const [from, into] = [idOf(leaf), idOf(navy)];
    const shares = inkById(from).share + inkById(into).share;
    const after = withHand(reading, [{ kind: 'merge', from, into }]);
    expect(after.side.inks).toHaveLength(reading.side.inks.length - 1);
    const joint = inkNear(after, navy);
    expect(joint.share).toBeCloseTo(shares, 9);
    expect(joint.hex).toBe(inkById(into).hex);
    expect(labelAt(after, 155, 6)).toBe(labelAt(after, 28, 60));
  });

  it('mix the colours of merged inks in linear light, where that is asked for', () => {
    // Equal parts of black and white are 50 % linear light, which is 188 in sRGB (IEC 61966-2-1).
    const halves = readWithPlaces(painted(64, 64, (x) => (x < 32 ? '#000000' : '#ffffff')));
    const after = withHand(halves, [{ kind: 'merge', from: 'B', into: 'A' }], undefined, { merged: 'mixed' });
    expect(far(after.side.base.hex, '#bcbcbc')).toBeLessThan(1);
    expect(after.side.inks).toHaveLength(0);
    expect(after.side.base.share).toBe(1);
  });

  it('split an ink into the two colours that its places hold, by their area', () => {
    const joint = withHand(reading, [{ kind: 'merge', from: idOf(navy), into: idOf(coral) }]);
    const after = withHand(joint, [{ kind: 'split', ink: idOf(coral, joint) }], image);
    expect(far(inkNear(after, coral).hex, coral)).toBeLessThan(2);
    expect(far(inkNear(after, navy).hex, navy)).toBeLessThan(2);
    expect(inkNear(after, navy).share).toBeCloseTo(0.1, 1);
    expect(labelAt(after, 28, 60)).not.toBe(labelAt(after, 120, 90));
  });

  it('split an ink where it was tapped', () => {
    const joint = withHand(reading, [{ kind: 'merge', from: idOf(navy), into: idOf(coral) }]);
    const tap: HandChange = { kind: 'split', ink: idOf(coral, joint), spot: { x: 28 / 160, y: 0.5 } };
    expect(far(inkNear(withHand(joint, [tap], image), navy).hex, navy)).toBeLessThan(1);
  });

  it('split an ink in halves where there is no picture to tell', () => {
    const after = withHand(reading, [{ kind: 'split', ink: idOf(coral) }]);
    const twins = inksOf(after).filter((ink) => ink.hex === inkById(idOf(coral)).hex);
    expect(twins.map(({ share }) => share)).toEqual(Array(2).fill(inkById(idOf(coral)).share / 2));
  });

  it('set a shadow aside to what it lies on, what is not printed to the base, and the table to nothing', () => {
    // The green square touches cream alone; coral touches cream alone too, so put green beside coral.
    const beside = painted(160, 120, (x, y) =>
      y >= 60 && x >= 60 ? (x >= 100 && x < 120 && y >= 80 && y < 100 ? navy : coral) : cream,
    );
    const read = readWithPlaces(beside);
    const id = idOf(navy, read);
    const share = (hex: string, r: Reading) => inkNear(r, hex).share;
    const shadow = withHand(read, [{ kind: 'set-aside', ink: id, reason: 'shadow' }]);
    expect(share(coral, shadow)).toBeCloseTo(share(coral, read) + share(navy, read), 9);
    expect(shadow.places.labels[90 * 160 + 110]).toBe(shadow.places.labels[70 * 160 + 70]);
    const bare = withHand(read, [{ kind: 'set-aside', ink: id, reason: 'not printed' }]);
    expect(bare.side.base.share).toBeCloseTo(read.side.base.share + share(navy, read), 9);
    const table = withHand(read, [{ kind: 'set-aside', ink: id, reason: 'table' }]);
    expect(table.places.labels[90 * 160 + 110]).toBe(255);
    expect(share(coral, table) / table.side.base.share).toBeCloseTo(
      share(coral, read) / read.side.base.share,
      9,
    );
  });

  it('set a share, and scale all others alike', () => {
    const after = withHand(reading, [{ kind: 'set-share', ink: idOf(coral), share: 0.5 }]);
    expect(inkNear(after, coral).share).toBeCloseTo(0.5, 9);
    const ratio = (r: Reading) => inkNear(r, navy).share / r.side.base.share;
    expect(ratio(after)).toBeCloseTo(ratio(reading), 9);
  });

  it('add an ink that was missed from a spot: its colour past a speck, its places and its share', () => {
    const without = withHand(reading, [{ kind: 'set-aside', ink: idOf(leaf), reason: 'not printed' }]);
    const specked = { ...image, data: image.data.slice() };
    specked.data.set([255, 255, 255, 255], (6 * 160 + 155) * 4);
    const after = withHand(without, [{ kind: 'add', spot: { x: 155.5 / 160, y: 6.5 / 120 } }], specked);
    const added = after.side.inks.at(-1)!;
    expect(far(added.hex, leaf)).toBeLessThan(1);
    expect(added.share).toBeCloseTo(120 / (160 * 120), 2);
    expect(labelAt(after, 153, 3)).toBe(after.side.inks.length);
  });

  it('add a foil that no picture shows, as it is told', () => {
    const after = withHand(reading, [{ kind: 'add', hex: '#c9a227', special: 'foil' }]);
    expect(after.side.inks.at(-1)).toMatchObject({
      hex: '#c9a227',
      special: 'foil',
      byHand: true,
    });
    expect(after.side.inks.at(-1)!.share).toBeCloseTo(0.02, 9);
    expect(after.places).toEqual(reading.places);
  });

  it('read an ink from another spot', () => {
    const after = withHand(
      reading,
      [{ kind: 'move-spot', ink: idOf(leaf), spot: { x: 0.9, y: 0.9 } }],
      image,
    );
    expect(inksOf(after).filter((ink) => far(ink.hex, coral) < 1)).toHaveLength(2);
  });

  it('refuse a bare correction of an ink that is not there, and say which', () => {
    expect(() => withHand(reading, [{ kind: 'keep', ink: 'Q' }])).toThrow(UnknownInk);
    expect(() => withHand(reading, [{ kind: 'rename', ink: 'Q', name: 'x' }])).toThrow('ink Q');
  });

  it('find their ink again by its colour on another reading, whose letters are in another order', () => {
    // Much more navy: it comes before coral now, and both are a little off what they were.
    const again = readWithPlaces(
      painted(160, 120, (x, y) => (x >= 130 && y >= 60 ? '#dd6d58' : x < 60 ? '#25385b' : cream)),
    );
    expect(idOf(coral, again)).not.toBe(idOf(coral));
    const made: HandMade = {
      change: { kind: 'rename', ink: idOf(coral), name: 'old barn' },
      inks: { [idOf(coral)]: inkById(idOf(coral)) },
    };
    const named = inksOf(withHand(again, [made])).filter((ink) => ink.trade === 'old barn');
    expect(named.map(({ hex }) => far(hex, coral) < 3)).toEqual([true]);
  });

  it('are left out on a reading that lost the ink, but what was to be kept comes back', () => {
    const bare = readWithPlaces(painted(160, 120, (x) => (x < 60 ? navy : cream)));
    const was = inkById(idOf(leaf));
    const remembered = (change: HandChange): HandMade => ({ change, inks: { [was.id]: was } });
    expect(withHand(bare, [remembered({ kind: 'set-share', ink: was.id, share: 0.4 })])).toEqual(bare);
    const back = withHand(bare, [remembered({ kind: 'keep', ink: was.id })]).side.inks.at(-1)!;
    expect(back).toMatchObject({ hex: was.hex, byHand: true });
    expect(back.share).toBeCloseTo(was.share, 9);
  });

  it('keep shares summing to 1, labels in range and ids in order, whatever is done in whatever order', () => {
    const id = fc.constantFrom('A', 'B', 'C', 'D');
    const spot = fc.record({
      x: fc.double({ min: 0, max: 1, noNaN: true }),
      y: fc.double({ min: 0, max: 1, noNaN: true }),
    });
    const change: fc.Arbitrary<HandChange> = fc.oneof(
      fc.record({ kind: fc.constant('rename' as const), ink: id, name: fc.string() }),
      fc.record({ kind: fc.constant('merge' as const), from: id, into: id }),
      fc.record({ kind: fc.constant('split' as const), ink: id }),
      fc.record({ kind: fc.constant('split' as const), ink: id, spot }),
      fc.record({ kind: fc.constant('keep' as const), ink: id }),
      fc.record({
        kind: fc.constant('set-aside' as const),
        ink: id,
        reason: fc.constantFrom('shadow', 'shine', 'table', 'dirt', 'not printed'),
      }),
      fc.record({
        kind: fc.constant('set-share' as const),
        ink: id,
        share: fc.double({ min: 0, max: 1, noNaN: true }),
      }),
      fc.record({ kind: fc.constant('add' as const), spot }),
      fc.record({ kind: fc.constant('add' as const), hex: fc.constantFrom('#ffd700', '#000', '#8899aa') }),
      fc.record({ kind: fc.constant('move-spot' as const), ink: id, spot }),
    );
    const small = painted(40, 30, (x, y) => paper(4 * x, 4 * y));
    const read = readWithPlaces(small);
    fc.assert(
      fc.property(fc.array(change, { maxLength: 8 }), fc.boolean(), (changes, remembered) => {
        // Remembered corrections are left out where their ink is gone; bare ones throw, which is tested above.
        const made = changes.map(
          (one): HandMade => ({ change: one, inks: remembered ? byId(read) : {}, hex: '#777777' }),
        );
        const after = withHand(read, made, small);
        const inks = inksOf(after);
        expect(inks.reduce((sum, ink) => sum + ink.share, 0)).toBeCloseTo(1, 9);
        expect(inks.every(({ share }) => share >= 0 && share <= 1 + 1e-12)).toBe(true);
        expect(inks.map((ink) => ink.id)).toEqual(inks.map((_, n) => String.fromCharCode(65 + n)));
        expect(after.places.labels.every((k) => k === 255 || k < inks.length)).toBe(true);
        expect(withHand(read, made, small)).toEqual(after);
      }),
      { numRuns: 100, seed: 4 },
    );
  }, 30_000);
});

function painted(width: number, height: number, at: (x: number, y: number) => string): PixelImage {
  const data = new Uint8ClampedArray(width * height * 4);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const n = Number.parseInt(at(x, y).slice(1), 16);
      data.set([n >> 16, (n >> 8) & 255, n & 255, 255], (y * width + x) * 4);
    }
  return { data, width, height };
}

function inksOf(of: Reading | Reading['side']): readonly Ink[] {
  const side = 'side' in of ? of.side : of;
  return [side.base, ...side.inks];
}

function byId(of: Reading): Record<string, Ink> {
  return Object.fromEntries(inksOf(of).map((ink) => [ink.id, ink]));
}

function inkById(id: string): Ink {
  return byId(reading)[id]!;
}

function inkNear(of: Reading, hex: string): Ink {
  return inksOf(of).reduce((best, ink) => (far(ink.hex, hex) < far(best.hex, hex) ? ink : best));
}

function far(p: string, q: string): number {
  return deltaE2000(labFromHex(p), labFromHex(q));
}

/** The label at a pixel: the places are as large as the picture here. */
function labelAt({ places }: Reading, x: number, y: number): number {
  return places.labels[y * places.width + x]!;
}
