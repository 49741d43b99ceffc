import { expect, it } from 'vitest';
import { fromUnit, inUnit, sizeWords } from '../../components/picture/lengths.ts';

it('says lengths that are kept in whole millimetres as the inches that they are', () => {
  expect(sizeWords({ width: 305, height: 152.5 })).toMatch(/\(12 × 6 in\)$/);
  expect(sizeWords({ width: 216, height: 279 })).toMatch(/\(8\.5 × 11 in\)$/);
  expect(inUnit(229, 'in')).toBe('9');
  // What is no eighth stays as it is, and what was typed comes back.
  expect(inUnit(100, 'in')).toBe('3.937');
  for (const inches of [0.75, 3.4, 5, 11.125])
    expect(Number(inUnit(fromUnit(inches, 'in'), 'in'))).toBeCloseTo(inches, 9);
});
