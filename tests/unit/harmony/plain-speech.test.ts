import { describe, expect, it } from 'vitest';
import { hueWheel } from '../../../src/drawing/wheel.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import { measureSide } from '../../../src/harmony/measure/measured.ts';
import { takeSide } from '../../../src/harmony/measure/take-side.ts';
import type { Change, CompareOptions, Comparison, KitMember } from '../../../src/harmony/model.ts';
import { whatIf } from '../../../src/harmony/remedies/what-if.ts';
import { wordOf } from '../../../src/harmony/words/ink-word.ts';
import { chanceOf, chancePair } from '../../support/chance.ts';
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

describe('sentences that stand side by side', () => {
  it('do not say that nothing quarrels while a quarrel is listed', () => {
    const troubles = ['near miss', 'stray', 'base quarrel', 'bright against muted'];
    let uneasy = 0;
    for (const { decision, reasons } of found) {
      const listed = reasons.some(({ kind, weighs }) => weighs < 0 && troubles.includes(kind));
      if (listed) expect(decision.summary.toLowerCase()).not.toContain('nothing quarrels');
      if (decision.summary.includes('what little quarrels does not part them')) uneasy++;
    }
    expect(uneasy).toBeGreaterThan(0);
  });

  it('round an angle as the figure beside them does', () => {
    const opposites = found.flatMap(({ reasons }) => reasons.filter(({ kind }) => kind === 'opposites'));
    let told = 0;
    for (const { says, figure } of opposites) {
      const degrees = says.match(/(\d+)° off opposite/)?.[1];
      if (degrees === undefined) continue;
      told++;
      expect(figure).toMatch(new RegExp(`\\b${degrees}°`));
    }
    expect(told).toBeGreaterThan(0);
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
  const summary = (one: HandSide, other: HandSide) => judged(one, other).decision.summary;
  const words = (side: HandSide) =>
    wordOf(measureSide(takeSide(handSide(side), 'anchor'), 'anchor').inks[1]!);

  it('are told apart by their letters where they trouble each other', () => {
    const [one, other] = [onWhite(['#6f8f3c', 0.3]), onWhite(['#8a9a3c', 0.3])];
    const [a, b] = [words(one), words(other)];
    expect(a).toBe(b);
    expect(summary(one, other)).toContain(`The ${a} (B) and the ${b} (b) are what the eye trips over.`);
  });

  it('never stand twice as the same', () => {
    let same = 0;
    for (const { decision } of found) {
      const [, a, b] = decision.summary.match(/The (.+?) and the (.+?) (?:are what|grounds)/) ?? [];
      const [, c, d] = decision.summary.match(/^([^,.]+?) with ([^,.]+?)(?:,| and| tie)/) ?? [];
      if (a !== undefined) expect(a.toLowerCase()).not.toBe(b);
      if (c !== undefined) expect(c.toLowerCase()).not.toBe(d);
      if (a?.endsWith(')') || c?.endsWith(')')) same++;
    }
    expect(same).toBeGreaterThan(0);
  });
});

describe('who leads', () => {
  const dominance = (one: HandSide, other: HandSide) =>
    judged(one, other).reasons.find(({ kind }) => kind === 'dominance')!;

  it('is no one where the two largest take alike, and a dead tie is called one', () => {
    const tie = dominance(onWhite([c.navy, 0.5]), onWhite([c.navy, 0.5]));
    expect(tie.says).toContain('no colour leads: white (A) and navy (B) take 50 % each, a dead tie');
    expect(tie.weighs).toBeLessThan(0);
    expect(tie.inks).toEqual(['A', 'B', 'a', 'b']);
    const near = dominance(onWhite([c.navy, 0.48]), onWhite([c.navy, 0.48]));
    expect(near.says).toContain('take 52 % and 48 %');
  });

  it('is the largest where it is clearly ahead', () => {
    expect(dominance(onWhite([c.navy, 0.4]), onWhite([c.navy, 0.4])).says).toContain('one colour leads');
  });
});

describe('what matters less', () => {
  it('is a quarrel of grounds behind a strip, and it says so', () => {
    const pair = [onCream([c.navy, 0.2]), { ...onWhite([c.navy, 0.2]), hex: c.coolWhite }] as const;
    const quarrel = (options: CompareOptions) =>
      judged(...pair, options).reasons.find(({ kind }) => kind === 'base quarrel')!.says;
    expect(quarrel({})).toContain('looks dirty');
    expect(quarrel({ strip: true })).toContain('with a strip between they never touch, and it matters less');
    expect(quarrel({ strip: true })).not.toContain('looks dirty');
  });

  it('is a stray that is to be left as a spark: it does not speak against the pair', () => {
    const sparks = found.flatMap(({ reasons }) =>
      reasons.filter(({ says }) => says.includes('it reads as a spark')),
    );
    expect(sparks.length).toBeGreaterThan(0);
    for (const { weighs } of sparks) expect(weighs).toBe(0);
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
      [onWhite([c.coral, 0.3]), onWhite([c.raspberry, 0.3])],
      [onCream([c.navy, 0.2]), { ...onWhite([c.navy, 0.2]), hex: c.coolWhite }],
      [onWhite([c.orange, 0.3]), onWhite([c.violet, 0.25])],
      [onWhite([c.dustyRose, 0.3], [c.sage, 0.2]), onWhite([c.neonPink, 0.3], [c.lime, 0.25])],
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
  const printed: HandSide = {
    ...onCream([c.navy, 0.3]),
    scale: 'large',
    busyness: 0.6,
    tags: { finishes: ['hand-drawn'], motifs: ['floral'] },
  };
  const ofPrint = ['print scale', 'finish', 'motif'];
  const kinds = (one: HandSide, other: HandSide, changes: readonly Change[] = []) => {
    const [anchor, candidate] = [handSide(one), handSide(other, true)];
    return whatIf(anchor, candidate, changes).reasons.map(({ kind }) => kind);
  };

  it('is not told of the size of its print, nor how it is drawn', () => {
    const { inks, ...rest } = printed;
    expect(kinds(printed, printed)).toEqual(expect.arrayContaining([...ofPrint, 'busyness']));
    for (const kind of ofPrint) {
      expect(kinds(printed, rest)).not.toContain(kind);
      expect(kinds(rest, printed)).not.toContain(kind);
    }
    expect(inks).toHaveLength(1);
  });

  it('is not busy once all of it is covered', () => {
    const base = handSide(printed, true).base;
    const covered = kinds(printed, printed, [{ kind: 'cover', of: 'candidate', ink: 'b', with: base }]);
    for (const kind of ofPrint) expect(covered).not.toContain(kind);
    const side = handSide({ ...printed, inks: [] });
    const { reasons } = compare(handSide(printed), side);
    expect(reasons.find(({ kind }) => kind === 'busyness')!.says).toContain(
      'one talks while the other listens',
    );
  });

  it('counts for no print in a kit', () => {
    const member = (name: string, side: HandSide): KitMember => ({
      name,
      side: handSide(side),
      role: 'paper',
      areaMm2: null,
    });
    const bare = { ...printed, inks: [] };
    const found = kitOf([member('one', printed), member('two', bare)]).reasons;
    expect(found.map(({ kind }) => kind)).not.toContain('print scale');
    expect(found.find(({ kind }) => kind === 'busyness')!.says).toContain('One is busy and two is calm');
  });
});
