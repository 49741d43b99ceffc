import { describe, expect, it } from 'vitest';
import { decidingColours } from '../../../src/harmony/reasons/deciding-colours.ts';
import { needsABridge } from '../../support/hand-made.ts';

const [first] = needsABridge.reasons;
const of = (reasons: readonly object[], turnedBy: readonly number[], verdict = 'needs-a-bridge') =>
  decidingColours({
    ...needsABridge,
    verdict: verdict as 'needs-a-bridge',
    reasons: reasons.map((one) => ({ ...first!, ...one })),
    decision: { ...needsABridge.decision, turnedBy, leads: reasons.length },
  })?.map(({ id }) => id) ?? null;

/** Source: ours; the rule is that what is shown large is what the verdict was said to turn on. */
describe('the two colours that decide', () => {
  it('are those that the reason names which turned the verdict, the anchor’s first', () => {
    expect(decidingColours(needsABridge)?.map(({ id }) => id)).toEqual(['C', 'c']);
    expect(of([{ inks: ['D', 'd'] }, { inks: ['C', 'c'] }], [1])).toEqual(['C', 'c']);
  });

  it('have hues where what turned it also names neutrals', () => {
    expect(of([{ inks: ['A', 'a'] }, { inks: ['C', 'c'] }], [0, 1])).toEqual(['C', 'c']);
    expect(of([{ inks: ['A', 'a'] }, { inks: ['C', 'c'] }], [0])).toEqual(['A', 'a']);
  });

  it('come from a reason told that weighs the way the verdict went, where what turned it names no two', () => {
    const reasons = [{ inks: [] }, { inks: ['D', 'd'], weighs: 0.4 }, { inks: ['C', 'c'], weighs: -0.3 }];
    expect(of(reasons, [0])).toEqual(['C', 'c']);
    expect(of(reasons, [0], 'holds-together')).toEqual(['D', 'd']);
  });

  it('are none where no reason told names a colour of each', () => {
    expect(of([{ inks: [] }, { inks: ['A', 'B'] }, { inks: ['C', 'c'], weighs: 0 }], [0])).toBeNull();
  });
});
