import { expect, it } from 'vitest';
import { foundColour } from '../../../src/harmony/words/found-words.ts';

it('says by which ink a paper repeats another, how much of it there is, and how close it comes', () => {
  expect(foundColour('coral', 0.13, 1.24)).toBe('Coral, 13 % of it, repeats the ink (ΔE₀₀ 1.2).');
  expect(foundColour('navy', 0.004, 0)).toBe('Navy, under 1 % of it, repeats the ink (ΔE₀₀ 0.0).');
});
