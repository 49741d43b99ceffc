import { describe, expect, it } from 'vitest';
import { indexById, sheetById } from '../../../src/drawer/by-id.ts';
import {
  allHeld,
  heldKey,
  heldOfKey,
  nameOfHeld,
  otherSideOfHeld,
  ownedFrom,
  pairNames,
  sideOfHeld,
} from '../../../src/drawer/held.ts';
import { placesForKept } from '../../../src/drawer/places.ts';
import { handSide } from '../../support/sides.ts';
import { bunting, corner, kraft, ledger, ledgerBack, sampleNotebook } from '../notebook/sample-notebook.ts';

const { drawer } = sampleNotebook();

describe('what is held', () => {
  it('has one key for each side, plain and part', () => {
    const keys = allHeld(drawer).map(heldKey);
    expect(keys).toEqual([
      'sheet:bunting:A',
      'sheet:ledger:A',
      'sheet:ledger:B',
      'sheet:dots:A',
      'plain:cardstock-kraft',
      'part:corner',
    ]);
    expect(new Set(keys).size).toBe(keys.length);
  });

  it('gives its side, a plain as a side of one colour, and null where it is gone', () => {
    expect(sideOfHeld(drawer, bunting)?.inks).toHaveLength(2);
    expect(sideOfHeld(drawer, kraft)).toMatchObject({ inks: [], base: { share: 1 } });
    expect(sideOfHeld(drawer, corner)).toBe(drawer.parts[0]?.reading);
    expect(sideOfHeld(drawer, { kind: 'sheet', id: 'bunting', side: 'B' })).toBeNull();
    expect(sideOfHeld(drawer, { kind: 'plain', id: 'gone' })).toBeNull();
  });

  it('is named, with its side where there are two', () => {
    expect(nameOfHeld(drawer, bunting)).toBe('Bunting');
    expect(nameOfHeld(drawer, ledgerBack)).toBe('Ledger, side B');
    expect(nameOfHeld(drawer, kraft)).toBe('kraft');
    expect(nameOfHeld(drawer, { kind: 'part', id: 'gone' })).toBe('a paper that is no longer in the drawer');
  });

  it('knows its other side', () => {
    expect(otherSideOfHeld(drawer, ledger)).toBe(drawer.sheets[1]?.sides.B?.reading);
    expect(otherSideOfHeld(drawer, bunting)).toBeNull();
    expect(otherSideOfHeld(drawer, kraft)).toBeNull();
  });
});

describe('a key of the drawer', () => {
  it('leads back to what it names, whatever stands in the id, and to nothing that is not there', () => {
    for (const held of allHeld(drawer)) expect(heldOfKey(drawer, heldKey(held))).toEqual(held);
    const odd = { ...drawer, sheets: [{ ...drawer.sheets[0]!, id: 'a:B\n:A' }] };
    expect(heldOfKey(odd, 'sheet:a:B\n:A:A')).toEqual({ kind: 'sheet', id: 'a:B\n:A', side: 'A' });
    for (const key of [
      '',
      'sheet:bunting',
      'sheet:bunting:B',
      'sheet:gone:A',
      'plain:gone',
      'part:',
      'leaf:a',
    ])
      expect(heldOfKey(drawer, key)).toBeNull();
  });
});

describe('a large drawer', () => {
  it('is not walked through for every paper in it', () => {
    let asked = 0;
    const sheets = Array.from({ length: 2000 }, (_, n) => ({
      ...drawer.sheets[0]!,
      get id() {
        asked += 1;
        return `s${n}`;
      },
    }));
    const large = { ...drawer, sheets };
    for (const held of allHeld(large)) {
      expect(sideOfHeld(large, held)).not.toBeNull();
      nameOfHeld(large, held);
      heldOfKey(large, heldKey(held));
    }
    // Once for the list of all, once for the index.
    expect(asked).toBeLessThanOrEqual(2 * sheets.length);
  });

  it('is looked up as it stands after an edit, and the first of two with one id is the one', () => {
    const [first, second] = drawer.sheets;
    const twice = [first!, { ...second!, id: first!.id }];
    expect(sheetById({ ...drawer, sheets: twice }, first!.id)).toBe(first);
    expect(indexById(drawer.sheets, 'gone')).toBe(-1);
    const less = drawer.sheets.slice(1);
    expect(sheetById({ ...drawer, sheets: less }, first!.id)).toBeUndefined();
    expect(indexById(less, second!.id)).toBe(0);
  });

  it('lists the same things until it changes', () => {
    expect(allHeld(drawer)).toBe(allHeld(drawer));
    expect(allHeld({ ...drawer, plains: [] })).not.toEqual(allHeld(drawer));
  });
});

describe('what two papers are called in a sentence', () => {
  it('is the bare name of a sheet, unless both would be called the same', () => {
    const front = { kind: 'sheet', id: 'ledger', side: 'A' } as const;
    expect(pairNames(drawer, bunting, front).candidate).toBe(drawer.sheets[1]?.name);
    const both = pairNames(drawer, front, { ...front, side: 'B' });
    expect(Object.values(both)).toEqual(['A', 'B'].map((side) => `${drawer.sheets[1]?.name}, side ${side}`));
  });
});

it('what is owned leaves out the sheets that are in play', () => {
  const owned = ownedFrom(drawer, ['bunting']);
  expect(owned.sheets.map(({ id, sides }) => [id, sides.length])).toEqual([
    ['ledger', 2],
    ['dots', 1],
  ]);
  expect(owned.plains).toBe(drawer.plains);
});

describe('the places of inks', () => {
  const fresh = handSide({
    base: 'cream',
    hex: '#f4e8cd',
    inks: [
      ['#1f3a5f', 0.2],
      ['#e2725b', 0.1],
    ],
  });
  const places = { width: 2, height: 2, labels: Uint8Array.of(0, 1, 2, 255) };

  it('stay as they are while the reading is as it was', () => {
    expect(placesForKept(places, fresh, fresh)).toBe(places);
  });

  it('follow the inks when the hand has reordered, set aside or joined them', () => {
    const swapped = { ...fresh, inks: fresh.inks.toReversed() };
    expect([...placesForKept(places, fresh, swapped).labels]).toEqual([0, 2, 1, 255]);
    const aside = { ...fresh, inks: fresh.inks.slice(1) };
    expect([...placesForKept(places, fresh, aside).labels]).toEqual([0, expect.any(Number), 1, 255]);
  });
});
