import type { Standing } from '../model.ts';
import type { Judged } from './model.ts';
import { standingWeights } from './whole-thresholds.ts';

/** What a ranking goes by after the verdict: a paper that shares a colour stands before one that only keeps quiet. Source: ours. */
export function standingOf({ balance, all }: Pick<Judged, 'balance' | 'all'>): Standing {
  let [ties, quarrels] = [0, 0];
  for (const { name, size, counts } of all) {
    ties += (standingWeights[name] ?? 0) * size;
    if (counts < 0) quarrels -= counts;
  }
  return { ties, quarrels, balance };
}
