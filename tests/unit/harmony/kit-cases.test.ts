import { describe, expect, it } from 'vitest';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import { kitCases, sideOfCase } from './kit-cases.ts';

/** Common practice, no source. They guard what the model does; they are no independent proof of it. */
describe('the kits of the trade', () => {
  it('are at least ten', () => {
    expect(kitCases.length).toBeGreaterThanOrEqual(10);
  });

  for (const { name, members, verdicts, names, missing } of kitCases) {
    it(`says that ${name}`, () => {
      const kit = kitOf(
        members.map((one) => ({
          name: one.name,
          side: sideOfCase(one),
          role: one.role ?? 'paper',
          areaMm2: one.areaMm2 ?? null,
        })),
      );
      const reasons = kit.reasons.map(({ kind, weighs }) => `${kind} ${weighs.toFixed(2)}`).join(', ');
      expect(verdicts, reasons).toContain(kit.verdict);
      for (const [kind, way] of names ?? []) {
        const weights = kit.reasons.filter((one) => one.kind === kind).map(({ weighs }) => weighs);
        const stands = weights.some((w) => (way === 'any' ? true : way === 'for' ? w > 0 : w < 0));
        expect(stands, `${kind} ${way}: ${reasons}`).toBe(true);
      }
      const said = kit.missing.map(({ says }) => says).join(' ');
      if (missing?.length === 0) expect(said).toBe('');
      for (const part of missing ?? []) expect(said).toContain(part);
    });
  }
});
