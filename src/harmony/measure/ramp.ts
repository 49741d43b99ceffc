/** 0 at `from` and beyond it, 1 at `to`, straight between; `from` may be the larger. */
export function ramp(value: number, from: number, to: number): number {
  const along = (value - from) / (to - from);
  return Math.min(1, Math.max(0, along));
}

/** From one number to another as `along` goes 0–1. */
export function between(from: number, to: number, along: number): number {
  return from + (to - from) * along;
}
