import { chance } from '../chance.ts';
import { colours } from '../colours.ts';
import { writing, writingWidth } from '../letters.ts';
import { type Outline, print, type Raster, sideMm } from '../raster.ts';
import { rectangle } from '../shapes.ts';

/** A page of the orchard's minutes, written close and printed to the edges. */
export function minuteBook(raster: Raster): void {
  print(raster, page(6.4, 1.7, 20.4, 0.2, 0), colours.brown);
}

/** The same hand at twice the size, with a ruled line under each row: the back of the ledger. */
export function ledgerEntries(raster: Raster): void {
  const rules: Outline[] = [];
  for (let row = 0; row < 10; row += 1) rules.push(rectangle(0, 26 + row * 30.5, sideMm, 1.6));
  print(raster, rules, colours.sage);
  print(raster, page(8.6, 2.2, 30.5, 0.1, 3), colours.brown);
}

/** Rows of sentences that run on from edge to edge, as a printed text paper has them. */
function page(size: number, pen: number, leading: number, slant: number, from: number): Outline[] {
  const next = chance(97);
  const outlines: Outline[] = [];
  let sentence = from;
  for (let y = leading * 0.7; y < sideMm + leading; y += leading) {
    let x = -next() * 60;
    while (x < sideMm) {
      const words = `${minutes[sentence % minutes.length]} `;
      outlines.push(...writing(words, x, y, size, pen, slant));
      x += writingWidth(words, size);
      sentence += 1;
    }
  }
  return outlines;
}

const minutes = [
  'the ladder by the north gate is to be mended before the picking.',
  'nine baskets of early fruit were carried to the press.',
  'the bees have taken to the new hedge, and are to be left alone.',
  'it was agreed that the children may have the windfalls.',
  'rain from noon, so the table was laid in the barn.',
  'forty jars were filled, and one was dropped.',
  'the old quilt is to hang behind the table again.',
] as const;
