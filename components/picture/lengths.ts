import type { SizeMm } from '../../src/sheet/model.ts';
import { soldSizes } from '../../src/sheet/sold-sizes.ts';

export type LengthUnit = 'in' | 'mm';

/** Millimetres of an inch, exactly. Source: International yard and pound agreement, 1959. */
export const mmPerInch = 25.4;

/** The sizes that papers are sold in, by what they are called. */
export const paperSizes: readonly { readonly label: string; readonly size: SizeMm }[] = [
  { label: '12 × 12 in', size: soldSizes.twelve },
  { label: '8 × 8 in', size: soldSizes.eight },
  { label: '6 × 6 in', size: soldSizes.six },
  { label: '8½ × 11 in', size: soldSizes.letter },
  { label: 'A4', size: soldSizes.a4 },
];

/** Where a size stands in `paperSizes`, upright or on its side; −1 where it is another. */
export function paperIndex(size: SizeMm): number {
  return paperSizes.findIndex(
    (paper) => same(paper.size, size) || same({ width: paper.size.height, height: paper.size.width }, size),
  );
}

/** "76 × 102 mm (3 × 4 in)". */
export function sizeWords({ width, height }: SizeMm): string {
  const inch = (mm: number) => tidy(inInches(mm), 2);
  return `${Math.round(width)} × ${Math.round(height)} mm (${inch(width)} × ${inch(height)} in)`;
}

/** What a paper of this size is sold as, "12 × 12 in"; its measures where it is no such size. */
export function paperWords(size: SizeMm): string {
  return paperSizes[paperIndex(size)]?.label ?? sizeWords(size);
}

/** Millimetres as a number in a unit, without digits that mean nothing. */
export function inUnit(mm: number, unit: LengthUnit): string {
  return unit === 'in' ? tidy(inInches(mm), 3) : tidy(mm, 1);
}

/** Inches of a length; to the eighth where it lies within half a millimetre of one, for lengths are kept in whole millimetres. */
function inInches(mm: number): number {
  const eighths = Math.round((mm / mmPerInch) * 8) / 8;
  return Math.abs(eighths * mmPerInch - mm) <= 0.5 ? eighths : mm / mmPerInch;
}

export function fromUnit(value: number, unit: LengthUnit): number {
  return unit === 'in' ? value * mmPerInch : value;
}

/** How far a length may go, in the unit in which it is typed. */
export function lengthSpan(
  what: string,
  { least, most }: { readonly least: number; readonly most: number },
  unit: LengthUnit,
): { readonly what: string; readonly least: number; readonly most: number; readonly unit: string } {
  const perUnit = unit === 'in' ? mmPerInch : 1;
  return { what, least: least / perUnit, most: most / perUnit, unit };
}

/** Within a millimetre: a stored 305 and 304.8 are one size. */
function same(a: SizeMm, b: SizeMm): boolean {
  return Math.abs(a.width - b.width) < 1 && Math.abs(a.height - b.height) < 1;
}

function tidy(value: number, digits: number): string {
  return String(Number(value.toFixed(digits)));
}
