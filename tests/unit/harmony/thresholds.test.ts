import { describe, expect, it } from 'vitest';
import * as thresholds from '../../../src/harmony/thresholds.ts';

/**
 * The numbers that are our own choice (O), as they were tuned on the written trade cases. They are pinned here so that
 * none moves unnoticed: whoever moves one runs the trade cases, the kits and the steadiness test again and says why.
 */
describe('the numbers that judge', () => {
  it('let every kind of tie of colour reach the limit that holds two papers, even small and at its border', () => {
    const { repeat, tonal, neighbour, opposite } = thresholds.tieWeights;
    const { tie } = thresholds.verdictLimits;
    expect(repeat.least * repeat.atLimit).toBeGreaterThanOrEqual(tie);
    for (const kind of [tonal, neighbour, opposite]) expect(kind.least).toBeGreaterThan(tie);
  });
});
