import { LazyComparison } from '../../src/harmony/lazy-comparison.ts';
import { measureSide } from '../../src/harmony/measure/measured.ts';
import { takeSide } from '../../src/harmony/measure/take-side.ts';
import type { CompareOptions } from '../../src/harmony/model.ts';
import type { Told } from '../../src/harmony/reasons/build.ts';
import type { Side } from '../../src/sheet/model.ts';

/** Two sides with all that a reason or a remedy is told from. */
export function toldOf(anchor: Side, candidate: Side, options: CompareOptions = {}): Told {
  return new LazyComparison(measureSide(takeSide(anchor, 'anchor'), 'anchor'), candidate, options).told;
}
