/** A verdict given to a pair by limits that were set without its pictures; `step` −1, 0 or 1. */
export interface Guess {
  readonly pair: number;
  readonly step: number;
}

/**
 * Verdicts by a value and two limits, the limits set anew for each pair on what is left when its pictures are out: `both` takes
 * out every pair that holds either picture; `one` takes out one picture after another, and so guesses each pair twice.
 */
export function guessedWithout(
  pairs: readonly { readonly a: string; readonly b: string }[],
  value: readonly number[],
  truth: readonly number[],
  leave: 'one' | 'both',
): Guess[] {
  const all = pairs.map((_, i) => i);
  const without = (out: readonly string[]): number[] =>
    all.filter((i) => !out.includes(pairs[i]!.a) && !out.includes(pairs[i]!.b));
  const guess = (i: number, kept: readonly number[]): Guess => {
    const [low, high] = limitsOf(
      kept.map((k) => value[k]!),
      kept.map((k) => truth[k]!),
    );
    return { pair: i, step: value[i]! >= high ? 1 : value[i]! >= low ? 0 : -1 };
  };
  if (leave === 'both') return all.map((i) => guess(i, without([pairs[i]!.a, pairs[i]!.b])));
  const pictures = [...new Set(pairs.flatMap(({ a, b }) => [a, b]))];
  return pictures.flatMap((picture) => {
    const kept = without([picture]);
    return all.filter((i) => !kept.includes(i)).map((i) => guess(i, kept));
  });
}

/** Part of guesses that agree, and that say the opposite. */
export function agreement(
  guess: readonly number[],
  truth: readonly number[],
): { agrees: number; opposite: number } {
  return {
    agrees: guess.filter((g, i) => g === truth[i]).length / guess.length,
    opposite: guess.filter((g, i) => g * truth[i]! === -1).length / guess.length,
  };
}

/** Limits by which each verdict is given as often as it is true. */
function limitsOf(value: readonly number[], truth: readonly number[]): [low: number, high: number] {
  const sorted = [...value].sort((p, q) => p - q);
  const between = (n: number): number =>
    n <= 0
      ? Number.NEGATIVE_INFINITY
      : n >= sorted.length
        ? Number.POSITIVE_INFINITY
        : (sorted[n - 1]! + sorted[n]!) / 2;
  const apart = truth.filter((t) => t === -1).length;
  const bridge = truth.filter((t) => t === 0).length;
  return [between(apart), between(apart + bridge)];
}
