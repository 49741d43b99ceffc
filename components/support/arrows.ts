/** Where a key leads to from a place in rows of so many; null where it leads nowhere. */
export function placeAfter(key: string, at: number, last: number, abreast: number): number | null {
  const steps: Readonly<Record<string, number>> = {
    ArrowUp: -abreast,
    ArrowDown: abreast,
    ...(abreast > 1 ? { ArrowLeft: -1, ArrowRight: 1 } : {}),
  };
  if (key === 'Home' || key === 'End') return key === 'Home' ? 0 : last;
  const to = at + (steps[key] ?? 0);
  return steps[key] === undefined || to < 0 || to > last ? null : to;
}
