import { describe, expect, it } from 'vitest';
import { answerLimits, tieWeights } from '../../../src/harmony/thresholds.ts';

/** Ours: what the numbers must do together, wherever each of them stands. Each alone is held where it is used. */
describe('the weights of ties', () => {
  it('reach what makes a bridge or an answer for every kind of tie of colour, even small and at its border', () => {
    const { repeat, tonal, neighbour, opposite } = tieWeights;
    expect(repeat.least * repeat.atLimit).toBeGreaterThanOrEqual(answerLimits.tie);
    for (const kind of [tonal, neighbour, opposite]) expect(kind.least).toBeGreaterThan(answerLimits.tie);
  });
});
