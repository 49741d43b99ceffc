import type { OkLab } from '../../colour/model.ts';
import { oklabFromOklch, oklchFromTuple } from '../../colour/spaces.ts';
import type { Side } from '../../sheet/model.ts';
import type { OwnedSheet } from '../model.ts';
import type { Told } from '../reasons/build.ts';
import { verdictOrder } from '../rules/verdict.ts';
import { remedyEffort } from '../thresholds.ts';
import { fitness } from './rank.ts';
import { scorerOf } from './score.ts';

/**
 * The sides worth trying in a candidate's place: all of a few sheets; of many, those that a ranking puts first, for only
 * the best is ever offered. Each is tried in full afterwards, which for every sheet of a large drawer takes too long; and of a
 * very large one only those are ranked whose colours and calm, looked at quickly, promise most.
 */
export function likelySwaps({ pair }: Told, sheets: readonly OwnedSheet[]): ReadonlySet<Side> {
  const sides = sheets.flatMap((sheet) => sheet.sides);
  if (sides.length <= remedyEffort.swapsTried) return new Set(sides);
  const score = scorerOf(pair.anchor.side, pair);
  const scored = promising(pair.anchor.side, sides).map((side) => ({ side, ...score(side) }));
  scored.sort(
    (a, b) =>
      verdictOrder.indexOf(a.verdict) - verdictOrder.indexOf(b.verdict) ||
      fitness(b.standing) - fitness(a.standing),
  );
  return new Set(scored.slice(0, remedyEffort.swapsTried).map(({ side }) => side));
}

/** Of very many sides those that share most with the anchor, and rest most, at a quick look. */
function promising(anchor: Side, sides: readonly Side[]): readonly Side[] {
  if (sides.length <= remedyEffort.swapsRanked) return sides;
  const own = coloursOf(anchor);
  const looked = sides.map((side) => ({ side, by: promise(own, coloursOf(side), side) }));
  looked.sort((a, b) => b.by - a.by);
  return looked.slice(0, remedyEffort.swapsRanked).map(({ side }) => side);
}

/** Share of a side's colours that lie near one of the anchor's, and how calm it is; no unit. Ours. */
function promise(own: readonly OkLab[], its: readonly OkLab[], { base, inks, seen }: Side): number {
  const all = [base, ...inks];
  let near = 0;
  for (let i = 0; i < its.length; i++) {
    const { l, a, b } = its[i]!;
    let least = Number.POSITIVE_INFINITY;
    for (const one of own)
      least = Math.min(least, (one.l - l) ** 2 + 4 * ((one.a - a) ** 2 + (one.b - b) ** 2));
    // A small colour counts by more than its area.
    near += Math.sqrt(all[i]!.share) * Math.max(0, 1 - Math.sqrt(least) / 0.1);
  }
  const contrast = seen ? Math.hypot(seen.light, seen.colour) : 10 * inks.length;
  return near + Math.max(0, 1 - contrast / 15);
}

const kept = new WeakMap<Side, readonly OkLab[]>();

function coloursOf(side: Side): readonly OkLab[] {
  const known = kept.get(side);
  if (known) return known;
  const found = [side.base, ...side.inks].map(({ oklch }) => oklabFromOklch(oklchFromTuple(oklch)));
  kept.set(side, found);
  return found;
}
