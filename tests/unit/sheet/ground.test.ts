import { describe, expect, it } from 'vitest';
import { neutralKind } from '../../../src/colour/neutral.ts';
import { labFromHex } from '../../../src/colour/spaces.ts';
import { baseKind } from '../../../src/sheet/print/base.ts';
import { groundSaid, groundWords } from '../../../src/sheet/print/base-sure.ts';
import { handSide } from '../../support/sides.ts';

const side = (hex: string, lightKnown = true) => handSide({ base: 'cream', hex, lightKnown });

/** b* of #f4e8cd by colorjs.io 0.7.1 (D65): 14.6. The errors of reading that the sureness rests on are ours. */
describe('what stands beside the kind of a base', () => {
  it('is its b*, and how sure the kind is', () => {
    expect(groundSaid(side('#f4e8cd')).b).toBeCloseTo(14.6, 1);
    expect(groundWords(side('#f4e8cd'))).toMatch(/^b\* 14\.\d, 99 % sure$/);
    expect(groundWords(side('#eef3fb'))).toMatch(/^b\* −\d\.\d, /);
  });

  it('is less sure near a border between two kinds, and where the light is unknown', () => {
    const sure = (hex: string, lightKnown?: boolean) => groundSaid(side(hex, lightKnown)).sure!;
    // Chroma just beyond the 5.5 at which a white turns to cream.
    expect(sure('#f5f1e5')).toBeLessThan(0.8);
    expect(sure('#f5f1e5')).toBeGreaterThanOrEqual(0.5);
    expect(sure('#f4e8cd', false)).toBeLessThan(sure('#f4e8cd'));
    expect(sure('#f4e8cd', false)).toBeGreaterThan(sure('#f5f1e5', false));
  });

  it('says nothing of how sure where a hand has set the colour', () => {
    const given = side('#f4e8cd');
    const byHand = { ...given, base: { ...given.base, byHand: true } };
    expect(groundSaid(byHand).sure).toBeNull();
    expect(groundWords(byHand)).not.toMatch(/sure/);
  });
});

/** Hues h*ab by colorjs.io 0.7.1 (D65): 71°, 78° and 86°. That kraft runs from reddish to yellowish brown: common practice, no source. */
describe('kraft', () => {
  it.each(['#bb946c', '#d2b48c', '#bca26d'])('is %s, and a neutral', (hex) => {
    expect(baseKind(labFromHex(hex))).toBe('kraft');
    expect(neutralKind(labFromHex(hex))).toBe('kraft');
  });

  // h*ab 95°, and C*ab 50 at 86°, by the same.
  it.each(['#b5a568', '#c9a54d'])('is not %s: olive and mustard', (hex) => {
    expect(baseKind(labFromHex(hex))).not.toBe('kraft');
    expect(neutralKind(labFromHex(hex))).not.toBe('kraft');
  });
});
