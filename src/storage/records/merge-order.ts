/**
 * One order of all ids of two lists that began as one. Whoever moved something says how what both hold is ordered (this
 * side where both did); what the other side added stands after what it followed there.
 */
export function mergedOrder(
  before: readonly string[],
  mine: readonly string[],
  theirs: readonly string[],
): readonly string[] {
  const rules = isMoved(before, mine) || !isMoved(before, theirs) ? mine : theirs;
  const adds = rules === mine ? theirs : mine;
  const ruled = new Set(rules);
  const after = new Map<string | null, string[]>();
  let last: string | null = null;
  for (const id of adds) {
    if (ruled.has(id)) last = id;
    else after.set(last, [...(after.get(last) ?? []), id]);
  }
  return [...(after.get(null) ?? []), ...rules.flatMap((id) => [id, ...(after.get(id) ?? [])])];
}

/** True where those that both lists hold stand in another order. */
function isMoved(before: readonly string[], now: readonly string[]): boolean {
  const [was, is] = [new Set(before), new Set(now)];
  const kept = before.filter((id) => is.has(id));
  return now.filter((id) => was.has(id)).some((id, at) => id !== kept[at]);
}
