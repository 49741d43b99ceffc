import { describe, expect, it } from 'vitest';
import { hueWheel } from '../../../src/drawing/wheel.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import { measureSide } from '../../../src/harmony/measure/measured.ts';
import { takeSide } from '../../../src/harmony/measure/take-side.ts';
import type { Change, CompareOptions, Comparison, KitMember } from '../../../src/harmony/model.ts';
import { whatIf } from '../../../src/harmony/remedies/what-if.ts';
import { wordOf } from '../../../src/harmony/words/ink-word.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { chanceOf, chancePair } from '../../support/chance.ts';
import { looks } from '../../support/judging/families.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

const judged = (a: HandSide, b: HandSide, options: CompareOptions = {}) =>
  compare(handSide(a), handSide(b), { ...options });
const found: Comparison[] = [
  ...tradeCases.map(({ anchor, candidate }) => judged(anchor, candidate)),
  ...chanced(120),
];

function chanced(count: number): Comparison[] {
  const chance = chanceOf(11);
  return Array.from({ length: count }, () => {
    const pair = chancePair(chance);
    const [anchor, candidate] = pair.of(pair.labs);
    return compare(anchor, candidate);
  });
}

/** Two papers of one word that nearly match. */
const sages = [onWhite([c.sage, 0.3]), onWhite(['#88b99c', 0.3])] as const;
const missOf = (one: HandSide, other: HandSide, options: CompareOptions = {}) =>
  judged(one, other, options).reasons.find(({ kind }) => kind === 'near miss')!;

describe('sentences that stand side by side', () => {
  it('do not say that nothing ties or clashes while a tie or a clash is listed', () => {
    let listed = 0;
    for (const { decision, reasons } of found) {
      const has = (sign: number) => reasons.some(({ weighs }) => Math.sign(weighs) === sign);
      if (has(-1)) listed++;
      if (has(-1)) expect(decision.summary).not.toMatch(/othing clashes/);
      if (has(1)) expect(decision.summary).not.toMatch(/They have (nothing|little) in common/);
    }
    expect(listed).toBeGreaterThan(0);
  });

  it('call two hues almost opposite where the figure beside them says that they miss', () => {
    const opposites = found.flatMap(({ reasons }) => reasons.filter(({ kind }) => kind === 'opposites'));
    const told = { opposite: 0, almost: 0 };
    for (const { says, figure } of opposites) {
      const [eye, painter] = [...figure.matchAll(/(\d+)°/g)].map(([, degrees]) => Number(degrees));
      const off = says.includes('both wheels')
        ? Math.min(eye!, painter!)
        : says.includes('eye’s')
          ? eye!
          : painter!;
      const almost = says.includes('are almost opposite on');
      expect(almost, `${says} ${figure}`).toBe(off >= 6);
      if (!almost) expect(says).toContain('are opposite on');
      told[almost ? 'almost' : 'opposite']++;
    }
    expect(told.almost).toBeGreaterThan(0);
    expect(told.opposite).toBeGreaterThan(0);
  });

  it('name a source short enough for a margin', () => {
    for (const { reasons } of found)
      for (const { source } of reasons) expect(source.length, source).toBeLessThanOrEqual(37);
  });

  it('name the painter’s wheel’s source, not only the eye’s, where they speak of it', () => {
    const speaks = found
      .flatMap(({ reasons }) => reasons)
      .filter(({ says, figure }) => `${says} ${figure}`.includes('painter’s'));
    expect(speaks.some(({ says }) => says.includes('on the painter’s wheel'))).toBe(true);
    for (const { says, source, sourceIds } of speaks) {
      expect(source).toContain('after Itten and Kelly');
      expect(sourceIds).toEqual(expect.arrayContaining(['oklab', 'painter-wheel']));
      if (says.includes('on the painter’s wheel')) expect(sourceIds[0]).toBe('painter-wheel');
    }
  });

  it('count one ink as one', () => {
    const plain = handSide({ base: 'dark', hex: c.navy });
    const { description } = hueWheel({ anchor: { side: plain, name: 'navy card' } });
    expect(description).toMatch(/^1 ink on /);
  });
});

describe('two inks of one word in one breath', () => {
  const words = (side: HandSide) =>
    wordOf(measureSide(takeSide(handSide(side), 'anchor'), 'anchor').inks[1]!);

  it('are told apart by their letters where they trouble each other', () => {
    const { says } = missOf(...sages);
    const [a, b] = sages.map(words);
    expect(a).toBe(b);
    expect(says).toMatch(/\(B\) of .+\(b\) of .+ are close but not the same/);
  });

  it('never stand twice as the same', () => {
    const busy = { ...onWhite([c.sage, 0.5]), busyness: 0.5 };
    const dark: HandSide = { base: 'dark', hex: c.black, inks: [['#88b99c', 0.5]] };
    const told = judged(busy, dark).decision.summary;
    expect(told).toContain('The two sage colours nearly match');
    for (const { decision } of [...found, judged(busy, dark)])
      expect(decision.summary, decision.summary).not.toMatch(/\b([a-z]+) and \1\b/i);
  });
});

