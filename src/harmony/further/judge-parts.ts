import type { Frame, Places, Reading, Side } from '../../sheet/model.ts';
import { namesIn } from '../found.ts';
import { familyPlaces } from '../measure/family-places.ts';
import { bothChromatic } from '../measure/links.ts';
import { type MeasuredSide, measureSide } from '../measure/measured.ts';
import { type Pair, pairOf } from '../measure/pair.ts';
import { isGathered, takeSide } from '../measure/take-side.ts';
import type { CompareOptions, FamilySide, JudgedParts, JudgedSquare } from '../model.ts';
import { judge } from '../rules/verdict.ts';
import { tieWeight } from '../rules/weights.ts';
import { answerLimits, inkLimits, troubleWeights } from '../thresholds.ts';
import { said } from '../words/ink-word.ts';
import { bladeCaution } from '../words/remedy-sentences.ts';
import * as sentences from '../words/study-sentences.ts';

/** What a cell of judged parts says: nothing read; holds; a neutral or quiet colour, which rests; alone or a near miss. */
export const cellStates = { nothing: 0, holds: 1, rests: 2, alone: 3 } as const;

/**
 * Which parts of a sheet hold with an anchor: every cell by its ink, and the sheet in squares, each judged by what lies
 * in it. `across` is the number of squares along the longer side (default 6),
 * `sheetMm` the length of that side, where it is known.
 */
export function judgeParts(
  anchorSide: Side,
  reading: Reading,
  options: CompareOptions & { readonly across?: number; readonly sheetMm?: number } = {},
): JudgedParts {
  const anchor = measureSide(takeSide(anchorSide, 'anchor'), 'anchor');
  const candidate = takeSide(reading.side, 'candidate');
  const whole = pairOf(anchor, measureSide(candidate, 'candidate'), options.distance, options.strip);
  const places = isGathered(reading.side) ? reading.places : familyPlaces(reading.places, candidate);
  const across = options.across ?? 6;
  const squares = framesOf(places, across).map((frame) =>
    squareOf(anchor, candidate, places, frame, options),
  );
  return {
    width: places.width,
    height: places.height,
    cells: cellsOf(whole, places),
    squares,
    says: saysOf(whole, squares, options, options.sheetMm ? options.sheetMm / across : null),
    ...(squares.some(({ worthCutting }) => worthCutting) ? { caution: bladeCaution } : {}),
  };
}

function cellsOf(pair: Pair, places: Places): Uint8Array {
  const troubled = new Set(troubledInks(pair));
  const byLabel = pair.candidate.inks.map((ink) =>
    troubled.has(ink.id)
      ? cellStates.alone
      : ink.actsAs !== null || ink.chroma < inkLimits.quietChroma
        ? cellStates.rests
        : cellStates.holds,
  );
  return places.labels.map((label) => byLabel[label] ?? cellStates.nothing);
}

/** Ids of the candidate's inks that a trouble worth saying speaks of. */
function troubledInks(pair: Pair): string[] {
  return judge(pair)
    .troubles.filter(({ weight }) => weight >= troubleWeights.worthSaying)
    .flatMap(({ inks }) => inks)
    .filter(({ of, actsAs }) => of === 'candidate' && actsAs === null)
    .map(({ id }) => id);
}

/** Squares that tile the places, in pixels of them. */
function framesOf({ width, height }: Places, across: number): Frame[] {
  const side = Math.max(1, Math.ceil(Math.max(width, height) / across));
  const frames: Frame[] = [];
  for (let y = 0; y < height; y += side) {
    for (let x = 0; x < width; x += side) {
      frames.push({ x, y, width: Math.min(side, width - x), height: Math.min(side, height - y) });
    }
  }
  return frames;
}

