import { describe, expect, it } from 'vitest';
import { ouLuo } from '../../../src/colour/harmony-two.ts';
import { oklchFromTuple, rgbFromOklch } from '../../../src/colour/spaces.ts';
import { differenceSeenBy } from '../../../src/colour/vision.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { bothChromatic } from '../../../src/harmony/measure/links.ts';
import { type MeasuredInk, measureSide } from '../../../src/harmony/measure/measured.ts';
import { pairOf } from '../../../src/harmony/measure/pair.ts';
import type { Comparison, Reason } from '../../../src/harmony/model.ts';
import { warmthOf } from '../../../src/harmony/reasons/warmth.ts';
import { nearMissesOf } from '../../../src/harmony/rules/troubles.ts';
import { nearMissWeight } from '../../../src/harmony/rules/weights.ts';
import type { Tags } from '../../../src/sheet/model.ts';
import { chanceOf, chancePair } from '../../support/chance.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { colour as c, onWhite } from './trade-colours.ts';

/**
 * What is worth knowing and decides nothing: where each finding begins and what it weighs, on pairs by chance. The limits
 * are our own choice; the two-colour model and the other eyes are held to published values by the room below.
 */
const found = chanced(700);

function chanced(count: number): Comparison[] {
  const chance = chanceOf(31);
  return Array.from({ length: count }, () => {
    const pair = chancePair(chance, 5);
    const [anchor, candidate] = pair.of(pair.labs);
    return compare(anchor, candidate, {
      distance: chance() < 0.3 ? 'touching' : 'apart',
    });
  });
}

const of = ({ reasons }: Comparison, kind: Reason['kind']) => reasons.find((one) => one.kind === kind);
const measured = ({ anchor, candidate }: Comparison) =>
  [measureSide(anchor, 'anchor'), measureSide(candidate, 'candidate')] as const;

/** Every ink of the one side with every ink of the other, and the link of the two. */
function pairsOf(comparison: Comparison) {
  const [anchor, candidate] = measured(comparison);
  return anchor.inks.flatMap((a) =>
    candidate.inks.map((b) => ({
      a,
      b,
      share: Math.min(a.share, b.share),
      link: comparison.links.find((link) => link.anchorInk === a.id && link.candidateInk === b.id)!,
    })),
  );
}

