import type { Side } from '../../sheet/model.ts';
import type { OwnedSheet } from '../model.ts';
import type { Told } from '../reasons/build.ts';
import { remedyEffort } from '../thresholds.ts';
import { scorerOf } from './score.ts';
import { emptyLines, LinesOfMany } from './score-lines.ts';

/**
 * The sides worth trying in a candidate's place: all of a few sheets; of many, those that a ranking puts first, for only
 * the best is ever offered. Each is tried in full afterwards, which for every sheet of a large drawer takes too long.
 */
export function likelySwaps({ pair }: Told, sheets: readonly OwnedSheet[]): ReadonlySet<Side> {
  const sides = sheets.flatMap((sheet) => sheet.sides);
  if (sides.length <= remedyEffort.swapsTried) return new Set(sides);
  measure(sides);
  const score = scorerOf(pair.anchor.side, pair.distance, pair.strip);
  const one = emptyLines();
  const scored = sides.map((side) => {
    const { many, index } = measured.get(side)!;
    const { verdict, worst } = score(many.of(index, one));
    return { side, verdict, worst };
  });
  scored.sort((a, b) => a.verdict - b.verdict || a.worst - b.worst);
  return new Set(scored.slice(0, remedyEffort.swapsTried).map(({ side }) => side));
}

/** A side is measured once, with those that came with it: every pair that a page shows is tried with the same drawer. */
const measured = new WeakMap<Side, { readonly many: LinesOfMany; readonly index: number }>();

function measure(sides: readonly Side[]): void {
  const fresh = sides.filter((side) => !measured.has(side));
  if (fresh.length === 0) return;
  const many = new LinesOfMany(fresh);
  for (const [index, side] of fresh.entries()) measured.set(side, { many, index });
}
