import { describe, expect, it } from 'vitest';
import { filterHeld } from '../../../src/drawer/filter.ts';
import { heldKey } from '../../../src/drawer/held.ts';
import { bridgesBetween, rankDrawer, repeatsOfInk } from '../../../src/drawer/matching-papers.ts';
import type { Drawer } from '../../../src/drawer/model.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';
import type { Sheet, Side } from '../../../src/sheet/model.ts';
import { plainOf } from '../../../src/sheet/plain.ts';
import { handInk, handSide } from '../../support/sides.ts';

const sheet = (id: string, name: string, A: Side, B?: Side): Sheet => ({
  id,
  name,
  sides: { A: { reading: A, pictureId: null }, ...(B ? { B: { reading: B, pictureId: null } } : {}) },
  sizeMm: { width: 305, height: 305 },
  weight: null,
  count: 1,
  note: id === 'rose' ? 'From the crème box' : '',
});
const drawer: Drawer = {
  sheets: [
    sheet(
      'rose',
      'Rose vine',
      handSide({
        base: 'cream',
        hex: '#f4e8cd',
        inks: [
          ['#c23b4e', 0.2],
          ['#4f7a4a', 0.1],
        ],
        scale: 'large',
        tags: { motifs: ['floral'] },
      }),
    ),
    sheet(
      'dots',
      'Navy dots',
      handSide({
        base: 'white',
        hex: '#fafafa',
        inks: [['#1f3a5f', 0.2]],
        scale: 'small',
        tags: { motifs: ['dot'] },
      }),
      handSide({ base: 'cream', hex: '#f2e6cb', inks: [['#c13a4f', 0.1]] }),
    ),
    sheet(
      'loud',
      'Carnival',
      handSide({
        base: 'white',
        hex: '#ffffff',
        inks: [
          ['#7a1fd0', 0.5],
          ['#20d040', 0.3],
        ],
      }),
    ),
  ],
  plains: [
    plainOf({ name: 'Kraft', kind: 'cardstock', hex: '#b08d62' }),
    plainOf({ name: 'Navy thread', kind: 'thread', hex: '#203b60' }),
  ],
  parts: [],
};
const keys = (list: readonly { held: Parameters<typeof heldKey>[0] }[]) =>
  list.map((one) => heldKey(one.held));
const rose = { kind: 'sheet', id: 'rose', side: 'A' } as const;
const dots = { kind: 'sheet', id: 'dots', side: 'A' } as const;

describe('looking through the drawer', () => {
  it.each([
    [{}, 6],
    [{ words: 'navy' }, 3],
    [{ words: 'NAVY thr' }, 1],
    [{ words: 'creme' }, 1],
    [{ words: 'purple elephants' }, 0],
    [{ kinds: ['plain'] }, 2],
    [{ bases: ['cream'], kinds: ['sheet'] }, 2],
    [{ scales: ['small', 'large'] }, 2],
    [{ motifs: ['floral', 'dot'], kinds: [] }, 2],
    [{ finishes: ['watercolour'] }, 0],
  ] as const)('for %o finds %i', (filter, count) => {
    expect(filterHeld(drawer, filter)).toHaveLength(count);
  });
});

describe('what repeats an ink', () => {
  it('is found by colour, closest first, whatever it is made of', () => {
    const found = repeatsOfInk(drawer, handInk('#1f3a5f', 'x', 0.1));
    expect(keys(found)).toEqual(['sheet:dots:A', 'plain:thread-navy-thread']);
    expect(found[0]?.deltaE00).toBeCloseTo(0, 6);
    expect(found[1]?.deltaE00).toBeLessThan(2);
  });

  it('is nothing where nothing does', () => {
    expect(repeatsOfInk(drawer, handInk('#00ffff', 'x', 0.1))).toEqual([]);
  });
});

describe('the drawer against an anchor', () => {
  it('is ranked without the anchor, best first, each place with its reasons', () => {
    const ranked = rankDrawer(drawer, rose);
    expect(ranked).toHaveLength(5);
    expect(keys(ranked)).not.toContain('sheet:rose:A');
    const places = ranked.map((one) => verdictOrder.indexOf(one.ranked.verdict));
    expect(places).toEqual(places.toSorted());
    expect(keys(ranked).indexOf('sheet:dots:B')).toBeLessThan(keys(ranked).indexOf('sheet:loud:A'));
    for (const { ranked: place } of ranked) expect(place.reasons.length).toBeGreaterThan(0);
    expect(rankDrawer(drawer, { ...rose, id: 'gone' })).toEqual([]);
  });
});

describe('a bridge between two papers', () => {
  it('holds together with both, and is neither of them nor their other side', () => {
    const bridges = bridgesBetween(drawer, rose, dots);
    expect(keys(bridges)).toContain('plain:cardstock-kraft');
    expect(keys(bridges).join()).not.toMatch(/rose|dots|loud/);
    for (const { toFirst, toSecond } of bridges) {
      expect([toFirst.verdict, toSecond.verdict]).toEqual(['holds-together', 'holds-together']);
    }
  });
});
