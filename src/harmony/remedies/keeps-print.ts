import type { MeasuredInk } from '../measure/measured.ts';
import type { Pair } from '../measure/pair.ts';
import type { Change } from '../model.ts';
import { inkLimits } from '../thresholds.ts';

/**
 * Whether both sheets keep a print of more than one colour when some of their inks are covered or cut away: something
 * else than the ground that can be seen, and a strong colour. What is laid on a sheet does not make up for its print.
 */
export function keepsPrint(pair: Pair, changes: readonly Change[]): boolean {
  return (['anchor', 'candidate'] as const).every((of) => {
    const gone = new Set(
      changes.flatMap((change) =>
        (change.kind === 'cover' || change.kind === 'trim') && change.of === of ? [change.ink] : [],
      ),
    );
    if (gone.size === 0) return true;
    const left = pair[of].inks.filter(({ id, share }) => !gone.has(id) && share >= inkLimits.strayShare);
    return left.some(({ isBase }) => !isBase) && left.some(isStrong);
  });
}

function isStrong({ actsAs, chroma }: MeasuredInk): boolean {
  return actsAs === null && chroma >= inkLimits.quietChroma;
}
