/** Ids of all pictures that are named anywhere in what was stored, whether or not it can be read. */
export function pictureIdsIn(stored: readonly unknown[]): ReadonlySet<string> {
  const ids = new Set<string>();
  const left: unknown[] = [...stored];
  for (let value = left.pop(); left.length > 0 || value !== undefined; value = left.pop()) {
    if (typeof value !== 'object' || value === null) continue;
    for (const [key, inside] of Object.entries(value)) {
      if (key === 'pictureId' && typeof inside === 'string') ids.add(inside);
      else if (typeof inside === 'object') left.push(inside);
    }
  }
  return ids;
}
