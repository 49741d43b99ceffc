import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/difference.ts';
import { labFromHex, labFromOklch, oklchFromTuple } from '../../../src/colour/spaces.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { colourIt, onBase } from '../../../src/harmony/further/colour-it.ts';
import { findByColour } from '../../../src/harmony/further/find-that-answers.ts';
import { cellStates, judgeParts } from '../../../src/harmony/further/judge-parts.ts';
import type { Reading, Side } from '../../../src/sheet/model.ts';
import { inkFromHex, plainOf, sideOfPlain } from '../../../src/sheet/plain.ts';
import { handSide } from '../../support/sides.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

/** A reading drawn by hand: each character a cell's label, a dot for nothing. */
function drawn(side: Side, rows: readonly string[]): Reading {
  const labels = Uint8Array.from(rows.join(''), (ch) => (ch === '.' ? 255 : Number(ch)));
  return { side, places: { width: rows[0]!.length, height: rows.length, labels } };
}

describe('the parts of a sheet that hold', () => {
  const anchor = handSide(onCream([c.navy, 0.2], [c.coral, 0.1]));
  const sheet = handSide(onCream([c.navyToo, 0.4], [c.leaf, 0.2]));
  const reading = drawn(sheet, ['111022', '111022', '000022', '111000', '111000', '11100.']);

  it('are shaded cell by cell: holds, rests, alone, nothing', () => {
    const { cells, width, height } = judgeParts(anchor, reading, { across: 2 });
    expect([width, height]).toEqual([6, 6]);
    expect([...cells.slice(0, 6)]).toEqual([
      cellStates.holds,
      cellStates.holds,
      cellStates.holds,
      cellStates.rests,
      cellStates.alone,
      cellStates.alone,
    ]);
    expect(cells.at(-1)).toBe(cellStates.nothing);
  });
});

describe('a thing that takes any colour', () => {
  const anchor = handSide(onCream([c.coral, 0.3]));
  const candidate = handSide(onCream([c.aqua, 0.2], [c.navy, 0.2]));

  it('gets a region whose every colour ties both sheets, and one from the middle of it', () => {
    const { regions, best, answers, says } = colourIt(anchor, candidate);
    expect(regions.length).toBeGreaterThan(0);
    for (const { hueDeg, lightness, chroma } of regions) {
      for (const deg of hueDeg) expect(deg >= 0 && deg < 360).toBe(true);
      // One colour that was tried stands for all that lie nearer to it than to the next.
      expect(lightness[1] - lightness[0]).toBeGreaterThan(8);
      expect(chroma[1] - chroma[0]).toBeGreaterThan(0.035);
      expect(lightness[0] >= 0 && lightness[1] <= 100).toBe(true);
    }
    expect(answers.some((id) => id >= 'a')).toBe(true);
    expect(answers.some((id) => id < 'a')).toBe(true);
    expect(says).toContain('would tie most together');
    for (const side of [anchor, candidate]) {
      const thing = handSide({ base: 'tinted', hex: best!.hex });
      const { links } = compare(side, thing);
      expect(links.some(({ kind }) => kind !== 'unrelated' && kind !== 'near miss')).toBe(true);
      expect(links.every(({ kind }) => kind !== 'near miss')).toBe(true);
    }
  });

  it('names the owned ink that comes nearest, as it looks on the ground it is put on', () => {
    const plains = [
      plainOf({ name: 'navy mist', kind: 'mist', hex: c.navy }),
      plainOf({ name: 'teal pad', kind: 'ink pad', hex: c.teal }),
      plainOf({ name: 'coral pad', kind: 'ink pad', hex: c.coral }),
    ];
    const bare = { ...plains[0]!, takesColour: true };
    const base = inkFromHex(c.kraft, 'ground', 1);
    const { nearest, best, says } = colourIt(anchor, candidate, { plains: [bare, ...plains], base });
    const target = labFromHex(best!.hex);
    for (const { ink } of plains) {
      const seen = labFromOklch(oklchFromTuple(onBase(ink, base).oklch));
      expect(deltaE2000(seen, target)).toBeGreaterThanOrEqual(nearest!.deltaE00 - 0.5);
    }
    const much = nearest!.deltaE00.toFixed(1);
    expect(nearest!.deltaE00).toBeGreaterThan(10);
    expect(says).toContain(
      `Nothing you have comes near on kraft; the nearest, ${nearest!.plain.name}, is ΔE₀₀ ${much} away.`,
    );
    expect(says).not.toContain('comes nearest');
  });

  it('says that one comes nearest only where it comes near', () => {
    const { best } = colourIt(anchor, candidate);
    const plains = [plainOf({ name: 'the right pad', kind: 'ink pad', hex: best!.hex })];
    const { says } = colourIt(anchor, candidate, { plains });
    expect(says).toMatch(/Of what you have, the right pad comes nearest on white \(ΔE₀₀ \d\.\d\)\.$/);
  });

  it('finds nothing where neither sheet has a colour', () => {
    const grey = handSide({ base: 'tinted', hex: c.grey });
    expect(colourIt(grey, grey)).toMatchObject({ best: null, regions: [], answers: [], nearest: null });
    expect(colourIt(grey, grey).says).toContain('No one colour');
  });

  it('darkens an ink on a dark ground, and leaves it as it is on white', () => {
    const aqua = inkFromHex(c.aqua);
    expect(onBase(aqua, inkFromHex('#ffffff')).hex).toBe(c.aqua);
    expect(onBase(aqua, inkFromHex(c.kraft)).oklch[0]).toBeLessThan(aqua.oklch[0]);
    // What lets all light through shows the ground as it is, in each of its three lights.
    for (const ground of ['#804040', '#408040', '#404080']) {
      expect(onBase(inkFromHex('#ffffff'), inkFromHex(ground)).hex).toBe(ground);
    }
  });
});

describe('what have I that repeats this ink', () => {
  const drawer = [
    handSide(onWhite([c.coral, 0.2], [c.navyToo, 0.05])),
    handSide(onWhite([c.leaf, 0.3])),
    sideOfPlain(plainOf({ name: 'navy', kind: 'cardstock', hex: c.navy })),
  ];

  it('is every side with it, nearest first, with the ink that does', () => {
    const found = findByColour(inkFromHex(c.navy), drawer);
    expect(found.map(({ index, ink }) => [index, ink])).toEqual([
      [2, 'A'],
      [0, 'C'],
    ]);
    expect(found[0]!.deltaE00).toBeLessThan(0.1);
    expect(found[1]).toMatchObject({ share: 0.05 });
    expect(findByColour(inkFromHex(c.navy), drawer, 0.5)).toHaveLength(1);
    expect(findByColour(inkFromHex(c.violet), drawer)).toEqual([]);
  });
});
