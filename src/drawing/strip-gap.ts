import type { Reason } from '../harmony/model.ts';

/** A stretch of lightness, CIELAB L* 0–100. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** The stretch of L* that a pair leaves empty, as its reasons tell it; null where none speaks of one. */
export function gapIn(reasons: readonly Reason[]): Stretch | null {
  const told = reasons.find(({ kind }) => kind === 'lightness range');
  const { gapFrom, gapTo } = told?.evidence ?? {};
  return gapFrom === undefined || gapTo === undefined ? null : { from: gapFrom, to: gapTo };
}
