import { describe, expect, it } from 'vitest';
import { eachAlone } from '../../../components/support/sample-papers.ts';
import { adaptXyz } from '../../../src/colour/adaptation.ts';
import { whites } from '../../../src/colour/illuminants.ts';
import type { Lab } from '../../../src/colour/model.ts';
import { labFromMunsell } from '../../../src/colour/munsell/munsell.ts';
import { labFromOklch, labFromXyz, oklchFromTuple, xyzFromLab } from '../../../src/colour/spaces.ts';
import { compare } from '../../../src/harmony/compare.ts';
import type { CompareOptions, LinkKind, Reason, Verdict } from '../../../src/harmony/model.ts';
import { verdictOrder } from '../../../src/harmony/rules/verdict.ts';
import type { Ink, Side } from '../../../src/sheet/model.ts';
import { chanceOf, chancePair, labInk, labSide, moved } from '../../support/chance.ts';
import { handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c } from './trade-colours.ts';

const bare: CompareOptions = {};
const verdictOf = (one: Side, other: Side, options: CompareOptions = bare): Verdict =>
  compare(one, other, options).verdict;
const pairs = tradeCases.map(({ anchor, candidate }) => [handSide(anchor), handSide(candidate)] as const);
const weights = (reasons: readonly Reason[]) =>
  reasons.map(({ kind, weighs }) => `${kind} ${weighs.toFixed(6)}`).sort();

describe('swapping the roles', () => {
  it('changes neither the verdict nor any reason’s weight', () => {
    const chance = chanceOf(11);
    const some = Array.from({ length: 120 }, () => {
      const pair = chancePair(chance);
      return pair.of(pair.labs);
    });
    for (const [one, other] of [...pairs, ...some]) {
      const [there, back] = [compare(one, other, bare), compare(other, one, bare)];
      expect(back.verdict).toBe(there.verdict);
      expect(weights(back.reasons)).toEqual(weights(there.reasons));
      expect(back.links.map(({ kind }) => kind).sort()).toEqual(there.links.map(({ kind }) => kind).sort());
    }
  });
});

describe('adding grey', () => {
  it('as a plain of its own holds with every anchor there is', () => {
    for (const hex of [c.grey, c.black, c.charcoal, c.kraft]) {
      const plain = handSide({ base: hex === c.kraft ? 'kraft' : 'tinted', hex });
      for (const [one] of pairs) {
        const found = compare(one, plain, bare);
        expect(found.verdict, `${hex} with ${one.base.hex}`).toBe('holds-together');
        expect(found.reasons.map(({ kind }) => kind)).not.toContain('near miss');
        expect(found.reasons.map(({ kind }) => kind)).not.toContain('stray');
      }
    }
  });
});

describe('a paper with itself', () => {
  it('holds together, touching or apart', () => {
    const chance = chanceOf(12);
    for (let n = 0; n < 80; n++) {
      const pair = chancePair(chance);
      const [side] = pair.of(pair.labs);
      for (const distance of ['apart', 'touching'] as const) {
        expect(verdictOf(side, side, { ...bare, distance })).toBe('holds-together');
      }
    }
  });
});

describe('scaling both areas', () => {
  it('changes nothing', () => {
    for (const [one, other] of pairs) {
      const scale = (side: Side, k: number): Side => ({
        ...side,
        base: { ...side.base, share: side.base.share * k },
        inks: side.inks.map((ink) => ({ ...ink, share: ink.share * k })),
      });
      const [before, after] = [compare(one, other, bare), compare(scale(one, 7), scale(other, 7), bare)];
      expect(after.verdict).toBe(before.verdict);
      expect(weights(after.reasons)).toEqual(weights(before.reasons));
    }
  });
});

