/** Where each item of a list stands: numbers that rise along it. */
export type Positions = ReadonlyMap<string, number>;

/**
 * Positions for a list, given those it had: as many items as can keep theirs do, so that adding, taking out or moving one
 * changes one place and not all that follow. Ours. Items that `old` does not know get a place between their neighbours.
 */
export function positionsOf(ids: readonly string[], old: Positions): Positions {
  const kept = longestRising(ids.map((id) => old.get(id)));
  const places = new Map<string, number>();
  let from: number | null = null;
  for (let at = 0; at < ids.length; ) {
    let end = at;
    while (end < ids.length && !kept.has(end)) end++;
    const to: number | null = end < ids.length ? old.get(ids[end]!)! : null;
    const many = end - at;
    for (let k = 0; k < many; k++) {
      const place: number = between(from, to, k + 1, many);
      // Halved so often that numbers run out: the list is numbered anew.
      if ((from !== null && place <= from) || (to !== null && place >= to)) return numbered(ids);
      places.set(ids[at + k]!, place);
    }
    if (many > 1 && new Set(ids.slice(at, end).map((id) => places.get(id))).size < many) return numbered(ids);
    if (to !== null) places.set(ids[end]!, to);
    from = to;
    at = end + 1;
  }
  return places;
}

function between(from: number | null, to: number | null, nth: number, many: number): number {
  if (from === null) return to === null ? nth : to - (many + 1 - nth);
  return to === null ? from + nth : from + ((to - from) * nth) / (many + 1);
}

function numbered(ids: readonly string[]): Positions {
  return new Map(ids.map((id, at) => [id, at + 1]));
}

/** Indices of a longest subsequence that rises strictly; gaps are left out. Source: patience sorting, from memory. */
function longestRising(values: readonly (number | undefined)[]): ReadonlySet<number> {
  /** Index of the smallest value that ends a rising run of each length. */
  const ends: number[] = [];
  const before = new Array<number>(values.length).fill(-1);
  for (const [at, value] of values.entries()) {
    if (value === undefined) continue;
    let low = 0;
    let high = ends.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if (values[ends[middle]!]! < value) low = middle + 1;
      else high = middle;
    }
    before[at] = ends[low - 1] ?? -1;
    ends[low] = at;
  }
  const rising = new Set<number>();
  for (let at = ends.at(-1) ?? -1; at >= 0; at = before[at]!) rising.add(at);
  return rising;
}
