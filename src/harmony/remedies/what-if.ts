import type { Side } from '../../sheet/model.ts';
import { compare } from '../compare.ts';
import type { Change, CompareOptions, Comparison } from '../model.ts';
import { applyChanges } from './changes.ts';

/**
 * Compares again as if the changes were made. Ink ids in the changes are the ones that `compare` gave (A, B … and
 * a, b …); pass the sides of that comparison. Leave a change out, and it is undone.
 */
export function whatIf(
  anchor: Side,
  candidate: Side,
  changes: readonly Change[],
  options: CompareOptions = {},
): Comparison {
  const laid = applyChanges(anchor, candidate, changes, options.strip);
  return compare(laid.anchor, laid.candidate, { ...options, strip: laid.strip });
}
