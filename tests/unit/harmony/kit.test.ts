import { describe, expect, it } from 'vitest';
import { sourceById } from '../../../src/colour/sources.ts';
import { compare } from '../../../src/harmony/compare.ts';
import { kitOf } from '../../../src/harmony/kit/kit.ts';
import { type KitMember, verdicts } from '../../../src/harmony/model.ts';
import { looks } from '../../support/judging/families.ts';
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

  it('says what is missing: a partner, a third place, a neutral', () => {
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

  it('says once what several of its pairs say, and of how many more it is true', () => {
    const check = (name: string, hex: string): KitMember => {
      const made = member(name, onCream([hex, 0.5]));
      return { ...made, side: { ...made.side, seen: looks.check } };
    };
    const flickers = (...members: KitMember[]) => {
      const { reasons, decision, verdict } = kitOf(members);
      const found = reasons.filter(({ kind }) => kind === 'hard beside hard');
      expect(verdict).toBe('needs-a-bridge');
      expect(found).toHaveLength(1);
      expect(decision.turnedBy).toEqual([reasons.indexOf(found[0]!)]);
      return found[0]!.says;
    };
    const [one, two, three] = [check('one', c.navy), check('two', c.leaf), check('three', c.tomato)];
    expect(flickers(one, two)).toMatch(/side by side they flicker\.$/);
    expect(flickers(one, two, three)).toMatch(/flicker\. The same is true of 2 more pairs here\.$/);
  });

  it('lays a calm third piece between two that do not hold, where it goes with both', () => {
    const loud = [
      member('one', onWhite([c.coral, 0.25], [c.lime, 0.25])),
      member('two', onWhite([c.raspberry, 0.25], [c.violet, 0.25], [c.royal, 0.25])),
    ];
    expect(kitOf(loud).verdict).toBe('needs-a-bridge');
    const bridged = kitOf([...loud, grey]);
    expect(bridged.pairs[0]!.verdict).toBe('needs-a-bridge');
    expect(bridged.verdict).toBe('holds-together');
    const told = bridged.reasons.find(({ says }) => says.includes('lay it between them'))!;
    expect(told.says).toBe(
      'One and two do not hold by themselves, but grey cardstock goes with both: lay it between them.',
    );
    expect(told.weighs).toBe(0);
    expect(told.inks).toContain('3A');
    // A print that goes with neither bridges nothing.
    const print = member('three', { base: 'dark', hex: c.plum, inks: [[c.neonPink, 0.4]] });
    expect(kitOf([...loud, print]).verdict).not.toBe('holds-together');
  });

  it('names a piece that pulls apart from all the others', () => {
    const green = (name: string, a: number, b: number) => member(name, onCream([c.leaf, a], [c.mustard, b]));
    const odd = member('three', {
      base: 'dark',
      hex: c.plum,
      inks: [
        [c.neonPink, 0.4],
        [c.violet, 0.2],
      ],
    });
    const { verdict, decision } = kitOf([green('one', 0.3, 0.2), green('two', 0.2, 0.3), odd]);
    expect(verdict).toBe('pulls-apart');
    expect(decision.summary).toBe('Three goes with none of the others.');
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
  });

  it('counts places, not inks, for a triangle', () => {
    const { reasons, repeats } = kitOf([
      member('one', onCream([c.coral, 0.2], ['#e0705a', 0.1])),
      member('two', onCream([c.coral, 0.1])),
    ]);
    expect(repeats[0]).toMatchObject({ places: 2, inks: ['1B', '2B'] });
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

  it('is never made worse by a plain grey, nor moved by another order, or by every area doubled', () => {
    for (const members of kits) {
      const before = kitOf(members).verdict;
      const greyed = kitOf([...members, grey]).verdict;
      expect(verdicts.indexOf(greyed)).toBeLessThanOrEqual(verdicts.indexOf(before));
      expect(kitOf([...members].reverse()).verdict).toBe(before);
      const doubled = members.map((one) => ({
        ...one,
        areaMm2: one.areaMm2 === null ? null : one.areaMm2 * 2,
      }));
      expect(kitOf(doubled).verdict).toBe(before);
    }
  });

  it('tells the temperature, the thin and the unlit', () => {
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
    expect(says([member('one', { ...warm, tags: { weight: { gsm: 100 } } })], 'weight')).toContain(
      'One is thin, 100 g/m²',
    );
    expect(says([member('one', { ...warm, lightKnown: false })], 'light unknown')).toContain(
      'One was read without',
    );
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
