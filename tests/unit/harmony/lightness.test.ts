import { describe, expect, it } from 'vitest';
import { compare } from '../../../src/harmony/compare.ts';
import { type HandSide, handSide } from '../../support/sides.ts';

/** Which colours the range of light and dark is read from: ours, those of 1 % of a sheet and more. */
const rangeOf = (of: 'anchor' | 'candidate', share: number) => {
  const plain: HandSide = { base: 'tinted', hex: '#b9b4ae', inks: [['#8d8f94', 0.3]] };
  const specked: HandSide = { ...plain, inks: [...plain.inks!, ['#101010', share]] };
  const found =
    of === 'anchor'
      ? compare(handSide(specked), handSide(plain))
      : compare(handSide(plain), handSide(specked));
  const told = found.reasons.find(({ kind }) => kind === 'lightness range')!;
  return { dark: told.evidence.darkest as number, gap: told.evidence.gapTo };
};

describe('the range from dark to light', () => {
  it.each(['anchor', 'candidate'] as const)(
    'leaves out specks on the %s, and counts what can be seen',
    (of) => {
      expect(rangeOf(of, 0.009).dark).toBeGreaterThan(50);
      expect(rangeOf(of, 0.009).gap).toBeUndefined();
      expect(rangeOf(of, 0.011).dark).toBeLessThan(10);
      expect(rangeOf(of, 0.011).gap).toBeDefined();
    },
  );
});
