import { describe, expect, it } from 'vitest';
import { readSide } from '../../../src/sheet/read-side.ts';
import { toImage } from '../../support/sheets/draw-sheet.ts';
import { score, swatchesOf } from '../../support/sheets/score.ts';
import { spoiltStrokes } from '../../support/sheets/stroke-kinds.ts';
import { drawStrokes } from '../../support/sheets/strokes.ts';

/** Sheets whose inks are drawn, so that the truth is known; `npm run bench -- reading-strokes` has 28 a kind. */
describe('a paper of thin strokes', () => {
  it.each([310014, 310021])('has no wash, no colour twice and none of hardly any share: seed %i', (seed) => {
    const drawn = drawStrokes(seed);
    const side = readSide(toImage(drawn));
    const inks = [side.base, ...side.inks];
    expect(side.ramps ?? []).toEqual([]);
    expect(new Set(inks.map(({ hex }) => hex)).size).toBe(inks.length);
    expect(Math.min(...inks.map(({ share }) => share))).toBeGreaterThan(0.003);
    expect(score(drawn.truth, swatchesOf(side), 3).missed).toEqual([]);
  });

  it('photographed, has the colour of strokes that a lens has blurred, though no broad inks meet', async () => {
    const sheet = await spoiltStrokes('photo', 310002);
    const read = score(sheet.truth, swatchesOf(readSide(sheet.image, sheet.options)), sheet.within);
    expect(read.missed).toEqual([]);
  });
});
