import type { Side } from '../sheet/model.ts';
import { compare } from './compare.ts';
import type { Advised, CompareOptions, Comparison, MendOptions, Ranked } from './model.ts';
import { rank } from './ranking/rank.ts';
import { remediesFor } from './remedies/remedies.ts';

/**
 * Compares two sides, with what could mend them: `remedies` is worked out when it is first read. With `places` (as
 * `readWithPlaces` gives them) a colour is cut away only where enough of the sheet is without it; else by share alone.
 * @throws RangeError where an ink of a hand-written side has no colour.
 */
export function advise(anchor: Side, candidate: Side, options: CompareOptions & MendOptions = {}): Advised {
  return withRemedies(compare(anchor, candidate, options), options);
}

/** Ranks candidates as `rank` does, each with what could mend it, worked out when it is read. */
export function adviseAll(
  anchor: Side,
  candidates: readonly Side[],
  options: CompareOptions & MendOptions = {},
): (Ranked & Advised)[] {
  return rank(anchor, candidates, options).map((place) => withRemedies(place, options));
}

/** The same value with its remedies. Own and enumerable, so that it spreads and serialises like the rest of it. */
function withRemedies<T extends Comparison>(comparison: T, options: MendOptions): T & Advised {
  let found: Advised['remedies'] | undefined;
  const get = () => (found ??= remediesFor(comparison, options));
  return Object.defineProperty(comparison, 'remedies', { enumerable: true, get }) as T & Advised;
}
