import { describe, expect, it } from 'vitest';
import { sourceById } from '../../../src/colour/sources.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import type { KitMember } from '../../../src/harmony/model.ts';
import { type HandSide, handSide } from '../../support/sides.ts';
import { kitCases } from './kit-cases.ts';
import { colour as c, onCream, onWhite } from './trade-colours.ts';

const member = (name: string, side: HandSide, more: Partial<KitMember> = {}): KitMember => ({
  name,
  side: handSide(side),
  role: 'paper',
  areaMm2: null,
  ...more,
});
const grey = member('grey cardstock', { base: 'tinted', hex: c.grey }, { role: 'plain' });
const kits = kitCases.map(({ members }) =>
  members.map(({ name, side, role = 'paper', areaMm2 = null }) => member(name, side, { role, areaMm2 })),
);

describe('a kit', () => {
  it('calls its inks by member and letter, base first', () => {
    const kit = kitOf([
      member('one', onCream([c.coral, 0.2])),
      member('two', onCream([c.navy, 0.2], [c.coral, 0.1])),
    ]);
    expect(kit.members.map(({ side: { base, inks } }) => [base.id, ...inks.map(({ id }) => id)])).toEqual([
      ['1A', '1B'],
      ['2A', '2B', '2C'],
    ]);
  });

  it('has every two papers as a pair, with the verdict and the summary that compare gives', () => {
    const members = kits[0]!;
    const kit = kitOf(members);
    expect(kit.pairs.map(({ one, other }) => [one, other])).toEqual([
      [0, 1],
      [0, 2],
      [1, 2],
    ]);
    for (const { one, other, verdict, summary, weightiest } of kit.pairs) {
      const names = { anchor: members[one]!.name, candidate: members[other]!.name };
      const found = compare(members[one]!.side, members[other]!.side, { names });
      expect(verdict).toBe(found.verdict);
      expect(summary).toBe(found.decision.summary);
      expect(weightiest!.kind).toBe(found.reasons[0]!.kind);
    }
  });

  it('finds where each strong colour comes back, and calls three places a triangle', () => {
    const { repeats, reasons, missing } = kitOf(kits[0]!);
    expect(repeats.map(({ word, places }) => [word, places])).toEqual(
      expect.arrayContaining([
        ['coral', 3],
        ['navy', 3],
        ['aqua', 3],
      ]),
    );
    expect(reasons.filter(({ says }) => says.includes('they make a triangle'))).toHaveLength(3);
    expect(missing).toEqual([]);
  });

  it('says what is missing: a partner, a third place, a tie, a neutral', () => {
    const says = (...members: KitMember[]) =>
      kitOf(members)
        .missing.map((one) => one.says)
        .join(' ');
    expect(
      says(
        member('the leaves', onWhite([c.leaf, 0.3])),
        member('the fern', onWhite([c.leaf, 0.15])),
        member('the blue stripe', onWhite([c.royal, 0.3])),
      ),
    ).toMatch(/Nothing here answers [a-z ]+\(3B\) of the blue stripe: a letter, a thread or a scrap/);
    expect(
      says(
        member('one', onCream([c.coral, 0.2])),
        member('two', onCream([c.coral, 0.1])),
        member('three', onCream([c.aqua, 0.2])),
      ),
    ).toContain('A third place for coral');
    expect(
      says(member('one', onWhite(['#b38a7e', 0.3])), member('two', onWhite(['#92a77d', 0.3]))),
    ).toContain('No colour ties one to the rest');
    const dark = (name: string) => member(name, { base: 'dark', hex: c.navy, inks: [[c.coral, 0.2]] });
    expect(says(dark('one'), dark('two'))).toContain('There is no neutral to rest on');
  });

  it('names both places where a third would make a triangle', () => {
    const { missing } = kitOf([
      member('one', onCream([c.coral, 0.2])),
      member('two', onCream([c.aqua, 0.2])),
      member('three', onCream([c.coral, 0.1])),
    ]);
    expect(missing.map(({ says }) => says)).toContain(
      'A third place for coral, now coral (1B) of one and coral (3B) of three, would make a triangle.',
    );
  });

  it('says no shares of the page where no sizes are set', () => {
    const of = (areaMm2: number | null) =>
      kitOf([
        member('one', onCream([c.coral, 0.3]), { areaMm2 }),
        member('two', onCream([c.coral, 0.1], [c.royal, 0.6])),
        member('three', onCream([c.coral, 0.3], [c.mustard, 0.1])),
      ]).reasons;
    expect(JSON.stringify(of(null))).not.toMatch(/of the page|areaShare|by area/);
    expect(of(null).map(({ figure }) => figure)).toEqual(expect.arrayContaining(['3 places', '3 neutrals']));
    expect(JSON.stringify(of(null))).toContain('laid out alike, the page comes out');
    expect(JSON.stringify(of(60_000))).toMatch(/% of the page.*by area/s);
  });

  it('says once that the bases disagree, for all that do', () => {
    const white = (name: string) => member(name, { ...onWhite([c.navy, 0.2]), hex: c.coolWhite });
    const cream = (name: string, hex: string = c.oldCream) =>
      member(name, { ...onCream([c.navy, 0.2]), hex });
    const quarrels = (...members: KitMember[]) => {
      const { reasons, decision } = kitOf(members);
      const found = reasons.filter(({ kind }) => kind === 'base quarrel');
      expect(found).toHaveLength(1);
      expect(decision.turnedBy).toEqual([reasons.indexOf(found[0]!)]);
      return found[0]!;
    };
    expect(quarrels(white('one'), cream('two')).says).toBe(
      'The bases disagree: beside white (1A), cream (2A) looks dirty, and beside cream (2A), white (1A) looks cold.',
    );
    const three = quarrels(white('one'), cream('two'), white('three'));
    expect(three.says).toBe(
      'The bases disagree: beside white (1A) and white (3A), cream (2A) looks dirty, and beside cream (2A), white (1A) and white (3A) look cold.',
    );
    expect(three.inks).toEqual(['1A', '2A', '3A']);
    expect(three.figure).toMatch(/at most$/);
    const steps = quarrels(white('one'), cream('two', '#f8f1de'), cream('three'));
    expect(steps.says).toContain('from the yellowest to the whitest cream (3A), cream (2A) and white (1A)');
  });

  // Common practice, no source: what lies in two places on the page is seen in two.
  it('counts a sheet that is in it twice as one place, and two sized pieces of it as two', () => {
    const sheet = handSide(onCream([c.coral, 0.2]));
    const places = (...areas: (number | null)[]) => {
      const twice = areas.map(
        (areaMm2, i): KitMember => ({ name: `${i}`, side: sheet, role: 'paper', areaMm2 }),
      );
      const kit = kitOf([...twice, member('other', onCream([c.coral, 0.1]))]);
      const says = kit.reasons.find(({ kind }) => kind === 'repeat')!.says;
      return [kit.repeats[0]!.places, says] as const;
    };
    expect(places(null, null)).toEqual([
      2,
      'Coral is in two places, coral (1B) and coral (3B); a third would make a triangle.',
    ]);
    expect(places(5000, null)[0]).toBe(2);
    expect(places(5000, 5000)[0]).toBe(3);
    expect(places(5000, 5000)[1]).toContain('Coral is in 3 places');
    expect(kitOf(kitOf([member('one', onCream([c.coral, 0.2]))]).members).repeats[0]!.places).toBe(1);
  });

  it('tells nothing twice of a sheet that is in it twice, and lets it answer nothing of its own', () => {
    const thin = { weight: { gsm: 110 } };
    const sheet = handSide({ ...onCream([c.coral, 0.3]), busyness: 0.6, scale: 'large', tags: thin });
    const miss = member('miss', { ...onCream([c.raspberry, 0.3]), scale: 'small' });
    const piece = (name: string): KitMember => ({ name, side: sheet, role: 'paper', areaMm2: null });
    const once = kitOf([piece('one'), miss]);
    const twice = kitOf([piece('one'), miss, piece('two')]);
    expect(twice.reasons.map(({ says }) => says)).toEqual(once.reasons.map(({ says }) => says));
    expect([twice.verdict, twice.decision]).toEqual([once.verdict, once.decision]);
    expect(twice.missing).toEqual(once.missing);

    // A stray stays one beside its own sheet listed again; two pieces of the sheet answer each other on the page.
    const strays = (areaMm2: number | null) => {
      const violet = handSide(onCream([c.violet, 0.3]));
      const all = [violet, violet, handSide(onCream([c.coral, 0.3]))];
      const kit = kitOf(all.map((side, i): KitMember => ({ name: `${i}`, side, role: 'paper', areaMm2 })));
      return kit.reasons.filter(({ kind }) => kind === 'stray').flatMap(({ inks }) => inks);
    };
    expect(strays(null)).toEqual(expect.arrayContaining(['1B']));
    expect(strays(null)).not.toContain('2B');
    expect(strays(5000)).toEqual(['3B']);
  });

  it('counts places, not inks, for a triangle', () => {
    const { reasons, repeats } = kitOf([
      member('one', onCream([c.coral, 0.2], ['#e0705a', 0.1])),
      member('two', onCream([c.coral, 0.1])),
    ]);
    expect(repeats[0]).toMatchObject({ places: 2, inks: ['1B', '1C', '2B'] });
    expect(reasons.find(({ kind }) => kind === 'repeat')!.says).toBe(
      'Coral is in two places, coral (1B) and coral (2B); a third would make a triangle.',
    );
  });

  it('judges a photograph only for how it stands out', () => {
    const photo = member(
      'the photograph',
      { base: 'tinted', hex: '#444444', inks: [[c.violet, 0.5]] },
      { role: 'photo' },
    );
    const bare = kitOf([member('one', onCream([c.coral, 0.2])), member('two', onCream([c.coral, 0.1]))]);
    const kit = kitOf([
      member('one', onCream([c.coral, 0.2])),
      member('two', onCream([c.coral, 0.1])),
      photo,
    ]);
    expect(kit.verdict).toBe(bare.verdict);
    expect(kit.pairs).toHaveLength(1);
    const stands = kit.reasons.find(({ kind }) => kind === 'lightness range')!;
    expect(stands.says).toContain('stands out from one by lightness');
    expect(stands.weighs).toBeGreaterThan(0);
    expect(kitOf([photo]).reasons.map(({ kind }) => kind)).not.toContain('lightness range');
  });

  it('takes an area that is not known for what the others take on average', () => {
    const kit = kitOf([
      member('one', onCream([c.coral, 0.2]), { areaMm2: 60_000 }),
      member('two', onCream([c.coral, 0.1]), { areaMm2: 20_000 }),
      member('three', onCream([c.coral, 0.1])),
    ]);
    const areas = kit.reasons.find(({ kind }) => kind === 'dominance')!;
    expect(areas.evidence.largestShare).toBeCloseTo(0.5, 9);
    expect(areas.says).toContain('One takes 50 % of the page: one piece leads');
    const even = kitOf([
      member('one', onCream([c.coral, 0.2]), { areaMm2: 100 }),
      member('two', onCream([c.coral, 0.1]), { areaMm2: 100 }),
      member('three', onCream([c.coral, 0.1]), { areaMm2: 100 }),
    ]);
    expect(even.reasons.find(({ kind }) => kind === 'dominance')!.says).toContain('No piece leads');
  });

  it('is unmoved by a plain grey added, by another order, or by every area doubled', () => {
    for (const members of kits) {
      const before = kitOf(members).verdict;
      expect(kitOf([...members, grey]).verdict).toBe(before);
      expect(kitOf([...members].reverse()).verdict).toBe(before);
      const doubled = members.map((one) => ({
        ...one,
        areaMm2: one.areaMm2 === null ? null : one.areaMm2 * 2,
      }));
      expect(kitOf(doubled).verdict).toBe(before);
    }
  });

  it('tells the temperature, the busy prints, the thin and the unlit', () => {
    const cool = onWhite([c.royal, 0.3], [c.skyBlue, 0.3]);
    const warm = onCream([c.coral, 0.3], [c.mustard, 0.3]);
    const says = (members: KitMember[], kind: string) =>
      kitOf(members).reasons.find((one) => one.kind === kind)?.says;
    expect(says([member('one', warm), member('two', cool)], 'warm and cool')).toContain(
      'One leans warm and two leans cool',
    );
    const three = (side: HandSide, first: HandSide = side) => [
      member('one', first),
      member('two', side),
      member('three', side),
    ];
    expect(says(three(cool), 'warm and cool')).toBe('The kit as a whole leans cool.');
    expect(says(three(warm, cool), 'warm and cool')).toMatch(/^Two and three lean warm and one leans cool; /);
    expect(says(three(warm, { ...warm, busyness: 0.6 }), 'busyness')).toContain('the one busy print');
    expect(says(three({ ...warm, busyness: 0.6 }), 'busyness')).toContain('One, two and three are busy');
    expect(says([member('one', { ...warm, tags: { weight: { gsm: 100 } } })], 'weight')).toContain(
      'One is thin, 100 g/m²',
    );
    expect(says([member('one', { ...warm, lightKnown: false })], 'light unknown')).toContain(
      'One was read without',
    );
    expect(
      says(
        [member('one', { ...warm, scale: 'small' }), member('two', { ...warm, scale: 'large' })],
        'print scale',
      ),
    ).toBe('The print of two is larger than that of one: different scales keep out of each other’s way.');
    const scaled = (...scales: ('small' | 'medium' | 'large')[]) =>
      says(
        scales.map((scale, at) => member(['one', 'two', 'three'][at]!, { ...warm, scale })),
        'print scale',
      );
    expect(scaled('small', 'large', 'medium')).toContain('different scales, small, large and medium');
    expect(scaled('small', 'small', 'small')).toContain('All prints are small in scale');
    expect(scaled('small', 'large', 'large')).toContain('Two and three are of one scale, large');
    expect(
      says(
        [
          member('one', onWhite([c.dustyRose, 0.3], [c.sage, 0.2])),
          member('two', onWhite([c.neonPink, 0.3], [c.lime, 0.25])),
        ],
        'bright against muted',
      ),
    ).toContain('Two is bright');
  });

  it('says how it was decided, and by which reason', () => {
    for (const members of kits) {
      const { decision, reasons, verdict } = kitOf(members);
      expect(decision.rule).toMatch(/^[A-Z].*\.$/);
      expect(decision.summary).toMatch(/\.$/);
      for (const i of decision.turnedBy) {
        expect(Math.sign(reasons[i]!.weighs)).toBe(verdict === 'holds-together' ? 1 : -1);
      }
    }
    const untied = kitOf([
      member('one', onWhite(['#b38a7e', 0.3])),
      member('two', onWhite(['#92a77d', 0.3])),
    ]);
    expect(untied.decision.summary).toBe('Nothing ties one to the rest.');
    const alone = kitOf([member('one', onWhite([c.coral, 0.3])), member('two', onWhite([c.raspberry, 0.3]))]);
    expect(alone).toMatchObject({ verdict: 'pulls-apart' });
    expect(alone.decision.turnedBy).toHaveLength(1);
    const strangers = kitOf([
      member('one', onWhite([c.coral, 0.25], [c.lime, 0.25])),
      member('two', onWhite([c.raspberry, 0.25], [c.violet, 0.25], [c.royal, 0.25])),
    ]);
    expect(strangers.decision.rule).toContain('Two troubles of');
    expect(kitOf([member('one', onWhite([c.coral, 0.3]))]).decision.summary).toBe(
      'One piece alone agrees with itself.',
    );
    expect(kitOf([]).verdict).toBe('holds-together');
  });

  it('has reasons with sources, and speaks only of inks that are there', () => {
    for (const members of kits) {
      const kit = kitOf(members);
      const ids = new Set(
        kit.members.flatMap(({ side: { base, inks } }) => [base.id, ...inks.map(({ id }) => id)]),
      );
      for (const { inks, says, sourceIds, figure } of kit.reasons) {
        for (const id of inks) expect(ids).toContain(id);
        for (const [, id] of says.matchAll(/\((\d+[A-Z])\)/g)) expect(inks).toContain(id);
        for (const id of sourceIds) expect(sourceById(id)).toBeDefined();
        expect(`${says} ${figure}`).not.toMatch(/undefined|NaN/);
      }
    }
  });
});
