import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/harmony/compare.ts';
import { handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';

/** Common practice, no source: every case was written down before any number was tuned. */
describe('the trade cases', () => {
  it('are at least forty', () => {
    expect(tradeCases.length).toBeGreaterThanOrEqual(40);
  });

  for (const { name, anchor, candidate, distance, verdicts, names, never, parts } of tradeCases) {
    if (parts) {
      it(`parts from common practice where it is held that ${name}: ${parts.why}`, () => {
        expect(compare(handSide(anchor), handSide(candidate)).verdict).toBe(parts.verdict);
      });
      continue;
    }
    it(`says that ${name}`, () => {
      const found = compare(handSide(anchor), handSide(candidate), distance ? { distance } : {});
      const reasons = found.reasons.map(({ kind, weighs }) => `${kind} ${weighs.toFixed(2)}`);
      expect(verdicts, reasons.join(', ')).toContain(found.verdict);
      for (const [kind, way] of names ?? []) {
        const weights = found.reasons.filter((one) => one.kind === kind).map(({ weighs }) => weighs);
        const stands = weights.some((w) => (way === 'any' ? true : way === 'for' ? w > 0 : w < 0));
        expect(stands, `${kind} ${way}: ${reasons.join(', ')}`).toBe(true);
      }
      for (const kind of never ?? []) {
        expect(found.reasons.map((one) => one.kind)).not.toContain(kind);
      }
    });
  }
});
