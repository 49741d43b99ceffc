import { packedBlocks } from '../../../reference-data/iscc-nbs/blocks.ts';
import { packedNames } from '../../../reference-data/iscc-nbs/names.ts';
import type { Lab, Munsell } from '../model.ts';
import { munsellFromLab } from '../munsell/munsell.ts';

/**
 * The ISCC-NBS name of a CIELAB D65 colour, as published: "moderate reddish orange", "light bluish gray".
 * Source: `iscc-nbs`.
 */
export function isccName(lab: Lab): string {
  return isccNameOf(isccNumber(lab));
}

/** The number of that name, 1–267. */
export function isccNumber(lab: Lab): number {
  return isccNumberOfMunsell(munsellFromLab(lab));
}

/** The number of the name of a Munsell colour, by the block it falls in. */
export function isccNumberOfMunsell({ hue, value, chroma }: Munsell): number {
  // Ranges begin at 1R: what lies before it belongs to the last, 9RP to 1R (99–101).
  const place = hue === null ? 1 : hue < 1 ? hue + 100 : hue;
  const range = ranges().find((r) => place >= r.from && place < r.to)!;
  const v = Math.min(value, 9.999999);
  const { blocks } = range;
  for (let i = 0; i < blocks.length; i += 5)
    if (v >= blocks[i]! && v < blocks[i + 1]! && chroma >= blocks[i + 2]! && chroma < blocks[i + 3]!)
      return blocks[i + 4]!;
  throw new RangeError(`No block holds hue ${hue}, value ${value}, chroma ${chroma}`);
}

/** The name of a number 1–267. @throws RangeError outside. */
export function isccNameOf(number: number): string {
  const name = names()[number - 1];
  if (name === undefined) throw new RangeError(`No ISCC-NBS name has the number ${number}`);
  return name;
}

interface HueRange {
  readonly from: number;
  readonly to: number;
  /** Value from, value to, chroma from, chroma to, number; five a block. */
  readonly blocks: readonly number[];
}

let keptRanges: readonly HueRange[] | undefined;
let keptNames: readonly string[] | undefined;

function names(): readonly string[] {
  keptNames ??= packedNames.split(',');
  return keptNames;
}

function ranges(): readonly HueRange[] {
  keptRanges ??= packedBlocks.map((line) => {
    const [hues, blocks] = line.split(':') as [string, string];
    const [from, to] = hues.split(' ').map(Number) as [number, number];
    const numbers = blocks.split(',').flatMap((block) => block.trim().split(' ').map(Number));
    return {
      from,
      to,
      blocks: numbers.map((n, i) => (i % 5 === 3 && n === 99 ? Number.POSITIVE_INFINITY : n)),
    };
  });
  return keptRanges;
}
