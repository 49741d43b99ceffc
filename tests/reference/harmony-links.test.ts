import Color from 'colorjs.io';
import { differenceCiede2000 } from 'culori';
import { rgbToMhvc, SRGB } from 'munsell';
import { describe, expect, it } from 'vitest';
import { eachAlone } from '../../components/support/sample-papers.ts';
import { neutralKind } from '../../src/colour/neutral.ts';
import { labFromOklch, oklchFromTuple } from '../../src/colour/spaces.ts';
import { painterFromHue } from '../../src/colour/wheels.ts';
import { compare } from '../../src/harmony/compare.ts';
import type { Link, LinkKind } from '../../src/harmony/model.ts';
import type { Ink, Side } from '../../src/sheet/model.ts';
import { chanceOf, chancePair } from '../support/chance.ts';

/**
 * The table of links, worked out again from libraries that know nothing of ours: CIELAB by colorjs.io, ΔE₀₀ by culori,
 * Munsell hue and value by the package `munsell` (its own inversion of the 1943 renotation). Where one of the numbers
 * lies within a whisker of a border, either kind will do.
 */
describe('links against the written table, recomputed with other libraries', () => {
  it('gives every pair of inks, bases included, the kind that the table gives', () => {
    const chance = chanceOf(20);
    let checked = 0;
    for (let n = 0; n < 220; n++) {
      const pair = chancePair(chance);
      const [anchor, candidate] = pair.of(pair.labs);
      const distance = n % 3 === 0 ? 'touching' : 'apart';
      // Every ink by itself: how inks are gathered is another question.
      const found = compare(eachAlone(anchor), eachAlone(candidate), { distance });
      expect(found.links).toHaveLength((anchor.inks.length + 1) * (candidate.inks.length + 1));
      for (const link of found.links) {
        const a = inkOf(found.anchor, link.anchorInk);
        const b = inkOf(found.candidate, link.candidateInk);
        checkNumbers(link, a, b);
        const kinds = kindsByTable(a, b, distance === 'touching' ? 3 : 5, [
          isNeutral(found.anchor, a),
          isNeutral(found.candidate, b),
        ]);
        expect([...kinds], `${a.hex} ${b.hex} ${JSON.stringify(link)}`).toContain(link.kind);
        checked++;
      }
    }
    expect(checked).toBeGreaterThan(2500);
  });
});

function inkOf(side: Side, id: string): Ink {
  return [side.base, ...side.inks].find((ink) => ink.id === id)!;
}

function isNeutral(side: Side, ink: Ink): boolean {
  const byKind = ink.id === side.base.id && ['white', 'cream', 'kraft'].includes(side.base.kind);
  return byKind || neutralKind(labFromOklch(oklchFromTuple(ink.oklch))) !== null;
}

function colorOf({ oklch }: Ink): Color {
  return new Color('oklch', [oklch[0], oklch[1], oklch[2] ?? 0]);
}

type Triple = readonly [number, number, number];

/** An ink lies in several links: the other libraries work it out once. */
function once(of: (ink: Ink) => Triple): (ink: Ink) => Triple {
  const known = new WeakMap<Ink, Triple>();
  return (ink) => {
    const found = known.get(ink) ?? of(ink);
    known.set(ink, found);
    return found;
  };
}

const labOf = once((ink) => colorOf(ink).to('lab-d65').coords as [number, number, number]);

function checkNumbers(link: Link, a: Ink, b: Ink): void {
  const [one, other] = [labOf(a), labOf(b)];
  expect(link.deltaE00).toBeCloseTo(deltaE2000(a, b), 4);
  expect(link.dL).toBeCloseTo(other[0] - one[0], 4);
  expect(link.dC).toBeCloseTo(Math.hypot(other[1], other[2]) - Math.hypot(one[1], one[2]), 4);
  const apart = Math.abs(a.oklch[2]! - b.oklch[2]!);
  expect(link.hueDeg).toBeCloseTo(Math.min(apart, 360 - apart), 6);
}

/** Every kind that the table allows when each number may be off by a whisker. */
function kindsByTable(a: Ink, b: Ink, limit: number, neutral: readonly [boolean, boolean]): Set<LinkKind> {
  const kinds = new Set<LinkKind>();
  const deltaE = deltaE2000(a, b);
  const [one, other] = [mhvc(a), mhvc(b)];
  const steps = Math.min(Math.abs(one[0] - other[0]), 100 - Math.abs(one[0] - other[0]));
  const apart = (x: number, y: number) => Math.min(Math.abs(x - y), 360 - Math.abs(x - y));
  const off = Math.min(
    180 - apart(a.oklch[2]!, b.oklch[2]!),
    180 - apart(painterFromHue(a.oklch[2]!), painterFromHue(b.oklch[2]!)),
  );
  // Two inversions of the renotation part by more where there is little chroma to tell a hue by, and in the dark.
  const weakest = Math.min(one[2], other[2]);
  const whisker = weakest < 2 || Math.min(one[1], other[1]) < 2 ? 1.5 : 0.4;
  for (const dH of [-whisker, whisker]) {
    for (const dV of [-0.02, 0.02]) {
      for (const dE of [-0.001, 0.001]) {
        for (const dOff of [-0.01, 0.01]) {
          kinds.add(
            byTable({
              deltaE: deltaE + dE,
              limit,
              steps: steps + dH,
              value: Math.abs(one[1] - other[1]) + dV,
              offDeg: off + dOff,
              neutral,
              light: labOf(a)[0] >= 80 && labOf(b)[0] >= 80,
              deltaB: Math.abs(labOf(a)[2] - labOf(b)[2]),
            }),
          );
        }
      }
    }
  }
  return kinds;
}

const mhvc = once((ink) => {
  const [r, g, b] = colorOf(ink).to('srgb').coords as [number, number, number];
  return rgbToMhvc(r, g, b, SRGB, 1e-4, 400, 'last') as [number, number, number];
});

const difference = differenceCiede2000();

function deltaE2000(a: Ink, b: Ink): number {
  const lab = (ink: Ink) => {
    const [l, x, y] = labOf(ink);
    return { mode: 'lab65' as const, l, a: x, b: y };
  };
  return difference(lab(a), lab(b));
}

/** The table as it is written down; first test that holds wins. */
function byTable(it: {
  deltaE: number;
  limit: number;
  steps: number;
  value: number;
  offDeg: number;
  neutral: readonly [boolean, boolean];
  light: boolean;
  deltaB: number;
}): LinkKind {
  const chromatic = !it.neutral[0] && !it.neutral[1];
  if (it.deltaE <= it.limit) return 'repeat';
  // Ours: no further than ΔE₀₀ 16, and beyond it kin.
  if (chromatic && it.steps >= 1.5 && it.steps <= 7 && it.value < 2)
    return it.deltaE <= 16 ? 'near miss' : 'neighbour';
  const whites = it.neutral[0] && it.neutral[1] && it.light;
  if (whites && it.deltaE >= 3 && it.deltaE <= 10 && it.deltaB > 4) return 'near miss';
  if (chromatic && (it.steps < 1.5 || (it.steps <= 7 && it.value >= 2))) return 'tonal';
  if (chromatic && it.steps > 7 && it.steps <= 17) return 'neighbour';
  return chromatic && it.offDeg <= 18 ? 'opposite' : 'unrelated';
}