describe('reading both papers again', () => {
  /** The lamp's cast by one model of adaptation, undone from the card by another: what a corrected photograph keeps. */
  const relit = (side: Side, lamp: keyof typeof whites): Side => {
    const ink = <T extends Ink>(one: T): T => {
      const xyz = xyzFromLab(labFromOklch(oklchFromTuple(one.oklch)));
      const cast = adaptXyz(xyz, whites.D65, whites[lamp], 'cat16');
      const read = labInk(labFromXyz(adaptXyz(cast, whites[lamp], whites.D65, 'bradford')), one.share);
      return { ...one, hex: read.hex, oklch: read.oklch };
    };
    return { ...side, base: ink(side.base), inks: side.inks.map(ink) };
  };

  it('under daylight of another hour, with a card, moves a verdict by one step at most, and mostly by none', () => {
    let changed = 0;
    for (const [one, other] of pairs) {
      for (const lamp of ['D50', 'D55', 'D75'] as const) {
        const [before, after] = [verdictOf(one, other), verdictOf(relit(one, lamp), relit(other, lamp))];
        const step = Math.abs(verdictOrder.indexOf(before) - verdictOrder.indexOf(after));
        expect(step).toBeLessThanOrEqual(1);
        changed += step;
      }
    }
    expect(changed).toBeLessThanOrEqual(3);
  });
});

describe('a change of 1 ΔE₀₀ in one ink', () => {
  it.each([
    [4, 21],
    [2, 22],
    [1, 23],
  ])('moves the verdict by one step at most (inks a side, at most: %i)', (most, seed) => {
    const chance = chanceOf(seed);
    let flips = 0;
    for (let n = 0; n < 260; n++) {
      const pair = chancePair(chance, most);
      const distance = chance() < 0.3 ? 'touching' : 'apart';
      const before = verdictOf(...pair.of(pair.labs), { ...bare, distance });
      for (let k = 0; k < 3; k++) {
        const labs: [Lab[], Lab[]] = [[...pair.labs[0]], [...pair.labs[1]]];
        const which = labs[chance() < 0.5 ? 0 : 1];
        const at = Math.floor(chance() * which.length);
        which[at] = moved(which[at]!, 1, chance);
        const after = verdictOf(...pair.of(labs), { ...bare, distance });
        const step = Math.abs(verdictOrder.indexOf(before) - verdictOrder.indexOf(after));
        expect(step).toBeLessThanOrEqual(1);
        flips += step;
      }
    }
    expect(flips).toBeGreaterThan(0);
  });
});

describe('pairs made with a known relation', () => {
  /** Made in Munsell itself, so that what is asked for is what the renotation says. */
  const cases: readonly (readonly [LinkKind, number, number])[] = [
    ['near miss', 3, 0],
    ['near miss', 5.5, 1.2],
    ['tonal', 0, 2],
    ['tonal', 0.7, 1.5],
    ['tonal', 5, 2.6],
    ['neighbour', 9, 0],
    ['neighbour', 15, 2],
    ['unrelated', 26, 1],
  ];

  it('are found to have it, all around the circle', () => {
    for (const [kind, hueSteps, valueSteps] of cases) {
      for (let hue = 2; hue < 100; hue += 7) {
        const one = labFromMunsell({ hue, value: 4.5, chroma: 8 });
        const other = labFromMunsell({ hue: (hue + hueSteps) % 100, value: 4.5 + valueSteps, chroma: 8 });
        const found = compare(eachAlone(labSide([one], [0.2])), eachAlone(labSide([other], [0.2])), bare);
        const link = found.links.at(-1)!;
        if (found.links.length < 4 || isNeutralised(one) || isNeutralised(other)) continue;
        // Beyond 16 nothing is a near miss, however near its hue.
        if (link.deltaE00 <= 5 || (kind === 'near miss' && link.deltaE00 > 16)) continue;
        expect(link.hueSteps).toBeCloseTo(hueSteps, 0);
        expect(link.kind, `${hue} ${JSON.stringify(link)}`).toBe(kind);
      }
    }
  });
});

/** Browns in kraft’s own region act as neutrals and have no relation of hue. */
function isNeutralised({ l, a, b }: Lab): boolean {
  const h = (Math.atan2(b, a) * 180) / Math.PI;
  return l >= 42 && l < 79 && h >= 55 && h <= 90 && Math.hypot(a, b) < 45;
}
