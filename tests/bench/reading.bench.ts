import type { PixelImage } from '../../src/sheet/model.ts';
import { readSide } from '../../src/sheet/read-side.ts';
import { type Damage, damages, type SpoiltSheet, spoiltSheet } from '../support/sheets/kinds.ts';
import { boxBlurred, cropped, quantizers } from '../support/sheets/quantizers.ts';
import { type Score, score, swatchesOf } from '../support/sheets/score.ts';
import { plainRow } from './reading-plain.ts';
import { speedRows } from './reading-speed.ts';

/** Sheets a kind, and the first seed; none of these seeds was looked at while the numbers that judge were set. */
const sheets = Number(process.env.QUIREWISE_SHEETS ?? 60);
const firstSeed = Number(process.env.QUIREWISE_SEED ?? 110_000);
/** Only these kinds, by parts of their names; empty for all, and then how fast. */
const wanted = (process.env.QUIREWISE_KINDS ?? '').split(',').filter((word) => word !== '');

interface Tally {
  inks: number;
  found: number;
  accents: number;
  accentsFound: number;
  invented: number;
  sheets: number;
  kinds: number;
  shareOver: number;
  tooSmall: number;
}

/**
 * How well sides are read, by kind of damage: the reader beside general-purpose quantizers that are told the true number of
 * colours (and the right white, or a blur of the right size); then how fast, beside one pass of summing.
 */
export async function bench(print: (line: string) => void): Promise<void> {
  print(
    `${sheets} sheets a kind, seeds ${firstSeed}–${firstSeed + sheets - 1}; an ink is found within ΔE₀₀ 3 (photographs 5, halftone 4)`,
  );
  print(
    'kind                reader               inks   accents  invented in 10  base kind  shares off by over 2',
  );
  for (const kind of damages)
    if (!wanted.length || wanted.some((word) => kind.includes(word))) await kindRows(kind, print);
  if (wanted.length) return;
  print('');
  plainRow(print);
  print('');
  await speedRows(print);
}

async function kindRows(kind: Damage, print: (line: string) => void): Promise<void> {
  const ours = emptyTally();
  const theirs = quantizers.map(emptyTally);
  for (let seed = firstSeed; seed < firstSeed + sheets; seed++) {
    const sheet = await spoiltSheet(kind, seed);
    const side = readSide(sheet.image, sheet.options);
    add(ours, score(sheet.truth, swatchesOf(side), sheet.within, sheet.tooSmall), sheet);
    if (side.base.kind === sheet.truth.baseKind) ours.kinds++;
    const helped = help(sheet);
    quantizers.forEach((quantizer, n) => {
      const swatches = quantizer.swatches(helped, sheet.truth.inks.length).map((rgb) => ({ rgb, share: 0 }));
      add(theirs[n]!, score(sheet.truth, swatches, sheet.within, sheet.tooSmall), sheet);
    });
  }
  print(row(kind, 'Quirewise', ours, true));
  quantizers.forEach((quantizer, n) => {
    print(row('', quantizer.name, theirs[n]!, false));
  });
  if (ours.tooSmall)
    print(`                    (${ours.tooSmall} inks under two screen periods, not among the accents)`);
}

/** What a quantizer is given: the sheet alone, balanced by the card where there is one, its dots blurred away. */
function help({ image, options, period }: SpoiltSheet): PixelImage {
  const { card } = options;
  if (!card) return period ? boxBlurred(image, period) : image;
  const sums = [0, 0, 0];
  let n = 0;
  for (let y = card.y + 4; y < card.y + card.height - 4; y++)
    for (let x = card.x + 4; x < card.x + card.width - 4; x++, n++)
      for (let c = 0; c < 3; c++) {
        const v = image.data[(y * image.width + x) * 4 + c]! / 255;
        sums[c]! += v <= 0.04045 ? v / 12.92 : ((v + 0.055) / 1.055) ** 2.4;
      }
  const reflectance = card.reflectance ?? 0.9;
  return cropped(image, options.crop, [
    sums[0]! / n / reflectance,
    sums[1]! / n / reflectance,
    sums[2]! / n / reflectance,
  ]);
}

function emptyTally(): Tally {
  return {
    inks: 0,
    found: 0,
    accents: 0,
    accentsFound: 0,
    invented: 0,
    sheets: 0,
    kinds: 0,
    shareOver: 0,
    tooSmall: 0,
  };
}

function add(tally: Tally, result: Score, sheet: SpoiltSheet): void {
  tally.inks += result.inks;
  tally.found += result.found;
  tally.accents += result.accents;
  tally.accentsFound += result.accentsFound;
  tally.invented += result.invented;
  tally.sheets++;
  tally.tooSmall += sheet.tooSmall.length;
  if (result.shareError > 2) tally.shareOver++;
}

function row(kind: string, name: string, t: Tally, whole: boolean): string {
  const percent = (part: number, of: number): string =>
    `${((100 * part) / Math.max(1, of)).toFixed(1)} %`.padStart(8);
  const first = `${kind.padEnd(20)}${name.padEnd(20)}${percent(t.found, t.inks)} ${percent(t.accentsFound, t.accents)}`;
  const invented = ((10 * t.invented) / t.sheets).toFixed(2).padStart(14);
  return whole
    ? `${first}${invented}${percent(t.kinds, t.sheets).padStart(12)}${String(t.shareOver).padStart(14)}`
    : `${first}${invented}`;
}
