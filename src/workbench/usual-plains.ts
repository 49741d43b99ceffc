import type { Plain } from '../sheet/model.ts';
import { plainOf } from '../sheet/plain.ts';

/**
 * Cardstocks that most who make pages have, to try things with where a drawer has no neutral of its own. Common
 * practice, no source; the colours are ours, each one that the reading calls by that name.
 */
export function usualNeutrals(): readonly Plain[] {
  return (made ??= hexes.map(([name, hex]) =>
    plainOf({ name: `${name} cardstock`, kind: 'cardstock', hex }),
  ));
}

let made: readonly Plain[] | undefined;

const hexes = [
  ['White', '#fafaf8'],
  ['Cream', '#f4ead2'],
  ['Kraft', '#bd9a6f'],
  ['Black', '#232323'],
] as const;
