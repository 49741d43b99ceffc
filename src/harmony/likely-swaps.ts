import type { Side } from '../sheet/model.ts';
import type { OwnedSheet } from './model.ts';
import type { Told } from './reasons/build.ts';
import { scorerOf } from './score.ts';
import { emptyLines, type Lines, linesOf } from './score-lines.ts';
import { takeSide } from './take-side.ts';
import { remedyEffort } from './thresholds.ts';

/**
 * The sides worth trying in a candidate's place: all of a few sheets; of many, those that a ranking puts first, for only
 * the best is ever offered. Each is tried in full afterwards, which for a drawer of ten thousand would take a minute.
 */
export function likelySwaps({ pair }: Told, sheets: readonly OwnedSheet[]): ReadonlySet<Side> {
  const sides = sheets.flatMap((sheet) => sheet.sides);
  if (sides.length <= remedyEffort.swapsTried) return new Set(sides);
  const score = scorerOf(pair.anchor.side, pair.distance, pair.strip);
  const scored = sides.map((side) => ({ side, ...score(linesOfSide(side)) }));
  scored.sort((a, b) => a.verdict - b.verdict || a.worst - b.worst);
  return new Set(scored.slice(0, remedyEffort.swapsTried).map(({ side }) => side));
}

/** A side is measured once: every pair that a page shows is tried with the same drawer. */
const measured = new WeakMap<Side, Lines>();

function linesOfSide(side: Side): Lines {
  const before = measured.get(side);
  if (before !== undefined) return before;
  const lines = linesOf(takeSide(side, 'candidate'), emptyLines());
  measured.set(side, lines);
  return lines;
}
