import { readSide } from '../../src/sheet/read-side.ts';
import { score, swatchesOf } from '../support/sheets/score.ts';
import { type StrokeDamage, spoiltStrokes, strokeDamages } from '../support/sheets/stroke-kinds.ts';

/** Sheets a kind, and the first seed; none of these seeds was looked at while the numbers that judge were set. */
const sheets = Number(process.env.QUIREWISE_SHEETS ?? 28);
const firstSeed = Number(process.env.QUIREWISE_SEED ?? 210_000);

/**
 * How well papers of thin strokes (ruled, gridded, outlined, pinstriped, 2–5 px) are read, by kind of damage; and how
 * often what no paper has was told: a wash where none was drawn, one colour twice, one of hardly any share.
 */
export async function bench(print: (line: string) => void): Promise<void> {
  print(
    `${sheets} sheets a kind, seeds ${firstSeed}–${firstSeed + sheets - 1}; an ink is found within ΔE₀₀ 3 (strokes under 4 px of a JPEG 6, photographs 5, halftone 4)`,
  );
  print('kind             inks   accents  invented in 10  base kind  false washes  twice or of no share');
  for (const kind of strokeDamages) print(await row(kind));
}

async function row(kind: StrokeDamage): Promise<string> {
  let [asked, found, accents, accentsFound, invented, kinds, washes, empty] = [0, 0, 0, 0, 0, 0, 0, 0];
  for (let seed = firstSeed; seed < firstSeed + sheets; seed++) {
    const sheet = await spoiltStrokes(kind, seed);
    const side = readSide(sheet.image, sheet.options);
    const result = score(sheet.truth, swatchesOf(side), sheet.within, sheet.tooSmall);
    const inks = [side.base, ...side.inks];
    asked += result.asked;
    found += result.askedFound;
    accents += result.accents;
    accentsFound += result.accentsFound;
    invented += result.invented;
    if (side.base.kind === sheet.truth.baseKind) kinds++;
    if (side.ramps?.length) washes++;
    if (new Set(inks.map(({ hex }) => hex)).size < inks.length || inks.some(({ share }) => share < 0.0005))
      empty++;
  }
  const percent = (part: number, of: number): string =>
    `${((100 * part) / Math.max(1, of)).toFixed(1)} %`.padStart(8);
  return (
    kind.padEnd(14) +
    percent(found, asked) +
    percent(accentsFound, accents) +
    ((10 * invented) / sheets).toFixed(2).padStart(14) +
    percent(kinds, sheets).padStart(13) +
    String(washes).padStart(12) +
    String(empty).padStart(16)
  );
}
