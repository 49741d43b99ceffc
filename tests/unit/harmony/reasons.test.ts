import { describe, expect, it } from 'vitest';
import { ouLuo } from '../../../src/colour/harmony-two.ts';
import { sourceById } from '../../../src/colour/sources.ts';
import { labFromHex } from '../../../src/colour/spaces.ts';
import { compare } from '../../../src/harmony/compare.ts';
import type { CompareOptions, Comparison, ReasonKind } from '../../../src/harmony/model.ts';
import { bothWheels } from '../../../src/harmony/words/sentences.ts';
import type { Side } from '../../../src/sheet/model.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { tradeCases } from './trade-cases.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

const judged = (a: HandSide, b: HandSide, options: CompareOptions = {}) =>
  compare(handSide(a), handSide(b), options);
const reason = (found: Comparison, kind: ReasonKind, nth = 0) =>
  found.reasons.filter((one) => one.kind === kind)[nth]!;

const all = tradeCases.flatMap(({ anchor, candidate }) =>
  (['apart', 'touching'] as const).map((distance) => judged(anchor, candidate, { distance })),
);

describe('every reason', () => {
  it('has a source that the list of sources holds, a figure, and a sentence', () => {
    for (const { reasons } of all) {
      for (const { kind, says, figure, source, sourceIds } of reasons) {
        expect(sourceIds.length, kind).toBeGreaterThan(0);
        for (const id of sourceIds) expect(sourceById(id), id).toBeDefined();
        expect(source).toBe(kind === 'opposites' ? bothWheels : sourceById(sourceIds[0]!)!.short);
        expect(figure.length, kind).toBeGreaterThan(2);
        expect(says, kind).toMatch(/^[A-Z].*\.$/);
        expect(says).not.toMatch(/undefined|NaN|\$\{/);
        expect(figure).not.toMatch(/undefined|NaN/);
      }
    }
  });

  it('names only inks that are there, anchor first, and every ink of its sentence by id', () => {
    for (const { reasons, anchor, candidate } of all) {
      const ids = new Set(
        [anchor, candidate].flatMap(({ base, inks }) => [base.id, ...inks.map(({ id }) => id)]),
      );
      for (const { inks, says, kind } of reasons) {
        for (const id of inks) expect(ids).toContain(id);
        expect([...inks].sort((x, y) => Number(x >= 'a') - Number(y >= 'a'))).toEqual(inks);
        for (const [, id] of says.matchAll(/\(([A-Za-z])\)/g)) expect(inks, `${kind}: ${says}`).toContain(id);
      }
    }
  });

  it('weighs between −1 and 1, with evidence that is finite numbers', () => {
    for (const { reasons } of all) {
      for (const { weighs, evidence } of reasons) {
        expect(Math.abs(weighs)).toBeLessThanOrEqual(1);
        for (const value of Object.values(evidence)) expect(Number.isFinite(value)).toBe(true);
      }
    }
  });

  it('stands in order of weight, a trouble before a tie of equal weight, and says what no other says', () => {
    for (const { reasons } of all) {
      for (let i = 1; i < reasons.length; i++) {
        const [before, after] = [reasons[i - 1]!, reasons[i]!];
        expect(Math.abs(before.weighs)).toBeGreaterThanOrEqual(Math.abs(after.weighs));
        if (Math.abs(before.weighs) === Math.abs(after.weighs)) {
          expect(before.weighs).toBeLessThanOrEqual(after.weighs);
        }
      }
      expect(new Set(reasons.map(({ says }) => says)).size).toBe(reasons.length);
    }
  });

  it('is of one of the kinds, and every kind is found somewhere in the trade cases', () => {
    const kinds: readonly ReasonKind[] = [
      'repeat',
      'repeated neutral',
      'tone on tone',
      'neighbours',
      'opposites',
      'near miss',
      'stray',
      'base agreement',
      'base quarrel',
      'bright against muted',
      'warm and cool',
      'lightness range',
      'dominance',
      'print scale',
      'busyness',
      'finish',
      'motif',
      'weight',
      'two-colour model',
      'other eyes',
      'light unknown',
    ];
    const found = new Set(all.flatMap(({ reasons }) => reasons.map(({ kind }) => kind)));
    expect([...found].sort()).toEqual([...kinds].sort());
  });
});

describe('what a reason says', () => {
  it('of a near miss: that it is one, with the deciding numbers', () => {
    const near = reason(judged(onWhite([c.coral, 0.3]), onWhite([c.raspberry, 0.3])), 'near miss');
    expect(near.says).toBe(
      'Coral (B) and crimson (b) are a near miss: too far apart to be the same red, too close to be a choice. Side by side they will look like a mistake.',
    );
    expect(near.figure).toBe('ΔE₀₀ 17.9 · hue 16°');
    expect(near.source).toBe('Moon & Spencer 1944');
    expect(near.weighs).toBeCloseTo(-0.85, 9);
    expect(near.evidence).toMatchObject({ answered: 0 });
  });

  it('of a near miss that stands together on one sheet: that it looks meant', () => {
    const both = onCream([c.coral, 0.15], [c.raspberry, 0.15]);
    const one = onCream([c.raspberry, 0.2]);
    for (const [anchor, candidate, sheet] of [
      [both, one, 'the anchor'],
      [one, both, 'the candidate'],
    ] as const) {
      const near = reason(judged(anchor, candidate), 'near miss');
      expect(near.says).toContain(`already stand together on ${sheet}`);
      expect(near.weighs).toBe(0);
      expect(near.evidence.answered).toBe(1);
    }
  });

  it('of a repeat: how large it is on either sheet', () => {
    const says = (one: number, other: number) =>
      reason(judged(onWhite([c.coral, one]), onWhite([c.coral, other])), 'repeat').says;
    expect(says(0.02, 0.03)).toContain('Only specks');
    expect(says(0.02, 0.3)).toContain('A little of it on the anchor points to 30 % of it on the candidate');
    expect(says(0.3, 0.02)).toContain('A little of it on the candidate');
    expect(says(0.3, 0.2)).toContain('plenty of it on both');
    expect(says(0.08, 0.12)).toContain('The eye will go');
    expect(says(0.004, 0.3)).toContain('Coral (B)');
  });

  it('of more than four repeats: the rest in one breath', () => {
    const many = onWhite(
      [c.coral, 0.1],
      [c.navy, 0.1],
      [c.aqua, 0.1],
      [c.mustard, 0.1],
      [c.leaf, 0.1],
      [c.plum, 0.1],
    );
    const repeats = judged(many, many).reasons.filter(({ kind }) => kind === 'repeat');
    expect(repeats).toHaveLength(5);
    expect(repeats.at(-1)!.says).toContain('Further colours are on both sheets too');
    expect(repeats.at(-1)!.inks).toHaveLength(4);
  });

  it('of opposites: on which wheel and how far off the axis', () => {
    const found = reason(judged(onWhite([c.red, 0.2]), onWhite([c.forest, 0.25])), 'opposites');
    expect(found.says).toContain('on the painter’s wheel');
    expect(found.evidence.offAxisPainterDeg).toBeLessThan(18);
    expect(found.evidence.offAxisEyeDeg).toBeGreaterThan(18);
    const eye = reason(judged(onWhite([c.mustard, 0.2]), onWhite([c.navy, 0.02])), 'opposites');
    expect(eye.says).toContain('on the eye’s wheel');
    expect(eye.says).toContain('The smaller, navy, will glow');
    const touching = { distance: 'touching' as const };
    expect(
      reason(judged(onWhite([c.orange, 0.3]), onWhite([c.royal, 0.3]), touching), 'opposites').says,
    ).toContain('shimmer');
  });

  it('of tone on tone: whether light and dark, or strong and weak', () => {
    expect(reason(judged(onWhite([c.forest, 0.2]), onWhite([c.mint, 0.3])), 'tone on tone').says).toContain(
      'light and dark',
    );
    expect(
      reason(judged(onWhite(['#c8232c', 0.2]), onWhite(['#a5615a', 0.3])), 'tone on tone')?.says ?? '',
    ).toContain('stronger than the other');
  });

  it('of two grounds: that they agree, differ plainly, or disagree, and to look again where the light is unknown', () => {
    const grounds = (one: HandSide, other: HandSide, options?: CompareOptions) =>
      judged(one, other, options).reasons.find(({ kind }) => kind.startsWith('base'))!;
    expect(grounds(onCream(), onCream()).says).toContain('The grounds agree, cream (A) and cream (a)');
    expect(grounds(onCream([c.navy, 0.1]), onCream([c.navy, 0.1]), { distance: 'touching' }).says).toContain(
      'put something between',
    );
    expect(grounds({ base: 'kraft', hex: c.kraft }, onCream()).says).toContain('differ plainly');
    const cool: HandSide = { base: 'white', hex: c.coolWhite, inks: [[c.navy, 0.1]], lightKnown: false };
    const quarrel = grounds(cool, onCream([c.navy, 0.1]));
    expect(quarrel.says).toContain('The bases disagree: beside white (A), cream (a) looks dirty');
    expect(quarrel.says).toContain('lay both in one light');
    expect(quarrel.evidence.deltaB).toBeGreaterThan(15);
    expect(
      judged({ base: 'dark', hex: c.navy }, onCream()).reasons.some(({ kind }) => kind.startsWith('base')),
    ).toBe(false);
  });

  it('of two whites on other grounds that nearly agree: which will look yellowed', () => {
    const found = judged(
      { base: 'kraft', hex: c.kraft, inks: [['#f6f3ec', 0.3]] },
      { base: 'kraft', hex: c.kraft, inks: [['#f2e9d6', 0.3]] },
    );
    expect(reason(found, 'near miss').says).toContain('two whites that nearly agree');
    expect(reason(found, 'near miss').says).toContain('cream (b) will look yellowed');
    expect(found.verdict).toBe('holds-together');
  });

  it('of a stray: how much of it there is, what it misses, what excuses it', () => {
    const anchor = onCream([c.coral, 0.25], [c.aqua, 0.1]);
    const says = (...inks: [string, number][]) => {
      const reasons = judged(anchor, onCream(...inks)).reasons;
      return reasons.find(({ kind, inks }) => kind === 'stray' && inks.some((id) => id >= 'a'))!.says;
    };
    expect(says([c.violet, 0.25])).toContain('At 25 % of the candidate');
    expect(says([c.violet, 0.03])).toContain('There is only 3 % of it');
    expect(says([c.yellow, 0.12], [c.violet, 0.02])).toContain('opposite yellow (b)');
    expect(says([c.coral, 0.1], [c.violet, 0.08])).toContain('draws it in');
    expect(judged(onWhite([c.coral, 0.3]), onWhite([c.raspberry, 0.3])).reasons[2]!.says).toContain(
      'Beyond its near miss with coral (B)',
    );
    expect(judged(anchor, { base: 'dark', hex: c.violet }).reasons[0]!.says).toContain('It is all that');
  });

  it('of brightness: which sheet is bright, or that both are alike', () => {
    const muted = onWhite([c.dustyRose, 0.3], [c.sage, 0.2]);
    const neon = onWhite([c.neonPink, 0.3], [c.lime, 0.25]);
    for (const [one, other, bright] of [
      [muted, neon, 'The candidate'],
      [neon, muted, 'The anchor'],
    ] as const) {
      expect(reason(judged(one, other), 'bright against muted').says).toContain(`${bright} is bright`);
    }
    expect(reason(judged(muted, muted), 'bright against muted').says).toContain('Both sheets are muted');
    expect(reason(judged(neon, neon), 'bright against muted').says).toContain('Both sheets are bright');
  });

  it('of warmth: which way each leans', () => {
    const warm = onCream([c.coral, 0.3], [c.mustard, 0.2]);
    const cool = onWhite([c.skyBlue, 0.4], [c.royal, 0.2]);
    expect(reason(judged(warm, cool), 'warm and cool').says).toContain(
      'The anchor leans warm and the candidate',
    );
    expect(reason(judged(cool, warm), 'warm and cool').says).toContain(
      'The candidate leans warm and the anchor',
    );
    expect(reason(judged(cool, cool), 'warm and cool').says).toContain('lean cool');
  });

  it('of lightness: the gap a photograph fills, a full range, or a flat one', () => {
    const steps = onWhite(...([20, 34, 48, 62, 76, 88].map((l) => [greyOf(l), 0.1]) as [string, number][]));
    expect(reason(judged(steps, steps), 'lightness range').says).toContain('without a hole');
    expect(
      reason(judged(onWhite([c.powder, 0.4]), onWhite([c.blush, 0.3])), 'lightness range').says,
    ).toContain('look flat');
    const gap = reason(judged(onWhite([c.navy, 0.2]), onWhite([c.navy, 0.2])), 'lightness range');
    expect(gap.evidence.gapTo! - gap.evidence.gapFrom!).toBeGreaterThan(60);
    expect(judged({ base: 'white', hex: c.white }, onWhite()).reasons.map(({ kind }) => kind)).toContain(
      'lightness range',
    );
  });

  it('of areas: whether one colour leads', () => {
    const say = (one: HandSide, other: HandSide) => reason(judged(one, other), 'dominance').says;
    expect(say(onCream([c.navy, 0.35]), onCream([c.navy, 0.35]))).toContain('one colour leads');
    expect(say(onCream([c.navy, 0.1]), onCream([c.navy, 0.1]))).toContain('more than the 60');
    expect(say(onCream([c.navy, 0.3]), onWhite([c.navy, 0.3]))).toContain('no colour leads');
  });

  it('of print: scale and busyness', () => {
    const print = (scale: HandSide['scale'], busyness: number, repeatMm?: number): HandSide => ({
      ...onCream([c.navy, 0.2]),
      scale: scale ?? null,
      busyness,
      ...(repeatMm ? { repeatMm } : {}),
    });
    const found = judged(print('large', 0.6, 90), print('small', 0.1));
    expect(reason(found, 'print scale').says).toContain('The print of the anchor is larger');
    expect(reason(found, 'print scale').figure).toBe('repeat 90 mm and small');
    expect(reason(found, 'print scale').evidence).toEqual({ anchorRepeatMm: 90 });
    const guessed = (repeatMm: number) => {
      const side = handSide(print('small', 0.1, repeatMm));
      return { ...side, print: { ...side.print, assumedSize: true as const } };
    };
    const size = (one: Side, other: Side) => reason(compare(one, other), 'print scale').figure;
    expect(size(guessed(11), handSide(print('large', 0.1, 90)))).toBe(
      'repeat about 11 mm, if the sheet is 12 in and repeat 90 mm',
    );
    expect(size(guessed(11), guessed(14))).toBe('repeats about 11 and 14 mm, if the sheets are 12 in');
    expect(reason(found, 'busyness').says).toContain('The anchor is busy and the candidate is calm');
    const other = judged(print('small', 0.1), print('medium', 0.6));
    expect(reason(other, 'print scale').says).toContain('The print of the candidate is larger');
    expect(reason(other, 'busyness').says).toContain('The candidate is busy');
    expect(judged(print('small', 0.3), print('small', 0.6)).reasons.map(({ kind }) => kind)).not.toContain(
      'busyness',
    );
  });

  it('of tags: finish, motif and thin paper', () => {
    const tagged = (tags: HandSide['tags']): HandSide => ({
      ...onCream([c.navy, 0.2]),
      ...(tags ? { tags } : {}),
    });
    const found = judged(
      tagged({ finishes: ['flat'], motifs: ['star', 'text'], weight: { gsm: 120 } }),
      tagged({ finishes: ['watercolour'], motifs: ['floral'], weight: { gsm: 216 } }),
    );
    expect(reason(found, 'finish').says).toBe(
      'One is flat and the other watercolour in finish. Where they lie close, that shows more than the colours do.',
    );
    expect(reason(found, 'motif').says).toContain('star and text and floral');
    expect(reason(found, 'weight').says).toContain('The anchor is thin, 120 g/m²');
    expect(found.reasons.filter(({ kind }) => kind === 'weight')).toHaveLength(1);
    expect(judged(tagged({ finishes: ['flat'] }), tagged({})).reasons.map(({ kind }) => kind)).not.toContain(
      'finish',
    );
  });

  it('of the two-colour model: its number, and why it may part from the wheel', () => {
    const found = reason(judged(onWhite([c.red, 0.2]), onWhite([c.forest, 0.25])), 'two-colour model');
    expect(found.evidence.ouLuo).toBeCloseTo(ouLuo(labFromHex(c.red), labFromHex(c.forest)).ch, 6);
    expect(found.says).toContain('a low mark, although by hue they are opposites');
    expect(found.weighs).toBe(0);
    const touching = judged(onWhite([c.red, 0.2]), onWhite([c.forest, 0.25]), { distance: 'touching' });
    expect(reason(touching, 'two-colour model').weighs).toBeCloseTo(-0.15, 9);
    const high = judged(onWhite([c.aqua, 0.3]), onWhite([c.yellow, 0.3]));
    expect(reason(high, 'two-colour model').says).toContain(
      'a high mark, although by hue they are unrelated',
    );
    const agrees = judged(onWhite([c.coral, 0.3]), onWhite([c.violet, 0.3]));
    expect(reason(agrees, 'two-colour model').says).toContain('agree');
  });

  it('of other eyes: for whom two inks fall together', () => {
    const red = reason(judged(onWhite([c.red, 0.2]), onWhite([c.forest, 0.25])), 'other eyes');
    expect(red.says).toContain('weak red cones');
    expect(red.evidence.deltaE00Seen).toBeLessThan(8);
    expect(red.sourceIds).toEqual(['machado']);
    const blue = reason(judged(onWhite(['#5aa9d6', 0.3]), onWhite(['#5fb39b', 0.3])), 'other eyes');
    expect(blue.says).toContain('weak blue cones');
    expect(blue.sourceIds).toEqual(['brettel']);
  });

  it('of light: which sheets were read without a card', () => {
    const dim = (side: HandSide): HandSide => ({ ...side, lightKnown: false });
    expect(reason(judged(dim(onCream()), dim(onCream())), 'light unknown').says).toContain(
      'The anchor and the candidate were read without',
    );
    const named = judged(onCream(), dim(onCream()), {
      names: { anchor: 'the bunting', candidate: 'the ledger' },
    });
    expect(reason(named, 'light unknown').says).toContain('The ledger was read');
    expect(reason(named, 'light unknown').inks).toEqual(['a']);
  });

  it('with a trade word, the word it was read with, or one found anew', () => {
    const side = handSide(onWhite([c.coral, 0.2]));
    const named = { ...side, inks: [{ ...side.inks[0]!, name: 'strong orange pink', trade: 'shrimp' }] };
    expect(reason(compare(named, side), 'repeat').says).toContain(
      'Shrimp (B) and coral (b) read as one colour',
    );
    const plain = { ...side, inks: [{ ...side.inks[0]!, name: 'strong orange pink', trade: null }] };
    expect(reason(compare(plain, side), 'repeat').says).toContain('Strong orange pink (B)');
  });
});

function greyOf(l: number): string {
  const y = ((l + 16) / 116) ** 3;
  const v = Math.round(255 * (1.055 * y ** (1 / 2.4) - 0.055));
  return `#${v.toString(16).padStart(2, '0').repeat(3)}`;
}
