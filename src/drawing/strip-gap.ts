import type { Reason } from '../harmony/model.ts';

/** A stretch of lightness, CIELAB L* 0–100. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The stretch of L* that a pair leaves empty, as its reasons tell it; null where none speaks of one. */
export function gapIn(reasons: readonly Reason[]): Stretch | null {
  // Of lightness only an empty stretch speaks for a pair: the others are flat, or full.
  const told = reasons.find(({ kind, weighs }) => kind === 'lightness range' && weighs > 0);
  const { gapFrom, gapTo } = told?.evidence ?? {};
  return gapFrom === undefined || gapTo === undefined ? null : { from: gapFrom, to: gapTo };
}