function squareOf(
  anchor: MeasuredSide,
  candidate: FamilySide,
  places: Places,
  frame: Frame,
  options: CompareOptions,
): JudgedSquare {
  const part = measureSide(sideIn(candidate, places, frame), 'candidate');
  const pair = pairOf(anchor, part, options.distance, options.strip);
  const { verdict, troubles } = judge(pair);
  const ties = pair.tied
    .filter(({ link, a, b }) => link.kind !== 'unrelated' && link.kind !== 'near miss' && bothChromatic(a, b))
    .map((tied) => ({ id: tied.a.id, weight: tieWeight(tied, pair.distance) }))
    .filter(({ weight }) => weight >= answerLimits.tie)
    .sort((one, other) => other.weight - one.weight);
  const answers = [...new Set(ties.map(({ id }) => id))];
  const alone = [...new Set(troubledInks(pair))];
  const quarrels = troubles.some(({ inks, weight }) => inks.length > 0 && weight >= answerLimits.trouble);
  return {
    frame: {
      x: frame.x / places.width,
      y: frame.y / places.height,
      width: frame.width / places.width,
      height: frame.height / places.height,
    },
    verdict,
    worthCutting: answers.length > 0 && !quarrels && alone.length === 0,
    answers,
    alone,
  };
}

/** The side as it would be read from this part alone. */
function sideIn(side: FamilySide, { width, labels }: Places, frame: Frame): FamilySide {
  const counts = new Array<number>(side.inks.length + 1).fill(0);
  for (let y = frame.y; y < frame.y + frame.height; y++) {
    for (let x = frame.x; x < frame.x + frame.width; x++) {
      const label = labels[y * width + x]!;
      if (label < counts.length) counts[label]!++;
    }
  }
  const total = counts.reduce((a, b) => a + b, 0) || 1;
  return {
    ...side,
    base: { ...side.base, share: counts[0]! / total },
    inks: side.inks
      .map((ink, i) => ({ ...ink, share: counts[i + 1]! / total }))
      .filter(({ share }) => share > 0),
    families: side.families.filter((_, i) => i === 0 || counts[i]! > 0),
  };
}

function saysOf(
  pair: Pair,
  squares: readonly JudgedSquare[],
  options: CompareOptions,
  sideMm: number | null,
): string[] {
  const names = namesIn(options);
  const worth = squares.filter(({ worthCutting }) => worthCutting);
  if (squares.length > 0 && worth.length === squares.length) return [sentences.allHold()];
  const named = new Map(
    [...pair.anchor.inks, ...pair.candidate.inks].map((ink) => [ink.id, said(ink, names)]),
  );
  const assumed = pair.candidate.side.print.assumedSize === true;
  const counted = (count: number) => ({ count, of: squares.length, sideMm, assumed });
  const groups = groupsOf(worth.map(({ answers }) => answers.slice(0, 3)));
  const lines = groups.map(({ ids, count }) =>
    sentences.squaresAnswer(
      counted(count),
      ids.map((id) => named.get(id)!),
    ),
  );
  const alone = groupsOf(squares.flatMap((square) => square.alone.map((id) => [id])));
  const everywhere = alone.filter(({ count }) => count === squares.length).map(({ ids }) => ids[0]!);
  const none = squares.some(({ answers }) => answers.length > 0)
    ? sentences.noneHold(everywhere.map((id) => named.get(id)!))
    : sentences.noneAnswer();
  const told = lines.length > 0 ? [] : everywhere;
  return [
    ...(lines.length > 0 ? lines : [none]),
    ...alone
      .filter(({ ids }) => !(told.includes(ids[0]!) && none.includes(`(${ids[0]})`)))
      .map(({ ids, count }) => sentences.squaresAlone(counted(count), named.get(ids[0]!)!)),
  ];
}

/** Equal lists counted, the commonest first. */
function groupsOf(lists: readonly (readonly string[])[]): { ids: readonly string[]; count: number }[] {
  const counts = new Map<string, { ids: readonly string[]; count: number }>();
  for (const ids of lists) {
    const key = ids.join(' ');
    counts.set(key, { ids, count: (counts.get(key)?.count ?? 0) + 1 });
  }
  return [...counts.values()].sort((one, other) => other.count - one.count);
}
