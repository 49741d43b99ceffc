import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { balancedAreas, extensionOf, lightValue } from '../../../src/colour/extension.ts';
import { relationsAmong } from '../../../src/colour/relations.ts';
import { hueDistanceDeg, oklchFromHex } from '../../../src/colour/spaces.ts';
import { narrowestTemplate } from '../../../src/colour/templates.ts';
import {
  hueFromPainter,
  painterFromHue,
  painterSteps,
  placeOnWheel,
  wheelDistanceDeg,
} from '../../../src/colour/wheels.ts';

const degrees = fc.double({ min: 0, max: 360, noNaN: true, maxExcluded: true });
const hueOf = (hex: string) => oklchFromHex(hex).h!;

describe('the painter’s wheel', () => {
  test('comes back from every hue and every place within a hundredth of a degree', () => {
    fc.assert(
      fc.property(degrees, (d) => {
        expect(hueDistanceDeg(hueFromPainter(painterFromHue(d)), d)).toBeLessThan(0.01);
        expect(hueDistanceDeg(painterFromHue(hueFromPainter(d)), d)).toBeLessThan(0.01);
      }),
      { numRuns: 2000 },
    );
  });

  test('goes round once, always the same way', () => {
    let turned = 0;
    for (let p = 0; p < 360; p += 0.25) {
      const step = (hueFromPainter(p) - hueFromPainter(p + 0.25) + 360) % 360;
      expect(step).toBeGreaterThan(0);
      expect(step).toBeLessThan(2);
      turned += step;
    }
    expect(turned).toBeCloseTo(360, 6);
  });

  test('puts its twelve steps thirty degrees apart, yellow first', () => {
    expect(painterSteps.map(({ name }) => name)).toEqual(
      'yellow,yellow-orange,orange,red-orange,red,red-violet,violet,blue-violet,blue,blue-green,green,yellow-green'.split(
        ',',
      ),
    );
    for (const { hueDeg, painterDeg } of painterSteps) {
      expect(hueDistanceDeg(painterFromHue(hueDeg), painterDeg)).toBeLessThan(1e-6);
      expect(hueFromPainter(painterDeg)).toBeCloseTo(hueDeg, 9);
    }
  });

  // Common practice, no source: the complements that colour is taught with.
  test.each([
    ['red and green', '#d7263d', '#2e7d32'],
    ['orange and blue', '#f28500', '#1f4e9c'],
    ['yellow and violet', '#f7d038', '#6f3fa8'],
  ])('sets %s opposite, where the eye’s wheel does not', (_, a, b) => {
    const painter = wheelDistanceDeg(hueOf(a), hueOf(b), 'painter');
    expect(painter).toBeGreaterThan(180 - 18);
    expect(wheelDistanceDeg(hueOf(a), hueOf(b), 'eye')).toBeLessThan(painter);
  });

  test('leaves the eye’s wheel as it is', () => {
    expect(placeOnWheel(370, 'eye')).toBe(10);
    expect(placeOnWheel(18.6, 'painter')).toBeCloseTo(120, 9);
  });
});

describe('figures of the wheel', () => {
  const held = (...hues: number[]) => hues.map((hueDeg, i) => ({ id: String.fromCharCode(65 + i), hueDeg }));
  const kinds = (hues: number[]) => relationsAmong(held(...hues), 'eye').map(({ kind }) => kind);

  test('are recognised where they are, and are not off', () => {
    expect(relationsAmong(held(10, 190), 'eye')).toEqual([
      { kind: 'complementary', wheel: 'eye', ids: ['A', 'B'], offDeg: 0 },
    ]);
    expect(kinds([0, 150, 210])).toEqual(['split complementary']);
    expect(kinds([350, 110, 230])).toEqual(['triad']);
    expect(kinds([5, 95, 185, 275]).filter((kind) => kind === 'tetrad')).toHaveLength(1);
    expect(kinds([5, 65, 185, 245])).toContain('tetrad');
    expect(kinds([340, 0, 20])).toEqual(['analogous']);
  });

  test('say how far they are off', () => {
    expect(relationsAmong(held(10, 180), 'eye')).toMatchObject([{ kind: 'complementary', offDeg: 10 }]);
    expect(relationsAmong(held(0, 120, 247), 'eye')).toMatchObject([{ kind: 'triad', offDeg: 7 }]);
    expect(relationsAmong(held(0, 40, 70), 'eye')).toMatchObject([{ kind: 'analogous', offDeg: 10 }]);
  });

  test('name the lone hue of a split complementary first', () => {
    expect(relationsAmong(held(150, 0, 210), 'eye')[0]!.ids[0]).toBe('B');
  });

  test('are not seen where they are not', () => {
    expect(kinds([0, 100])).toEqual([]);
    expect(kinds([0, 90, 160])).toEqual([]);
    expect(kinds([])).toEqual([]);
    expect(kinds([12])).toEqual([]);
  });

  test('of neighbours are told once, with all that belong to them', () => {
    const found = relationsAmong(held(0, 10, 20, 30), 'eye');
    expect(found).toEqual([{ kind: 'analogous', wheel: 'eye', ids: ['A', 'B', 'C', 'D'], offDeg: 0 }]);
    expect(relationsAmong(held(15, 15, 15), 'eye')).toHaveLength(1);
  });

  test('are found on the painter’s wheel by its own angles, truest first', () => {
    const found = relationsAmong(held(hueOf('#d7263d'), hueOf('#f7d038'), hueOf('#1f4e9c')), 'painter');
    expect(found).toMatchObject([{ kind: 'triad', wheel: 'painter' }]);
    const offs = relationsAmong(held(0, 5, 180, 190, 95), 'painter').map(({ offDeg }) => offDeg);
    expect(offs).toEqual([...offs].sort((a, b) => a - b));
  });
});