describe('advice', () => {
  it('of light and dark calls a range under L* 40 flat, and a gap of 15 one for a photograph', () => {
    const seen = new Set<number>();
    for (const one of found) {
      const reason = of(one, 'lightness range');
      if (!reason) continue;
      const { darkest, lightest, gapFrom, gapTo } = reason.evidence as Record<string, number>;
      const weighs = lightest! - darkest! < 40 ? -0.2 : gapTo! - gapFrom! < 15 ? 0 : 0.1;
      expect(reason.weighs).toBe(weighs);
      seen.add(weighs);
    }
    expect(seen.size).toBe(3);
  });

  it('of areas says that one colour leads from 45 to 75 %', () => {
    const seen = new Set<number>();
    for (const { reasons } of found) {
      const reason = reasons.find(({ evidence }) => 'ruleOfThumb' in evidence)!;
      const { largestShare: share, nextShare: next } = reason.evidence as Record<string, number>;
      const weighs = next !== undefined || share! < 0.45 ? -0.05 : share! > 0.75 ? 0 : 0.05;
      expect(reason.weighs).toBe(weighs);
      seen.add(weighs);
    }
    expect(seen.size).toBe(3);
  });

  it('of areas says that none leads where the next is within 5 % of both sheets', () => {
    const next = (share: number) =>
      compare(
        handSide({ base: 'tinted', hex: c.navy }),
        handSide({ base: 'tinted', hex: c.coral, inks: [[c.navy, share]] }),
      ).reasons.find(({ evidence }) => 'ruleOfThumb' in evidence)!.evidence;
    expect(next(0.02)).toHaveProperty('nextShare');
    expect(next(0.048)).toHaveProperty('nextShare');
    expect(next(0.052)).not.toHaveProperty('nextShare');
  });

  it('of warm and cool begins where both sheets lean by 0.15', () => {
    let told = 0;
    for (const one of found) {
      const [a, b] = measured(one).map(warmthOf) as [number, number];
      const reason = of(one, 'warm and cool');
      expect(reason !== undefined).toBe(Math.abs(a) >= 0.15 && Math.abs(b) >= 0.15);
      if (reason) expect(reason.weighs).toBe(a > 0 === b > 0 ? 0.12 : -0.08);
      if (reason) told++;
    }
    expect(told).toBeGreaterThan(20);
  });

  it('of other eyes tells two inks of 4 % or more that are 20 apart for all and 8 or less for them', () => {
    const rgb = ({ ink }: MeasuredInk) => rgbFromOklch(oklchFromTuple(ink.oklch));
    let told = 0;
    for (const one of found) {
      const fall = pairsOf(one).filter(
        ({ a, b, share, link }) =>
          share >= 0.04 &&
          link.deltaE00 >= 20 &&
          (['protan', 'deutan', 'tritan'] as const).some(
            (kind) => differenceSeenBy(rgb(a), rgb(b), kind) <= 8,
          ),
      );
      const reason = of(one, 'other eyes');
      expect(reason !== undefined).toBe(fall.length > 0);
      if (reason) expect(reason.weighs).toBe(-0.06);
      if (reason) told++;
    }
    expect(told).toBeGreaterThan(20);
  });

  it('of the two-colour model begins at 0.4 either way, below only for a repeat, and weighs where papers touch', () => {
    let told = 0;
    for (const one of found) {
      const rated = pairsOf(one)
        .filter(({ a, b, share }) => share >= 0.05 && a.actsAs === null && b.actsAs === null)
        .map(({ a, b, link }) => ({ kind: link.kind, ch: ouLuo(a.lab, b.lab).ch }))
        .filter(({ kind, ch }) => (kind === 'repeat' ? ch <= -0.4 : Math.abs(ch) >= 0.4));
      const reason = of(one, 'two-colour model');
      expect(reason !== undefined).toBe(rated.length > 0);
      if (!reason) continue;
      const { ouLuo: ch } = reason.evidence as Record<string, number>;
      expect(reason.weighs).toBe(one.distance === 'touching' ? 0.15 * Math.sign(ch!) : 0);
      told++;
    }
    expect(told).toBeGreaterThan(50);
  });

  it('of grounds weighs 0.45 where they agree and 0.1 where they differ and get on; of like strength, 0.15', () => {
    const grounds = found.flatMap((one) => of(one, 'base agreement')?.weighs ?? []);
    expect(new Set(grounds)).toEqual(new Set([0.45, 0.1]));
    const alike = found.flatMap((one) => of(one, 'bright against muted')?.weighs ?? []).filter((w) => w > 0);
    expect(new Set(alike)).toEqual(new Set([0.15]));
  });

  it('of prints calls one busy from 0.4 and calm up to 0.22', () => {
    const busy = (a: number, b: number) =>
      of(compare(handSide({ ...white, busyness: a }), handSide({ ...white, busyness: b })), 'busyness')
        ?.weighs;
    expect(busy(0.4, 0.4)).toBe(-0.25);
    expect(busy(0.399, 0.4)).toBeUndefined();
    expect(busy(0.4, 0.22)).toBe(0.2);
    expect(busy(0.221, 0.4)).toBeUndefined();
    expect(busy(0.399, 0.1)).toBeUndefined();
  });

  it('of scale, finish and motif weighs little, for the alike and against the unlike', () => {
    const weighs = (kind: Reason['kind'], a: Partial<HandSide>, b: Partial<HandSide>) =>
      of(compare(handSide({ ...white, ...a }), handSide({ ...white, ...b })), kind)!.weighs;
    expect(weighs('print scale', { scale: 'large' }, { scale: 'large' })).toBe(-0.15);
    expect(weighs('print scale', { scale: 'large' }, { scale: 'small' })).toBe(0.15);
    const tags = (more: Tags) => ({ tags: more });
    const [drawn, flat] = [tags({ finishes: ['hand-drawn'] }), tags({ finishes: ['flat'] })];
    expect(weighs('finish', drawn, drawn)).toBe(0.12);
    expect(weighs('finish', drawn, flat)).toBe(-0.12);
    const [leaf, dot] = [tags({ motifs: ['leaf'] }), tags({ motifs: ['dot'] })];
    expect(weighs('motif', leaf, leaf)).toBe(0.06);
    expect(weighs('motif', leaf, dot)).toBe(0);
  });

  it('passes over a near miss that weighs under 0.05, before anything answers it', () => {
    let slight = 0;
    for (const one of found) {
      const pair = pairOf(...measured(one), one.distance);
      const weights = nearMissesOf(pair).map(({ tied, weight }) =>
        bothChromatic(tied.a, tied.b) ? nearMissWeight(tied, one.distance) : weight,
      );
      expect(of(one, 'near miss') !== undefined).toBe(weights.some((weight) => weight >= 0.05));
      if (weights.length > 0 && Math.max(...weights) > 0.035 && Math.max(...weights) < 0.07) slight++;
    }
    // Enough of them lie near the border for it to be held.
    expect(slight).toBeGreaterThan(3);
  });

  it('tells four repeats one by one and the others together', () => {
    const inks = [c.coral, c.navy, c.mustard, c.leaf, c.violet, c.aqua].map((hex) => [hex, 0.1] as const);
    const { reasons } = compare(handSide(onWhite(...inks)), handSide(onWhite(...inks)));
    const repeats = reasons.filter(({ kind }) => kind === 'repeat');
    expect(repeats).toHaveLength(5);
    expect(repeats.filter(({ says }) => says.startsWith('Further colours'))).toHaveLength(1);
  });
});

const white: HandSide = onWhite([c.coral, 0.2]);
