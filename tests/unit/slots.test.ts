import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Slots } from '../../components/support/slots.ts';

const from = (first: number, count: number) => Array.from({ length: count }, (_, i) => first + i);
/** What is drawn after each step of a scroll, with the line in hand, as a list of the kind is asked for it. */
const steps = fc.tuple(
  fc.array(fc.tuple(fc.nat(200), fc.integer({ min: 1, max: 14 })), { maxLength: 25 }),
  fc.nat(200),
);

describe('slots of drawn lines', () => {
  it('are each one line’s, and a line keeps its own for as long as it is drawn', () => {
    fc.assert(
      fc.property(steps, ([views, inHand]) => {
        const slots = new Slots();
        let before = new Map<number, number>();
        let most = 0;
        for (const [first, count] of views) {
          const lines = [...new Set([...from(first, count), inHand])].sort((a, b) => a - b);
          const given = slots.of(lines);
          most = Math.max(most, lines.length);
          expect(new Set(given).size).toBe(lines.length);
          for (const [i, line] of lines.entries())
            if (before.has(line)) expect(given[i]).toBe(before.get(line));
          before = new Map(lines.map((line, i) => [line, given[i]!]));
        }
      }),
    );
  });

  it('are taken over, none made, while as many lines are drawn', () => {
    const slots = new Slots();
    const first = new Set(slots.of(from(0, 9)));
    for (const at of [2, 4, 40, 39, 0]) expect(new Set(slots.of(from(at, 9)))).toEqual(first);
  });

  it('turn round, so that only lines that left are moved', () => {
    const slots = new Slots();
    const [a, b, hand, c] = slots.of([0, 1, 2, 3]);
    expect(slots.of([2, 3, 4, 5])).toEqual([hand, c, b, a]);
    // Back up: the last goes to the front.
    expect(slots.of([0, 1, 2, 3])).toEqual([a, b, hand, c]);
  });
});