describe('who leads', () => {
  const dominance = (one: HandSide, other: HandSide) =>
    judged(one, other).reasons.find(({ kind }) => kind === 'dominance')!;

  it('is no one where the two largest take alike, and a dead tie is called one', () => {
    const tie = dominance(onWhite([c.navy, 0.5]), onWhite([c.navy, 0.5]));
    expect(tie.says).toContain('no colour leads: white (A) and navy (B) take 50 % each, a dead tie');
    expect(tie.weighs).toBe(0);
    expect(tie.inks).toEqual(['A', 'B', 'a', 'b']);
    const near = dominance(onWhite([c.navy, 0.48]), onWhite([c.navy, 0.48]));
    expect(near.says).toContain('take 52 % and 48 %');
  });

  it('is the largest where it is clearly ahead', () => {
    expect(dominance(onWhite([c.navy, 0.4]), onWhite([c.navy, 0.4])).says).toContain('one colour leads');
  });
});

describe('what matters less', () => {
  it('is a near miss behind a strip, and it says so', () => {
    const [open, strip] = [missOf(...sages), missOf(...sages, { strip: true })];
    expect(open.says).toContain('look like a mistake');
    expect(strip.says).toContain('With a strip between they do not meet, and it shows less');
    expect(strip.says).not.toContain('look like a mistake');
    expect(strip.weighs).toBeGreaterThan(open.weighs);
  });

  it('is what counts for nothing: two light bases that differ are told, and decide nothing', () => {
    const cool = { ...onWhite([c.navy, 0.2]), hex: c.coolWhite };
    const told = judged(onCream([c.navy, 0.2]), cool).reasons.find(({ kind }) => kind === 'grounds differ')!;
    expect(told.says).toContain('the warmer one can look yellowed');
    expect(told.weighs).toBe(0);
  });
});

describe('a kit’s verdict', () => {
  it('has a line of its own, not its first reason again', () => {
    const member = (name: string, side: HandSide): KitMember => ({
      name,
      side: handSide(side),
      role: 'paper',
      areaMm2: null,
    });
    const kits = [
      [onWhite([c.dustyRose, 0.3], [c.sage, 0.2]), onWhite([c.neonPink, 0.3], [c.lime, 0.25])],
      [
        onWhite([c.coral, 0.25], [c.lime, 0.25]),
        onWhite([c.raspberry, 0.25], [c.violet, 0.25], [c.royal, 0.25]),
      ],
      [onCream([c.coral, 0.2], [c.aqua, 0.1]), onCream([c.coral, 0.2]), onCream([c.violet, 0.3])],
    ];
    for (const sides of kits) {
      const { decision, reasons, verdict } = kitOf(sides.map((side, i) => member(`sheet ${i + 1}`, side)));
      expect(verdict).not.toBe('holds-together');
      expect(decision.summary.length).toBeGreaterThan(10);
      for (const { says } of reasons) expect(says).not.toBe(decision.summary);
    }
  });
});

describe('what has no print left', () => {
  const check = (...inks: NonNullable<HandSide['inks']>): Side => ({
    ...handSide(onCream(...inks)),
    ...(inks.length > 0 ? { seen: looks.check } : {}),
  });

  it('is not told of how its print repeats: it rests', () => {
    const kinds = (a: Side, b: Side) => compare(a, b).reasons.map(({ kind }) => kind);
    const [one, other, bare] = [check([c.navy, 0.5]), check([c.leaf, 0.5]), check()];
    expect(kinds(one, other)).toContain('hard beside hard');
    for (const found of [kinds(one, bare), kinds(bare, other)]) {
      expect(found).toContain('one rests');
      for (const kind of ['hard beside hard', 'soft beside loose']) expect(found).not.toContain(kind);
    }
  });

  it('rests once all of it is covered', () => {
    const printed: HandSide = { ...onCream([c.navy, 0.3]), busyness: 0.6 };
    const [anchor, candidate] = [handSide(printed), handSide(printed, true)];
    const kinds = (changes: readonly Change[]) =>
      whatIf(anchor, candidate, changes).reasons.map(({ kind }) => kind);
    expect(kinds([])).not.toContain('one rests');
    const covered = kinds([{ kind: 'cover', of: 'candidate', ink: 'b', with: candidate.base }]);
    expect(covered).toContain('one rests');
  });
});
