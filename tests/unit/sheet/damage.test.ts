import { describe, expect, it } from 'vitest';
import { readSide } from '../../../src/sheet/read-side.ts';
import { type Damage, printed, type SpoiltSheet, spoiltSheet } from '../../support/sheets/kinds.ts';
import { score, swatchesOf } from '../../support/sheets/score.ts';

/** A few sheets a kind, so that a reader made worse is seen at once; `npm run bench -- reading` has sixty a kind. */
describe('a side that the world has spoilt', () => {
  const kinds: readonly [Damage, seeds: readonly number[], found: number, invented: number][] = [
    ['clean', [5001, 5004], 0.99, 0],
    ['jpeg', [5004, 5010], 0.9, 1],
    ['soft scan', [5006, 70015], 0.9, 1],
    ['photo, gains', [5008], 0.85, 1],
    ['photo, spectra', [5005, 5011], 0.75, 2],
  ];
  it.each(kinds)(
    '%s: has its inks, its base, and next to nothing that was not drawn',
    async (kind, seeds, part, most) => {
      const read = await Promise.all(seeds.map(async (seed) => judged(await spoiltSheet(kind, seed))));
      const sum = (of: (one: (typeof read)[number]) => number): number =>
        read.reduce((s, one) => s + of(one), 0);
      expect(sum((one) => one.found) / sum((one) => one.inks)).toBeGreaterThanOrEqual(part);
      expect(sum((one) => one.invented)).toBeLessThanOrEqual(most);
      expect(read.every((one) => one.baseIsRight)).toBe(true);
    },
  );

  it.each([
    ['dots on small motifs alone', 1007, 700],
    ['dots on every motif', 1000, 900],
  ])('printed with screens of 100 lines an inch, scanned at 300: %s', (_, seed, width) => {
    const read = judged(printed(seed, 100, 300, width));
    expect(read.found / read.inks).toBeGreaterThan(0.8);
    expect(read.invented).toBeLessThanOrEqual(1);
    expect(read.baseIsRight).toBe(true);
  });

  // Where two heavy inks' screens meet, the rosette used to fall apart into colours of its own.
  it.each([
    [65, 150, 95002],
    [85, 300, 95071],
    [133, 300, 95080],
  ])(
    'printed in heavy inks with %i lines an inch, scanned at %i: has no ink made of rosettes',
    (lpi, ppi, seed) => {
      const read = judged(printed(seed, lpi, ppi, 900));
      expect(read.found).toBe(read.inks);
      expect(read.invented).toBe(0);
      expect(read.baseIsRight).toBe(true);
    },
  );

  it('has no ink that lies nowhere: one that was made too strong when blur was taken off stays as it showed itself', () => {
    const { inks } = readSide(printed(95024, 175, 150, 900).image);
    expect(Math.min(...inks.map(({ share }) => share))).toBeGreaterThan(0.003);
  });
});

function judged(sheet: SpoiltSheet) {
  const side = readSide(sheet.image, sheet.options);
  const result = score(sheet.truth, swatchesOf(side), sheet.within, sheet.tooSmall);
  return { ...result, baseIsRight: side.base.kind === sheet.truth.baseKind };
}