describe('contrast of extension', () => {
  // Source: Goethe's light values as in Itten 1961; yellow : violet 1 : 3, orange : blue 1 : 2, red : green 1 : 1.
  const [yellow, orange, red, violet, blue, green] = [0, 60, 120, 180, 240, 300].map(
    hueFromPainter,
  ) as number[];

  test('gives the six hues their light values', () => {
    expect([yellow, orange, red, violet, blue, green].map((h) => lightValue(h!)).map(Math.round)).toEqual([
      9, 8, 6, 3, 4, 6,
    ]);
    expect(lightValue(hueFromPainter(30))).toBeCloseTo(8.5, 9);
    expect(lightValue(hueFromPainter(330))).toBeCloseTo(7.5, 9);
  });

  test('balances the three pairs as taught', () => {
    expect(balancedAreas(yellow!, violet!)).toBeCloseTo(1 / 3, 9);
    expect(balancedAreas(orange!, blue!)).toBeCloseTo(1 / 2, 9);
    expect(balancedAreas(red!, green!)).toBeCloseTo(1, 9);
  });

  test('sets each share beside the one that would balance', () => {
    const found = extensionOf([
      { id: 'A', hueDeg: yellow!, share: 0.3 },
      { id: 'B', hueDeg: violet!, share: 0.1 },
    ]);
    expect(found.map(({ id }) => id)).toEqual(['A', 'B']);
    expect(found[0]!.share).toBeCloseTo(0.75, 12);
    expect(found[0]!.balance).toBeCloseTo(0.25, 9);
    expect(found[1]!.balance).toBeCloseTo(0.75, 9);
    expect(extensionOf([])).toEqual([]);
    expect(extensionOf([{ id: 'A', hueDeg: 1, share: 0 }])).toEqual([]);
  });
});

describe('hue templates', () => {
  // Source: Matsuda, as tabulated by Cohen-Or et al. 2006: widths 18°, 79.2°, 93.6°, 180°.
  test.each([
    [[10, 20, 26], 'i', 18],
    [[10, 20, 195], 'I', 36],
    [[10, 60, 100], 'V', 93.6],
    [[0, 60, 120], 'L', 97.2],
    [[0, 300, 240], 'L', 97.2],
    [[0, 80, 220], 'Y', 111.6],
    [[0, 60, 120, 175], 'T', 180],
    [[0, 80, 190, 260], 'X', 187.2],
  ] as const)('hold %j in %s, the narrowest, of %s°', (hues, template, coveredDeg) => {
    const found = narrowestTemplate(hues, 'eye')!;
    expect(found.template).toBe(template);
    expect(found.coveredDeg).toBeCloseTo(coveredDeg, 9);
  });

  test('turn with the hues, and hold nothing that is all around the circle', () => {
    expect(narrowestTemplate([355, 5], 'eye')!.turnDeg).toBeCloseTo(4, 9);
    expect(narrowestTemplate([0, 72, 144, 216, 288], 'eye')).toBeNull();
    expect(narrowestTemplate([], 'eye')).toBeNull();
    expect(narrowestTemplate([99, 85], 'painter')).toMatchObject({ wheel: 'painter' });
  });

  test('hold the same when the whole circle is turned', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 359 }), { minLength: 1, maxLength: 5 }),
        fc.integer({ min: 0, max: 359 }),
        (hues, by) => {
          const there = narrowestTemplate(hues, 'eye')?.template;
          expect(
            narrowestTemplate(
              hues.map((h) => (h + by) % 360),
              'eye',
            )?.template,
          ).toBe(there);
        },
      ),
    );
  });
});
